import fc from "fast-check";
import { fanCurve } from "../../../../src/core/fan/fanCurve";
import { covariance, seen } from "../../../../src/core/numeric/withPriors";
import { type Model, priorsOf, slopesOf } from "../../../../src/core/network/calibration/model";
import { type Fit, mostPlausible } from "../../../../src/core/network/calibration/mostPlausible";
import type { Reading, Spot } from "../../../../src/core/network/calibration/reading";
import { unknownsOf } from "../../../../src/core/network/calibration/unknowns";
import { buildNetwork } from "../../../../src/core/network/tree";
import { inTestAir } from "../../../support/flows";
import { ANSWERS, drawnShop, model, normals, PLANS, PRIORS, reading, toldBy, truly } from "../../../support/measuredShop"; // prettier-ignore
import { AIR, makeRun } from "../../../support/runs";

const deviationOf = (of: Model, fit: Fit, answers: readonly Spot[]): number[] =>
  slopesOf(fit.state, answers).map((slopes) => {
    const one = seen(fit.narrowed, slopes);
    return Math.sqrt(covariance(priorsOf(of), one, one));
  });

describe("the most plausible inputs behind readings", () => {
  // One pipe end with the K of its entry alone, on a fan of one static pressure, p = K p_v: Q goes with K^-1/2, so its logarithm changes by
  // -1/2 of that of K. Read: half of the told airflow, so four times the K is behind it if the reading is sure.
  const air = { ...AIR, density: 1.2 };
  const oneEnd = (prior: number): Model => {
    const network = buildNetwork([makeRun("end", "fan", { hood: 1, gate: "open" })]);
    const system = { network, curve: fanCurve(inTestAir([0, 1000], [1, 1000])), surroundings: air };
    return { systems: [system], wander: 0, unknowns: unknownsOf([network], new Map([["entry", prior]]), 0) };
  };
  const airflow: Spot = { set: 0, run: 0, what: "airflow" };

  test("by hand: one hood whose entry alone is unknown", () => {
    const of = oneEnd(0.2);
    const told = truly(of, new Float64Array(1), [airflow])[0]!;
    const half: Reading = { ...airflow, value: told / 2, deviation: 1e-6, meter: -1 };
    const fit = mostPlausible(of, [half], toldBy(of, [0]));
    expect(fit.state.logarithms[0]).toBeCloseTo(Math.log(4), 6);
    // Before, the airflow is known to 1/2 of 0.2; a reading as good as that leaves it a deviation of 0.1 / sqrt(2).
    const same: Reading = { ...airflow, value: told, deviation: 0.1, meter: -1 };
    const kept = mostPlausible(of, [same], toldBy(of, [0]));
    expect(deviationOf(of, kept, [airflow])[0]).toBeCloseTo(0.1 / Math.SQRT2, 9);
    expect(kept.state.logarithms[0]).toBeCloseTo(0, 12);
  });

  test("readings without error give back what they were read from, wherever it was", () => {
    const of = model(0);
    const normal = normals(11);
    const plan = [...PLANS[5]!, ...PLANS[4]!];
    const truth = Float64Array.from(of.unknowns, ({ deviation }) => deviation * normal());
    const values = truly(of, truth, plan);
    const readings = plan.map((at, index) => ({ ...reading(at, values[index]!, of, 1e-5), meter: -1 }));
    const fit = mostPlausible(of, readings, toldBy(of));
    const said = truly(of, fit.state.logarithms, plan);
    said.forEach((value, index) => expect(Math.abs(value / values[index]! - 1)).toBeLessThan(1e-6));
    const device = of.unknowns.findIndex(({ kind, run }) => kind === "device" && of.systems[0]!.network.runs[run]!.name === "filter"); // prettier-ignore
    expect(fit.state.logarithms[device]! - truth[device]!).toBeCloseTo(0, 2); // its drop and the fan's airflow were read
  });

  test("what is certain beforehand stays, and nothing that anyone reads moves SOLVE then", () => {
    const none = new Map([...PRIORS.keys()].map((kind) => [kind, 0] as const));
    const certain = model(0.04, none);
    expect(certain.unknowns).toEqual([]);
    const almost = model(0.04, new Map([...PRIORS].map(([kind, deviation]) => [kind, 1e-7 * deviation] as const)));
    const { readings } = drawnShop(model(0.04), PLANS[4]!, normals(2));
    const fit = mostPlausible(almost, readings.map((one) => ({ ...one, meter: -1 })), toldBy(almost)); // prettier-ignore
    const told = truly(almost, new Float64Array(almost.unknowns.length), ANSWERS);
    truly(almost, fit.state.logarithms, ANSWERS).forEach((value, index) =>
      expect(Math.abs(value / told[index]! - 1)).toBeLessThan(1e-9),
    );
  });

  test("the order of readings does not matter", () => {
    const of = model();
    const { readings } = drawnShop(of, PLANS[2]!, normals(4));
    const straight = mostPlausible(of, readings, toldBy(of)).state.logarithms;
    const turned = mostPlausible(of, [...readings].reverse(), toldBy(of)).state.logarithms;
    straight.forEach((value, place) => expect(Math.abs(value - turned[place]!)).toBeLessThan(1e-6));
  });

  // At the table's own values nothing moves, so that only what is claimed changes.
  test("a further reading makes no ± larger, and one that may be anything changes nothing", () => {
    const of = model();
    const all = PLANS[5]!;
    const values = truly(of, new Float64Array(of.unknowns.length), all);
    const readings = all.map((at, index) => reading(at, values[index]!, of));
    const claimed = (some: readonly Reading[]): number[] =>
      deviationOf(of, mostPlausible(of, some, toldBy(of)), ANSWERS);
    fc.assert(
      fc.property(fc.uniqueArray(fc.nat(all.length - 1), { minLength: 1, maxLength: 8 }), (places) => {
        const some = places.map((place) => readings[place]!);
        const [fewer, more] = [claimed(some.slice(1)), claimed(some)];
        more.forEach((deviation, index) => expect(deviation).toBeLessThanOrEqual(fewer[index]! + 1e-12));
        const anything = claimed([...some, { ...readings[0]!, deviation: 1e6 }]);
        anything.forEach((deviation, index) => expect(Math.abs(deviation - more[index]!)).toBeLessThan(1e-9));
      }),
      { numRuns: 6 },
    );
  });

  test("where the readings ask for more air than the fan's curve has points for, it says so", () => {
    const of = oneEnd(2);
    const told = truly(of, new Float64Array(1), [airflow])[0]!;
    const more: Reading = { ...airflow, value: told * 50, deviation: 1e-3, meter: -1 };
    expect(mostPlausible(of, [more], toldBy(of, [0])).atEnd).toBe(true);
    expect(mostPlausible(of, [{ ...more, value: told * 1.1 }], toldBy(of, [0])).atEnd).toBe(false);
  });

  test("suction and airflow of all hoods move as the fan's speed alone, where all losses go with the square", () => {
    const runs = [
      makeRun("a", "main", { hood: 0.5, coefficient: 0.4, gate: "open" }),
      makeRun("b", "main", { hood: 0.9, diameter: 0.12, gate: "open" }),
      makeRun("main", "fan", { diameter: 0.15, coefficient: 0.6 }),
    ];
    const network = buildNetwork(runs);
    const system = { network, curve: fanCurve(inTestAir([0, 2000], [0.6, 0])), surroundings: air };
    const unknowns = unknownsOf([network], new Map([["fan speed", 5], ["entry", 0.2], ["fittings", 0.2]]), 0); // prettier-ignore
    const of: Model = { systems: [system], wander: 0, unknowns };
    const spots: Spot[] = [airflow, { ...airflow, run: 1 }, { set: 0, run: 0, what: "suction" }, { set: 0, run: -1, what: "suction" }]; // prettier-ignore
    const told = truly(of, new Float64Array(unknowns.length), spots);
    const faster = spots.map((at, index): Reading => ({ ...at, value: told[index]! * (at.what === "airflow" ? 1.25 : 1.25 ** 2), deviation: 0.01, meter: -1 })); // prettier-ignore
    const found = mostPlausible(of, faster, toldBy(of, [0])).state.logarithms;
    unknowns.forEach(({ kind }, place) =>
      expect(found[place]).toBeCloseTo(kind === "fan speed" ? Math.log(1.25) : 0, 3),
    );
  });
});
