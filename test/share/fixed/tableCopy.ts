import { clubCopy } from "../../../src/share/clubCopy";
import { sampleBook } from "../sampleBooks";

export const OLD = "inputs changed since: these numbers are old";
export const AS_OF = "as of 2026-11-25";

/** The club copy of a table of runs on T and one fixed number that was made from all of it, F!A1, with its word in F!B1. */
export const tableCopy = () =>
  clubCopy(
    sampleBook({
      T: {
        rows: [
          ["Run", "Diameter", "Hood"],
          ["saw", 4, null],
          ["main", 6, "plain end"],
        ],
      },
      F: { formulas: { A1: { code: "=DUCT.GAINS(T!A1:C3)", shows: [[7]] } } },
    }),
    { kind: "formulas", date: "2026-11-25", version: "0.2.0" },
  ).book;
