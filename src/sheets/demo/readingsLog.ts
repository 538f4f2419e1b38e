/**
 * The leak log. It is a plain sheet and no function over a range, on purpose: each step, from two readings to the gate to
 * mend next, stands in a cell where it can be read and changed; a gate or a column of one's own is added as in any sheet;
 * and in a copy without the add-in all of it but the columns of LEAKAREA, LEAKAT, GATELEAK and AIRFLOWERROR stays live,
 * and those become plain formulas too. A function would have hidden the steps, and fixed the columns.
 */
import { gateConditions } from "../../reference/gateConditions";
import { formula, input, text } from "../cells";
import type { ChoiceList, SheetCell } from "../workbook";
import { loggedGates } from "./readingsGates";
import { inLog, inWorked, LOG, LOG_FIRST, LOG_LAST, workedRow } from "./readingsLayout";
import { headingIn, unitWord } from "./readingsUnits";

const CONDITION_NOTE = "How the gate was found: a name from the table gates. Only the estimate below uses it.";
const SUCTION_NOTE = "Static suction in the duct at the gate while measuring; above 0.";
const AFTER_NOTE = "Blank until it is mended and measured again. 0 is a reading: nothing measurable.";
const SAVED_NOTE =
  "Before less after. A negative one stays in the sum: it is no saving, and says that something is wrong.";

export const conditionList: ChoiceList = {
  range: `C${LOG_FIRST}:C${LOG_LAST}`,
  choices: gateConditions.map(({ key }) => key),
  strict: false,
};

/** A row for each gate: what was found, what the mending took, and what it says. */
export function leakLog(): SheetCell[] {
  const cells: SheetCell[] = [
    text(`A${LOG}`, "Gate", "header"),
    formula(`B${LOG}`, headingIn("Across", "diameter"), "numberHeader"),
    text(`C${LOG}`, "Condition, as found", "header", { note: CONDITION_NOTE }),
    formula(`D${LOG}`, headingIn("Suction there", "pressure"), "numberHeader", { note: SUCTION_NOTE }),
    formula(`E${LOG}`, headingIn("Leak before", "airflow"), "numberHeader"),
    formula(`F${LOG}`, headingIn("Leak after", "airflow"), "numberHeader", { note: AFTER_NOTE }),
    text(`G${LOG}`, "Cost", "numberHeader"),
    text(`H${LOG}`, "Minutes", "numberHeader"),
    formula(`I${LOG}`, headingIn("Saved", "airflow"), "numberHeader", { note: SAVED_NOTE }),
    text(`J${LOG}`, "More than the meter's error? If not mended: which next?", "header"),
  ];
  for (let at = LOG_FIRST; at <= LOG_LAST; at++) {
    const gate = loggedGates[at - LOG_FIRST];
    cells.push(
      input(`A${at}`, gate?.gate ?? null),
      input(`B${at}`, gate?.diameter ?? null),
      input(`C${at}`, gate?.condition ?? null),
      input(`D${at}`, gate?.suction ?? null, { format: "0.00" }),
      input(`E${at}`, gate?.before ?? null, { format: "0.0" }),
      input(`F${at}`, gate?.after ?? null, { format: "0.0" }),
      input(`G${at}`, gate?.cost ?? null),
      input(`H${at}`, gate?.minutes ?? null),
      formula(`I${at}`, `=IF(COUNT(E${at}:F${at})<2,"",E${at}-F${at})`, "total", { format: "0.0" }),
      formula(`J${at}`, verdict(at)),
    );
  }
  return cells;
}

/** What the two readings of a gate say; both of them may be off, so the errors add as squares. */
function verdict(at: number): string {
  const worked = workedRow(at);
  const [before, after, errors, order] = [`E${at}`, `F${at}`, `M${worked}:N${worked}`, `B${worked}`];
  const error = `SQRT(SUMSQ(${errors}))`;
  const beside = `ROUND(${error},1)&" "&${unitWord("airflow")}`;
  const mended = `IF(COUNT(${errors})<2,"see row ${worked}",IF(${after}>${before},"after is above before: measure again",IF(I${at}>${error},"yes: more than the error of ± "&${beside},"within the error of ± "&${beside})))`;
  const waiting = `IF(${order}=1,"not mended: mend this one next","not mended: number "&${order}&" in turn")`;
  const known = `IF(${after}="",${waiting},IF(COUNT(${after})=0,"the leak after must be a number",${mended}))`;
  const unknown = `IF(${before}="","measure its leak first","the leak before must be a number")`;
  return `=IF(A${at}="",IF(COUNT(D${at}:F${at})=0,"","give the gate a name"),IF(COUNT(${before})=0,${unknown},${known}))`;
}

/** The place of a gate among those not yet mended, the largest leak first. */
export function orderOf(at: number): string {
  const [gates, before, after] = [inLog("A"), inLog("E"), inLog("F")];
  const waiting = `(${gates}<>"")*(${after}="")*ISNUMBER(${before})`;
  return `=IF(OR(A${at}="",COUNT(E${at})=0,F${at}<>""),"",SUMPRODUCT(${waiting}*(${before}>E${at}))+1)`;
}

/** The name of the gate to mend next. */
export const nextGate = `IF(COUNT(${inWorked("B")})=0,"none left",INDEX(${inLog("A")},MATCH(1,${inWorked("B")},0)))`;
