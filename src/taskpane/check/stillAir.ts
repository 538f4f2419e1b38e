import { type MarkedNote, notesIn } from "../../reference/notes";

/** Notes of a run that no dust is to pass: behind a shut gate, or where no open hood lets air in. Slow air there is no fault. */
export const STILL_NOTES: readonly MarkedNote[] = [
  "gateShut",
  "cutOff",
  "onlyLeaksFlow",
  "nothingFlows",
  "noneAsksThroughIt",
];

/** Whether a run's note says one of these. */
export const saysAny = (note: string, keys: readonly MarkedNote[]): boolean =>
  notesIn(note).some(({ key }) => key !== null && keys.includes(key));
