import type { Frame } from "../frame";
import { NO_DEVICE_CELL } from "../layout";

const SAID = "No separator, filter or bag is counted: ";

/**
 * What stands on Runs where every cell of Device loss is blank: a filter that nobody typed would cost nothing, and the fan that is
 * bought for the rest would be too weak.
 *
 * @param any whether anything is asked of a fan, as a formula has it
 * @param losses the column with its heading
 */
export const noDevice = (any: string, losses: string): string =>
  `IF(${any},IF(COUNTA(${losses})>1,"","${SAID}type its loss under Device loss, 0 for none."),"")`;

/** The same on another sheet, beside a number that rests on it; a formula without its equals sign. */
export const noDeviceSaid = (frame: Frame): string =>
  `IFERROR(IF(${frame.ref("runs", NO_DEVICE_CELL)}="","","${SAID}see ${frame.sheet("runs")} ${NO_DEVICE_CELL.replaceAll("$", "")}."),"")`;
