import fc from "fast-check";
import { solveNetwork, withOneRun } from "../../../../src/core/network/solve/solveNetwork";
import { buildNetwork } from "../../../../src/core/network/tree";
import { fanCurve } from "../../../../src/core/fan/fanCurve";
import { AIR } from "../../../support/runs";
import { seededTree } from "../../../support/seededTree";
import { costlyTrees } from "../../../support/flows";
import { lawRuns } from "../../../support/lawRuns";

const SLACK = 1e-8; // of the fan's airflow: ten times what a residual of 1e-9 may do

const curves = [
  fanCurve([
    { airflow: 0, pressure: 2500 },
    { airflow: 0.8, pressure: 0 },
  ]),
  fanCurve([
    { airflow: 0, pressure: 1800 },
    { airflow: 0.3, pressure: 2200 },
    { airflow: 0.8, pressure: 0 },
  ]),
];

/** What may be different in a run; its gate among it, so that one which was at rest may flow and the other way round. */
const changes = fc.record({
  diameter: fc.double({ min: 0.5, max: 2, noNaN: true }),
  leak: fc.constantFrom(0, 1, 3),
  turned: fc.boolean(),
});

test("the answer is the same, whatever flows in the network from which it is found", () => {
  fc.assert(
    fc.property(costlyTrees, fc.array(changes, { minLength: 1 }), fc.constantFrom(...curves), (runs, list, curve) => {
      const others = runs.map((run, index) => {
        const { diameter, leak, turned } = list[index % list.length]!;
        const gate = run.gate === "none" || !turned ? run.gate : run.gate === "open" ? "shut" : "open";
        return { ...run, gate, diameter: run.diameter * diameter, leakArea: run.leakArea * leak };
      });
      const near = solveNetwork(buildNetwork(runs), curve, AIR);
      const [from, alone] = [near, undefined].map((start) => solveNetwork(buildNetwork(others), curve, AIR, start));
      expect(from!.status).toBe("converged");
      const slack = SLACK * alone!.fanAirflow + 1e-15;
      for (const key of ["airflow", "leak"] as const)
        from![key].forEach((value, run) => expect(Math.abs(value - alone![key][run]!)).toBeLessThanOrEqual(slack));
    }),
    lawRuns(60),
  );
});

// One solver for all changes: what one of them leaves behind would show in the next. Most runs join by a branch.
test("the answer is the same where one run after another is changed in a network that is solved", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e6 }), fc.array(changes, { minLength: 1 }), (seed, list) => {
      const { runs, curve } = seededTree(seed, 9, "with friction", "by airflows");
      const network = buildNetwork(runs);
      const solve = withOneRun(network, curve, AIR, solveNetwork(network, curve, AIR));
      runs.forEach((run, index) => {
        const { diameter, leak, turned } = list[index % list.length]!;
        const gate = run.gate === "none" || !turned ? run.gate : run.gate === "open" ? "shut" : "open";
        const lengths = turned ? { length: run.hoseLength, hoseLength: run.length, device: null } : {};
        const other = { ...run, gate, diameter: run.diameter * diameter, leakArea: run.leakArea * leak, ...lengths };
        const changed = solve(index, other);
        const alone = solveNetwork(buildNetwork(runs.map((one) => (one === run ? other : one))), curve, AIR);
        expect(changed.status).toBe(alone.status);
        const slack = SLACK * alone.fanAirflow + 1e-15;
        for (const key of ["airflow", "leak"] as const)
          changed[key].forEach((value, at) => expect(Math.abs(value - alone[key][at]!)).toBeLessThanOrEqual(slack));
      });
    }),
    lawRuns(20),
  );
});

test.each([1, 2, 3, 4])(
  "from its own answer a network of 40 runs takes few sweeps, and no more than without it, tree %d",
  (seed) => {
    const { runs, curve } = seededTree(seed, 40, "with friction");
    const network = buildNetwork(runs);
    const alone = solveNetwork(network, curve, AIR);
    const again = solveNetwork(network, curve, AIR, alone);
    expect(again.iterations).toBeLessThanOrEqual(alone.iterations);
    expect(again.iterations).toBeLessThanOrEqual(3); // friction is brought along by a step in each, from the usual start
  },
);
