import fc from "fast-check";
import type { Run } from "../../../../src/core/network/network";
import { runLoss } from "../../../../src/core/network/runLoss";
import { elementsOf, JUNCTION, LEAK_ONLY, OPEN_END, roomFor, STILL } from "../../../../src/core/network/solve/elements";
import { setLoss } from "../../../../src/core/network/solve/losses";
import { AIRFLOW, END, LEAK_SHARE, LOSS, SLOPE, VELOCITY, WIDTH } from "../../../../src/core/network/solve/rows";
import { buildNetwork } from "../../../../src/core/network/tree";
import { relative } from "../../../support/printed";
import { AIR, makeRun } from "../../../support/runs";
import { trees } from "../../../support/trees";

const elementsFor = (runs: readonly Run[]) => elementsOf(buildNetwork(runs), AIR);

/** Head and slope of the only run, with its friction settled at that airflow. */
function settled(run: Run, airflow: number): { loss: number; slope: number } {
  const { rows } = elementsFor([run]);
  rows[AIRFLOW] = airflow;
  for (let visit = 0; visit < 4; visit++) setLoss(rows, 0);
  return { loss: rows[LOSS]!, slope: rows[SLOPE]! };
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const losses: Record<string, Partial<Run>> = {
  fittings: { coefficient: 1.7 },
  mitres: { coefficient: 1.7, mitreCoefficient: 1.2 },
  pipe: { length: 6, roughness: 0.00015 },
  hose: { hoseLength: 2 },
  "a separator": { device: { ratedLoss: 300, ratedAirflow: 0.2, exponent: 2 } },
  "a filter": { device: { ratedLoss: 200, ratedAirflow: 0.3, exponent: 1 } },
  "everything together": {
    ...{ coefficient: 0.4, length: 6, roughness: 0.00015, hoseLength: 2 },
    device: { ratedLoss: 300, ratedAirflow: 0.2, exponent: 1.6 },
  },
};

describe.each(Object.entries(losses))("the loss of %s", (_, facts) => {
  const run = makeRun("a", "fan", facts);

  test("is the one that the design pass books, with the flow's sign", () => {
    fc.assert(
      fc.property(between(0.02, 1), (airflow) => {
        const { friction, fittings, device } = runLoss(run, airflow, AIR.hoseRoughness, AIR.density);
        expect(relative(settled(run, airflow).loss, friction + fittings + device)).toBeLessThan(1e-12);
        expect(settled(run, -airflow).loss).toBe(-settled(run, airflow).loss);
      }),
    );
  });

  // Re is 4000 at 0.0048 m3/s in this duct, so the airflows are clear of the kinks; the quotient is right to about 1e-9.
  test("has the derivative that a difference quotient finds, both ways round", () => {
    fc.assert(
      fc.property(between(0.02, 1), fc.constantFrom(1, -1), (size, sign) => {
        const airflow = size * sign;
        const step = 1e-5 * size;
        const quotient = (settled(run, airflow + step).loss - settled(run, airflow - step).loss) / (2 * step);
        expect(relative(settled(run, airflow).slope, quotient)).toBeLessThan(1e-7);
      }),
    );
  });

  // A slope that is no number would spoil the whole tree.
  test("is nothing in still air, with a slope that is a number", () => {
    const { loss, slope } = settled(run, 0);
    expect(Math.abs(loss)).toBe(0);
    expect(slope).toBeGreaterThanOrEqual(0);
  });
});

// Newton's step on |q|^0.5 lands on the other side of zero, as far away, for ever; the chord's lands on zero.
test("a device with an exponent below 1 gives its chord, loss / airflow", () => {
  const run = makeRun("a", "fan", { device: { ratedLoss: 200, ratedAirflow: 0.3, exponent: 0.5 } });
  for (const airflow of [1e-6, 0.01, 0.3, 2]) {
    const loss = 200 * (airflow / 0.3) ** 0.5;
    expect(relative(settled(run, airflow).loss, loss)).toBeLessThan(1e-12);
    expect(relative(settled(run, airflow).slope, loss / airflow)).toBeLessThan(1e-12);
  }
});

describe("elementsOf says what stands at each upstream end", () => {
  const main = makeRun("main", "fan");

  test("hoods, junctions, lone leaks and nothing at all", () => {
    const { kind, cut } = elementsFor([
      main,
      makeRun("hood", "main", { hood: 1 }),
      makeRun("shut", "main", { gate: "shut" }),
      makeRun("leaking", "main", { gate: "shut", leakArea: 1e-4 }),
      makeRun("limb", "main"),
      makeRun("tight end", "limb", { gate: "shut" }),
    ]);
    expect([...kind]).toEqual([JUNCTION, OPEN_END, STILL, LEAK_ONLY, STILL, STILL]);
    expect([...cut]).toEqual([0, 0, 0, 0, 0, 0]);
  });

  test("whatever lies beyond a shut gate is cut off, its leaks too; the gate's own leak is not", () => {
    const { kind, cut } = elementsFor([
      main,
      makeRun("gated limb", "main", { gate: "shut", leakArea: 1e-4 }),
      makeRun("hood", "gated limb", { hood: 1 }),
      makeRun("leaking", "gated limb", { leakArea: 1e-4 }),
    ]);
    expect([...kind]).toEqual([JUNCTION, LEAK_ONLY, STILL, STILL]);
    expect([...cut]).toEqual([0, 0, 1, 1]);
  });

  // By hand: 100 mm: A = 0.00785398 m2, rho/(2 A^2) = 1.2/(2 x 6.16850e-5) = 9726.83 Pa s2/m6. A plain end of K 0.93:
  // 9045.96. A lone leak of 100 mm2: g = 0.6e-4/0.00785398 = 0.00763944, (1 - g^2)/g^2 = 17133.7 times 9726.83 = 1.66656e8.
  test("and what it costs, by hand", () => {
    const { rows, starts } = elementsFor([
      main,
      makeRun("hood", "main"),
      makeRun("leaking", "main", { gate: "shut", leakArea: 1e-4 }),
    ]);
    const of = (run: number, column: number): number => rows[starts[run]! + column]!;
    expect(relative(of(0, VELOCITY), 9726.83)).toBeLessThan(1e-5);
    expect(relative(of(1, END), 9045.96)).toBeLessThan(1e-5);
    expect(relative(of(2, LEAK_SHARE), 0.00763944)).toBeLessThan(1e-5);
    expect(relative(of(2, END), 1.66656e8)).toBeLessThan(2e-5);
  });
});

test("each suction run has its row after those of all that join it, and those after the fan have theirs behind, and the fan the last", () => {
  fc.assert(
    fc.property(trees, (runs) => {
      const network = buildNetwork(runs);
      const { rows, starts, down, fan, order } = elementsOf(network, AIR);
      expect([...starts].sort((a, b) => a - b)).toEqual(runs.map((_, place) => place * WIDTH));
      expect(fan).toBe(runs.length * WIDTH);
      expect(rows).toHaveLength(fan + WIDTH);
      order.forEach((run, place) => {
        const to = network.joins[run]!;
        expect(starts[run]).toBe(place * WIDTH);
        expect(down[place]).toBe(to < 0 ? fan : starts[to]);
        if (to >= 0) expect(starts[to]).toBeGreaterThan(starts[run]!);
      });
    }),
    { numRuns: 40 },
  );
});

test("memory in which a larger network stood holds a smaller one as new memory does", () => {
  const room = roomFor(9);
  room.rows.fill(7);
  for (const column of [room.starts, room.down, room.kind, room.shut, room.cut, room.meets]) column.fill(1);
  const network = buildNetwork([
    makeRun("main", "fan", { length: 3, roughness: 1e-4 }),
    makeRun("saw", "main", { hood: 1, hoseLength: 1 }),
    makeRun("tight", "main", { gate: "shut" }),
  ]);
  const [used, fresh] = [elementsOf(network, AIR, room), elementsOf(network, AIR)];
  for (const key of ["rows", "starts", "kind", "shut", "cut", "meets"] as const)
    expect([...used[key].slice(0, fresh[key].length)]).toEqual([...fresh[key]]);
});
