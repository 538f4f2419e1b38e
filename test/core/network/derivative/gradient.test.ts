import { fanCurve } from "../../../../src/core/fan/fanCurve";
import type { System } from "../../../../src/core/network/derivative/changed";
import { direction } from "../../../../src/core/network/derivative/direction";
import { changeBy, effectOf, gradientOf } from "../../../../src/core/network/derivative/gradient";
import { inputsOf } from "../../../../src/core/network/derivative/inputs";
import { linearise } from "../../../../src/core/network/derivative/linearise";
import { putBy } from "../../../../src/core/network/derivative/put";
import { solveNetwork } from "../../../../src/core/network/solve/solveNetwork";
import { buildNetwork } from "../../../../src/core/network/tree";
import { FALLING } from "../../../support/flows";
import { AIR, makeRun } from "../../../support/runs";
import { seededTree } from "../../../support/seededTree";

/** Every answer by every input, against `direction`, which is held against SOLVE's own differences: the largest difference as a share. */
function worstOf(system: System): number {
  const { network, surroundings } = system;
  const solution = solveNetwork(network, system.curve, surroundings);
  const straight = linearise(system, solution);
  const isEnd = (run: number): boolean => network.joining[run]!.length === 0 && network.runs[run]!.side === "suction";
  const [mostAir, mostSuction] = [solution.fanAirflow, Math.max(...solution.suction)];
  let worst = 0;
  for (const input of [...inputsOf(network, isEnd), { kind: "density", run: -1 } as const]) {
    const one = direction(straight, input);
    const effect = effectOf(straight, putBy(straight, input));
    const change = (run: number, airflow: number, suction: number): number =>
      changeBy(gradientOf(straight, { run, airflow, suction }), effect);
    worst = Math.max(worst, Math.abs(change(-1, 1, 0) - one.fanAirflow) / mostAir);
    for (const run of network.order) {
      worst = Math.max(worst, Math.abs(change(run, 1, 0) - one.airflow[run]!) / mostAir);
      if (input.kind === "density" || input.kind === "diameter") continue; // which change the velocity pressure by themselves, too
      const byAirflow = (surroundings.density * solution.airflow[run]!) / ((Math.PI / 4) * network.runs[run]!.diameter ** 2) ** 2; // prettier-ignore
      worst = Math.max(worst, Math.abs(change(run, byAirflow, 1) - one.staticSuction[run]!) / mostSuction);
    }
  }
  return worst;
}

describe("what everything does to one answer", () => {
  test.each(Array.from({ length: 12 }, (_, seed) => seed + 1))(
    "is what each input does to it: seeded tree %d",
    (seed) => {
      const { runs, curve } = seededTree(seed, 3 + seed, seed % 3 === 0 ? "K only" : "with friction", seed % 4 === 0 ? "plainly" : "by airflows"); // prettier-ignore
      expect(worstOf({ network: buildNetwork(runs), curve, surroundings: AIR })).toBeLessThan(1e-10);
    },
  );

  test("also beyond a shut gate, at a tight end and with runs after the fan", () => {
    const runs = [
      makeRun("saw", "main", { hood: 0.5, length: 4, roughness: 1e-4, hoseLength: 1, leakArea: 1e-4, gate: "open" }),
      makeRun("tight", "main", { hood: 0.4, gate: "shut", length: 2 }),
      makeRun("cut", "shut branch", { hood: 0.4 }),
      makeRun("shut branch", "main", { gate: "shut", leakArea: 1e-4 }),
      makeRun("main", "fan", { diameter: 0.17, length: 6, roughness: 1.5e-4, leakArea: 3e-4, coefficient: 0.8 }),
      makeRun("filter", "outlet", { side: "discharge", diameter: 0.2, device: { ratedLoss: 250, ratedAirflow: 0.4, exponent: 1 } }),
      makeRun("outlet", "", { side: "discharge", diameter: 0.15, coefficient: 1.3, exitCoefficient: 1, length: 2, roughness: 1e-4 }),
    ]; // prettier-ignore
    expect(worstOf({ network: buildNetwork(runs), curve: fanCurve(FALLING), surroundings: AIR })).toBeLessThan(1e-10);
  });

  // No air moves, so nothing is lost anywhere: the fan holds its shut-off pressure, and each 1 % of it is 1 % of every suction.
  test("of a suction where no air moves is the fan's shut-off pressure", () => {
    const runs = [
      makeRun("end", "main", { gate: "shut", hood: 0.5 }),
      makeRun("main", "fan", {}),
      makeRun("filter", "", { side: "discharge", device: { ratedLoss: 250, ratedAirflow: 0.4, exponent: 1 } }),
    ];
    const system = { network: buildNetwork(runs), curve: fanCurve(FALLING), surroundings: AIR };
    const solution = solveNetwork(system.network, system.curve, AIR);
    const straight = linearise(system, solution);
    const by = (kind: "fan pressure" | "device", run: number): number[] => {
      const effect = effectOf(straight, putBy(straight, { kind, run }));
      return [0, 1, -1].map((at) => changeBy(gradientOf(straight, { run: at, airflow: 1, suction: 1 }), effect));
    };
    expect(by("fan pressure", -1)).toEqual([solution.fanPressure, solution.fanPressure, solution.fanPressure]);
    expect(by("device", 2)).toEqual([0, 0, 0]);
    const [pressure, device] = [
      direction(straight, { kind: "fan pressure", run: -1 }),
      direction(straight, { kind: "device", run: 2 }),
    ];
    expect([...pressure.staticSuction]).toEqual([solution.fanPressure, solution.fanPressure, 0]);
    expect([...device.staticSuction]).toEqual([0, 0, 0]);
  });
});
