import { frictionPerLength } from "../../src/core/friction/frictionLoss";
import { builtFunctions } from "./builtFunctions";
import { timeRatio } from "./measure";
import { ratio, type Row } from "./row";

const CELLS = 10_000;
const [WALL, DENSITY] = [9e-5, 1.2]; // m, kg/m3: what FRICTION takes when nothing is typed is as good

/** FRICTION of the built functions over a column of cells, in one call and in one call each, against the bare core. */
export function wholeColumn(dist: string): Row[] {
  const friction = builtFunctions(dist).get("FRICTION")!;
  const airflows = Array.from({ length: CELLS }, (_, index) => 100 + index / 10);
  const column = airflows.map((airflow) => [airflow]);
  const cells = airflows.map((airflow) => [[airflow]]);
  const diameter = [[6]];
  let kept = 0; // so that the engine may not leave the work out
  const oneCall = (): void => void (kept += (friction(column, diameter) as number[][]).length);
  const manyCalls = (): void => {
    for (const cell of cells) kept += (friction(cell, diameter) as number[][]).length;
  };
  const bare = (): void => {
    for (const airflow of airflows) kept += frictionPerLength(airflow * 0.000471947, 0.1524, WALL, DENSITY);
  };
  const rows = [
    ratio("10 000 cells of FRICTION in one call / the core alone", timeRatio(oneCall, bare)),
    ratio("10 000 cells of FRICTION, a call each / the core alone", timeRatio(manyCalls, bare)),
  ];
  if (!Number.isFinite(kept)) throw new Error("a friction loss was not finite");
  return rows;
}
