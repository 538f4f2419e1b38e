import { placesIn } from "../../sheets/rectangle";
import { cellOf } from "./callArguments";
import { cellsNamed } from "./named/callsIn";
import { ourFormulasOn } from "./ourFormulas";
import type { Seen } from "./seenIn";
import type { Matrix } from "../functions/callFunction";

const CURVE = 1; // place among the arguments of each of these
const TAKE_A_CURVE = ["SOLVE", "UNCERTAINTY", "SCENARIOS", "GAINS", "TOGETHER", "CALIBRATE"]; // some books let SOLVE choose between two

/**
 * The fan's curve as the book's own functions take it, whatever stands there: a wrong point is refused here as on the sheet, in
 * place of a curve that ends above it. Null where no such call names its cells.
 */
export function curveAsked({ book, sheets }: Seen): Matrix | null {
  for (const one of book.workbook.sheets)
    for (const formula of ourFormulasOn(one)) {
      const [range] = TAKE_A_CURVE.flatMap((call) => cellsNamed(book, one.name, formula, call, CURVE) ?? []);
      const there = sheets.find(({ sheet }) => sheet === range?.sheet);
      if (range === undefined || there === undefined) continue;
      return placesIn(range).map((line) => line.map(({ column, row }) => cellOf(there.at(column, row))));
    }
  return null;
}
