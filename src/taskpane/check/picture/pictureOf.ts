import { STANDARD_DENSITY } from "../../../core/air/constants";
import { budgetColumns, scenarioColumns, solveColumns, type SolveKey } from "../../../reference/answerColumns";
import { headerOfColumn, placeOfColumn } from "../../../reference/columnsOfAnswers";
import { fromSI, type UnitSystem, unitOf } from "../../../reference/quantities";
import type { Cell, Matrix } from "../../functions/callFunction";
import type { Calculate } from "../../functions/askWorker";
import { curveToSolve, curveCells, densityAsked } from "../askedBeside";
import { type BookCurve, curveFor } from "../curves";
import type { BookRuns } from "../runs";
import { matrixOf, openIn, solvedIn } from "../callArguments";
import type { Seen } from "../seenIn";
import { type LookedThrough, numberIn, tablesWith, textIn } from "../tablesIn";
import { type PictureRun, runsOfPicture } from "./runsOfPicture";
import { itemAt, lastOf } from "../../../reference/itemAt";

export interface Point {
  readonly x: number; // airflow
  readonly y: number; // pressure
}

/** What the pictures draw, in the units of the budget. The fan's part is null where the book has no curve. */
export interface Picture {
  readonly system: UnitSystem;
  readonly runs: readonly PictureRun[];
  readonly fan: FanPicture | null;
}

export interface FanPicture {
  readonly curve: readonly Point[];
  readonly ducts: readonly Point[];
  readonly works: Point;
  readonly scenarios: readonly { readonly name: string; readonly point: Point }[];
}

const CURVE_POINTS = 24;
const SPEEDS = [0.25, 0.4, 0.55, 0.7, 0.85, 1, 1.1, 1.2]; // of the fan's own: where it meets the ducts is a point of their curve

/** The ducts alone, and where the fan works on them; null where the book has no curve. */
export interface Ducts extends Pick<Picture, "system" | "runs"> {
  readonly works: Point | null;
  readonly gatesOf: string | null; // the sheet whose gates it is for; null for those of the runs table
}

/** Computes the ducts of the first budget of a book with the cell functions. A sentence where there is nothing to draw. */
export async function ductsOf(seen: Seen, calculate: Calculate): Promise<Ducts | string> {
  const [runs] = seen.runs;
  if (runs === undefined) return "There is no table of runs in this book, so there is nothing to draw.";
  const { system } = runs;
  const [args, curve] = [askedOf(seen, runs), curveToSolve(seen, runs)];
  if (curve === null) {
    const answer = await calculate({ id: "BUDGET", args: [args.runs, args.density, args.units] });
    if ("error" in answer) return `The budget has no answer: ${answer.message || answer.error}.`;
    const drawn = runsOfPicture(runs, answer.rows, budgetColumns);
    return drawn.length === 0
      ? "No run ends at the fan, so there is nothing to draw."
      : { system, runs: drawn, works: null, gatesOf: null };
  }
  const solved = await solve(args, curve, calculate);
  if (typeof solved === "string") return `The fan and the ducts have no answer: ${solved}.`;
  const gatesOf = solvedIn(seen.answers, runs)?.sheet ?? null;
  return { system, runs: runsOfPicture(runs, solved.rows, solveColumns), works: solved.works, gatesOf };
}

/**
 * Computes the picture of the first budget of a book. The ducts' own curve is where the fan at other speeds would meet them, so leaks and filters are in it.
 */
export async function pictureOf(seen: Seen, calculate: Calculate): Promise<Picture | string> {
  const drawn = await ductsOf(seen, calculate);
  const [runs] = seen.runs;
  if (typeof drawn === "string" || runs === undefined) return drawn as string;
  const { system, works } = drawn;
  const curve = curveFor(seen, system, curveCells(seen, runs));
  if (works === null || curve === undefined) return { system, runs: drawn.runs, fan: null };
  const asked = askedOf(seen, runs);
  const [line, ...others] = await Promise.all([
    smoothCurve(curve, asked.density, calculate),
    ...SPEEDS.map((speed) => solve(asked, atSpeed(curve, speed), calculate)),
  ]);
  const ducts = others.flatMap((other) => (typeof other === "string" ? [] : [other.works]));
  const top = Math.max(...line.map(({ y }) => y));
  const fan = { curve: line, ducts: ducts.filter(({ y }) => y <= top), works, scenarios: scenariosIn(seen.sheets) };
  return { system, runs: drawn.runs, fan };
}

const askedOf = (seen: Seen, runs: BookRuns): Asked => ({
  runs: matrixOf(runs),
  open: openIn(solvedIn(seen.answers, runs)),
  density: densityAsked(seen, runs),
  units: [[runs.system]],
});

interface Asked {
  readonly runs: Matrix;
  readonly open: Matrix | null;
  readonly density: Matrix | null;
  readonly units: Matrix;
}

type Rows = readonly (readonly Cell[])[];

const atSpeed = ({ points }: BookCurve, speed: number): Matrix =>
  points.map(([airflow, pressure]) => [airflow * speed, pressure * speed ** 2]);

async function solve(
  { runs, open, density, units }: Asked,
  curve: Matrix,
  calculate: Calculate,
): Promise<{ rows: Rows; works: Point } | string> {
  const answer = await calculate({ id: "SOLVE", args: [runs, curve, open, density, units] });
  if ("error" in answer) return answer.message === "" ? answer.error : answer.message;
  const { rows } = answer;
  const fan = lastOf(rows);
  const ofFan = (key: SolveKey): number => Number(fan[placeOfColumn(solveColumns, key)]);
  return { rows, works: { x: ofFan("airflow"), y: ofFan("staticSuction") } };
}

/** The curve as FANPRESSURE reads it, in the air that the book names: thinner air, less pressure. */
async function smoothCurve(
  { points, system }: BookCurve,
  density: Matrix | null,
  calculate: Calculate,
): Promise<Point[]> {
  const given = points.map(([airflow]) => airflow);
  const [least, most] = [Math.min(...given), Math.max(...given)];
  const airflows = Array.from({ length: CURVE_POINTS + 1 }, (_, i) => least + ((most - least) * i) / CURVE_POINTS);
  const answer = await calculate({
    id: "FANPRESSURE",
    args: [points.map((point) => [...point]), airflows.map((airflow) => [airflow]), [[system]]],
  });
  if ("error" in answer) return points.map(([x, y]) => ({ x, y }));
  const standard = fromSI(STANDARD_DENSITY, unitOf("density", system));
  const thickness = density === null ? 1 : Number(itemAt(density, 0)[0]) / standard;
  // an airflow of 0 counts as blank for a function, so that its own point has to be taken
  return answer.rows.flatMap(([pressure], i) => {
    const y = typeof pressure === "number" ? pressure : points.find(([airflow]) => airflow === airflows[i])?.[1];
    return y === undefined ? [] : [{ x: itemAt(airflows, i), y: y * thickness }];
  });
}

function scenariosIn(sheets: readonly LookedThrough[]): FanPicture["scenarios"] {
  const [name, airflow, pressure] = (["scenario", "fanAirflow", "fanPressure"] as const).map((key) =>
    headerOfColumn(scenarioColumns, key),
  ) as [string, string, string];
  return tablesWith(sheets, [name, airflow, pressure]).flatMap((table) =>
    table.rows.flatMap((row) => {
      const [x, y] = [numberIn(table.value(row, airflow)), numberIn(table.value(row, pressure))];
      return x === null || y === null ? [] : [{ name: textIn(table.value(row, name)), point: { x, y } }];
    }),
  );
}
