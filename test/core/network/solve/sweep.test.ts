import fc from "fast-check";
import type { Run } from "../../../../src/core/network/network";
import { type Elements, elementsOf, JUNCTION, LEAK_ONLY, STILL } from "../../../../src/core/network/solve/elements";
import {
  AIRFLOW,
  ARRIVING,
  DEVICE,
  DOWN_OFFSET,
  DOWN_RATE,
  END,
  EXPONENT,
  FIXED,
  HOSE,
  LEAK,
  LEAK_OFFSET,
  LEAK_RATE,
  PIPE,
  RESISTANCE,
  ROOT,
  SUCTION,
} from "../../../../src/core/network/solve/rows";
import { quadraticOf, startAt } from "../../../../src/core/network/solve/startFlow";
import { sweepToEnds, sweepToFan } from "../../../../src/core/network/solve/sweep";
import { buildNetwork } from "../../../../src/core/network/tree";
import { costlyTrees } from "../../../support/flows";
import { AIR, makeRun } from "../../../support/runs";
import { relative } from "../../../support/printed";

const LEAST = 1e-15; // Pa

/** What a run's row holds. */
const reading =
  ({ rows, starts }: Elements) =>
  (run: number, column: number): number =>
    rows[starts[run]! + column]!;

// Every loss R Q^2 with the resistances of the elements, friction by the factors from which the sweeps begin.
test("the first state meets every equation, were all losses quadratic and leaks driven by the suction alone", () => {
  fc.assert(
    fc.property(costlyTrees, (runs) => {
      const network = buildNetwork(runs);
      const elements = elementsOf(network, AIR);
      fc.pre(elements.kind[network.last] !== STILL);
      const of = reading(elements);
      quadraticOf(elements, 0.4);
      startAt(elements, 1000);
      for (const i of network.order) {
        if (elements.kind[i] === STILL) {
          expect(of(i, AIRFLOW)).toBe(0);
          continue;
        }
        const straight = [PIPE, HOSE].reduce((sum, length) => {
          const resistance = of(i, length + RESISTANCE);
          return sum + (resistance > 0 ? resistance / of(i, length + ROOT) ** 2 : 0);
        }, 0);
        const device = of(i, DEVICE) * 0.4 ** (of(i, EXPONENT) - 2);
        const loss = (of(i, FIXED) + straight + device) * of(i, AIRFLOW) ** 2;
        const down = i === network.last ? 1000 : of(network.joins[i]!, SUCTION);
        expect(Math.abs(down - of(i, SUCTION) - loss)).toBeLessThan(1e-9 * 1000);
        const joined = network.joining[i]!.reduce((sum, other) => sum + of(other, AIRFLOW), 0);
        if (elements.kind[i] === JUNCTION) expect(Math.abs(of(i, ARRIVING) - joined)).toBeLessThan(1e-12);
        const through = elements.kind[i] === LEAK_ONLY ? of(i, LEAK) : of(i, ARRIVING);
        if (elements.kind[i] !== JUNCTION)
          expect(Math.abs(of(i, END) * through ** 2 - of(i, SUCTION))).toBeLessThan(1e-9 * 1000);
        expect(Math.abs(of(i, AIRFLOW) - of(i, ARRIVING) - of(i, LEAK))).toBeLessThan(1e-15);
      }
    }),
    { numRuns: 20 },
  );
});

// C_d A_leak is half of a 100 mm duct's area: g = 0.5. At 1000 Pa, with rho/(2 A^2) = 9726.83: beside a hood's air the leak
// starts at g sqrt(1000/9726.83) = 0.5 x 0.320636 = 0.160318 m3/s; alone it is its own duct's air, whose velocity pressure
// helps to drive it: g/sqrt(1 - g^2) times the same root = 0.577350 x 0.320636 = 0.185119 m3/s. Here each is held at its own
// suction: the air goes with the root of it.
test("the first state opens each leak to its suction, beside a hood and alone", () => {
  const leakArea = (0.5 * Math.PI * 0.1 ** 2) / 4 / 0.6;
  const network = buildNetwork([
    makeRun("main", "fan", { diameter: 0.2 }),
    makeRun("saw", "main", { hood: 1, leakArea }),
    makeRun("sander", "main", { gate: "shut", leakArea }),
  ]);
  const elements = elementsOf(network, AIR);
  quadraticOf(elements, 0.4);
  startAt(elements, 1000);
  const of = reading(elements);
  const at1000 = (run: number): number => of(run, LEAK) * Math.sqrt(1000 / of(run, SUCTION));
  expect(of(0, LEAK)).toBe(0);
  expect(relative(at1000(1), 0.160318)).toBeLessThan(1e-5);
  expect(relative(at1000(2), 0.185119)).toBeLessThan(1e-5);
});

