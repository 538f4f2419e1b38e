import fc from "fast-check";
import { frictionPerLength } from "../../../../src/core/friction/frictionLoss";
import { carriedFriction, newLengths, setLength } from "../../../../src/core/network/solve/carriedFriction";
import { relative } from "../../../support/printed";

const DENSITY = 1.2;

/** One straight length, ready to be visited. */
function lengthOf(length: number, diameter: number, roughness: number) {
  const lengths = newLengths(1);
  setLength(lengths, 0, length, diameter, roughness, DENSITY);
  return lengths;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pipes = fc.record({ diameter: between(0.05, 0.4), share: fc.oneof(fc.constant(0), between(1e-6, 0.05)) });

/** Airflow at a Reynolds number Re = 4 rho Q / (pi mu D), with mu 1.819e-5 Pa s. */
const airflowAt = (reynolds: number, diameter: number) => (reynolds * Math.PI * 1.819e-5 * diameter) / (4 * DENSITY);

describe("carriedFriction", () => {
  test("after three visits is Colebrook-White to the last digits, from its first guess or any other airflow", () => {
    fc.assert(
      fc.property(pipes, between(4000, 3e6), between(4000, 3e6), ({ diameter, share }, before, reynolds) => {
        const lengths = lengthOf(7, diameter, share * diameter);
        carriedFriction(lengths, 0, airflowAt(before, diameter));
        const airflow = airflowAt(reynolds, diameter);
        for (let visit = 0; visit < 2; visit++) carriedFriction(lengths, 0, airflow);
        const exact = 7 * frictionPerLength(airflow, diameter, share * diameter, DENSITY);
        expect(relative(carriedFriction(lengths, 0, airflow), exact)).toBeLessThan(1e-12);
      }),
    );
  });

  test("is exact at once in laminar flow and in the band up to Re 4000", () => {
    fc.assert(
      fc.property(pipes, between(1, 3999), ({ diameter, share }, reynolds) => {
        const airflow = airflowAt(reynolds, diameter);
        const exact = 3 * frictionPerLength(airflow, diameter, share * diameter, DENSITY);
        const carried = carriedFriction(lengthOf(3, diameter, share * diameter), 0, airflow);
        expect(relative(carried, exact)).toBeLessThan(1e-12);
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
        const lengths = lengthOf(2, diameter, share * diameter);
        for (let visit = 0; visit < 3; visit++) carriedFriction(lengths, 0, airflow);
        const loss = (flow: number) => 2 * frictionPerLength(flow, diameter, share * diameter, DENSITY);
        const quotient = (loss(airflow + step) - loss(airflow - step)) / (2 * step);
        expect(relative(lengths.slope[0]!, quotient)).toBeLessThan(1e-7);
      }),
    );
  });

  // Nothing was visited yet, so what differs is the first guess: of the two that of the length's own wall is nearer.
  test("begins nearer where each length begins by itself", () => {
    for (const share of [0, 0.0015, 0.03]) {
      const off = [true, false].map((alike) => {
        const lengths = newLengths(1, alike);
        setLength(lengths, 0, 7, 0.1, share * 0.1, DENSITY);
        const exact = frictionPerLength(airflowAt(130_000, 0.1), 0.1, share * 0.1, DENSITY);
        const first = lengths.resistance[0]! * lengths.root[0]! ** -2 * airflowAt(130_000, 0.1) ** 2;
        return Math.abs(first / (7 * exact) - 1);
      });
      expect(off[1]).toBeLessThan(off[0]!);
      expect(off[1]).toBeLessThan(0.2);
    }
  });

  test("a length that was never set costs nothing, and neither does still air", () => {
    expect(carriedFriction(newLengths(1), 0, 0.3)).toBe(0);
    expect(carriedFriction(lengthOf(5, 0.1, 0.00015), 0, 0)).toBe(0);
  });
});
