import { dischargeLoss } from "../../../../src/core/network/dischargeLoss";
import { afterFan } from "../../../../src/core/network/solve/afterFan";
import { elementsOf } from "../../../../src/core/network/solve/elements";
import { buildNetwork } from "../../../../src/core/network/tree";
import { AIR, makeRun } from "../../../support/runs";

const saw = makeRun("saw", "fan", { hood: 1 });
const filter = makeRun("filter", "chimney", { side: "discharge", diameter: 0.2, coefficient: 0.4, device: { ratedLoss: 250, ratedAirflow: 0.4, exponent: 1 } }); // prettier-ignore
const chimney = makeRun("chimney", "", { side: "discharge", diameter: 0.15, coefficient: 1.3, exitCoefficient: 1, mitreCoefficient: 0.3, length: 3, hoseLength: 1, roughness: 1e-4 }); // prettier-ignore

const linesOf = (near: number, ...after: ReturnType<typeof makeRun>[]) => {
  const network = buildNetwork([saw, ...after]);
  const elements = elementsOf(network, AIR);
  const settled = Array.from({ length: 6 }, () => afterFan(elements, network.discharge, near));
  const whole = (airflow: number): number =>
    network.discharge.reduce((sum, index) => {
      const { friction, fittings, device } = dischargeLoss(network, index, airflow, AIR);
      return sum + friction + fittings + device;
    }, 0);
  return { line: settled.at(-1)!, whole };
};

// The other side is the loss as the budget's pass counts it, with the exit against the fan's outlet and friction solved anew.
test("what the runs after the fan lose has the value and the slope of their law at the airflow that it is told", () => {
  for (const near of [0.02, 0.2, 0.6]) {
    const { line, whole } = linesOf(near, filter, chimney);
    const step = 1e-5 * near;
    const slope = (of: (airflow: number) => number): number => (of(near + step) - of(near - step)) / (2 * step);
    expect(Math.abs(line(near) / whole(near) - 1)).toBeLessThan(1e-12);
    expect(Math.abs(slope(line) / slope(whole) - 1)).toBeLessThan(1e-6);
  }
});

test("it is the law itself at any airflow where that is straight or a square, and nothing without such runs", () => {
  const { line, whole } = linesOf(0.3, { ...filter, to: "" });
  for (const airflow of [0, 0.1, 0.9]) expect(line(airflow)).toBeCloseTo(whole(airflow), 9);
  expect(linesOf(0.3).line(0.5)).toBe(0);
});
