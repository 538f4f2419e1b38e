import type { ReadingColumn } from "../../../reference/readingColumns";
import type { UnitSystem } from "../../../reference/quantities";

/** A row of readings: only the columns that are filled. */
export type ReadingRow = Readonly<Partial<Record<ReadingColumn, string | number>>>;

/** What the sheet of what was measured is filled with, in the units of its frame. */
export interface MeasuredContents {
  readonly invented: string | null; // the sentence that says so
  readonly tryIt: string | null;
  readonly readings: readonly ReadingRow[];
}

export const emptyMeasured: MeasuredContents = { invented: null, tryIt: null, readings: [] };

const INVENTED = "Invented for trying out: no such duct was read.";

/**
 * Read in a shed whose fan gives about a tenth less pressure than its curve and whose filter is dirty. The planer's airflow was
 * taken with the area of the duct one size up.
 */
const inchPound: MeasuredContents = {
  invented: INVENTED,
  tryIt: "Try it: type 722 in E16, as it should have been, and the slip is gone.",
  readings: [
    { Open: "band saw", At: "band saw", Velocity: 5400 },
    { Open: "planer", At: "planer", Airflow: 1040 },
    { Open: "drum sander", At: "drum sander", Velocity: 5850 },
    { Open: "router table", At: "router table", Velocity: 5560 },
    { Open: "all", At: "band saw", Velocity: 2990 },
    { Open: "all", At: "drum sander", Velocity: 3560 },
    { Open: "all", At: "fan", Suction: 5.7 },
    { Open: "all", At: "filter", Drop: 1.8 },
    { Open: "planer", At: "planer", Suction: 3.85 },
  ],
};

/** Here a decimal place of the area is off at the thickness sander. */
const metric: MeasuredContents = {
  invented: INVENTED,
  tryIt: "Try it: type 1190 in E16, as it should have been, and the slip is gone.",
  readings: [
    { Open: "resaw", At: "resaw", Velocity: 30.5 },
    { Open: "thickness sander", At: "thickness sander", Airflow: 11900 },
    { Open: "sanding table", At: "sanding table", Velocity: 35.9 },
    { Open: "neck router", At: "neck router", Velocity: 32.2 },
    { Open: "all", At: "resaw", Velocity: 15.2 },
    { Open: "all", At: "sanding table", Velocity: 23.6 },
    { Open: "all", At: "fan", Suction: 1680 },
    { Open: "all", At: "filter house", Drop: 615 },
    { Open: "thickness sander", At: "thickness sander", Suction: 1265 },
  ],
};

export const exampleMeasured = (units: UnitSystem): MeasuredContents => (units === "SI" ? metric : inchPound);
