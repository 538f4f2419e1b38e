import { cautions } from "../../reference/cautions";
import { materials } from "../../reference/materials";
import { cellAddress } from "../address";
import { formula, text } from "../cells";
import type { StyleName } from "../styles";
import type { Sheet, SheetCell } from "../workbook";

const WIDTHS = [27, 64, 16, 40, 34];
const TEXT_WIDTH = 0.97 * WIDTHS[1]!; // characters of a caution that fit on a line, since words break early

const CAUTIONS = 5;
const MATERIALS = CAUTIONS + 1 + cautions.length + 3;
const ABOUT = MATERIALS + 1 + materials.length + 3;
const ABOUT_ROWS = 15;

/** Three tables, each filled by one formula, one under the other; the one whose length is not known here stands last. */
export const cautionsSheet: Sheet = {
  name: "Cautions and tables",
  columns: WIDTHS,
  tallRows: cautions.map(({ text: words }, index) => ({
    row: CAUTIONS + 1 + index,
    lines: Math.max(1, Math.ceil(words.length / TEXT_WIDTH)),
  })),
  frozen: { rows: 0, columns: 0 },
  cells: [
    text("A1", "Cautions and tables", "title"),
    text(
      "A2",
      "Each table is filled by one formula. The pane beside the sheet holds every table, with search and sources.",
    ),
    text(`A${CAUTIONS - 1}`, "Cautions", "section"),
    text(`B${CAUTIONS - 1}`, "=DUCT.CAUTIONS()", "note"),
    ...filled(CAUTIONS, cautions.length, "paragraph", "=DUCT.CAUTIONS()"),
    text(`A${MATERIALS - 1}`, "Materials", "section"),
    text(`B${MATERIALS - 1}`, '=DUCT.REFERENCE("materials")', "note"),
    ...filled(MATERIALS, materials.length, "text", '=DUCT.REFERENCE("materials")'),
    text(`A${ABOUT - 1}`, "About", "section"),
    text(`B${ABOUT - 1}`, "=DUCT.ABOUT()", "note"),
    ...filled(ABOUT - 1, ABOUT_ROWS, "text", "=DUCT.ABOUT()", ABOUT),
  ],
  lists: [],
  flags: [],
};

/** A formula whose answer is a header row and so many rows; `from` is its own cell where there is no header. */
function filled(header: number, rows: number, style: StyleName, code: string, from = header): SheetCell[] {
  const cells: SheetCell[] = [];
  for (let at = from; at <= header + rows; at++) {
    WIDTHS.forEach((_, index) => {
      const look = { at: cellAddress(index + 1, at), style: at === header ? "header" : style } as const;
      cells.push(at === from && index === 0 ? formula(look.at, code, look.style) : { ...look, value: null });
    });
  }
  return cells;
}
