import { CALIBRATED, SYSTEM_CELL } from "../../sheets/book/layout";
import { callsOurs } from "../../sheets/ourCalls";
import type { Seen } from "../check/seenIn";

const CHOICE = SYSTEM_CELL.replaceAll("$", "");

/** Whether a sheet that tells what flows goes by ducts and fan as readings make them, in place of those that are typed. */
export const goesByReadings = ({ book }: Seen): boolean =>
  book.workbook.sheets.some(
    ({ name, cells }) =>
      book.shown.get(name)?.get(CHOICE)?.value === CALIBRATED &&
      cells.some((cell) => "formula" in cell && callsOurs(cell.formula) && cell.formula.includes("SOLVE(")),
  );
