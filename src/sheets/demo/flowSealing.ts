import { cellAddress } from "../address";
import { formula, text } from "../cells";
import type { SheetCell } from "../workbook";
import { columnOf, FIRST, TABLE_COLUMN } from "./budgetLayout";
import { solve } from "./flowAnswer";
import { FLOW_UNIT, inFlowUnit, ofAllHoods, SEALING, SEALING_FIRST, SEALING_LAST, sealedRuns } from "./flowLayout";
import { spillOf } from "./spill";

const SEALED_COLUMN = 7; // G
const sealed = `=INDEX(${solve(sealedRuns).slice(1)},0,2)`;

/** Each hood's air now and with every leak sealed, beside the plain sum of the leaks. */
export function sealing(): SheetCell[] {
  const cells: SheetCell[] = [
    text(`A${SEALING - 3}`, "What sealing really gives", "section"),
    ...verdict(),
    text(`G${SEALING - 1}`, "If sealed", "numberHeader"),
    text(`B${SEALING}`, "Run", "header"),
    formula(`C${SEALING}`, inFlowUnit("Hood wants"), "numberHeader"),
    formula(`D${SEALING}`, inFlowUnit("Hood gets"), "numberHeader"),
    text(`E${SEALING}`, "Share of wanted", "numberHeader"),
    formula(`F${SEALING}`, inFlowUnit("Its leak now"), "numberHeader"),
    ...spillOf(SEALED_COLUMN, SEALING, SEALING_LAST, ["#,##0"], sealed),
    formula(`H${SEALING}`, inFlowUnit("Hood gains"), "numberHeader"),
    text(
      `C${SEALING_LAST + 1}`,
      `Column G is the second column of ${solve(sealedRuns)}: the same table without its columns of leaks.`,
      "note",
    ),
  ];
  for (let at = SEALING_FIRST; at <= SEALING_LAST; at++) cells.push(...row(at, FIRST + at - SEALING_FIRST));
  return cells;
}

/** One run; `from` is its row in SOLVE's answer and in the runs table. The fan's row sums up those above it. */
function row(at: number, from: number): SheetCell[] {
  const budget = (column: "Hood" | "Airflow (cfm)"): string => `Budget!${cellAddress(columnOf(column), from)}`;
  const openHood = `AND(${budget("Hood")}<>"",H${from}<>"shut")`;
  const summed = (letter: string, own: string): string =>
    at === SEALING_FIRST ? own : `IF(B${at}="Fan",SUM(${letter}$${SEALING_FIRST}:${letter}${at - 1}),${own})`;
  const filled = (code: string): string => `=IF(B${at}="","",${code})`;
  return [
    formula(`B${at}`, `=${cellAddress(TABLE_COLUMN, from)}&""`),
    formula(`C${at}`, filled(summed("C", `IF(${openHood},${budget("Airflow (cfm)")},"")`)), "result", WHOLE),
    formula(`D${at}`, filled(summed("D", `IF(${openHood},C${from}-F${from},"")`)), "result", WHOLE),
    formula(`E${at}`, `=IF(OR(B${at}="Fan",SUM(C${at})=0),"",D${at}/C${at})`, "result", { format: "0%" }),
    formula(`F${at}`, filled(`F${from}`), "result", { format: "0.0" }),
    formula(`H${at}`, filled(summed("H", `IF(D${at}="","",G${at}-D${at})`)), "total", { format: "0.0" }),
  ];
}

const WHOLE = { format: "#,##0" } as const;

/** The answer in two sentences. What the hoods do not get of it, the fan no longer moves: flow in is flow out. */
function verdict(): SheetCell[] {
  const [leaks, gained] = [`ROUND(${ofAllHoods("F")},0)`, `ROUND(${ofAllHoods("H")},0)`];
  const sentences = [
    `"The leaks add up to "&${leaks}&" "&${FLOW_UNIT}&". Sealing them all gives the open hoods "&${gained}&" "&${FLOW_UNIT}&" more."`,
    `"The other "&${leaks}-${gained}&" "&${FLOW_UNIT}&" the fan no longer moves: a tighter system resists it more."`,
  ];
  return sentences.map((words, index) => formula(`C${SEALING - 3 + index}`, `=IFERROR(${words},"")`, "total"));
}
