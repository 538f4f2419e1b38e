import { type OperatingPoint, operatingPoint } from "../../core/fan/operatingPoint";
import { type Quantity, unitOf } from "../../reference/quantities";
import { answerOf } from "../answer";
import { exampleCurve } from "../exampleTables";
import { readCurve } from "../fanTable/readCurve";
import type { Formula, Guide } from "../guide";
import type { Answered } from "../cellErrors";
import { inHost } from "../inHost";
import { FAN_CURVE } from "../letters";
import { ABOVE_ZERO, FROM_ZERO, needed, optional, PRESSURE, signature } from "../signature";

/** Of what stands behind the curve. */
export const takes = signature(
  { airflow: needed("airflow", ABOVE_ZERO), pressure: PRESSURE, fixed: optional("pressure", FROM_ZERO, 0) },
  "airflow",
);

/**
 * Airflow and pressure where the fan meets the system through a design point, in cfm and in.w.g. (SI: m³/h, Pa).
 * @customfunction OPERATINGPOINT
 * @param curve Two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa); a heading row is allowed
 * @param airflow Design airflow, cfm (SI: m³/h), above 0
 * @param pressure Pressure that the system asks for at it, in.w.g. (SI: Pa)
 * @param [fixed] Part of that pressure that does not change with airflow, in.w.g. (SI: Pa); 0 when left out
 * @param [units] "IP" (default) or "SI"
 * @returns airflow and pressure
 */
export function operatingpoint(
  curve: unknown[][],
  airflow: unknown[][],
  pressure: unknown[][],
  fixed?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return inHost(units, (system) => {
    const fan = readCurve(curve, system);
    const each = (gives: Quantity, part: keyof OperatingPoint): Answered[][] =>
      answerOf(
        { ...takes, gives },
        [airflow, pressure, fixed, units],
        (point) => operatingPoint(fan, point.airflow, point.pressure, point.fixed)[part],
      );
    const [flows, pressures, crossings, fromRest] = [
      each("airflow", "airflow"),
      each("pressure", "pressure"),
      each("ratio", "crossings"),
      each("airflow", "fromRest"),
    ];
    const { label } = unitOf("airflow", system);
    const notes = crossings.map((row, index) => humpNote(row, flows[index]!, fromRest[index]!, label));
    const several = notes.some((note) => note !== "");
    return flows.map((row, index) => [...row, ...pressures[index]!, ...(several ? [notes[index]!] : [])]);
  });
}

/** Which design points of a row have several answers, since the curve rises somewhere. */
function humpNote(
  crossings: readonly Answered[],
  flows: readonly Answered[],
  fromRest: readonly Answered[],
  unit: string,
): string {
  const several = crossings.flatMap((count, index) =>
    typeof count === "number" && count > 1 ? [{ count, index }] : [],
  );
  if (several.length === 0) return "";
  if (crossings.length === 1) {
    const less = Number(fromRest[0]);
    const stable =
      less < Number(flows[0])
        ? `two are stable; from rest the fan stays at ${Number(less.toPrecision(4))} ${unit}`
        : "this is the stable one";
    return `the curve has a hump: ${several[0]!.count} points meet, ${stable}`;
  }
  const places = several.map(({ count, index }) => `${count} points meet at design point ${index + 1}`);
  return `the curve has a hump: ${places.join(", ")}; the answers are the stable ones`;
}

export const guide: Guide = {
  maths: "Where the curve meets p = p fixed + (p − p fixed) (Q / Q design)²",
  source: "abulencia2009",
  basis: "second-hand",
  limits: "For a system without leaks or gates. SOLVE takes the whole table of runs.",
  cautions: ["wheel over-speed", "flue draught"],
  also: ["static pressure", "system curve", "duty point", "blower"],
  example: { asks: "A system that asks for 2 in.w.g. at 1000 cfm", args: [exampleCurve, "1000", "2"] },
};

export const formula: Formula = {
  tex: ["p(Q) = p_\\text{fixed} + (p_0 - p_\\text{fixed})\\left(\\frac{Q}{Q_0}\\right)^2"],
  letters: {
    "p(Q)": FAN_CURVE,
    p_0: "pressure asked for at the design airflow Q_0",
    "p_\\text{fixed}": "part of it that does not change with airflow",
  },
};
