import { formula, input, text } from "../cells";
import type { SheetCell } from "../workbook";
import { HEAD_CELL, inLog, LOG_TITLE } from "./readingsLayout";
import { nextGate } from "./readingsLog";
import { unitWord } from "./readingsUnits";

const HEAD_NOTE =
  "Diameter of the meter's own opening: its face is the area that the air passes. The meter's error is worked out with it.";
const SAVED_NOTE = "The plain sum of the column Saved, with what came out negative.";

/** Where the totals of the sheet Flow stand that the last line quotes. */
export const FLOW_LEAKS = "Flow!$I$5";
export const FLOW_GAINED = "Flow!$I$7";

/** What the whole log comes to, above it, with the two cautions that a reader needs before reaching into a gate. */
export function logTotals(): SheetCell[] {
  const [first, second, third, last] = [3, 4, 5, 6].map((line) => LOG_TITLE + line);
  const flow = `=${unitWord("airflow")}`;
  const waiting = `SUMPRODUCT((${inLog("F")}="")*ISNUMBER(${inLog("E")}),${inLog("E")})`;
  return [
    text(`A${LOG_TITLE}`, "3. Leak log of the gates", "section"),
    text(
      `D${LOG_TITLE}`,
      "Cut the power and let the wheel stop before you reach into a gate, a duct or the fan.",
      "total",
    ),
    text(
      `A${LOG_TITLE + 1}`,
      "A vane head over a small slot reads the air through its own face: multiply by the area of the head, not of the slot. It chokes the slot,",
      "note",
    ),
    text(`A${LOG_TITLE + 2}`, "so the true leak is larger: all of these are estimates.", "note"),
    text(`A${first!}`, "Meter's head", "label"),
    input(HEAD_CELL, 2.75, { note: HEAD_NOTE }),
    formula(`C${first!}`, `=${unitWord("diameter")}&" across"`, "unit"),
    text(`A${second!}`, "Mend next", "label"),
    formula(`B${second!}`, `=${nextGate}`, "total"),
    text(`A${third!}`, "Cost so far", "label"),
    formula(`B${third!}`, `=SUM(${inLog("G")})`, "total"),
    text(`E${first!}`, "Saved, plain sum", "label", { note: SAVED_NOTE }),
    formula(`H${first!}`, `=SUM(${inLog("I")})`, "total", { format: "0.0", note: SAVED_NOTE }),
    formula(`I${first!}`, flow, "unit"),
    text(`E${second!}`, "Leaks not mended yet", "label"),
    formula(`H${second!}`, `=${waiting}`, "total", { format: "0.0" }),
    formula(`I${second!}`, flow, "unit"),
    text(`E${third!}`, "Minutes so far", "label"),
    formula(`H${third!}`, `=SUM(${inLog("H")})`, "total"),
    formula(`A${last!}`, solved(), "total"),
  ];
}

/** A saved leak is not air gained at a hood; only the whole network knows that. */
function solved(): string {
  const rounded = (cell: string): string => `ROUND(${cell},0)&" "&${unitWord("airflow")}`;
  const both = `${rounded(FLOW_LEAKS)}&", SOLVE gives the hoods "&${rounded(FLOW_GAINED)}&": see What sealing really gives there."`;
  return `="A sum of leaks is not what the hoods gain. "&IFERROR("For all leaks of the sheet Flow, "&${both},"The sheet Flow works that out.")`;
}
