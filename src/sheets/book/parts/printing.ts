import { paperOf } from "../../paper";
import type { PrintSetup } from "../../workbook";
import type { Frame } from "../frame";

/** The header row comes again on each page. */
export const printing = (
  frame: Frame,
  orientation: "portrait" | "landscape",
  titleRow: number | null = null,
): PrintSetup => ({
  paper: paperOf(frame.units),
  landscape: orientation === "landscape",
  ...(titleRow === null ? {} : { titleRows: { first: titleRow, last: titleRow } }),
});
