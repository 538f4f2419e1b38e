import { TABLES_DATE } from "../../../reference";
import { cautions } from "../../../reference/cautions";
import { sources } from "../../../reference/sources";
import { text } from "../../cells";
import type { Sheet } from "../../workbook";
import type { SheetOf } from "../frame";
import { printing } from "../parts/printing";
import { itemAt } from "../../../reference/itemAt";

const HEADER = 6;
const FIRST = HEADER + 1;
const WIDTHS = [11, 66, 16, 46, 30];
const FIT = 1; // running text is narrower than digits, but words break before the end of a line

/** The cautions as plain cells: they stay where nothing computes. */
export const cautionsSheet: SheetOf<null> = (frame): Sheet => {
  const rows = cautions.map((row) => [row.topic, row.text, row.basis, sources[row.source].title, row.locator]);
  const lines = (row: readonly string[]): number =>
    Math.max(...row.map((words, column) => Math.ceil(words.length / (itemAt(WIDTHS, column) * FIT))));
  return {
    name: frame.sheet("cautions"),
    columns: WIDTHS,
    tallRows: rows.flatMap((row, index) => (lines(row) > 1 ? [{ row: FIRST + index, lines: lines(row) }] : [])),
    frozen: { rows: HEADER, columns: 0 },
    cells: [
      text("A1", frame.sheet("cautions"), "title"),
      text(
        "A2",
        "Local codes and licensed practice decide. Nothing in this workbook is a permit or an engineer's design.",
        "total",
      ),
      text("A3", "Cut the power and let the wheel stop before you reach into a gate, a duct or the fan.", "total"),
      text(
        "A4",
        `As of ${TABLES_DATE}. Limits change and some are disputed: look up the one that holds where you are. Rows from memory or from common practice say so.`,
        "note",
      ),
      ...["Topic", "Caution", "How it was read", "Source", "Where in it"].map((words, column) =>
        text(`${"ABCDE"[column]!}${HEADER}`, words, "header"),
      ),
      ...rows.flatMap((row, index) =>
        row.flatMap((words, column) =>
          words === "" ? [] : [text(`${"ABCDE"[column]!}${FIRST + index}`, words, "paragraph")],
        ),
      ),
    ],
    lists: [],
    flags: [],
    print: printing(frame, "landscape", HEADER),
  };
};
