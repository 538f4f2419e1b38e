import type { Frame } from "../frame";

/** What stands in place of what leaks take: ducts of which none is known are not tight. Without quotation marks, so that it fits into a formula. */
export const noLeakOn = (frame: Frame): string =>
  `No leak is counted: none before the fan is entered on ${frame.sheet("runs")} for the gates as they are.`;
