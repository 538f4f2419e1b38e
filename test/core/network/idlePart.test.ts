import fc from "fast-check";
import { openingLeak } from "../../../src/core/leaks/openingLeak";
import { idlePart } from "../../../src/core/network/idlePart";
import { buildNetwork } from "../../../src/core/network/tree";
import { relative } from "../../support/printed";
import { makeRun } from "../../support/runs";
import { trees } from "../../support/trees";

describe("idlePart", () => {
  // By hand at 600 Pa, 1.2 kg/m3: sqrt(2 x 600 / 1.2) = 31.6228 m/s; 100 mm2: 0.6e-4 x 31.6228 = 0.00189737 m3/s,
  // 200 mm2: 0.00379473, 50 mm2: 0.000948683. The shut gate lets in only its own 50 mm2: what lies beyond it is still.
  test("adds up leaks towards the junction, and nothing from beyond a shut gate", () => {
    const runs = [
      makeRun("main", "fan"),
      makeRun("limb", "main", { leakArea: 1e-4 }),
      makeRun("open end", "limb", { leakArea: 2e-4 }),
      makeRun("shut", "limb", { leakArea: 5e-5, gate: "shut" }),
      makeRun("beyond", "shut", { leakArea: 1e-3 }),
    ];
    const part = idlePart(buildNetwork(runs), 1, 600, 1.2);
    const of = (name: string) => part.find(({ index }) => runs[index]!.name === name)!;
    expect(part).toHaveLength(4);
    expect(relative(of("open end").airflow, 0.00379473)).toBeLessThan(1e-5);
    expect(relative(of("shut").airflow, 0.000948683)).toBeLessThan(1e-5);
    expect(of("beyond")).toMatchObject({ leak: 0, airflow: 0 });
    expect(relative(of("limb").leak, 0.00189737)).toBeLessThan(1e-5);
    expect(relative(of("limb").airflow, 0.00189737 + 0.00379473 + 0.000948683)).toBeLessThan(1e-5);
  });

  test("without suction nothing leaks", () => {
    const network = buildNetwork([makeRun("main", "fan"), makeRun("limb", "main", { leakArea: 1e-4 })]);
    expect(idlePart(network, 1, 0, 1.2)).toEqual([{ index: 1, leak: 0, airflow: 0 }]);
  });

  test("holds every run above the junction once, and carries off exactly what leaks in", () => {
    fc.assert(
      fc.property(trees, fc.double({ min: 1, max: 3000, noNaN: true }), (runs, suction) => {
        const network = buildNetwork(runs);
        const part = idlePart(network, network.last, suction, 1.2);
        expect(part.map(({ index }) => index).sort((a, b) => a - b)).toEqual(runs.map((_, index) => index));
        const sum = runs.reduce((total, run) => total + openingLeak(run.leakArea, suction, 0.6, 1.2), 0);
        expect(Math.abs(part[0]!.airflow - sum)).toBeLessThanOrEqual(1e-12 * sum);
        for (const { index, airflow, leak } of part) {
          const joined = network.joining[index]!.map((other) => part.find((run) => run.index === other)!.airflow);
          expect(Math.abs(airflow - joined.reduce((a, b) => a + b, leak))).toBeLessThanOrEqual(1e-12 * airflow);
        }
      }),
    );
  });
});
