import { itemAt } from "../../reference/itemAt";
import { ENOUGH_AIR } from "../../reference/noteLimits";
import { atHood } from "./oneChange";
import { runFlows } from "./runFlows";
import type { SolvedTable } from "./solveRuns";

/** Shares of the wanted air that differ by less are equal: two hoods alike differ in the solver's last digits. */
const ALIKE = 1e-9;

/**
 * The place of the open hood that needs something most: the one shortest of air where one is short; else one in whose own duct dust
 * settles, the lowest in the table; else, where dust settles further down alone, the one with the least share of what it wants. Of
 * equals the upper row. Where none needs anything, what is to say.
 */
export function neediest(now: SolvedTable): number | "noneOpen" | "allServed" {
  const flows = runFlows(now);
  const { runs } = now.table;
  const hoods = flows.flatMap(({ end, beyondShut }, index) => (end && !beyondShut ? [index] : []));
  if (hoods.length === 0) return "noneOpen";
  const shares = hoods.flatMap((place) => {
    const { wantedAirflow } = itemAt(runs, place).run;
    return wantedAirflow > 0 ? [{ place, share: atHood(now, place) / wantedAirflow }] : [];
  });
  const least = Math.min(...shares.map(({ share }) => share));
  const worst = shares.find(({ share }) => share <= least + ALIKE)?.place ?? itemAt(hoods, 0);
  if (least < ENOUGH_AIR) return worst;
  const settling = runs.flatMap(({ run, dust }, index) => {
    const { fed, beyondShut, velocity } = itemAt(flows, index);
    return run.side === "suction" && fed && !beyondShut && velocity < dust.low ? [index] : [];
  });
  if (settling.length === 0) return "allServed";
  return settling.filter((index) => hoods.includes(index)).at(-1) ?? worst;
}
