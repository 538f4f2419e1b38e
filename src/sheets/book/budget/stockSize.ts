import { piecesOfNote } from "../../../reference/notes";
import { fromSI, unitOf } from "../../../reference/quantities";
import { stockDiameters } from "../../../reference/tradeSizes";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { BUDGET_HEADER, BUDGET_STOCK } from "../layout";
import { answerCell, BUDGET_ANSWER } from "../parts/answerReferences";
import { ofRun } from "../parts/byName";
import { bySystem, headingIn, rounded, unitWord } from "../parts/units";

/** The size that would carry a run's dust at the airflow asked for, in plain formulas, so that a copy has it, too. */

const FIRST = BUDGET_HEADER + 1;
const stock = { IP: sizesIn("IP"), SI: sizesIn("SI") };
const ROWS = Math.max(stock.IP.length, stock.SI.length);
const LIST = `$${BUDGET_STOCK}$${FIRST}:$${BUDGET_STOCK}$${FIRST + ROWS - 1}`;

function sizesIn(system: "IP" | "SI"): number[] {
  return stockDiameters(system).map((size) => Number(fromSI(size, unitOf("diameter", system)).toPrecision(12)));
}

/** The sizes that can be bought, in the units of the sheet; 0 where one system has fewer. */
export const stockList = (frame: Frame): SheetCell[] => [
  formula(`${BUDGET_STOCK}${BUDGET_HEADER}`, headingIn(frame, "Stock sizes", "diameter"), "numberHeader", {
    note: `The check in words names the widest of them in which a run's air carries its dust. Type over them what you can buy.`,
  }),
  ...Array.from({ length: ROWS }, (_, index) =>
    formula(
      `${BUDGET_STOCK}${FIRST + index}`,
      `=${bySystem(frame, String(stock.IP[index] ?? 0), String(stock.SI[index] ?? 0))}`,
      "unit",
    ),
  ),
];

/**
 * "; 4 in would carry it (4031 fpm)" behind a run whose dust settles; "" where no size is small enough.
 *
 * @param row of the answer
 * @param place of the run in the runs table
 */
export function sizeThatCarries(frame: Frame, row: number, place: string): string {
  const [velocity, note] = [answerCell(BUDGET_ANSWER, "velocity", row), answerCell(BUDGET_ANSWER, "note", row)];
  const diameter = ofRun(frame, "Diameter", place);
  const widest = `${diameter}*SQRT(${velocity}/${needed(note)})`;
  const size = `SUMPRODUCT(MAX((${LIST}<=${widest})*${LIST}))`;
  const faster = rounded(frame, `${velocity}*(${diameter}/${size})^2`, { IP: 0, SI: 1 });
  const words = `"; "&${size}&" "&${unitWord(frame, "diameter")}&" would carry it ("&${faster}&" "&${unitWord(frame, "velocity")}&")"`;
  return `IFERROR(IF(ISTEXT(${diameter}),"",${words}),"")`;
}

/** The velocity that the dust needs, out of the note: its digits are read as such, since a comma is a point for some programs. */
function needed(note: string): string {
  const before = piecesOfNote("settles").flatMap((piece) => ("words" in piece ? [piece.words] : [])).at(-1)!; // prettier-ignore
  const last = before.slice(before.lastIndexOf(" ", before.length - 2) + 1); // "needs "
  const from = `MID(${note},SEARCH("${last}",${note})+${last.length},12)`;
  const number = `LEFT(${from},FIND(" ",${from})-1)`;
  const decimals = `IF(ISNUMBER(FIND(".",${number})),LEN(${number})-FIND(".",${number}),0)`;
  return `(VALUE(SUBSTITUTE(${number},".",""))/10^${decimals})`;
}
