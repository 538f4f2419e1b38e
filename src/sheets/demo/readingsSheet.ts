import { input, text } from "../cells";
import type { Sheet, SheetCell } from "../workbook";
import { areas } from "./readingsAreas";
import {
  AREAS,
  AREAS_FIRST,
  AREAS_LAST,
  LOG,
  LOG_FIRST,
  LOG_LAST,
  LOG_TITLE,
  TRAVERSE,
  WORKED,
} from "./readingsLayout";
import { conditionList, leakLog } from "./readingsLog";
import { logTotals } from "./readingsTotals";
import { traverse } from "./readingsTraverse";
import { workedOut } from "./readingsWorked";

/** Meter readings: what a duct carries, the commonest slip, and the leaks of the gates before and after mending. */
export const readingsSheet: Sheet = {
  name: "Readings",
  columns: [15, 8, 17, 8.5, 8.5, 9.5, 8, 8, 8, 34.5, 9, 9, 9, 9],
  tallRows: [
    { row: TRAVERSE, lines: 2 },
    { row: AREAS, lines: 3 },
    { row: LOG, lines: 3 },
    { row: WORKED, lines: 4 },
  ],
  frozen: { rows: 0, columns: 1 },
  cells: [...heading(), ...traverse(), ...areas(), ...logTotals(), ...leakLog(), ...workedOut()],
  lists: [conditionList],
  flags: [
    { range: `G${AREAS_FIRST}:G${AREAS_LAST}`, containsText: "slip", style: "flag" },
    { range: `J${LOG_FIRST}:J${LOG_LAST}`, containsText: "measure again", style: "flag" },
    { range: `J${LOG_FIRST}:J${LOG_LAST}`, containsText: "mend this one next", style: "flag" },
  ],
};

function heading(): SheetCell[] {
  return [
    text("A1", "Demo: readings", "title"),
    input("A3", "boxed cell"),
    text("B3", "yours to change", "note"),
    text("D1", "Invented for trying out: no such duct, gate or reading exists. Typed in I-P units."),
    text(
      "D2",
      `Try it: type 0.0873 in C${AREAS_FIRST}, the area that the meter should have had. The leak log begins in row ${LOG_TITLE}.`,
    ),
    text("D3", "Cells without a box are computed. A flagged cell asks you to measure or mend something.", "note"),
  ];
}
