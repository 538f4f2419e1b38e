import type { UnitSystem } from "../../../reference/quantities";
import type { ThrottleColumn } from "../../../reference/throttleColumns";
import { workshops } from "../../demo/workshops";

export interface FanContents {
  readonly curve: readonly (readonly [airflow: number, pressure: number])[];
  readonly source: string | null;
  readonly throttles: Throttles | null;
}

/** What the owner read at the fan: in a duct of which diameter, and a row for each throttle. */
export interface Throttles {
  readonly diameter: number; // in, mm
  readonly invented: string; // the sentence that says so
  readonly rows: readonly Readonly<Partial<Record<ThrottleColumn | "Throttle", string | number>>>[];
}

export const emptyFan: FanContents = { curve: [], source: null, throttles: null };

const INVENTED = "Invented for trying out: no such fan was read.";

/** A fan that gives about a seventh less than is printed, as on the sheet Measured: read at five throttles, to a few per cent. */
const throttles: Readonly<Record<UnitSystem, Throttles>> = {
  IP: {
    diameter: 9,
    invented: INVENTED,
    rows: [
      { Velocity: 790, Suction: 9.15, After: 0.5, Throttle: "one gate open, half shut" },
      { Velocity: 1820, Suction: 8.35, After: 1, Throttle: "one gate open" },
      { Velocity: 2730, Suction: 6.95, After: 1.45, Throttle: "two gates open" },
      { Velocity: 3560, Suction: 5.5, After: 1.9, Throttle: "all gates open" },
      { Velocity: 4290, Suction: 3.7, After: 2.4, Throttle: "the duct off its fan, half covered" },
    ],
  },
  SI: {
    diameter: 224,
    invented: INVENTED,
    rows: [
      { Velocity: 5.1, Suction: 2780, After: 160, Throttle: "one gate open, half shut" },
      { Velocity: 10.3, Suction: 2540, After: 300, Throttle: "one gate open" },
      { Velocity: 15.4, Suction: 2190, After: 460, Throttle: "two gates open" },
      { Velocity: 20.6, Suction: 1650, After: 610, Throttle: "all gates open" },
      { Velocity: 25.1, Suction: 1040, After: 800, Throttle: "the duct off its fan, half covered" },
    ],
  },
};

export const exampleFan = (units: UnitSystem): FanContents => ({
  curve: workshops[units].curve,
  source: "an invented fan: type the points of your own over it",
  throttles: throttles[units],
});
