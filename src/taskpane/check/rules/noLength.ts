import { type CheckRule, practice } from "../finding";

const WHY =
  "A blank counts as no pipe at all, so nothing is lost to friction there. Type the length, or 0 where there is none.";

/** A run whose length was left blank in a table that has lengths. */
export const noLength: CheckRule = ({ runs: tables }) =>
  tables.flatMap(({ sheet, runs }) =>
    runs
      .filter((run) => run.noLength)
      .map((run) => ({
        rule: "No length",
        what: `${run.name} has no length: it counts as 0.`,
        why: WHY,
        source: practice,
        sheet,
        at: run.at("Length"),
      })),
  );
