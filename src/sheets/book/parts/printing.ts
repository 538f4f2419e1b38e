import type { PrintSetup } from "../../workbook";
import type { Frame } from "../frame";

/** Paper of the unit system's countries; the header row again on each page. */
export const printing = (
  frame: Frame,
  orientation: "portrait" | "landscape",
  titleRow: number | null = null,
): PrintSetup => ({
  paper: frame.units === "SI" ? "A4" : "Letter",
  landscape: orientation === "landscape",
  ...(titleRow === null ? {} : { titleRows: { first: titleRow, last: titleRow } }),
});
