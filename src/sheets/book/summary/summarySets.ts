import type { TogetherKey } from "../../../reference/answerColumns";
import { ENOUGH_AIR } from "../../../reference/noteLimits";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import { MOST_SETS, SLOWEST } from "../flow/flowLayout";
import { columnLetters } from "../../address";
import type { Frame } from "../frame";
import { answerColumn, headOf, isMissing, isWhole, torn } from "../parts/answerReferences";
import { formatOf, headingIn, rounded, SHARE, unitWord } from "../parts/units";
import { ALONE_ANSWER, MOST_ALONE } from "../sizes/sizesLayout";
import { HOOD_FLAGS, MOST_SETS_SHOWN, SETS_HEADER } from "./summaryLayout";

const FIRST = SETS_HEADER + 1;
const LAST = SETS_HEADER + MOST_SETS_SHOWN;
const SYSTEM = "$A$3"; // the line of the sheet Flow that reads every input

/** Each machine with every other gate shut, and below them the sets that are usual: the scenarios of the sheet Flow. */
export function summarySets(frame: Frame): SheetCell[] {
  if (!frame.has("sizes")) return [];
  const machines = `COUNTIF(${alone(frame, "open")},"?*")`;
  const sets = `SUMPRODUCT((${slowest(frame, "B")}<>"")*1)`;
  const more = `${machines}+${sets}-${MOST_SETS_SHOWN}`;
  const cells: SheetCell[] = [
    text(`A${SETS_HEADER - 1}`, "Each machine alone, and the usual sets", "section"),
    text(`A${SETS_HEADER}`, "Open alone, or scenario", "header"),
    formula(`B${SETS_HEADER}`, headingIn(frame, "Airflow", "airflow"), "numberHeader"),
    formula(`C${SETS_HEADER}`, headingIn(frame, "Wanted", "airflow"), "numberHeader"),
    text(`D${SETS_HEADER}`, "Share of wanted", "numberHeader"),
    formula(`E${SETS_HEADER}`, headingIn(frame, "Slowest air", "velocity"), "numberHeader"),
    text(`F${SETS_HEADER}`, "What that means", "header"),
  ];
  for (let row = FIRST; row <= LAST; row++) cells.push(...setRow(frame, row, machines));
  return [
    ...cells,
    formula(`A${LAST + 1}`, `=IF(${isNone(frame)},"see ${frame.sheet("sizes")} ${columnLetters(ALONE_ANSWER.column)}${ALONE_ANSWER.header}",IF(NOT(${isWhole(ALONE_ANSWER, frame)}),${torn(frame, ALONE_ANSWER)},IF(${more}>0,"and "&(${more})&" more on the sheets ${frame.sheet("sizes")} and ${frame.sheet("flow")}","")))`, "note"), // prettier-ignore
  ];
}

/** No machine alone was solved for. A program without our functions keeps the rows of before a change, so the line that reads every input is asked, too. */
const isNone = (frame: Frame): string => isMissing(frame.ref("sizes", headOf(ALONE_ANSWER)), SYSTEM);

const alone = (frame: Frame, key: TogetherKey): string => answerColumn(ALONE_ANSWER, key, frame);

/** A column of the list of slowest runs, a row for each scenario. */
const slowest = (frame: Frame, letter: string): string =>
  frame.ref("flow", `$${letter}$${SLOWEST + 1}:$${letter}$${SLOWEST + MOST_SETS}`);

/** The k-th machine; behind the last of them the first scenario. */
function setRow(frame: Frame, row: number, machines: string): SheetCell[] {
  const k = row - FIRST + 1;
  const nth = (key: TogetherKey): string => `INDEX(${alone(frame, key)},${k})`;
  const set = (letter: string): string => `INDEX(${slowest(frame, letter)},${k}-${machines})`;
  const isMachine = `AND(${k}<=MIN(${machines},${MOST_ALONE}),NOT(${isNone(frame)}))`;
  const isSet = `AND(${k}>${machines},${k}-${machines}<=${MOST_SETS})`;
  const ofMachine = (code: string): string => `=IFERROR(IF(${isMachine},${code},""),"")`;
  const airflow = { format: formatOf(frame, "airflow") };
  const short = `IF(${nth("hoodShare")}<${100 * ENOUGH_AIR},"${HOOD_FLAGS.short}","wanted is met")`;
  const dust = `IF(${nth("velocityShare")}<100,"; ${HOOD_FLAGS.settles} in "&${nth("slowest")},"; dust moves")`;
  const fan = `${set("F")}&"; the fan moves "&${rounded(frame, set("C"), { IP: 0, SI: 0 })}&" "&${unitWord(frame, "airflow")}`;
  return [
    formula(`A${row}`, `=IFERROR(IF(${isMachine},${nth("open")},IF(${isSet},${set("B")}&"","")),"")`, "label"),
    formula(`B${row}`, ofMachine(nth("hoodAirflow")), "result", airflow),
    formula(`C${row}`, ofMachine(`${nth("hoodAirflow")}/${nth("hoodShare")}*100`), "result", airflow),
    formula(`D${row}`, ofMachine(`${nth("hoodShare")}/100`), "result", { format: SHARE }),
    formula(`E${row}`, ofMachine(nth("velocity")), "result", { format: formatOf(frame, "velocity") }),
    formula(
      `F${row}`,
      `=IFERROR(IF(${isMachine},IF(ISNUMBER(${nth("hoodShare")}),${short}&${dust},${nth("verdict")}),IF(AND(${isSet},$A${row}<>"",ISNUMBER(${set("C")})),${fan},"")),"")`,
    ),
  ];
}
