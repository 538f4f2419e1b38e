import { NO_CODES } from "./showsDay";

/** Whether a number format shows a hundredfold with a percent sign: the cell that shows 3% holds 0.03. A sign in quotes only stands there. */
export const showsPercent = (format: string): boolean => format.replace(NO_CODES, "").includes("%");

/** A number as a cell shows it that shows percent, in full: 3% of 0.03. */
export const percentText = (value: number): string => `${Number((100 * value).toPrecision(15))}%`;
