import fc from "fast-check";
import { frictionPerLength } from "../../../../src/core/friction/frictionLoss";
import { elementsOf } from "../../../../src/core/network/solve/elements";
import { addFriction, addSettledFriction } from "../../../../src/core/network/solve/losses";
import { AIRFLOW, LOSS, PIPE, RESISTANCE, ROOT, SLOPE } from "../../../../src/core/network/solve/rows";
import { buildNetwork } from "../../../../src/core/network/tree";
import { relative } from "../../../support/printed";
import { makeRun } from "../../../support/runs";

const DENSITY = 1.2;

/** The row of a run that is one straight length, ready to be visited. */
function lengthOf(length: number, diameter: number, roughness: number, branched = false): Float64Array {
  const saw = makeRun("saw", "main", { branch: branched ? { angle: 30, plain: false } : null });
  const runs = [makeRun("main", "fan", { length, diameter, roughness }), saw];
  const { rows, starts } = elementsOf(buildNetwork(runs), { density: DENSITY, hoseRoughness: 0, plainEnd: 1 });
  return rows.slice(starts[0]);
}

/** Its friction at one more airflow. */
function visit(row: Float64Array, airflow: number): number {
  row[AIRFLOW] = airflow;
  row[LOSS] = row[SLOPE] = 0;
  addFriction(row, 0, PIPE);
  return row[LOSS];
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pipes = fc.record({ diameter: between(0.05, 0.4), share: fc.oneof(fc.constant(0), between(1e-6, 0.05)) });

/** Airflow at a Reynolds number Re = 4 rho Q / (pi mu D), with mu 1.819e-5 Pa s. */
const airflowAt = (reynolds: number, diameter: number) => (reynolds * Math.PI * 1.819e-5 * diameter) / (4 * DENSITY);

describe("addFriction", () => {
  test("after three visits is Colebrook-White to the last digits, from its first guess or any other airflow", () => {
    fc.assert(
      fc.property(pipes, between(4000, 3e6), between(4000, 3e6), ({ diameter, share }, before, reynolds) => {
        const row = lengthOf(7, diameter, share * diameter);
        visit(row, airflowAt(before, diameter));
        const airflow = airflowAt(reynolds, diameter);
        for (let times = 0; times < 2; times++) visit(row, airflow);
        const exact = 7 * frictionPerLength(airflow, diameter, share * diameter, DENSITY);
        expect(relative(visit(row, airflow), exact)).toBeLessThan(1e-12);
      }),
    );
  });

  // The logarithm is told from one that is known nearby: a walk by small steps must not drift away from it.
  test("stays Colebrook-White to the last digits over a hundred small changes of the airflow", () => {
    fc.assert(
      fc.property(pipes, between(5000, 1e6), between(0.98, 1.02), ({ diameter, share }, reynolds, step) => {
        const row = lengthOf(7, diameter, share * diameter);
        let airflow = airflowAt(reynolds, diameter);
        for (let times = 0; times < 100 && airflow > airflowAt(4100, diameter); times++) visit(row, (airflow *= step));
        airflow = Math.max(airflow, airflowAt(4100, diameter));
        visit(row, airflow);
        const exact = 7 * frictionPerLength(airflow, diameter, share * diameter, DENSITY);
        expect(relative(visit(row, airflow), exact)).toBeLessThan(1e-13);
      }),
    );
  });

  test("is exact at once in laminar flow", () => {
    fc.assert(
      fc.property(pipes, between(1, 1999), ({ diameter, share }, reynolds) => {
        const airflow = airflowAt(reynolds, diameter);
        const exact = 3 * frictionPerLength(airflow, diameter, share * diameter, DENSITY);
        const carried = visit(lengthOf(3, diameter, share * diameter), airflow);
        expect(relative(carried, exact)).toBeLessThan(1e-12);
      }),
    );
  });

  // The line between laminar and turbulent air ends at the factor of Re 4000, which is carried as any other is.
  test("is exact after three visits in the band up to Re 4000, from turbulent air or from none before", () => {
    const before = fc.option(between(4000, 3e6));
    fc.assert(
      fc.property(pipes, before, between(2001, 3999), ({ diameter, share }, turbulent, reynolds) => {
        const row = lengthOf(3, diameter, share * diameter);
        if (turbulent !== null) visit(row, airflowAt(turbulent, diameter));
        const airflow = airflowAt(reynolds, diameter);
        for (let times = 0; times < 2; times++) visit(row, airflow);
        const exact = 3 * frictionPerLength(airflow, diameter, share * diameter, DENSITY);
        expect(relative(visit(row, airflow), exact)).toBeLessThan(1e-12);
      }),
    );
  });

  // The difference quotient of the exact loss over +-1e-5 of the airflow is itself right to about 1e-9; where it would
  // straddle one of the two kinks the test steps aside.
  test("leaves the derivative of the loss, as a difference quotient finds it", () => {
    const reynoldsNumbers = fc.oneof(between(10, 1999), between(2001, 3999), between(4001, 3e6));
    fc.assert(
      fc.property(pipes, reynoldsNumbers, ({ diameter, share }, reynolds) => {
        const airflow = airflowAt(reynolds, diameter);
        const step = 1e-5 * airflow;
        fc.pre([2000, 4000].every((kink) => Math.abs(reynolds / kink - 1) > 2e-5));
        const row = lengthOf(2, diameter, share * diameter);
        for (let times = 0; times < 4; times++) visit(row, airflow);
        const loss = (flow: number) => 2 * frictionPerLength(flow, diameter, share * diameter, DENSITY);
        const quotient = (loss(airflow + step) - loss(airflow - step)) / (2 * step);
        expect(relative(row[SLOPE]!, quotient)).toBeLessThan(1e-7);
      }),
    );
  });

  // Nothing was visited yet, so what differs is the first guess: of the two that of the length's own wall is nearer.
  test("begins nearer where no branch makes each length begin alike", () => {
    for (const share of [0, 0.0015, 0.03]) {
      const off = [true, false].map((branched) => {
        const row = lengthOf(7, 0.1, share * 0.1, branched);
        const exact = frictionPerLength(airflowAt(130_000, 0.1), 0.1, share * 0.1, DENSITY);
        const first = row[PIPE + RESISTANCE]! * row[PIPE + ROOT]! ** -2 * airflowAt(130_000, 0.1) ** 2;
        return Math.abs(first / (7 * exact) - 1);
      });
      expect(off[1]).toBeLessThan(off[0]!);
      expect(off[1]).toBeLessThan(0.2);
    }
  });

  test("a length of nothing costs nothing, and neither does still air", () => {
    expect(visit(lengthOf(0, 0.1, 0.00015), 0.3)).toBe(0);
    expect(visit(lengthOf(5, 0.1, 0.00015), 0)).toBe(0);
  });
});

test("addSettledFriction is Colebrook-White at once, and adds itself to what the row holds", () => {
  fc.assert(
    fc.property(pipes, between(4000, 3e6), ({ diameter, share }, reynolds) => {
      const row = lengthOf(7, diameter, share * diameter);
      const airflow = airflowAt(reynolds, diameter);
      [row[AIRFLOW], row[LOSS], row[SLOPE]] = [airflow, 0.25, 0];
      const exact = 7 * frictionPerLength(airflow, diameter, share * diameter, DENSITY);
      expect(relative(addSettledFriction(row, 0, PIPE), exact)).toBeLessThan(1e-11);
      expect(relative(row[LOSS], exact + 0.25)).toBeLessThan(1e-11);
    }),
  );
});
