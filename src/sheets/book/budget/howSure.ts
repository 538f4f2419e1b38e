import { budgetUncertaintyColumns } from "../../../reference/answerColumns";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import { ERRORS } from "../flow/flowLayout";
import type { Frame } from "../frame";
import { BUDGET_HEADER, BUDGET_NONE_CELL, BUDGET_UNSURE_COLUMN, runsTable } from "../layout";
import { type Answer, answerCell, frozen, headOf, isMissing, onceRuns, stands } from "../parts/answerReferences";
import { noDeviceSaid } from "../parts/noDevice";
import { spillOf } from "../parts/spill";
import { formatOf } from "../parts/units";

const ANSWER = {
  sheet: "budget",
  column: BUDGET_UNSURE_COLUMN,
  header: BUDGET_HEADER,
  last: BUDGET_HEADER + 1,
  columns: budgetUncertaintyColumns,
} as const satisfies Answer;

/** What is asked of the fan with its ±, in words over the table and as numbers at the far right. */
export function howSure(frame: Frame): SheetCell[] {
  const errors = frame.has("flow") ? frame.ref("flow", ERRORS) : "";
  const call = `DUCT.BUDGETUNCERTAINTY(${runsTable(frame)},${errors},${frame.name("density")},${frame.name("units")})`;
  const formats = budgetUncertaintyColumns.map(({ key, quantity }) =>
    key === "share" ? "0" : quantity === null ? null : formatOf(frame, quantity),
  );
  const cell = (key: (typeof budgetUncertaintyColumns)[number]["key"]): string =>
    answerCell(ANSWER, key, BUDGET_HEADER + 1);
  const words = `${cell("inWords")}&IF(${cell("mostlyFrom")}="","",", mostly unsure by "&${cell("mostlyFrom")})`;
  const isNone = errors === "" ? "FALSE" : isMissing(headOf(ANSWER), errors);
  return [
    text("N4", "What a fan must give, and how sure that is", "section"),
    formula(
      "N5",
      `=IF(${BUDGET_NONE_CELL}<>"","see C3",IF(${isNone},"see ${headOf(ANSWER).replaceAll("$", "")}",IF(${stands(ANSWER)},IFERROR(IF(${cell("inWords")}="","",${words}),""),${frozen(frame, ANSWER)})))`,
      "total",
    ),
    text(
      "N6",
      errors === ""
        ? "By the usual errors of inputs: the table input errors."
        : `By the errors of inputs on the sheet ${frame.sheet("flow")}.`,
      "note",
    ),
    formula("N7", `=${noDeviceSaid(frame)}`, "total"),
    ...spillOf(BUDGET_UNSURE_COLUMN, BUDGET_HEADER, BUDGET_HEADER + 1, formats, onceRuns(frame, call)),
  ];
}
