import type { RunColumn } from "../../../reference/runColumns";
import { type CheckRule, practice } from "../finding";

const OF_A_GATE: readonly RunColumn[] = ["Leak open", "Leak shut"];

const WHY =
  "A leak in Leak open or Leak shut counts only while the gate stands so, and no gate is told here. Type open or shut under Gate; a leak that is always there belongs under Leak.";

/** A leak of a gate beside a run that tells no gate, which counts as none. */
export const noGate: CheckRule = ({ runs: tables }) =>
  tables.flatMap(({ sheet, runs }) =>
    runs.flatMap((run) => {
      const leak = run.leaks.find(({ column, condition }) => OF_A_GATE.includes(column) && condition !== "0");
      if (leak === undefined || run.gateSaid) return [];
      const what = `${run.name} has a leak under ${leak.column} but no gate: it is not counted.`;
      return [{ rule: "No gate", what, why: WHY, source: practice, sheet, at: run.at(leak.column) }];
    }),
  );
