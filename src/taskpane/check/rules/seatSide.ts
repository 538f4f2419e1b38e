import { findNamed } from "../../../core/naming/findNamed";
import { cite } from "../../../reference/citation";
import { gateConditions } from "../../../reference/gateConditions";
import type { CheckRule } from "../finding";

const TURNED = "shut wrong side";

/** A slide gate whose seat is on the wrong side, so that suction lifts the blade off it. */
export const seatSide: CheckRule = ({ runs: tables }) =>
  tables.flatMap(({ sheet, runs }) =>
    runs.flatMap((run) =>
      run.leaks.flatMap(({ column, condition }) => {
        const row = findNamed(gateConditions, condition);
        if (row?.key !== TURNED) return [];
        return [
          {
            rule: "Gate turned round",
            what: `The gate of ${run.name} has its seat on the wrong side.`,
            why: "Suction pulls the blade off its seat, so that the shut gate leaks. Turn it round: the seal belongs on the suction side.",
            source: cite(row),
            sheet,
            at: run.at(column),
          },
        ];
      }),
    ),
  );
