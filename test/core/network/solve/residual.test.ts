import type { Network } from "../../../../src/core/network/network";
import { type Residual, residualOf, type State } from "../../../../src/core/network/solve/residual";
import { flowsOf, points } from "../../../support/flows";
import { AIR, makeRun } from "../../../support/runs";

// One answer, and the same answer with one number wrong by a share: the misfit must show, at that run.
const runs = [
  makeRun("main", "fan", { diameter: 0.16, coefficient: 0.5, leakArea: 1e-4 }),
  makeRun("saw", "main", { diameter: 0.125, hood: 0.5, coefficient: 1 }),
  makeRun("sander", "main", { hood: 1, length: 4, roughness: 0.00015 }),
  makeRun("tight", "main", { gate: "shut" }),
];

/** The answer, found when a test asks for it: a solver that throws then fails that test. */
function answer(): { state: State; network: Network; fanPressure: number } {
  const { airflow, leak, suction, network, fanPressure } = flowsOf(runs, points([0, 2000], [0.5, 0]));
  const arriving = airflow.map((carried, index) => carried - leak[index]!);
  return { state: { airflow, arriving, leak, suction }, network, fanPressure };
}

const still = (index: number): boolean => runs[index]!.name === "tight";

const wrong = (column: keyof State, run: number, factor: number): State => {
  const { state } = answer();
  return { ...state, [column]: state[column].map((value, index) => (index === run ? value * factor : value)) };
};

/** The misfit of a state where the fan holds a share of what it should. */
const measured = (given: State, share = 1): Residual =>
  residualOf(answer().network, given, still, share * answer().fanPressure, AIR);

test("an answer misses nothing", () => expect(measured(answer().state).residual).toBeLessThan(1e-12));

test.each<[string, keyof State, number]>([
  ["a hood's airflow", "airflow", 1],
  ["what arrives at a hood", "arriving", 2],
  ["what arrives at a junction", "arriving", 0],
  ["a leak", "leak", 0],
  ["a hood's suction", "suction", 2],
])("%s that is wrong by 1 in 1000 is seen and named", (_, column, run) => {
  for (const factor of [1.001, 0.999]) {
    const { residual, worst } = measured(wrong(column, run, factor));
    expect(residual).toBeGreaterThan(1e-7);
    // a hood's airflow also enters the junction's balance
    expect(column === "airflow" ? [0, 1] : [run]).toContain(worst);
  }
});

test("a junction's suction that is wrong is seen at one of the runs that meet there", () => {
  expect(measured(wrong("suction", 0, 1.001)).residual).toBeGreaterThan(1e-5);
});

test("a fan that holds another suction is seen at the last run", () => {
  const { residual, worst } = measured(answer().state, 1.01);
  expect(residual).toBeGreaterThan(1e-3);
  expect(worst).toBe(0);
});

test("a leak where no leak is cannot be right, and neither can a number that is none", () => {
  const { state } = answer();
  const leaky = { ...state, leak: state.leak.map((leak, index) => (index === 1 ? 1e-6 : leak)) };
  expect(measured(leaky)).toEqual({ residual: Infinity, worst: 1 });
  expect(measured(wrong("suction", 2, NaN))).toEqual({ residual: NaN, worst: 2 });
});
