import { velocityPressure } from "../../src/core/air/velocityPressure";
import { parseFittingList } from "../../src/core/fittings/fittingList";
import { coefficientInAir } from "../../src/core/fittings/slowAir";
import { frictionPerLength } from "../../src/core/friction/frictionLoss";
import { reynoldsNumber } from "../../src/core/friction/reynoldsNumber";
import { meanVelocity, sectionArea } from "../../src/core/section/section";
import { toSI, unitOf } from "../../src/reference/quantities";
import { builtFunctions } from "./builtFunctions";
import { timeRatio } from "./measure";
import { ratio, type Row } from "./row";

const CELLS = 10_000;
const SIDE = Math.sqrt(CELLS);
const [WALL, DENSITY] = [9e-5, 1.2]; // m, kg/m3: what FRICTION takes when nothing is typed is as good
const LIST = "elbow 1.5 x2; branch 30";
const DIAMETER = 6;

const airflowIn = (value: number): number => toSI(value, unitOf("airflow", "IP"));
const diameterIn = (value: number): number => toSI(value, unitOf("diameter", "IP"));

let kept = 0; // so that the engine may not leave the work out

/** The built functions over ten thousand cells of each kind, against a bare loop of the core that computes the same. */
export function cells(dist: string): Row[] {
  const functions = builtFunctions(dist);
  const use =
    (name: string) =>
    (...args: unknown[]) =>
      void (kept += (functions.get(name)!(...args) as unknown[][]).length);
  const [friction, fittingLoss, velocity] = [use("FRICTION"), use("FITTINGLOSS"), use("VELOCITY")];
  const airflows = Array.from({ length: CELLS }, (_, index) => 100 + index / 10);
  const column = airflows.map((airflow) => [airflow]);
  const single = airflows.map((airflow) => [[airflow]]);
  const names = airflows.map((_, index) => [["galvanised", "corrugated hose", "smooth"][index % 3]]);
  const lists = airflows.map((_, index) => [index % 2 === 0 ? LIST : "elbow 1.5"]);
  const parsed = [LIST, "elbow 1.5"].map((text) => parseFittingList("fitting", text, diameterIn(1), "any"));

  const overAll = (of: (airflow: number, index: number) => number) => (): void => {
    for (let index = 0; index < CELLS; index++) kept += of(airflows[index]!, index);
  };
  const bareFriction = overAll((airflow) => frictionPerLength(airflowIn(airflow), diameterIn(DIAMETER), WALL, DENSITY));
  const bareFittings = overAll((airflow, index) => {
    const [flow, diameter] = [airflowIn(airflow), diameterIn(DIAMETER)];
    const pressure = velocityPressure(meanVelocity(flow, sectionArea(diameter, null)), DENSITY);
    return coefficientInAir(parsed[index % 2]!, diameter, reynoldsNumber(flow, diameter, DENSITY)) * pressure;
  });
  const across = Array.from({ length: SIDE }, (_, index) => 3 + index / 10);
  const bareVelocity = overAll((airflow, index) => meanVelocity(airflowIn(airflow), sectionArea(diameterIn(across[index % SIDE]!), null))); // prettier-ignore

  const loop = "a bare loop of the core";
  const rows = [
    ratio("10,000 cells of FRICTION in one call: numbers", loop, timeRatio(() => friction(column, [[DIAMETER]]), bareFriction), { atMost: 2 }), // prettier-ignore
    ratio("the same, a call each", loop, timeRatio(() => { for (const cell of single) friction(cell, [[DIAMETER]]); }, bareFriction), { atMost: 4 }), // prettier-ignore
    ratio("10,000 cells of FRICTION in one call: a material's name in each row", loop, timeRatio(() => friction(column, [[DIAMETER]], names), bareFriction)), // prettier-ignore
    ratio("10,000 cells of FITTINGLOSS in one call: a list of fittings in each row", loop, timeRatio(() => fittingLoss(column, [[DIAMETER]], lists), bareFittings)), // prettier-ignore
    ratio("100 by 100 cells of VELOCITY in one call: two dimensions", loop, timeRatio(() => velocity(column.slice(0, SIDE), [across]), bareVelocity)), // prettier-ignore
  ];
  if (!Number.isFinite(kept)) throw new Error("something that was computed was not finite");
  return rows;
}
