import { type MarkedNote, notesIn } from "../../../reference/notes";
import type { CheckRule } from "../finding";
import { areClean, runsCalled } from "../behindDevice";
import { STILL_NOTES } from "../stillAir";

/** Said by rules of their own, or no fault at all. */
const ELSEWHERE: readonly MarkedNote[] = [
  ...(["settles", "metalWithWood", "likelyMetal", "short", "waits", "waitsForMissing"] as const),
  ...STILL_NOTES,
];

/** Where the rule of settling dust is silent, and why. */
const CLEAN = "; there is a device in it or before it, and air behind a device is taken to be clean";

/** What BUDGET and SOLVE note themselves, beyond what other rules say. */
export const notes: CheckRule = ({ answers, runs: tables }) => {
  const isClean = (name: string): boolean => areClean(runsCalled(tables, name));
  return answers.flatMap(({ of, sheet, rows }) =>
    // a run without an airflow is wrong, and its note what its errors say
    rows
      .filter(({ airflow }) => airflow !== null)
      .flatMap((row) =>
        notesIn(row.note)
          .filter(({ key }) => key === null || !ELSEWHERE.includes(key) || (key === "settles" && isClean(row.run)))
          .map(({ key, words }) => ({
            rule: "A note",
            what: `${row.run}: ${words}${key === "settles" ? CLEAN : ""}.`,
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
};
