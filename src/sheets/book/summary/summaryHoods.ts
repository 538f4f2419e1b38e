import type { SolveKey } from "../../../reference/answerColumns";
import { ENOUGH_AIR } from "../../../reference/noteLimits";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { besideColumn, runRows } from "../flow/flowLayout";
import { BUDGET_WRONG_CELL, FLOW_HEADER } from "../layout";
import { answerCell, FILL, FLOW_ANSWER, isWhole, torn } from "../parts/answerReferences";
import { LOOK } from "../parts/look";
import { saysNote } from "../parts/notes";
import { formatOf, headingIn, SHARE } from "../parts/units";
import { HOOD_FLAGS, HOODS_HEADER, MORE_CELL, MOST_HOODS } from "./summaryLayout";

/** Each open hood: what it gets, what it wants, and whether that is met. */
export function summaryHoods(frame: Frame): SheetCell[] {
  const cells: SheetCell[] = [
    text(`A${HOODS_HEADER - 1}`, `Hoods, with the gates as on the sheet ${frame.sheet("flow")}`, "section"),
    text(`A${HOODS_HEADER}`, "Open hood", "header"),
    formula(`B${HOODS_HEADER}`, headingIn(frame, "Airflow", "airflow"), "numberHeader"),
    formula(`C${HOODS_HEADER}`, headingIn(frame, "Wanted", "airflow"), "numberHeader"),
    text(`D${HOODS_HEADER}`, "Share of wanted", "numberHeader"),
    formula(`E${HOODS_HEADER}`, headingIn(frame, "Velocity in its duct", "velocity"), "numberHeader"),
    text(`F${HOODS_HEADER}`, "Airflow in its duct, in words", "header"),
  ];
  for (let k = 1; k <= MOST_HOODS; k++) cells.push(...hoodRow(frame, k, HOODS_HEADER + k));
  return [...cells, formula(MORE_CELL, `=${more(frame)}`, "note")];
}

/** What the table does not show: further hoods, or why there is none; and where runs are in doubt. */
function more(frame: Frame): string {
  const count = `MAX(0,${frame.ref("flow", besideColumn("hoodNumber"))})`;
  const further = `"and "&(${count}-${MOST_HOODS})&" more on the sheet ${frame.sheet("flow")}"`;
  const isTorn = `NOT(${isWhole(FLOW_ANSWER, frame)})`;
  return `IF(${isTorn},${torn(frame, FLOW_ANSWER)},IF(${count}=0,${whyNone(frame)},IF(${count}>${MOST_HOODS},${further}&". ","")&${frame.ref("budget", BUDGET_WRONG_CELL)}))`;
}

/** A wrong run in the words of the sheet Budget; else what the sheet Flow lacks. A copy says why below the header of its answer. */
function whyNone(frame: Frame): string {
  const wrong = frame.ref("budget", BUDGET_WRONG_CELL);
  const [first, note] = [
    answerCell(FLOW_ANSWER, "run", FLOW_HEADER, frame),
    answerCell(FLOW_ANSWER, "note", FLOW_HEADER + 1, frame),
  ];
  const [flow, runs, fan] = [frame.sheet("flow"), frame.sheet("runs"), frame.sheet("fan")];
  const noAnswer = `"${LOOK} no answer on the sheet ${flow}"&IF(${note}="",": see its cell B${FLOW_HEADER}",": "&${note})`;
  const waits = `"No open hood yet: fill in the sheets ${runs} and ${fan} first"`;
  const none = `"No open hood: gates are opened on the sheets ${runs} and ${flow}"`;
  const isWaiting = `LEFT(${first},${FILL.length})="${FILL}"`;
  return `IF(${wrong}<>"",${wrong},IF(ISERROR(${first}),${noAnswer},IF(${isWaiting},${waits},${none})))`;
}

/** The k-th open hood, by the numbers that the sheet Flow gives them. */
function hoodRow(frame: Frame, k: number, row: number): SheetCell[] {
  const nth = (range: string): string =>
    `INDEX(${frame.ref("flow", range)},MATCH(${k},${frame.ref("flow", besideColumn("hoodNumber"))},0))`;
  const flow = (key: SolveKey): string => nth(runRows(key));
  const filled = (code: string): string => `=IF($A${row}="","",${code})`;
  const airflow = { format: formatOf(frame, "airflow") };
  const met = `IF($D${row}="","",IF($D${row}<${ENOUGH_AIR},"; ${HOOD_FLAGS.short}","; wanted is met"))`;
  const settles = `IF(${saysNote("settles", flow("note"))},"; ${HOOD_FLAGS.settles}","")`;
  const words = nth(besideColumn("inWords"));
  const sure = `IF(${words}="","","; "&${words})`; // the duct's air, as the heading says: a leak of it joins behind the hood
  return [
    formula(
      `A${row}`,
      `=IFERROR(IF(AND(${isWhole(FLOW_ANSWER, frame)},LEFT($A$3,${LOOK.length})<>"${LOOK}"),${flow("run")}&"",""),"")`,
      "label",
    ),
    formula(`B${row}`, filled(nth(besideColumn("gets"))), "result", airflow),
    formula(
      `C${row}`,
      filled(`IF(${nth(besideColumn("wants"))}>0,${nth(besideColumn("wants"))},"")`),
      "result",
      airflow,
    ),
    formula(`D${row}`, filled(nth(besideColumn("share"))), "result", { format: SHARE }),
    formula(`E${row}`, filled(flow("velocity")), "result", { format: formatOf(frame, "velocity") }),
    formula(`F${row}`, filled(`MID(${sure}&${met}&${settles},3,255)`)),
  ];
}
