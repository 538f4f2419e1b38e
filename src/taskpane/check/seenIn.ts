import type { TransportRow } from "../../reference/schema";
import { ownSheets } from "../../share/revive/ownSheets";
import type { Calculated } from "../../sheets/calculated";
import { type BookAnswer, answersIn } from "./answersIn";
import { type BookCurve, curvesIn } from "./curves";
import { type FailedFormula, failedFormulas } from "./failedFormulas";
import { dustOfBook } from "./namedCells";
import { type BookRuns, runsIn } from "./runs";
import { type LookedThrough, lookThrough } from "./tablesIn";

/** What there is to see in a book, for whoever looks at it: read once. */
export interface Seen {
  readonly book: Calculated;
  readonly sheets: readonly LookedThrough[];
  readonly dust: TransportRow; // that the ducts carry where a run names no other
  readonly runs: readonly BookRuns[];
  readonly answers: readonly BookAnswer[];
  readonly curves: readonly BookCurve[];
  readonly failed: readonly FailedFormula[];
}

/** Looks through a book. */
export function seenIn(book: Calculated): Seen {
  // a club copy's workings repeat the tables in SI, in the order of the flow: nobody could mend anything there
  const own = ownSheets(book.workbook);
  const sheets = lookThrough(book).filter(({ sheet }) => !own.has(sheet.toLowerCase()));
  const dust = dustOfBook(book);
  return {
    ...{ book, sheets, dust },
    runs: runsIn(sheets, dust),
    answers: answersIn(sheets),
    curves: curvesIn(sheets),
    failed: failedFormulas(book),
  };
}
