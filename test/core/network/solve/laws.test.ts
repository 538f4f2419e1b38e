import fc from "fast-check";
import type { Run } from "../../../../src/core/network/network";
import { misfitsOf } from "../../../support/equations";
import { costlyTrees, FALLING, flowsOf, type Flows, inTestAir } from "../../../support/flows";
import { AIR, makeRun } from "../../../support/runs";
import { meetingTrees, trees } from "../../../support/trees";
import { lawRuns } from "../../../support/lawRuns";

const RUNS = lawRuns(40);
const SLACK = 1e-8; // of the fan's airflow: ten times what a residual of 1e-9 may do

/** A straight fan line of up to 0.8 m3/s and 2500 Pa, so that its pressure is known without our curve. */
const line = inTestAir([0, 2500], [0.8, 0]);
const onLine = (airflow: number): number => 2500 * (1 - airflow / 0.8);

/** Rising to 0.3 m3/s, falling beyond. */
const HUMPED = inTestAir([0, 1800], [0.3, 2200], [0.8, 0]);

const isOpenEnd = (runs: readonly Run[], { name, gate }: Run): boolean =>
  gate !== "shut" && runs.every(({ to }) => to !== name);

/** Air that enters at each open end, by the run's name. */
const atHoods = (runs: readonly Run[], flows: Flows): Map<string, number> =>
  new Map(
    runs.filter((run) => isOpenEnd(runs, run)).map(({ name }) => [name, flows.of(name).airflow - flows.of(name).leak]),
  );

const some = (runs: readonly Run[], pick: number, which: (run: Run) => boolean): Run => {
  const found = runs.filter(which);
  fc.pre(found.length > 0);
  return found[pick % found.length]!;
};

const replaced = (runs: readonly Run[], run: Run, facts: Partial<Run>): Run[] =>
  runs.map((other) => (other === run ? { ...run, ...facts } : other));

