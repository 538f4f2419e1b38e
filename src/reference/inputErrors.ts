import type { ReferenceRow } from "./schema";

/** How far an input of a system may be off, as a standard deviation: two of three true values lie within it. */
export interface InputErrorRow extends ReferenceRow {
  readonly percent: number | null; // [%]
  readonly factor: number | null; // [-] times or over, where a percentage would reach below nothing
  readonly ofReadings?: true; // nothing that flows hangs on it, only what readings tell of it
}

const practice = { source: "commonPractice", basis: "common practice", checked: null } as const;
const judged = { locator: "a judgement of ours", ...practice } as const;

/** What UNCERTAINTY and CALIBRATE take where nothing is given. */
export const inputErrors: readonly InputErrorRow[] = [
  {
    key: "fan pressure",
    label: "The fan's pressure against its curve",
    percent: 10,
    factor: null,
    note: "A printed curve is another fan's, on a test stand.",
    ...judged,
  },
  {
    key: "fan speed",
    label: "The fan's speed against its curve's",
    percent: 10,
    factor: null,
    note: "It moves the airflow axis, and pressure by the square: belt, mains, size of the wheel.",
    ...judged,
  },
  {
    key: "hose",
    label: "Friction of hose",
    percent: 40,
    factor: null,
    note: "Hose that hangs or is pushed together costs several times as much as drawn out.",
    ...judged,
  },
  {
    key: "pipe",
    label: "Friction of pipe",
    percent: 8,
    factor: null,
    note: "The range of roughness that the table materials gives for ordinary galvanised pipe is worth about that.",
    ...judged,
  },
  {
    key: "fittings",
    label: "Loss of each run's fittings",
    percent: 15,
    factor: null,
    note: "Books differ by that and more; each run by its own.",
    ...judged,
  },
  {
    key: "entry",
    label: "Entry loss of each hood",
    percent: 20,
    factor: null,
    note: "A machine's port is rarely the shape in a book.",
    ...judged,
  },
  {
    key: "device",
    label: "Loss of each separator or filter",
    percent: 30,
    factor: null,
    note: "A filter's loss goes with its dust.",
    ...judged,
  },
  {
    key: "leak",
    label: "Area of each leak",
    percent: null,
    factor: 2.5,
    note: "Two of three within 2.5 times or one part in 2.5 of what is typed.",
    ...judged,
  },
  {
    key: "diameter",
    label: "Diameter of each run",
    percent: 1,
    factor: null,
    note: "By tape: about 1 mm of 100.",
    ...judged,
  },
  {
    key: "meter",
    label: "What a meter shows, all its readings alike",
    percent: 3,
    factor: null,
    ofReadings: true,
    note: "How it was calibrated; it does not fall with more readings.",
    ...judged,
  },
  {
    key: "model",
    label: "What flows against any such model of it, at each reading",
    percent: 4,
    factor: null,
    ofReadings: true,
    note: "A fitting costs otherwise behind another, and air turns: no table has that.",
    ...judged,
  },
];
