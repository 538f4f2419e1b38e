import { buildNetwork } from "../../../../src/core/network/tree";
import { solveNetwork } from "../../../../src/core/network/solve/solveNetwork";
import { loadEngine, newWorkspace } from "../../../support/epanet";
import { AIR } from "../../../support/runs";
import { seededTree } from "../../../support/seededTree";

/** Seeds with the number of suction runs: small and large, 5 to 200. */
const SIZES = [5, 6, 8, 10, 12, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 120, 140, 160, 180, 200, 200];
const trees = SIZES.map((runs, index) => ({ seed: index + 1, runs }));

const workspace = newWorkspace();

/** Largest relative difference of run airflows and suctions, both engines on the same tree. */
async function difference(seed: number, count: number, losses: "K only" | "with friction") {
  const { runs, curve } = seededTree(seed, count, losses);
  const network = buildNetwork(runs);
  const ours = solveNetwork(network, curve, AIR);
  const engine = loadEngine(await workspace, network, curve, AIR, "tightest");
  engine.solve();
  const theirs = engine.read();
  engine.close();
  let [airflow, suction, compared] = [Math.abs(ours.fanAirflow / theirs.fanAirflow - 1), 0, 0];
  for (const index of network.order) {
    if (theirs.airflow[index] === 0) {
      expect(ours.airflow[index]).toBe(0); // shut tight: left out there
      continue;
    }
    compared++;
    airflow = Math.max(airflow, Math.abs(ours.airflow[index]! / theirs.airflow[index]! - 1));
    suction = Math.max(suction, Math.abs(ours.suction[index]! / theirs.suction[index]! - 1));
  }
  return { airflow, suction, compared };
}

// EPANET 2.3, a general-purpose hydraulic engine (npm epanet-js, MIT); how our tree is put to it stands in support/epanet.ts.
describe("a seeded tree flows as in another engine", () => {
  // Both solve the same equations: they differed by 6e-10 at most when this was written, 1e-8 leaves room for another seed.
  test.each(trees)("seed $seed, $runs runs, K losses and leaks only: to 1e-8", async ({ seed, runs }) => {
    const { airflow, suction, compared } = await difference(seed, runs, "K only");
    expect(compared).toBeGreaterThan(runs / 3);
    expect(airflow).toBeLessThan(1e-8);
    expect(suction).toBeLessThan(1e-8);
  });

  // It takes friction from Swamee and Jain's formula, which lies within a few per cent of Colebrook-White: 1 % in airflow.
  test.each(trees)("seed $seed, $runs runs, with friction: airflows to 1 %", async ({ seed, runs }) => {
    const { airflow, suction, compared } = await difference(seed, runs, "with friction");
    expect(compared).toBeGreaterThan(runs / 3);
    expect(airflow).toBeLessThan(0.01);
    expect(suction).toBeLessThan(0.02); // goes with the square of the airflow
  });
});