describe("solveNetwork, on random trees", () => {
  const withMitres = trees.map((runs) => runs.map((run) => ({ ...run, mitreCoefficient: run.coefficient })));

  test.each([
    ["trees", trees],
    ["trees whose runs meet by branches, which cost by the airflows", meetingTrees],
    ["trees whose fittings are all mitres, which lose more in slow air", withMitres],
  ])("meets every law as written out by hand to 1e-9, and says so: %s", (_, drawn) => {
    fc.assert(
      fc.property(drawn, (runs) => {
        const flows = flowsOf(runs, line);
        expect(flows.status).toBe("converged");
        expect(flows.residual).toBeLessThanOrEqual(1e-9);
        expect(flows.iterations).toBeLessThanOrEqual(50);
        if (flows.fanAirflow === 0) return;
        const { pressure, airflow } = misfitsOf(flows, onLine(flows.fanAirflow));
        expect(pressure).toBeLessThan(1e-9);
        expect(airflow).toBeLessThan(1e-9);
      }),
      lawRuns(80),
    );
  });

  test("meets them where the air of a junction blows out through the leak of a shut gate", () => {
    const drawn = fc.sample(meetingTrees, { seed: 1555941202, path: "415", numRuns: 1 })[0]!;
    const flows = flowsOf(drawn, line);
    expect(drawn.some(({ name, gate }) => gate === "shut" && flows.of(name).leak < 0)).toBe(true);
    expect(flows.residual).toBeLessThan(1e-12);
    expect(misfitsOf(flows, onLine(flows.fanAirflow)).pressure).toBeLessThan(1e-11);
  });

  test("keeps the air's balance: what the fan moves is what hoods and leaks let in", () => {
    fc.assert(
      fc.property(trees, (runs) => {
        const flows = flowsOf(runs);
        const hoods = [...atHoods(runs, flows).values()].reduce((a, b) => a + b, 0);
        const leaks = flows.leak.reduce((a, b) => a + b, 0);
        expect(Math.abs(hoods + leaks - flows.fanAirflow)).toBeLessThanOrEqual(1e-12 * flows.fanAirflow);
      }),
      RUNS,
    );
  });

  test("sealing any leak never lowers the airflow of an open hood", () => {
    fc.assert(
      fc.property(costlyTrees, fc.nat(), (runs, pick) => {
        const leaking = some(runs, pick, ({ leakArea }) => leakArea > 0);
        const before = atHoods(runs, flowsOf(runs));
        const after = flowsOf(replaced(runs, leaking, { leakArea: 0 }));
        for (const [name, airflow] of before) {
          expect(after.of(name).airflow - after.of(name).leak - airflow).toBeGreaterThanOrEqual(
            -SLACK * after.fanAirflow,
          );
        }
      }),
      RUNS,
    );
  });

  test("opening a gate never raises another hood's airflow, and never lowers the fan's", () => {
    fc.assert(
      fc.property(costlyTrees, fc.nat(), (runs, pick) => {
        const shut = some(runs, pick, ({ gate }) => gate === "shut");
        const before = flowsOf(runs);
        const after = flowsOf(replaced(runs, shut, { gate: "open" }));
        const slack = SLACK * after.fanAirflow;
        for (const [name, airflow] of atHoods(runs, before)) {
          expect(after.of(name).airflow - after.of(name).leak - airflow).toBeLessThanOrEqual(slack);
        }
        expect(after.fanAirflow - before.fanAirflow).toBeGreaterThanOrEqual(-slack);
      }),
      RUNS,
    );
  });

  test("longer runs never raise the fan's airflow", () => {
    fc.assert(
      fc.property(trees, fc.double({ min: 1, max: 4, noNaN: true }), (runs, factor) => {
        const longer = runs.map((run) => ({
          ...run,
          length: run.length * factor,
          hoseLength: run.hoseLength * factor,
        }));
        const before = flowsOf(runs).fanAirflow;
        expect(flowsOf(longer).fanAirflow - before).toBeLessThanOrEqual(SLACK * before);
      }),
      RUNS,
    );
  });

  test("another order of rows and other names change nothing", () => {
    fc.assert(
      fc.property(trees, fc.infiniteStream(fc.nat()), (runs, lots) => {
        const renamed = (name: string): string => (name === "fan" ? name : `${name} of the shop`);
        const keys = new Map(runs.map((run) => [run, lots.next().value!]));
        const shuffled = [...runs]
          .sort((a, b) => keys.get(a)! - keys.get(b)!)
          .map((run) => ({ ...run, name: renamed(run.name), to: renamed(run.to) }));
        const [straight, other] = [flowsOf(runs), flowsOf(shuffled)];
        for (const { name } of runs) {
          const [a, b] = [straight.of(name), other.of(renamed(name))];
          expect(Math.abs(a.airflow - b.airflow)).toBeLessThanOrEqual(1e-9 * straight.fanAirflow);
          expect(Math.abs(a.suction - b.suction)).toBeLessThanOrEqual(1e-9 * straight.fanPressure);
        }
      }),
      RUNS,
    );
  });

  // The fan makes up for suction and discharge alike, so a run without a leak may stand on either side of it.
  test("a run costs the fan behind it what it costs before it", () => {
    const decimal = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const costs = fc.record({
      ...{
        diameter: decimal(0.08, 0.3),
        coefficient: decimal(0, 5),
        length: decimal(0, 20),
        hoseLength: decimal(0, 3),
      },
      device: fc.record({ ratedLoss: decimal(0, 500), ratedAirflow: decimal(0.1, 0.5), exponent: decimal(0.5, 2.5) }),
    });
    fc.assert(
      fc.property(costs, fc.constantFrom(line, HUMPED), (facts, curve) => {
        const saw = makeRun("saw", "main", { hood: 1 });
        const before = flowsOf([saw, makeRun("main", "fan", facts)], curve);
        const behind = flowsOf([{ ...saw, to: "fan" }, makeRun("main", "", { ...facts, side: "discharge" })], curve);
        expect([before.status, behind.status]).toEqual(["converged", "converged"]);
        expect(behind.crossings).toBe(before.crossings);
        expect(Math.abs(behind.fanAirflow - before.fanAirflow)).toBeLessThanOrEqual(SLACK * before.fanAirflow);
        expect(Math.abs(behind.of("saw").suction - before.of("saw").suction)).toBeLessThanOrEqual(
          SLACK * before.fanPressure,
        );
      }),
      RUNS,
    );
  });

  // Every K loss goes with the square of the airflow: 1e-5 of the air costs 1e-10 of the pressure.
  test("with K losses only, a fan of 1e-10 of the pressure at 1e-5 of the airflow moves 1e-5 of the air", () => {
    const weak = inTestAir([0, 2500e-10], [0.8e-5, 0]);
    fc.assert(
      fc.property(costlyTrees, (runs) => {
        const plain = runs.map((run) => ({ ...run, length: 0, hoseLength: 0, device: null }));
        const [usual, less] = [flowsOf(plain, line), flowsOf(plain, weak)];
        expect(less.status).toBe("converged");
        for (const { name } of plain) {
          expect(Math.abs(1e5 * less.of(name).airflow - usual.of(name).airflow)).toBeLessThanOrEqual(
            SLACK * usual.fanAirflow,
          );
        }
      }),
      RUNS,
    );
  });

  // Every loss and the fan's pressure go with density, so only friction (through Re) and linear devices would notice.
  test("with K losses only, air twice as dense flows the same at twice the pressure", () => {
    fc.assert(
      fc.property(trees, (runs) => {
        const plain = runs.map((run) => ({ ...run, length: 0, hoseLength: 0, device: null }));
        const [usual, dense] = [flowsOf(plain), flowsOf(plain, FALLING, { ...AIR, density: 2 * AIR.density })];
        for (const { name } of plain) {
          const [a, b] = [usual.of(name), dense.of(name)];
          expect(Math.abs(a.airflow - b.airflow)).toBeLessThanOrEqual(SLACK * usual.fanAirflow);
          expect(Math.abs(2 * a.suction - b.suction)).toBeLessThanOrEqual(SLACK * dense.fanPressure);
        }
      }),
      RUNS,
    );
  });
});
