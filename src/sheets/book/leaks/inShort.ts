import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { systemInWords } from "../flow/systemChoice";
import { FLOW_ANSWER, ofFan } from "../parts/answerReferences";
import { aboveHeadings } from "../parts/aboveHeadings";
import { LOOK } from "../parts/look";
import { totals } from "../parts/totals";
import { formatOf, unitOnly, unitWord } from "../parts/units";
import { gainedInWords, isNoAnswer } from "./atHoods";
import {
  IN_SHORT,
  inHeadedLog,
  inLog,
  inWorked,
  LOG,
  MEND_NEXT_CELL,
  NOT_COUNTED,
  REPEATS,
  SAVED,
  TOTALS_SAY,
  TWICE,
  WORKED,
  WORKED_LAST,
} from "./layout";
import { isLeftBehind, isTypedOver, LEFT_BEHIND, typedOverSaid, unlessTypedOver } from "./standing";
import { nextGate } from "./worked";

/** Whether what the log says is still there is what the runs table counts, and if not why. */
function bothSums(frame: Frame, left: string): string {
  const ofRuns = ofFan(FLOW_ANSWER, "leak", frame);
  const [unit, runs] = [unitWord(frame, "airflow"), frame.sheet("runs")];
  const sums = `"Still there: "&ROUND(${left},0)&" "&${unit}&" by these readings, "&ROUND(${ofRuns},0)&" "&${unit}&" on ${runs}"`;
  const agree = `ABS(${left}-${ofRuns})<=0.1*${ofRuns}`;
  const why = '", with all leaks and its own suction: type areas G and H there."';
  return `=IFERROR(IF(OR(${isNoAnswer},COUNT(${left},${ofRuns})<2),"",${sums}&IF(${agree},". Both agree.",${why})),"")`;
}

const COST_CELL = `B${IN_SHORT + 4}`;

/**
 * A column's sum, or where it has an entry that SUM would skip: so short that the unit beside it cuts nothing off.
 *
 * @param slips how many of its numbers cannot be meant
 */
function sumOf(letters: string, slips = "0"): string {
  const typed = inHeadedLog(letters);
  return `=IF(COUNTA(${typed})-1+${slips}>COUNT(${typed}),"see ${letters}",IF(COUNT(${typed})=0,"",SUM(${typed})))`;
}

/** Times that were typed as on a clock, 0:12 for twelve minutes: each is a part of a day, and would add nothing. */
const clockTimes = `COUNTIF(${inHeadedLog("H")},">0")-COUNTIF(${inHeadedLog("H")},">=1")`;

/** How many readings the sums lack, since they are no readings or their gate lacks a name or the other one. */
const [readBefore, readAfter] = [
  `(COUNTA(${inHeadedLog("E")})-1-COUNT(${inWorked("K")}))`,
  `(COUNTA(${inHeadedLog("F")})-1-COUNT(${inWorked(SAVED)}))`,
];
const notCounted = `IF(${readBefore}+${readAfter}=0,"","${NOT_COUNTED} "&${readBefore}&" leaks before, "&${readAfter}&" after; column J says why. ")`;

/** What the gates have cost that are read before and after. With both headers, since a row that is inserted right below them belongs to the log. */
const costOfRead = `SUMIF($${SAVED}$${WORKED}:$${SAVED}$${WORKED_LAST},">-1000000",${inHeadedLog("G")})`;

/** Cells that are inserted or deleted without their rows move some columns of all that stands below, and not the others. */
const isMoved = `ROW($A$${WORKED})<>ROW($K$${WORKED})`;
const isTorn = `OR(${isLeftBehind},${isMoved},${isTypedOver})`;
const tornSaid = `IF(${isLeftBehind},"${LOOK} ${LEFT_BEHIND}: copy them, too",IF(${isMoved},"${LOOK} cells of the log were inserted or deleted without their rows: undo that",${typedOverSaid}))`;

const hasTwice = `SUMPRODUCT(1*(LEFT(${inLog("J")},${TWICE.length})="${TWICE}"))>0`;

/** What the whole log comes to: the plain sum of the readings, and what SOLVE makes of it at the hoods. */
export function inShort(frame: Frame): SheetCell[] {
  const flow = unitOnly(frame, "airflow");
  const leak = formatOf(frame, "leak");
  const unit = unitWord(frame, "airflow");
  const [saved, before] = [inWorked(SAVED), inWorked("K")];
  const any = (range: string, code: string): string =>
    `=IF(${isTorn},"see D${IN_SHORT + 1}",IF(COUNT(${range})=0,"",IF(${hasTwice},"see J",${code})))`;
  // of a mended gate what is left is the reading after; of the others, the one before
  const left = `SUM(${before})-SUM(${saved})`;
  const against = `COUNTIF(${saved},"<0")`;
  const cells: SheetCell[] = [
    text(`A${IN_SHORT + 1}`, "Mend next", "label"),
    formula(MEND_NEXT_CELL, `=IF(${isTorn},"see ${frame.sheet("leaks")} D${IN_SHORT + 1}",${nextGate})`, "total"),
    ...totals(`A${IN_SHORT + 2}`, 1, [
      { label: "Saved, plain sum", code: any(saved, `SUM(${saved})`), format: leak, unit: flow },
      { label: "Leaks still there", code: any(before, left), format: leak, unit: flow },
      { label: "Cost so far", code: sumOf("G"), format: "#,##0.00" },
      { label: "Time so far", code: sumOf("H", clockTimes), format: "0", unit: '="min"' },
      {
        label: "Cost of the saving",
        code: `=IF(${isTorn},"see D${IN_SHORT + 1}",IF(COUNT(${saved},${inHeadedLog("G")})<2,"",IF(${hasTwice},"see J",IF(SUM(${saved})<=0,"nothing saved",IF(ISNUMBER(${COST_CELL}),${costOfRead}/SUM(${saved}),${COST_CELL})))))`,
        format: "0.00",
        unit: `=IF(ISNUMBER(B${IN_SHORT + 6}),"per "&${unit},"")`, // its words run over
      },
    ]),
    formula(
      `D${IN_SHORT + 1}`,
      `=IF(${isTorn},${tornSaid},TRIM(${aboveHeadings("E", REPEATS + 1, LOG)}&${notCounted}&IF(OR(COUNT(${saved})=0,${hasTwice}),"","Plain sum: by the readings, "&COUNT(${saved})&" mended gate"&IF(COUNT(${saved})=1," leaks ","s leak ")&ROUND(SUM(${saved}),1)&" "&${unit}&" less than before.")))`,
      "total",
    ),
    formula(
      `D${IN_SHORT + 2}`,
      `=IF(OR(${against}=0,${hasTwice}),"",${against}&" of them "&IF(${against}=1,"reads","read")&" more after than before: no saving, and it counts against the sum. Measure again.")`,
      "total",
    ),
    ...gainedInWords(frame).map((code, line) => formula(`D${IN_SHORT + 3 + line}`, code, "total")),
    formula(`D${IN_SHORT + 7}`, bothSums(frame, `B${IN_SHORT + 3}`), "total"),
    text(
      `D${IN_SHORT + 6}`,
      "Neither says what a hood captures; and a patch that closes a leak still has to be safe.",
      "note",
    ),
  ];
  const says = unlessTypedOver(systemInWords(frame), cells, `${IN_SHORT + 1} to ${IN_SHORT + 7}`);
  return [text(`A${IN_SHORT}`, "In short", "section"), formula(TOTALS_SAY, `=${says}`, "note"), ...cells];
}
