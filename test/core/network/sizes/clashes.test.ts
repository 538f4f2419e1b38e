import { fanCurve } from "../../../../src/core/fan/fanCurve";
import { bleeds } from "../../../../src/core/network/sizes/bleeds";
import { clashes } from "../../../../src/core/network/sizes/clashes";
import { needsOf } from "../../../../src/core/network/sizes/needsOf";
import type { SizedScenario, SizeTask } from "../../../../src/core/network/sizes/sizeTask";
import { buildNetwork } from "../../../../src/core/network/tree";
import { AIR, makeRun } from "../../../support/runs";

// Losses by K alone: two hoods of K 1 in 0.1 m (0.007854 m2) on a trunk without loss, whose width only decides the velocity. On a
// straight line of 2000 Pa at no airflow and 0.4 m3/s at none, n open hoods take each Q with
// 2000 - 5000 n Q = 1.2 / 2 (Q / 0.007854)^2 = 9727 Q²: 0.2642 m3/s alone, 0.1714 m3/s each of two. In a trunk of 0.15 m
// (0.01767 m2) that is 14.95 and 19.4 m/s, in one of 0.12 m (0.01131 m2) 23.4 and 30.3 m/s. Its dust needs 18 m/s.
const LINE = fanCurve([
  { airflow: 0, pressure: 2000 },
  { airflow: 0.4, pressure: 0 },
]);

/** @param trunks [m] sizes of the trunk @param wanted [m3/s] at each open hood */
function shop(
  trunks: readonly number[],
  wanted: number,
): { task: SizeTask; opened: (open: readonly number[]) => SizedScenario } {
  const opened = (open: readonly number[]): SizedScenario => {
    const hood = {
      diameter: 0.1,
      hood: 1,
      coefficient: 0,
      length: 0,
      roughness: 0,
      leakArea: 0,
      wantedAirflow: wanted,
    };
    const runs = [
      ...["a", "b"].map((name, run) => makeRun(name, "trunk", { ...hood, gate: open.includes(run) ? "open" : "shut" })),
      makeRun("trunk", "fan", { diameter: 0.15, coefficient: 0, length: 0, roughness: 0, leakArea: 0 }),
    ];
    const network = buildNetwork(runs);
    return {
      network,
      runs: network.runs.map((run) =>
        (run.name === "trunk" ? trunks : [0.1]).map((diameter) => ({ ...run, diameter })),
      ),
    };
  };
  const scenarios = [[0], [0, 1]].map(opened);
  const task: SizeTask = {
    ...{ scenarios, curve: LINE, surroundings: AIR },
    choices: [[0.1], [0.1], trunks].map((sizes) => sizes.map((diameter) => ({ diameter, cost: diameter }))),
    keeps: [false, false, false],
    needs: scenarios.flatMap(({ network }, place) => needsOf(network, place, [0, 0, 18], 1)),
  };
  return { task, opened };
}

test("names the scenario that no size serves, with the share worked by hand, and no pair with it", () => {
  const found = clashes(shop([0.15], 0.1).task, [], 1e6);
  expect(found.isWhole).toBe(true);
  expect(found.clashes.map(({ scenarios }) => scenarios)).toEqual([[0]]);
  expect(found.clashes[0]!.share).toBeCloseTo(14.95 / 18, 3);
});

test("names none where one size serves both", () => {
  expect(clashes(shop([0.12, 0.15], 0.1).task, [], 1e6)).toEqual({ clashes: [], isWhole: true });
});

test("stopped before all were tried it says so, and blames none that was not searched for", () => {
  expect(clashes(shop([0.15], 0.1).task, [], 1)).toEqual({ clashes: [], isWhole: false });
});

test("finds the gate that, left open in the slow scenario, gives each need all of it", () => {
  const { task, opened } = shop([0.15], 0.1);
  const freed = bleeds(task, [0, 0, 0], [0, 1], (scenario, gate) => opened(scenario === 0 ? [0, gate] : [0, 1]), 1e6)!;
  expect(freed.left).toEqual([{ scenario: 0, gate: 1 }]);
  expect(freed.found.judged.share).toBeGreaterThan(1);
});

test("leaves no gate open where the hoods lack air, since that takes more of it", () => {
  const { task, opened } = shop([0.12, 0.15], 0.3);
  expect(bleeds(task, [0, 0, 0], [0, 1], (_, gate) => opened([0, gate]), 1e6)).toBeNull();
});
