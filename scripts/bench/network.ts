import type { Workspace } from "epanet-js";
import { solveNetwork } from "../../src/core/network/solve/solveNetwork";
import { buildNetwork } from "../../src/core/network/tree";
import { loadEngine } from "../../test/support/epanet";
import { AIR } from "../../test/support/runs";
import { seededTree } from "../../test/support/seededTree";
import { type Measured, timeRatio, timesAll } from "./measure";
import { ratio, type Row } from "./row";

const SEEDS = [1, 2, 3];

/** `solveNetwork` on built networks of pipe, hose, K, leaks and shut gates, by seed: its cost per run at two sizes. */
export function costPerRun(count: number, than: number, goal: Row["goal"] = null): Row {
  const solver = (size: number) => {
    const trees = SEEDS.map((seed) => seededTree(seed, size, "with friction"));
    const built = trees.map(({ runs, curve }) => ({ network: buildNetwork(runs), curve }));
    return () => built.forEach(({ network, curve }) => solveNetwork(network, curve, AIR));
  };
  const ratioOfAll = timeRatio(solver(count), solver(than), count > 1000 ? 15 : 41);
  return ratio(
    `solveNetwork, ${count} runs, per run`,
    `${than} runs, per run`,
    timesAll(ratioOfAll, than / count),
    goal,
  );
}

/**
 * EPANET's time over ours: ours to build the network and solve it to a residual under 1e-9; EPANET's to open the hydraulics of a model
 * that is loaded already and run them to a change of flow under 1e-5, the least that it takes by that option. It knows no junction
 * whose loss goes by the airflows, so such a tree of ours is held against its answer for the same one without them.
 */
export function epanetOverOurs(workspace: Workspace, count: number, meet: "plainly" | "by airflows"): Row[] {
  const { runs, curve } = seededTree(1, count, "with friction", meet);
  if (meet === "by airflows" && !runs.some(({ branch }) => branch)) return []; // an older build knows none such
  const how = meet === "plainly" ? "" : ", junctions by airflows";
  const value = timeOver(workspace, count, "usual", () => void solveNetwork(buildNetwork(runs), curve, AIR));
  return [ratio(`EPANET, hydraulics of a loaded model, ${count} runs${how}`, OURS, value, { atLeast: 4 })];
}

/** The same of a network that is built, as EPANET's model is loaded: what a table costs that is solved once more. */
export function epanetOverSolve(workspace: Workspace, count: number): Row {
  const { runs, curve } = seededTree(1, count, "with friction");
  const network = buildNetwork(runs);
  const value = timeOver(workspace, count, "usual", () => void solveNetwork(network, curve, AIR));
  return ratio(`EPANET, hydraulics of a loaded model, ${count} runs`, "solveNetwork of a built network", value);
}

/** The same where EPANET, too, goes on until the flows change by less than 1e-9. */
export function exactEpanetOverOurs(workspace: Workspace, count: number): Row {
  const { runs, curve } = seededTree(1, count, "with friction");
  const value = timeOver(workspace, count, "tightest", () => void solveNetwork(buildNetwork(runs), curve, AIR));
  return ratio(`EPANET to a change of flow under 1e-9, ${count} runs`, OURS, value);
}

const OURS = "buildNetwork and solveNetwork";

function timeOver(workspace: Workspace, count: number, accuracy: "usual" | "tightest", ours: () => void): Measured {
  const { runs, curve } = seededTree(1, count, "with friction");
  const loaded = loadEngine(workspace, buildNetwork(runs), curve, AIR, accuracy);
  const value = timeRatio(loaded.solve, ours);
  loaded.close();
  return value;
}
