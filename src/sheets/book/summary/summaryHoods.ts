import type { SolveKey } from "../../../reference/answerColumns";
import { ENOUGH_AIR } from "../../../reference/noteLimits";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { besideColumn, runRows } from "../flow/flowLayout";
import { saysNote } from "../parts/notes";
import { formatOf, headingIn, SHARE } from "../parts/units";
import { HOOD_FLAGS, HOODS_HEADER, MOST_HOODS } from "./summaryLayout";

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
  const count = `MAX(0,${frame.ref("flow", besideColumn("hoodNumber"))})`;
  const more = `IF(${count}>${MOST_HOODS},"and "&(${count}-${MOST_HOODS})&" more on the sheet ${frame.sheet("flow")}",IF(${count}=0,"No open hood yet: fill in the sheets ${frame.sheet("runs")} and ${frame.sheet("fan")} first",""))`;
  return [...cells, formula(`A${HOODS_HEADER + MOST_HOODS + 1}`, `=${more}`, "note")];
}

/** The k-th open hood, by the numbers that the sheet Flow gives them. */
function hoodRow(frame: Frame, k: number, row: number): SheetCell[] {
  const nth = (range: string): string =>
    `INDEX(${frame.ref("flow", range)},MATCH(${k},${frame.ref("flow", besideColumn("hoodNumber"))},0))`;
  const flow = (key: SolveKey): string => nth(runRows(key));
  const filled = (code: string): string => `=IF($A${row}="","",${code})`;
  const airflow = { format: formatOf(frame, "airflow") };
  const met = `IF($D${row}="","",IF($D${row}<${ENOUGH_AIR},"${HOOD_FLAGS.short}","wanted is met"))`;
  const settles = `IF(${saysNote("settles", flow("note"))},"; ${HOOD_FLAGS.settles}","")`;
  const words = nth(besideColumn("inWords"));
  const sure = `IF(${words}="","",${words}&"; ")`; // the duct's air, as the heading says: a leak of it joins behind the hood
  return [
    formula(`A${row}`, `=IFERROR(${flow("run")}&"","")`, "label"),
    formula(`B${row}`, filled(nth(besideColumn("gets"))), "result", airflow),
    formula(
      `C${row}`,
      filled(`IF(${nth(besideColumn("wants"))}>0,${nth(besideColumn("wants"))},"")`),
      "result",
      airflow,
    ),
    formula(`D${row}`, filled(nth(besideColumn("share"))), "result", { format: SHARE }),
    formula(`E${row}`, filled(flow("velocity")), "result", { format: formatOf(frame, "velocity") }),
    formula(`F${row}`, filled(`${sure}&${met}&${settles}`)),
  ];
}
