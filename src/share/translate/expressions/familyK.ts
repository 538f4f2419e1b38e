import { fromSI, type UnitSystem, unitOf } from "../../../reference/quantities";
import { elbowAngleMultiplier } from "../../../reference/fittings/elbowAngleMultiplier";
import type { LossFamily, LossPoint } from "../../../reference/schema";
import { quotedText } from "../../references";
import type { LookupTables } from "../lookupTables";
import { type Line, lineBlock, lineHolds, type PrintedPoint, readLine } from "../tableBlocks/lineBlock";
import { NO_ANSWER, num } from "./text";
import { itemAt, lastOf } from "../../../reference/itemAt";

/**
 * K of one fitting or hood at a shape and an angle, linear between its printed points and #N/A outside them: the same as the
 * core's lossCoefficient. The points stand on the sheet of look-up tables.
 *
 * @param shape [-], or a diameter in the unit of `system`
 * @param angle [degrees]
 */
export function familyK(
  family: LossFamily,
  shape: string,
  angle: string,
  system: UnitSystem,
  tables: LookupTables,
): string {
  const lines = linesOf(family, system);
  const title = `Printed points of "${family.key}"${family.shape?.quantity === "diameter" ? `, ${unitOf("diameter", system).label}` : ""}`;
  const block = tables.ownBlock(`points ${family.key} ${system}`, () => lineBlock(title, lines));
  const value = (line: string, x: string): string => readLine(block, quotedText(line), x);
  const holds = (line: string, x: string): string => lineHolds(block, quotedText(line), x);
  // An axis that the fitting lacks stands at 0, or at #N/A where a number was typed for it.
  const unused = [family.shape === null ? shape : "0", family.angle === null ? angle : "0"]
    .filter((text) => text !== "0")
    .map((text) => `${text}=0`);
  const guarded = (checks: readonly string[], answer: string): string =>
    `IF(AND(${[...unused, ...checks].join(",")}),${answer},${NO_ANSWER})`;
  if (family.rule === "elbow")
    return guarded([holds(SHAPE, shape), holds(TURN, angle)], `${value(SHAPE, shape)}*${value(TURN, angle)}`);
  if (family.rule === "expansion")
    return guarded(
      [`${shape}>0`, `${shape}<=1`, holds(TURN, angle)],
      `MIN(${value(TURN, angle)}*(1-${shape}^2),(1-${shape})^2)`,
    );
  if (family.shape !== null && family.angle !== null) {
    const rows = shapesOf(family, system);
    const answer = rows.map((at, index) => `${hat(rows, index, shape)}*${value(rowName(at), angle)}`).join("+");
    return guarded(
      [`${shape}>=${num(itemAt(rows, 0))}`, `${shape}<=${num(lastOf(rows))}`, holds(rowName(itemAt(rows, 0)), angle)],
      answer,
    );
  }
  if (family.shape !== null) return guarded([holds(SHAPE, shape)], value(SHAPE, shape));
  if (family.angle !== null) return guarded([holds(TURN, angle)], value(TURN, angle));
  return guarded([], value(ALONE, "0")); // it is asked for only beside a number, which is unused
}

const SHAPE = "by shape";
const TURN = "by angle";
const ALONE = "alone";
const rowName = (shape: number): string => `by angle at ${shape}`;

function linesOf(family: LossFamily, system: UnitSystem): Line[] {
  const { points, rule } = family;
  const byAngle = (rows: readonly LossPoint[]): PrintedPoint[] =>
    rising(rows.map((row) => ({ at: row.angle!, value: row.coefficient, from: [row] })));
  const byShape = (): PrintedPoint[] =>
    rising(points.map((row) => ({ at: inUnit(family, row.shape!, system), value: row.coefficient, from: [row] })));
  if (rule === "elbow") {
    const turns = elbowAngleMultiplier.map((row) => ({ at: row.angle, value: row.value, from: [row] }));
    return [
      { name: SHAPE, points: byShape() },
      { name: TURN, points: rising(turns) },
    ];
  }
  if (rule === "expansion") return [{ name: TURN, points: byAngle(points) }];
  if (family.shape !== null && family.angle !== null)
    return shapesOf(family, system).map((at) => ({
      name: rowName(at),
      points: byAngle(points.filter(({ shape }) => inUnit(family, shape!, system) === at)),
    }));
  if (family.shape !== null) return [{ name: SHAPE, points: byShape() }];
  if (family.angle !== null) return [{ name: TURN, points: byAngle(points) }];
  return [{ name: ALONE, points: [{ at: 0, value: itemAt(points, 0).coefficient, from: [itemAt(points, 0)] }] }];
}

const rising = (points: readonly PrintedPoint[]): PrintedPoint[] => [...points].sort((a, b) => a.at - b.at);

const inUnit = (family: LossFamily, shape: number, system: UnitSystem): number =>
  family.shape?.quantity === "diameter" ? Number(fromSI(shape, unitOf("diameter", system)).toPrecision(12)) : shape;

const shapesOf = (family: LossFamily, system: UnitSystem): number[] =>
  [...new Set(family.points.map(({ shape }) => inUnit(family, shape!, system)))].sort((a, b) => a - b);

/** The share that a row has at x: 1 at its own place, falling to 0 at its neighbours'. */
function hat(rows: readonly number[], index: number, x: string): string {
  const [before, own, after] = [rows[index - 1], itemAt(rows, index), rows[index + 1]];
  const rise = before === undefined ? "1" : `(${x}-${num(before)})/${num(own - before)}`;
  const fall = after === undefined ? "1" : `(${num(after)}-${x})/${num(after - own)}`;
  return `MAX(0,MIN(1,${rise},${fall}))`;
}
