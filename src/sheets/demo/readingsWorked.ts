import { formula, text } from "../cells";
import type { SheetCell } from "../workbook";
import { flowColumn } from "./flowLayout";
import { blockOf } from "./readingsBlock";
import { HEAD_CELL, inLog, inWorked, LOG_FIRST, LOG_LAST, WORKED, WORKED_LAST, workedRow } from "./readingsLayout";
import { orderOf } from "./readingsLog";
import { headingIn, unitWord } from "./readingsUnits";

const HANDED_NOTE =
  "The two readings, with a 0 as 0.0001: some spreadsheets hand on blanks as 0, so the functions take 0 for a blank.";
const ESTIMATE_NOTE =
  "An estimate of common practice for that condition and diameter at the typed suction: measure yours.";
const AREA_NOTE = "The opening that would pass the leak at the typed suction. It is what a patch has to close.";

const plain = (range: string): string => range.replaceAll("$", "");
const readings = plain(inWorked("K:L"));
const [diameters, conditions, typed] = ["B", "C", "D"].map((letter) => plain(inLog(letter))) as [
  string,
  string,
  string,
];
const velocities = `DUCT.VELOCITY(${readings},${HEAD_CELL},,units)`;

const codes = {
  estimate: `=DUCT.GATELEAK(${conditions},${diameters},${typed},density,units)`,
  elsewhere: `=DUCT.LEAKAT(${readings},${typed},${plain(inWorked("D"))})`,
  area: `=DUCT.LEAKAREA(${readings},${typed},,density,units)`,
  error: `=DUCT.AIRFLOWERROR(${velocities},${HEAD_CELL},,,,units)`,
};

/** What the log means, gate by gate: four functions over whole columns, and ordinary formulas. */
export function workedOut(): SheetCell[] {
  const number = "numberHeader";
  const cells: SheetCell[] = [
    text(`A${WORKED - 1}`, "The same gates, worked out", "section"),
    text(
      `D${WORKED - 1}`,
      "Columns K to N, at the right, hold the meter's error and what the functions are handed.",
      "note",
    ),
    text(`A${WORKED}`, "Gate", "header"),
    text(`B${WORKED}`, "Mend in order", number),
    formula(`C${WORKED}`, headingIn("Estimate for its condition", "airflow"), number, { note: ESTIMATE_NOTE }),
    formula(`D${WORKED}`, headingIn("At a suction of", "pressure"), number),
    formula(`E${WORKED}`, headingIn("it leaks before", "airflow"), number),
    formula(`F${WORKED}`, headingIn("and after", "airflow"), number),
    formula(`G${WORKED}`, headingIn("Leak area before", "openArea"), number, { note: AREA_NOTE }),
    formula(`H${WORKED}`, headingIn("Leak area after", "openArea"), number, { note: AREA_NOTE }),
    formula(`I${WORKED}`, `="Cost per "&${unitWord("airflow")}&" saved"`, number),
    text(`J${WORKED}`, "Where the suction in D comes from", "header"),
    formula(`K${WORKED}`, headingIn("Handed on, before", "airflow"), number, { note: HANDED_NOTE }),
    formula(`L${WORKED}`, headingIn("Handed on, after", "airflow"), number, { note: HANDED_NOTE }),
    formula(`M${WORKED}`, headingIn("± before", "airflow"), number),
    formula(`N${WORKED}`, headingIn("± after", "airflow"), number),
    ...blockOf(inWorked("C"), "0.0", codes.estimate),
    ...blockOf(inWorked("E:F"), "0.0", codes.elsewhere),
    ...blockOf(inWorked("G:H"), "0.00", codes.area),
    ...blockOf(inWorked("M:N"), "0.0", codes.error),
    text(`A${WORKED_LAST + 1}`, `C: ${codes.estimate}     E and F: ${codes.elsewhere}`, "note"),
    text(`A${WORKED_LAST + 2}`, `G and H: ${codes.area}     M and N: ${codes.error}`, "note"),
  ];
  for (let at = LOG_FIRST; at <= LOG_LAST; at++) cells.push(...row(at, workedRow(at)));
  return cells;
}

function row(log: number, at: number): SheetCell[] {
  const place = `MATCH(A${log}&"",Flow!${flowColumn("B")},0)`;
  const solved = `INDEX(Flow!${flowColumn("E")},${place})`;
  const handed = (cell: string): string => `=IF(${cell}="","",IF(${cell}=0,0.0001,${cell}))`;
  const error = `SQRT(SUMSQ(M${at}:N${at}))`;
  const paid = `IF(AND(COUNT(M${at}:N${at})=2,I${log}>${error}),G${log}/I${log},"")`;
  return [
    formula(`A${at}`, `=A${log}&""`),
    formula(`B${at}`, orderOf(log), "result", { format: "0" }),
    formula(`D${at}`, `=IF(A${log}="","",IFERROR(0+${solved},IF(D${log}="","",D${log})))`, "result", {
      format: "0.00",
    }),
    formula(`I${at}`, `=IF(OR(COUNT(G${log})=0,COUNT(I${log})=0),"",${paid})`, "result", { format: "0.00" }),
    formula(`J${at}`, `=IF(A${log}="","",IF(ISNUMBER(${solved}),"the sheet Flow","typed above: no such run on Flow"))`),
    formula(`K${at}`, handed(`E${log}`), "result", { format: "0.0" }),
    formula(`L${at}`, handed(`F${log}`), "result", { format: "0.0" }),
  ];
}
