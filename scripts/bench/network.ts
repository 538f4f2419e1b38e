import type { Workspace } from "epanet-js";
import { solveNetwork } from "../../src/core/network/solve/solveNetwork";
import { buildNetwork } from "../../src/core/network/tree";
import { loadEngine } from "../../test/support/epanet";
import { AIR } from "../../test/support/runs";
import { seededTree } from "../../test/support/seededTree";
import { timeRatio } from "./measure";

/** Trees with pipe, hose, K, leaks and shut gates, by seed. */
const tree = (seed: number, count: number) => {
  const { runs, curve } = seededTree(seed, count, "with friction");
  return { runs, curve, network: buildNetwork(runs) };
};

const SEEDS = [1, 2, 3];

/** Time of `solveNetwork` on built networks of a size, over that of a hundred runs, both per run. */
export function costPerRun(count: number): number {
  const solver = (size: number) => {
    const trees = SEEDS.map((seed) => tree(seed, size));
    return () => trees.forEach(({ network, curve }) => solveNetwork(network, curve, AIR));
  };
  return timeRatio(solver(count), solver(100), count > 1000 ? 15 : 41) / (count / 100);
}

export interface Comparison {
  readonly fromRuns: number; // file opened, hydraulics, closed / buildNetwork, solveNetwork
  readonly hydraulics: number; // openH, initH, runH on a loaded model / buildNetwork, solveNetwork
  readonly solver: number; // openH, initH, runH on a loaded model / solveNetwork on a built network
}

/**
 * EPANET's time over ours on the same network: ours to a residual under 1e-9, EPANET's to a change of flow under 1e-5, the least
 * that it takes. Writing its input file and reading answers out of it are not counted.
 */
export function epanetOverOurs(workspace: Workspace, count: number): Comparison {
  const { runs, curve, network } = tree(1, count);
  const fromRuns = () => void solveNetwork(buildNetwork(runs), curve, AIR);
  const loaded = loadEngine(workspace, network, curve, AIR, "usual");
  const hydraulics = timeRatio(loaded.solve, fromRuns);
  const solver = timeRatio(loaded.solve, () => solveNetwork(network, curve, AIR));
  loaded.close();
  const wholeJob = () => {
    const fresh = loaded.again();
    fresh.solve();
    fresh.close();
  };
  return { fromRuns: timeRatio(wholeJob, fromRuns, 15), hydraulics, solver };
}
