import type { TransportRow } from "../../reference/schema";
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
  const [sheets, dust] = [lookThrough(book), dustOfBook(book)];
  return {
    ...{ book, sheets, dust },
    runs: runsIn(sheets, dust),
    answers: answersIn(sheets),
    curves: curvesIn(sheets),
    failed: failedFormulas(book),
  };
}
