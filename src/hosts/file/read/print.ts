import type { PrintSetup } from "../../../sheets/workbook";
import { placeOf } from "../../../sheets/address";
import { readReference } from "../../../sheets/rangeRef";
import { rectangleText } from "../../../sheets/rectangle";
import { child, down, isOn, type XmlNode } from "./xml";

const LETTER = "1"; // the format's number of that paper

/**
 * How a sheet is printed, where it is fitted to pages as ours are; whatever else a program notes of paper is its own habit.
 *
 * @param printed what the reserved names of this sheet say
 */
export function printOf(root: XmlNode, printed: ReadonlyMap<string, string>): PrintSetup | undefined {
  if (!isOn(down(root, "sheetPr", "pageSetUpPr")?.attributes.fitToPage)) return undefined;
  const { paperSize, orientation, fitToWidth = "1", fitToHeight = "1" } = child(root, "pageSetup")?.attributes ?? {};
  const area = readReference(printed.get("_xlnm.Print_Area") ?? "");
  const titles = printed.get("_xlnm.Print_Titles") ?? "";
  const rows = /\$?(\d+):\$?(\d+)$/.exec(titles);
  const columns = /\$?([A-Z]{1,3}):\$?([A-Z]{1,3})(?=,|$)/.exec(titles);
  return {
    paper: paperSize === LETTER ? "Letter" : "A4",
    landscape: orientation === "landscape",
    ...(Number(fitToWidth) > 1 ? { pagesWide: Number(fitToWidth) } : {}),
    ...(Number(fitToHeight) >= 1 ? { pagesHigh: Number(fitToHeight) } : {}),
    ...(rows === null ? {} : { titleRows: { first: Number(rows[1]), last: Number(rows[2]) } }),
    ...(columns === null ? {} : { titleColumns: { first: columnAt(columns[1]), last: columnAt(columns[2]) } }),
    ...(area === null ? {} : { area: rectangleText(area) }),
  };
}

const columnAt = (letters = "A"): number => placeOf(`${letters}1`).column;
