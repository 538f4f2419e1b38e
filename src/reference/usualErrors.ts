import { millimetres } from "./asPrinted";

/** What AIRFLOWERROR takes where nothing is given: the cautious ends of a rotating vane, and a tape. */
export const usualErrors = { percent: 0.03, floor: 0.2, diameter: millimetres(1) } as const;