/** A single run with a state of its own: what arrives, leaks, and the suction. */
function inState(run: Run, arriving: number, leak: number, suction: number): Elements {
  const elements = elementsOf(buildNetwork([run]), AIR);
  const { rows } = elements;
  [rows[ARRIVING], rows[LEAK], rows[AIRFLOW], rows[SUCTION]] = [arriving, leak, arriving + leak, suction];
  return elements;
}

// One hood of K 1 and fittings of K 1, 100 mm: P = R q^2 and loss R Q^2 with R = 9726.83, so P_down = 2 R Q^2. Linear at
// q = 0.1: P_down = 2 R (0.1^2 + 0.2 (Q - 0.1)), that is Q = 0.05 + P_down / (0.4 R).
test("one sweep makes a quadratic its tangent", () => {
  const elements = inState(makeRun("saw", "fan", { hood: 1, coefficient: 1 }), 0.1, 0, 0);
  const { rows } = elements;
  sweepToFan(elements, LEAST, 0);
  expect(relative(rows[DOWN_OFFSET]!, 0.05)).toBeLessThan(1e-12);
  expect(relative(rows[DOWN_RATE]!, 1 / (0.4 * 9726.83))).toBeLessThan(1e-6);
  sweepToEnds(elements, 500);
  const airflow = 0.05 + 500 / (0.4 * 9726.83);
  expect(relative(rows[AIRFLOW]!, airflow)).toBeLessThan(1e-6);
  // the tangent's suction is half of what the fan holds; the misfit is how far the parabola bends away from it, in hood and run alike
  expect(relative(rows[SUCTION]!, 250)).toBeLessThan(1e-9);
  const misfit = sweepToFan(elements, LEAST, 500);
  expect(relative(misfit, 9726.83 * (airflow - 0.1) ** 2)).toBeLessThan(1e-5);
});

// A hood of K 1 and a leak of g = 0.5 (C_d A_leak half of the duct), both on r = 9726.83 Pa s2/m6: P = r S^2, and for the leak
// 4 r L^2 = P + r (S + L)^2, so that 3 L^2 - 2 S L - 2 S^2 = 0: L = S (1 + sqrt 7)/3 = 1.215250 S. With S = 0.1 m3/s:
// P = 97.2683 Pa, L = 0.1215250 m3/s. L goes with sqrt P: its tangent has the rate L/(2 P) and the offset L/2.
describe("a leak behind a hood", () => {
  const leakArea = (0.5 * Math.PI * 0.1 ** 2) / 4 / 0.6;
  const sweptOnce = (arriving: number, leak: number): Float64Array => {
    const elements = inState(makeRun("saw", "fan", { hood: 1, leakArea }), arriving, leak, 97.2683);
    sweepToFan(elements, LEAST, 0);
    return elements.rows;
  };

  test("becomes its tangent, to which the air behind the hood belongs", () => {
    const row = sweptOnce(0.1, 0.121525);
    expect(relative(row[LEAK_RATE]!, 0.121525 / (2 * 97.2683))).toBeLessThan(2e-5);
    expect(relative(row[LEAK_OFFSET]!, 0.121525 / 2)).toBeLessThan(2e-5);
  });

  // With a leak of only 0.001 m3/s its own slope is 2 x 4 r x 0.001 = 77.8146 Pa s/m3, less than 2 r Q of the air.
  test.each([0.1, -0.1])("has its own slope where %d m3/s beside it would outweigh it or run backwards", (arriving) => {
    expect(relative(sweptOnce(arriving, 0.001)[LEAK_RATE]!, 1 / 77.8146)).toBeLessThan(1e-5);
  });
});

test("sweeps at a fixed suction settle on a state that a further sweep leaves as it is", () => {
  fc.assert(
    fc.property(costlyTrees, (runs) => {
      const network = buildNetwork(runs);
      const elements = elementsOf(network, AIR);
      fc.pre(elements.kind[network.last] !== STILL);
      quadraticOf(elements, 0.4);
      startAt(elements, 1000);
      const airflows = () => network.order.map((run) => reading(elements)(run, AIRFLOW));
      fc.pre(airflows().some((airflow) => airflow > 0));
      const sweep = () => {
        sweepToEnds(elements, 1500);
        return sweepToFan(elements, LEAST, 1500);
      };
      sweepToFan(elements, LEAST, 1500);
      for (let round = 0; round < 40; round++) sweep();
      const before = airflows();
      const pressure = sweep();
      expect(pressure).toBeLessThan(1e-9 * 1500);
      const most = Math.max(...before);
      airflows().forEach((airflow, index) => expect(Math.abs(before[index]! - airflow)).toBeLessThan(1e-9 * most));
    }),
    { numRuns: 20 },
  );
});
