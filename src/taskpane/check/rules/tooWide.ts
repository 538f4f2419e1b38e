import { cite } from "../../../reference/citation";
import type { CheckRule } from "../finding";
import { inGroups } from "../inGroups";
import { mainsTooWide } from "../tooWideForOne";

const WHY =
  "One machine's air is too little for so wide a duct, so what it brings settles there. Open a second gate as a bleed while it runs, or take a narrower pipe, which costs air where several run at once. The sheet Sizes shows which machines can run together, and the pane looks for sizes that serve those you choose (Build, Choose sizes).";

/** A main too wide for any one gate: said once of all such mains, at the one that carries most of the gates. */
export const tooWide: CheckRule = (seen) => {
  const found = mainsTooWide(seen);
  const [main, ...others] = found?.mains ?? [];
  if (found === null || main === undefined) return [];
  const { sheet, system } = found.table;
  const { run, greatest } = main;
  const needs = `"${run.dust.key}" needs ${inGroups(run.dust.low, "velocity", system)}`;
  const reached =
    greatest === null
      ? `with any one gate open its air is too slow; ${needs}`
      : `with one gate open its air reaches ${inGroups(greatest.velocity, "velocity", system)} at most (${greatest.with}); ${needs}`;
  const also = others.length === 0 ? "" : ` So are ${others.map((other) => other.run.name).join(", ")}.`;
  return [
    {
      rule: "Too wide for one machine",
      what: `${run.name} is too wide for any scenario with one gate: ${reached}.${also}`,
      why: WHY,
      source: cite(run.dust),
      sheet,
      at: run.at("Diameter"),
    },
  ];
};
