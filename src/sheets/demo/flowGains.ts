import { formula, input, text } from "../cells";
import type { ChoiceList, SheetCell } from "../workbook";
import { curve, GAINS, GAINS_LAST, HELPED_CELL, OPEN_CELL, runs, sealingColumn, WISH_CELL } from "./flowLayout";
import { shedRuns } from "./shed";
import { spillOf } from "./spill";

const code = `=DUCT.GAINS(${runs},${curve},${HELPED_CELL},${OPEN_CELL},density,units)`;
const share = sealingColumn("E");
const worst = `INDEX(${sealingColumn("B")},MATCH(MIN(${share}),${share},0))`;
const rowOf = (address: string): number => Number(address.slice(1));

export const wishList: ChoiceList = {
  range: WISH_CELL,
  choices: shedRuns.flatMap(({ Run, Hood }) => (Hood === undefined ? [] : [String(Run)])),
  strict: false,
};

/** What to change first: each single change tried for one hood, best first. */
export function gains(): SheetCell[] {
  const [wish, helped] = [rowOf(WISH_CELL), rowOf(HELPED_CELL)];
  return [
    text(`A${wish - 1}`, "What to change first", "section"),
    text(`A${wish}`, "Hood to help", "label"),
    input(WISH_CELL, null),
    text(`C${wish}`, "Blank: the open hood that gets the smallest share of what it wants.", "note"),
    text(`A${helped}`, "Tried for", "label"),
    formula(HELPED_CELL, `=IF(${WISH_CELL}="",IFERROR(${worst},""),${WISH_CELL})`, "total"),
    text(`C${helped}`, `Each change alone, solved as its own network: ${code}`, "note"),
    ...spillOf(1, GAINS, GAINS_LAST, [null, null, "0.0", "#,##0", null], code),
  ];
}
