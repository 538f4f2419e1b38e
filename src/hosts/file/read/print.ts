import type { PrintSetup, SharedOut } from "../../../sheets/workbook";
import { placeOf } from "../../../sheets/address";
import { readReference } from "../../../sheets/rangeRef";
import { rectangleText } from "../../../sheets/rectangle";
import { child, childrenOf, down, isOn, type XmlNode } from "./xml";

const LETTER = "1"; // the format's number of that paper

/**
 * How a sheet is printed, where it is fitted to pages or shared out as ours are; whatever else a program notes of paper is its
 * own habit.
 *
 * @param printed what the reserved names of this sheet say
 */
export function printOf(root: XmlNode, printed: ReadonlyMap<string, string>): PrintSetup | undefined {
  const setup = child(root, "pageSetup")?.attributes ?? {};
  const isFitted = isOn(down(root, "sheetPr", "pageSetUpPr")?.attributes.fitToPage);
  const shared = isFitted ? undefined : sharedOut(root, setup.scale);
  if (!isFitted && shared === undefined) return undefined;
  const { paperSize, orientation } = setup;
  const { fitToWidth = "1", fitToHeight = "1" } = isFitted ? setup : { fitToHeight: "0" };
  const area = readReference(printed.get("_xlnm.Print_Area") ?? "");
  const titles = printed.get("_xlnm.Print_Titles") ?? "";
  const rows = /\$?(\d+):\$?(\d+)$/.exec(titles);
  const columns = /\$?([A-Z]{1,3}):\$?([A-Z]{1,3})(?=,|$)/.exec(titles);
  return {
    paper: paperSize === LETTER ? "Letter" : "A4",
    landscape: orientation === "landscape",
    ...(shared === undefined ? {} : { shared }),
    ...(Number(fitToWidth) > 1 ? { pagesWide: Number(fitToWidth) } : {}),
    ...(Number(fitToHeight) >= 1 ? { pagesHigh: Number(fitToHeight) } : {}),
    ...(rows === null ? {} : { titleRows: { first: Number(rows[1]), last: Number(rows[2]) } }),
    ...(columns === null ? {} : { titleColumns: { first: columnAt(columns[1]), last: columnAt(columns[2]) } }),
    ...(area === null ? {} : { area: rectangleText(area) }),
  };
}

/** Undefined where no page begins by its maker's wish. A break names the row or column before it. */
function sharedOut(root: XmlNode, scale = "100"): SharedOut | undefined {
  const begins = (name: string): number[] =>
    childrenOf(child(root, name), "brk").flatMap(({ attributes: { id, man } }) =>
      isOn(man) && Number(id) > 0 ? [Number(id) + 1] : [],
    );
  const [rows, columns] = [begins("rowBreaks"), begins("colBreaks")];
  const percent = Number(scale);
  return rows.length + columns.length === 0 || !(percent >= 10 && percent <= 400)
    ? undefined
    : { scale: percent, rows, columns };
}

const columnAt = (letters = "A"): number => placeOf(`${letters}1`).column;
