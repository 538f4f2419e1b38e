import { rowOf } from "../../../core/naming/findNamed";
import { cite } from "../../../reference/citation";
import { materials } from "../../../reference/materials";
import type { CheckRule } from "../finding";
import { inGroups } from "../inGroups";

/** Longer than a machine needs to move or to shake: house judgement, six feet. */
const LONG = 1.829; // m

/** Flexible hose longer than it need be. */
export const longHose: CheckRule = ({ runs: tables }) => {
  const hose = rowOf(materials, "hose");
  return tables.flatMap(({ sheet, system, runs }) =>
    runs
      .filter((run) => run.hose > LONG)
      .map((run) => ({
        rule: "Long hose",
        what: `${run.name} has ${inGroups(run.hose, "length", system)} of hose.`,
        why: `The wall of a hose is rough (${inGroups(hose.roughness, "diameter", system)}, where galvanised pipe has a fraction of that), and a bent or slack hose costs more still. Over ${inGroups(LONG, "length", system)}, this program's own line, pipe is worth the work.`,
        source: cite(hose),
        sheet,
        at: run.at("Flex"),
      })),
  );
};
