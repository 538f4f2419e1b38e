import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { saysLook } from "../parts/look";
import { BUDGET_NONE_CELL, BUDGET_WRONG_CELL, FLOW_SAYS_CELL, FLOW_SYSTEM_CELL } from "../layout";
import { type Answer, BUDGET_ANSWER, FLOW_ANSWER, ofFan, stands } from "../parts/answerReferences";
import { rounded, unitWord } from "../parts/units";
import { DUCTS, factNamed } from "./layout";

/**
 * What a fan gives on the owner's own ducts, from the answers that the book has already: the fan of the sheet Fan in SOLVE's. Where there is no
 * curve, what the ducts ask for, so that the seller can be asked; where there are no ducts, what to fill in.
 */
export function onYourDucts(frame: Frame): SheetCell[] {
  return [text(`E${DUCTS}`, "Your ducts", "total"), words(frame)];
}

function words(frame: Frame): SheetCell {
  const at = `F${DUCTS}`;
  if (!frame.has("flow") || !frame.has("budget"))
    return text(
      at,
      "With the sheets of a budget beside this one, here stands what a fan moves on your own ducts.",
      "paragraph",
    );
  const point = (airflow: string, pressure: string): string =>
    `${rounded(frame, airflow, { IP: 0, SI: 0 })}&" "&${unitWord(frame, "airflow")}&" at "&${rounded(frame, pressure, { IP: 1, SI: 0 })}&" "&${unitWord(frame, "pressure")}`;
  const moves = point(ofFan(FLOW_ANSWER, "airflow", frame), ofFan(FLOW_ANSWER, "staticSuction", frame));
  const asks = point(ofFan(BUDGET_ANSWER, "airflow", frame), ofFan(BUDGET_ANSWER, "pathLoss", frame));
  const [fan, flow, budget, runs] = (["fan", "flow", "budget", "runs"] as const).map((key) => frame.sheet(key)) as [
    string,
    string,
    string,
    string,
  ];
  const [free, airflow] = [factNamed("free-air airflow"), factNamed("airflow")];
  const claimed = `IF(${free}&${airflow}="","",", not the "&IF(${free}="",${airflow},${free})&" of the data sheet")`;
  const solved = `"On your ducts the fan of the sheet ${fan} moves "&${moves}&${claimed}&" (gates as on ${flow}). It is the curve that you typed there: type this fan's."`;
  const asked = `"Your ducts ask for "&${asks}&" (${budget}). Ask the seller how much air the fan moves at that pressure, or type its curve on the sheet ${fan}."`;
  const empty = `"Fill in the sheet ${runs}, and the curve on the sheet ${fan}, and here stands what the fan moves on your own ducts."`;
  const see = (answer: Answer, cell: string): string =>
    `NOT(${stands(answer, frame)}),"see ${frame.sheet(answer.sheet)} ${cell.replaceAll("$", "")}"`;
  return formula(
    at,
    `=IF(${see(FLOW_ANSWER, FLOW_SAYS_CELL)},IF(${see(BUDGET_ANSWER, BUDGET_WRONG_CELL)},IFERROR(IF(${saysLook(frame.ref("flow", FLOW_SYSTEM_CELL))},NA(),${solved}),IF(${frame.ref("budget", BUDGET_NONE_CELL)}<>"","see ${budget} ${BUDGET_WRONG_CELL.replaceAll("$", "")}",IFERROR(${asked},${empty})))))`,
    "paragraph",
  );
}
