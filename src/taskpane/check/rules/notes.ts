import { answersIn } from "../answers";
import type { Rule } from "../finding";

// Said by rules of their own, or no fault at all.
const ELSEWHERE = /^(dust settles|the hood gets|gate shut|a shut gate|no open hood)/;

/** What BUDGET and SOLVE note themselves, beyond what other rules say. */
export const notes: Rule = (book) =>
  answersIn(book).flatMap(({ of, sheet, rows }) =>
    rows.flatMap((row) =>
      row.note
        .split("; ")
        .filter((note) => note !== "" && !ELSEWHERE.test(note))
        .map((note) => ({
          rule: "A note",
          what: `${row.run}: ${note}.`,
          why:
            of === "BUDGET"
              ? "Said of the budget, in which every hood gets what it asks for."
              : "Said of what the fan really gives through the open gates.",
          source: `the Note column of ${of}`,
          sheet,
          at: row.at("note"),
        })),
    ),
  );
