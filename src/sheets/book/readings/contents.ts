import type { UnitSystem } from "../../../reference/quantities";

/** A reading of a meter that computes airflow from an area that was entered in it. */
export interface AreaReading {
  readonly name: string;
  readonly diameter: number; // in, mm
  readonly entered: number; // ft², m²
  readonly shown: number; // cfm, m³/h
}

/** Readings along two lines at right angles, point by point. */
export interface TraverseReadings {
  readonly diameter: number; // in, mm
  readonly points: number; // on a line
  readonly readings: readonly (readonly [across: number, upAndDown: number])[]; // fpm, m/s
}

/** What was read at a filter month by month. */
export interface FilterLog {
  readonly rated: number; // cfm, m³/h
  readonly cleanAt: number; // in.w.g., Pa
  readonly rows: readonly (readonly [month: number, drop: number, airflow: number])[];
}

/** What the sheet of readings is filled with, in the units of its frame. */
export interface ReadingsContents {
  readonly invented: string | null; // the sentence that says so
  readonly tryIt: string | null;
  readonly areas: readonly AreaReading[];
  readonly traverse: TraverseReadings | null;
  readonly filter: FilterLog | null;
}

export const emptyReadings: ReadingsContents = { invented: null, tryIt: null, areas: [], traverse: null, filter: null };

const INVENTED = "Invented for trying out: no such duct was read.";

/** The first reading was taken with the area of the duct one size up, the second is sound. The traverse is slower by the wall. */
const inchPound: ReadingsContents = {
  invented: INVENTED,
  tryIt: "Try it: type 0.136 in C9 and 551 in D9, press Enter, and the slip is gone.",
  areas: [
    { name: "planer", diameter: 5, entered: 0.196, shown: 792 },
    { name: "south main", diameter: 6, entered: 0.196, shown: 585 },
  ],
  traverse: {
    diameter: 6,
    points: 6,
    readings: [
      [2650, 2710],
      [3060, 3080],
      [3320, 3350],
      [3290, 3260],
      [3010, 2980],
      [2600, 2560],
    ],
  },
  filter: {
    rated: 1800,
    cleanAt: 2,
    rows: [
      [0, 0.88, 1580],
      [1, 0.93, 1570],
      [2, 0.96, 1560],
      [3, 1.03, 1545],
      [4, 1.07, 1530],
      [5, 1.13, 1520],
    ],
  },
};

/** Here the first area is that of a square instead of a circle. */
const metric: ReadingsContents = {
  invented: INVENTED,
  tryIt: "Try it: type 0.0123 in C9 and 901 in D9, press Enter, and the slip is gone.",
  areas: [
    { name: "thickness sander", diameter: 125, entered: 0.0156, shown: 1145 },
    { name: "sanding table", diameter: 140, entered: 0.0154, shown: 1140 },
  ],
  traverse: {
    diameter: 160,
    points: 6,
    readings: [
      [17.1, 17.6],
      [19.8, 20.1],
      [21.4, 21.5],
      [21.2, 21],
      [19.5, 19.2],
      [16.8, 16.5],
    ],
  },
  filter: {
    rated: 3200,
    cleanAt: 600,
    rows: [
      [0, 299, 2900],
      [1, 312, 2880],
      [2, 330, 2870],
      [3, 336, 2850],
    ],
  },
};

export const exampleReadings = (units: UnitSystem): ReadingsContents => (units === "SI" ? metric : inchPound);
