import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { beside, type Beside, besideCell } from "../flow/flowLayout";
import { FLOW_HEADER } from "../layout";
import { FLOW_ANSWER, fromAnswer, ofFan } from "../parts/answerReferences";
import { noLeakOn } from "../parts/noLeak";
import { formatOf, headingIn, unitWord } from "../parts/units";
import { flowCell, flowRow, HOODS, HOODS_FIRST, HOODS_LAST, IN_SHORT, inHoods } from "./layout";

/** Each open hood's air now and with every leak of the runs table mended, as the sheet Flow has them: a saved leak is not air gained at a hood. */
export function atHoods(frame: Frame): SheetCell[] {
  const { flow, runs } = { flow: frame.sheet("flow"), runs: frame.sheet("runs") };
  const sealed = frame.ref("flow", besideCell("sealed", FLOW_HEADER));
  const cells: SheetCell[] = [
    text(`A${HOODS - 4}`, "What mending gives at each open hood", "section"),
    text(
      `A${HOODS - 3}`,
      `The leaks of the sheet ${runs}, all of them mended, with the fan and the open gates of the sheet ${flow}. A leak area measured above may be typed there, in the column of leaks.`,
      "note",
    ),
    text(
      `A${HOODS - 2}`,
      `Column F is column ${beside.sealed} of the sheet ${flow}: what SOLVE gives as the airflow of the same table with its columns of leaks left blank.`,
      "note",
    ),
    text(`F${HOODS - 1}`, "With all mended", "numberHeader"),
    text(`A${HOODS}`, "Run", "header"),
    formula(`B${HOODS}`, headingIn(frame, "Hood wants", "airflow"), "numberHeader"),
    formula(`C${HOODS}`, headingIn(frame, "Hood gets", "airflow"), "numberHeader"),
    text(`D${HOODS}`, "Share of wanted", "numberHeader"),
    formula(`E${HOODS}`, headingIn(frame, "Its leak now", "airflow"), "numberHeader"),
    formula(`F${HOODS}`, `=IF(ISERROR(${sealed}),"see ${flow}",${sealed}&"")`, "numberHeader"),
    formula(`G${HOODS}`, headingIn(frame, "It gains", "airflow"), "numberHeader"),
  ];
  for (let at = HOODS_FIRST; at <= HOODS_LAST; at++) cells.push(...row(frame, at));
  return cells;
}

/** One run, or the fan, whose row follows the last filled one of the runs table. Which run is an open hood, the sheet Flow says. */
function row(frame: Frame, at: number): SheetCell[] {
  const here = flowRow(at);
  const [airflow, leak] = [flowCell(frame, "airflow", here), flowCell(frame, "leak", here)];
  const onFlow = (column: Beside): string => frame.ref("flow", besideCell(column, here));
  const number = (cell: string): string => `IF(COUNT(${cell})=0,"",${cell})`;
  const ofHood = (column: Beside, fan: string): string =>
    `=IF(A${at}="","",IF(A${at}="Fan",${fan},${number(onFlow(column))}))`;
  const whole = { format: formatOf(frame, "airflow") };
  const fine = { format: formatOf(frame, "leak") };
  return [
    formula(`A${at}`, `=IFERROR(IF(${isNoAnswer},"",${flowCell(frame, "run", here)}&""),"")`),
    formula(`B${at}`, ofHood("wants", '""'), "result", whole),
    formula(`C${at}`, ofHood("gets", airflow), "result", whole),
    formula(`D${at}`, ofHood("share", '""'), "result", { format: "0%" }),
    formula(`E${at}`, `=IF(A${at}="","",${leak})`, "result", fine),
    formula(`F${at}`, `=IF(A${at}="","",${number(onFlow("sealed"))})`, "result", whole),
    formula(`G${at}`, `=IF(OR(COUNT(C${at})=0,COUNT(F${at})=0),"",F${at}-C${at})`, "total", fine),
  ];
}

/** Whether the first of the sentences below, in short above, says where to look on Flow in place of its number. */
export const isNoAnswer = `LEFT($D$${IN_SHORT + 3},4)="see "`;

/** The answer in three sentences. What the hoods do not get of it, the fan no longer moves: flow in is flow out. */
export function gainedInWords(frame: Frame): string[] {
  const unit = unitWord(frame, "airflow");
  const air = ofFan(FLOW_ANSWER, "leak", frame);
  const [leaks, gained] = [`ROUND(${air},0)`, `ROUND(SUMIF(${inHoods("A")},"<>Fan",${inHoods("G")}),0)`];
  const without = [`"${noLeakOn(frame)}"`, '""', '""'];
  // without the rows below, as where only what is above them was pasted, a sum of nothing is no gain of 0
  const once = (words: string): string => `IF(COUNT(${inHoods("G")})=0,"",${words})`;
  return [
    `"By SOLVE, all leaks of the sheet ${frame.sheet("runs")} add up to "&${leaks}&" "&${unit}&"."`,
    once(`"With all of them mended the open hoods get "&${gained}&" "&${unit}&" more."`),
    once(`"The other "&(${leaks}-${gained})&" "&${unit}&" the fan no longer moves: a tighter system resists it more."`),
  ].map((words, index) => fromAnswer(FLOW_ANSWER, `IF(${air}=0,${without[index]},${words})`, frame));
}
