import { cellAddress, columnLetters } from "../address";
import { formula, input, text } from "../cells";
import type { ChoiceList, SheetCell } from "../workbook";
import { columnOf, FIRST, LAST, TABLE_COLUMN } from "./budgetLayout";
import { curve, FAN_ROW, FLOW, OPEN_CELL, runs } from "./flowLayout";
import { shedRuns } from "./shed";
import { spillOf } from "./spill";

const GATE_NOTE =
  "open or shut, for this sheet only. Blank: as on the sheet Budget. It acts where the run has a gate there.";
const OPEN_NOTE = "The runs whose gates are open, as the formulas below take them. Worked out from column A.";

export const gateList: ChoiceList = { range: `A${FIRST}:A${LAST}`, choices: ["open", "shut"], strict: true };

/** The gates, and beside each what SOLVE says of its run. */
export function flowAnswer(): SheetCell[] {
  const cells: SheetCell[] = [
    text("B9", "Gates open now", "label"),
    formula(OPEN_CELL, openRuns(), "result", { note: OPEN_NOTE }),
    text(`A${FLOW}`, "Gate", "header", { note: GATE_NOTE }),
    ...spillOf(TABLE_COLUMN, FLOW, FAN_ROW, [null, "#,##0", "#,##0", "0.00", "0.0", "0.00", null, null], solve(runs)),
    text(`C${FAN_ROW + 1}`, `One formula fills this table: ${solve(runs)}`, "note"),
  ];
  for (let at = FIRST; at <= LAST; at++) cells.push(input(`A${at}`, shedRuns[at - FIRST]?.Gate ?? null));
  return cells;
}

/** SOLVE of a runs table with this sheet's fan and gates. */
export const solve = (table: string): string => `=DUCT.SOLVE(${table},${curve},${OPEN_CELL},density,units)`;

/** Names of the runs whose gates are open; "none" where all are shut, since a blank would leave them as on the budget. */
function openRuns(): string {
  const names: string[] = [];
  for (let at = FIRST; at <= LAST; at++) {
    const gate = `Budget!${cellAddress(columnOf("Gate"), at)}`;
    names.push(
      `IF(OR(${gate}="",IF(A${at}="",${gate},A${at})="shut"),"",Budget!${columnLetters(TABLE_COLUMN)}${at}&"; ")`,
    );
  }
  return `=IF(${names.join("&")}="","none",${names.join("&")})`;
}
