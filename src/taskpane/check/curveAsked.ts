import { callsOurs } from "../../sheets/ourCalls";
import { placesIn } from "../../sheets/rectangle";
import { cellOf } from "./callArguments";
import { argumentCells } from "./named/callsIn";
import type { Seen } from "./seenIn";
import type { Matrix } from "../functions/callFunction";

const CURVE = 1; // place among the arguments of each of these
const TAKE_A_CURVE = ["SOLVE", "UNCERTAINTY", "SCENARIOS", "GAINS", "TOGETHER", "CALIBRATE"]; // some books let SOLVE choose between two

/**
 * The fan's curve as the book's own functions take it, whatever stands there: a wrong point is refused here as on the sheet, in
 * place of a curve that ends above it. Null where no such call names its cells.
 */
export function curveAsked({ book, sheets }: Seen): Matrix | null {
  for (const { name, cells } of book.workbook.sheets)
    for (const cell of cells) {
      if (!("formula" in cell) || !callsOurs(cell.formula)) continue;
      const [range] = TAKE_A_CURVE.flatMap((call) => argumentCells(book, name, cell.at, call, CURVE) ?? []);
      const there = sheets.find(({ sheet }) => sheet === range?.sheet);
      if (range === undefined || there === undefined) continue;
      return placesIn(range).map((line) => line.map(({ column, row }) => cellOf(there.at(column, row))));
    }
  return null;
}
