import { text } from "../../cells";
import type { SheetOf } from "../frame";
import { LOOK } from "../parts/look";
import { printing } from "../parts/printing";
import { sheetHead } from "../parts/sheetHead";
import { tableEnd } from "../parts/tableEnd";
import { atHoods } from "./atHoods";
import type { LeaksContents } from "./contents";
import { hoodsGain } from "./hoodsGain";
import { inShort } from "./inShort";
import {
  HOODS,
  HOODS_LAST,
  IN_SHORT,
  inLog,
  inWorked,
  LEAKS_SAY,
  LOG,
  LOG_LAST,
  NOT_COUNTED,
  TOTALS_SAY,
  WORKED,
} from "./layout";
import { conditionList, leakLog } from "./log";
import { meter } from "./meter";
import { standing } from "./standing";
import { workedOut } from "./worked";

export { emptyLeaks, exampleLeaks, type LeaksContents } from "./contents";

/** The leaks of the gates before and after mending, what that saved, and which to mend next. */
export const leaksSheet: SheetOf<LeaksContents> = (frame, contents) => {
  const sheet = leaks(frame, contents);
  return { ...sheet, cells: [...sheet.cells, ...standing(sheet.cells)] };
};

const leaks: SheetOf<LeaksContents> = (frame, { invented, head, repeats, gates }) => ({
  name: frame.sheet("leaks"),
  columns: [
    22,
    9,
    18,
    9,
    9,
    9,
    8.5,
    8,
    9,
    66,
    11,
    11,
    11,
    11,
    11,
    15,
    ...new Array<number>(7).fill(11),
    12,
    11,
    13,
    11,
    11,
    9,
    36,
  ],
  tallRows: [
    { row: LOG, lines: 4 },
    { row: WORKED, lines: 4 },
    { row: HOODS - 1, lines: 2 },
    { row: HOODS, lines: 4 },
  ],
  frozen: { rows: 0, columns: 0 },
  cells: [
    ...sheetHead(
      frame.sheet("leaks"),
      "Measure what each gate leaks, mend it, measure again: what did it save, and which comes next?",
      invented,
    ),
    text("A5", "Cut the power and let the wheel stop before you reach into a gate, a duct or the fan.", "total"),
    ...inShort(frame),
    ...meter(frame, head, repeats),
    ...leakLog(frame, gates),
    tableEnd(`A${LOG_LAST + 1}`),
    ...hoodsGain(frame),
    ...workedOut(frame),
    ...atHoods(frame),
  ],
  lists: [conditionList],
  flags: [
    { range: `D${IN_SHORT + 1}`, containsText: NOT_COUNTED, style: "flag" },
    { range: `${TOTALS_SAY}:${LEAKS_SAY}`, containsText: LOOK, style: "flag" },
    { range: `B${IN_SHORT + 2}:B${IN_SHORT + 6}`, containsText: "see ", style: "flag" },
    { range: inLog("J"), containsText: "measure again", style: "flag" },
    { range: inLog("J"), containsText: "check it", style: "flag" },
    { range: inLog("J"), containsText: "mend this one next", style: "flag" },
    { range: inWorked("J"), containsText: "check it", style: "flag" },
  ],
  print: { ...printing(frame, "landscape", 1), area: `A1:J${HOODS_LAST}` },
});
