import { uncertaintyColumns } from "../../../reference/answerColumns";
import { cite } from "../../../reference/citation";
import { cellAddress, columnLetters } from "../../address";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { FLOW_HEADER, FLOW_LAST, FLOW_SAYS_CELL, FLOW_SYSTEM_CELL } from "../layout";
import {
  answerCell,
  answerColumn,
  FLOW_ANSWER,
  headOf,
  isMissing,
  isWhole,
  onceRunsAndCurve,
} from "../parts/answerReferences";
import { saysLook } from "../parts/look";
import { spillOf } from "../parts/spill";
import { formatOf } from "../parts/units";
import { quotedCall, uncertaintyCall } from "./flowCalls";
import { beside, ERRORS, ERRORS_COLUMN, errorsShown, FLOW_FIRST, UNCERTAINTY_ANSWER } from "./flowLayout";

const [WHAT, OFF, WHY] = [0, 1, 2].map((place) => columnLetters(ERRORS_COLUMN + place)) as [string, string, string];

const TORN = `${beside.inWords}${FLOW_HEADER - 1}`; // says that the table of the ± is not whole

const FIRST = headOf(UNCERTAINTY_ANSWER);

const OFF_NOTE =
  "How far it may be off, as a standard deviation: two of three true values lie within it. In %, of a leak times or over. Write none for 0, and your own figure where you know better.";
const WORDS_NOTE = "The run's airflow and its ±, two standard deviations: 19 of 20. From the table at the right.";

/** How sure SOLVE's answers are: the errors that are taken, their table, and the airflow in words beside each run. */
export function flowUncertainty(frame: Frame): SheetCell[] {
  const call = uncertaintyCall(frame);
  const formats = uncertaintyColumns.map(({ key, quantity }) => {
    if (key === "leakFactor") return "0.0";
    if (key === "share") return "0";
    if (quantity === null) return null;
    return formatOf(frame, key === "leak" ? "leak" : quantity);
  });
  const cells: SheetCell[] = [
    text(`${WHAT}${FLOW_HEADER - 2}`, "How sure all this is", "section"),
    text(
      `${WHAT}${FLOW_HEADER - 1}`,
      "Change what you know better; measure first what an airflow is mostly unsure by.",
      "note",
    ),
    text(`${WHAT}${FLOW_HEADER}`, "May be off", "header"),
    text(`${OFF}${FLOW_HEADER}`, "by, %", "numberHeader", { note: OFF_NOTE }),
    text(`${WHY}${FLOW_HEADER}`, "Where that comes from", "header"),
    ...errorsShown.flatMap((row, index): SheetCell[] => {
      const at = FLOW_HEADER + 1 + index;
      return [
        text(`${WHAT}${at}`, row.key, "label", { note: row.label }),
        input(`${OFF}${at}`, row.percent ?? row.factor),
        text(`${WHY}${at}`, `${row.factor === null ? "" : "Times or over. "}${row.note} ${cite(row)}`, "note"),
      ];
    }),
    ...spillOf(UNCERTAINTY_ANSWER.column, FLOW_HEADER, FLOW_LAST, formats, onceRunsAndCurve(frame, call, "blank")),
    text(
      cellAddress(UNCERTAINTY_ANSWER.column, FLOW_LAST + 1),
      `One formula fills this table: =${quotedCall.uncertainty(frame)}`,
      "note",
    ),
    formula(
      TORN,
      `=IF(${saysLook(FLOW_SYSTEM_CELL)},"see A3",IF(${isMissing(FIRST, ERRORS)},"see ${FIRST.replaceAll("$", "")}",IF(${isWhole(UNCERTAINTY_ANSWER)},"","see ${FLOW_SAYS_CELL}")))`,
      "note",
    ),
    text(`${beside.inWords}${FLOW_HEADER}`, "Airflow, ±", "numberHeader", { note: WORDS_NOTE }),
  ];
  for (let row = FLOW_FIRST; row <= FLOW_LAST; row++) {
    cells.push(formula(`${beside.inWords}${row}`, `=${inWordsOf(row)}`, "resultInWords"));
  }
  return cells;
}

/**
 * The words of the run that the answer of SOLVE has in this row. In a copy the one table is live and the other is not, so that after a
 * row is inserted their rows part: then the run is looked for by its name.
 */
function inWordsOf(row: number): string {
  const run = answerCell(FLOW_ANSWER, "run", row);
  const [names, words] = (["run", "inWords"] as const).map((key) => answerColumn(UNCERTAINTY_ANSWER, key)) as [
    string,
    string,
  ];
  const place = `SUMPRODUCT((${names}=${run})*(ROW(${names})-${FLOW_HEADER}))`;
  const found = `INDEX(${words},1/(1/${place}))&""`; // an error where the name stands nowhere
  const here = `${answerCell(UNCERTAINTY_ANSWER, "inWords", row)}&""`;
  return `IFERROR(IF(OR(${run}="",$${TORN.replace(/(\d+)/, "$$$1")}<>""),"",IF(${answerCell(UNCERTAINTY_ANSWER, "run", row)}=${run},${here},${found})),"")`;
}
