import { cellAddress } from "../address";
import { formula, input, text } from "../cells";
import type { ChoiceList, SheetCell } from "../workbook";
import { FIRST, TABLE_COLUMN } from "./budgetLayout";
import { curve, runs, SCENARIOS, SCENARIOS_LAST, SETS, SETS_LAST } from "./flowLayout";
import { spillOf } from "./spill";

const HOODS = 4; // the first rows of the runs table
const MARKS = 3; // C
const sets = `B${SETS}:${cellAddress(MARKS + HOODS - 1, SETS_LAST)}`;
const code = `=DUCT.SCENARIOS(${runs},${curve},${sets},density,units)`;

const asked: readonly { readonly name: string; readonly gates: readonly ("open" | "shut")[] }[] = [
  { name: "all four open", gates: ["open", "open", "open", "open"] },
  { name: "planer alone", gates: ["shut", "open", "shut", "shut"] },
  { name: "saw and router table", gates: ["open", "shut", "shut", "open"] },
];

export const scenarioList: ChoiceList = {
  range: `C${SETS + 1}:${cellAddress(MARKS + HOODS - 1, SETS_LAST)}`,
  choices: ["open", "shut"],
  strict: true,
};

/** Sets of open gates to type in, and under them what each would give. */
export function scenarios(): SheetCell[] {
  const airflowAndVelocity = Array.from({ length: 2 * HOODS + 1 }, () => "#,##0");
  const formats = [null, ...airflowAndVelocity, "0.00", "0.0", null, null];
  const cells: SheetCell[] = [
    text(`A${SETS - 2}`, "Scenarios", "section"),
    text(
      `C${SETS - 2}`,
      "Which gates are open together? Change a word, or fill a blank row. Answers stand below.",
      "note",
    ),
    text(`B${SETS}`, "Scenario", "header"),
    text(`A${SCENARIOS}`, "Flags", "header"),
    ...spillOf(TABLE_COLUMN, SCENARIOS, SCENARIOS_LAST, formats, code),
    text(`C${SCENARIOS_LAST + 1}`, `One formula fills this table: ${code}`, "note"),
  ];
  for (let hood = 0; hood < HOODS; hood++) {
    cells.push(
      formula(cellAddress(MARKS + hood, SETS), `=Budget!${cellAddress(TABLE_COLUMN, FIRST + hood)}`, "header"),
    );
  }
  for (let at = SETS + 1; at <= SETS_LAST; at++) {
    const scenario = asked[at - SETS - 1];
    cells.push(input(`B${at}`, scenario?.name ?? null));
    for (let hood = 0; hood < HOODS; hood++) {
      cells.push(input(cellAddress(MARKS + hood, at), scenario?.gates[hood] ?? null));
    }
  }
  for (let at = SCENARIOS + 1; at <= SCENARIOS_LAST; at++)
    cells.push(formula(`A${at}`, `=IF(COUNTIF(C${at}:Z${at},"*dust settles*")>0,"settles","")`));
  return cells;
}
