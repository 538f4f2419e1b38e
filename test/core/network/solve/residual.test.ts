import { residualOf } from "../../../../src/core/network/solve/residual";
import { flowsOf, points } from "../../../support/flows";
import { AIR, makeRun } from "../../../support/runs";

// One answer, and the same answer with one number wrong by a share: the misfit must show, at that run.
const runs = [
  makeRun("main", "fan", { diameter: 0.16, coefficient: 0.5, leakArea: 1e-4 }),
  makeRun("saw", "main", { diameter: 0.125, hood: 0.5, coefficient: 1 }),
  makeRun("sander", "main", { hood: 1, length: 4, roughness: 0.00015 }),
  makeRun("tight", "main", { gate: "shut" }),
];
const flows = flowsOf(runs, points([0, 2000], [0.5, 0]));
const arriving = flows.airflow.map((airflow, index) => airflow - flows.leak[index]!);
const state = { airflow: flows.airflow, arriving, leak: flows.leak, suction: flows.suction };
const still = (index: number): boolean => runs[index]!.name === "tight";

const wrong = (column: keyof typeof state, run: number, factor: number) => ({
  ...state,
  [column]: state[column].map((value, index) => (index === run ? value * factor : value)),
});

const measured = (given: typeof state, suctionAtFan = flows.fanPressure) =>
  residualOf(flows.network, given, still, suctionAtFan, AIR);

test("an answer misses nothing", () => expect(measured(state).residual).toBeLessThan(1e-12));

test.each<[string, keyof typeof state, number]>([
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
  const { residual, worst } = measured(state, flows.fanPressure * 1.01);
  expect(residual).toBeGreaterThan(1e-3);
  expect(worst).toBe(0);
});

test("a leak where no leak is cannot be right, and neither can a number that is none", () => {
  const leaky = { ...state, leak: state.leak.map((leak, index) => (index === 1 ? 1e-6 : leak)) };
  expect(measured(leaky)).toEqual({ residual: Infinity, worst: 1 });
  expect(measured(wrong("suction", 2, NaN))).toEqual({ residual: NaN, worst: 2 });
});
