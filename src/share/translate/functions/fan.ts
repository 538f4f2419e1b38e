import { RATIO_LIMITS } from "../../../core/fan/fanLaws";
import { takes as airPower } from "../../../functions/fan/airpower";
import { takes as fanPressureTakes } from "../../../functions/fan/fanpressure";
import { takes as operatingPointTakes } from "../../../functions/fan/operatingpoint";
import { needed, optional, withoutUnits } from "../../../functions/signature";
import { cellOf, onAnySheet } from "../../formula/ranges";
import { scalar } from "../arrayRule";
import { elementOf } from "../element";
import { type CurveGiven, type CurvePlace, curvePlace, pressureOnCurve } from "../expressions/fanCurve";
import { meeting, type Meeting } from "../expressions/meeting";
import { isBlankOrZero, NO_ANSWER } from "../expressions/text";
import { optionalNumber } from "../readers";
import { type Argument, type CallContext, fixed, oneCell, type Translation, type Translator } from "../translation";
import { hasHump } from "../hasHump";
import { unitsOf } from "../unitsOf";
import { unitOf } from "../../../reference/quantities";
import { columnsOf, rowsOf } from "../../../sheets/rectangle";

const WRONG_SHAPE = "its curve is not two columns of cells";

const isCurve = (curve: Argument | null): curve is Argument & CurveGiven =>
  curve?.range !== undefined && columnsOf(curve.range) === 2;

/** The cubic does not change with the units, so the curve's own numbers serve in both systems. */
const fanPressure: Translator = (args, context) => {
  const curve = args[0] ?? null;
  if (unitsOf(args[2] ?? null, context) === null) return fixed("its units are worked out by a formula or are none");
  if (!isCurve(curve)) return fixed(WRONG_SHAPE);
  const place = curvePlace(curve, context.workings);
  const { limits } = fanPressureTakes.takes.airflow;
  return scalar(withoutUnits({ airflow: needed("ratio", limits) }), ({ airflow }) =>
    pressureOnCurve(place, onAnySheet(airflow, context.sheet), context.workings),
  )([args[1] ?? null], context);
};

/** The design points of a call; their own numbers serve in both systems, as those of the curve do. */
const DESIGN = withoutUnits({
  airflow: needed("ratio", operatingPointTakes.takes.airflow.limits),
  pressure: needed("ratio", operatingPointTakes.takes.pressure.limits),
  fixed: optional("ratio", operatingPointTakes.takes.fixed.limits, 0),
});

const operatingPoint: Translator = (args, context) => {
  const [curve = null, airflow = null, pressure = null, fixedPart = null, units = null] = args;
  const system = unitsOf(units, context);
  if (system === null) return fixed("its units are worked out by a formula or are none");
  if (!isCurve(curve)) return fixed(WRONG_SHAPE);
  const place = curvePlace(curve, context.workings);
  const given = [airflow, pressure, fixedPart];
  const each = (read: (found: Meeting) => string): Translation =>
    meetings(place, rowsOf(curve.range), given, context, read);
  const hump = hasHump(curve);
  const [flows, pressures] = [
    each((found) => onePoint(found, hump, found.airflow)),
    each((found) => onePoint(found, hump, found.pressure)),
  ];
  if (flows.kind === "fixed") return flows;
  if (pressures.kind === "fixed") return pressures;
  if (!hump) return sideBySide(flows.formulas, pressures.formulas);
  if (flows.formulas[0]!.length > 1) return fixed("its curve has a hump, and one note speaks of several design points");
  const notes = each((found) => humpNote(found, unitOf("airflow", system).label));
  return notes.kind === "fixed" ? notes : sideBySide(flows.formulas, pressures.formulas, notes.formulas);
};

/** Without a cell for its note, a point of several is no answer. */
const onePoint = ({ crossings }: Meeting, hasNote: boolean, value: string): string =>
  hasNote ? value : `IF(${crossings}>1,${NO_ANSWER},${value})`;

function meetings(
  curve: CurvePlace,
  rows: number,
  given: readonly (Argument | null)[],
  context: CallContext,
  read: (found: Meeting) => string,
): Translation {
  const build = scalar(DESIGN, (design) => {
    const on = (text: string): string => onAnySheet(text, context.sheet);
    const points = { airflow: on(design.airflow), pressure: on(design.pressure), fixed: on(design.fixed) };
    return {
      value: read(meeting(curve, rows, points, context.workings)),
      checks: [`${design.pressure}>=${design.fixed}`],
    };
  });
  return build(given, context);
}

const sideBySide = (...blocks: readonly (readonly (readonly string[])[])[]): Translation => ({
  kind: "cells",
  formulas: blocks[0]!.map((_, row) => blocks.flatMap((block) => block[row]!)),
});

/** What the function says where they meet at more than one point. */
function humpNote({ airflow, crossings, fromRest }: Meeting, unit: string): string {
  const less = `ROUND(${fromRest},3-INT(LOG(${fromRest})))`;
  const stable = `IF(${fromRest}<${airflow},"two are stable; from rest the fan stays at "&${less}&" ${unit}","this is the stable one")`;
  return `IF(${crossings}>1,"the curve has a hump: "&${crossings}&" points meet, "&${stable},"")`;
}

const RATIO = { quantity: "ratio", limits: RATIO_LIMITS, zero: "usual" } as const;

const fanLaw: Translator = (args, context) => {
  const curve = args[0] ?? null;
  if (!isCurve(curve)) return fixed(WRONG_SHAPE);
  const place = curvePlace(curve, context.workings);
  const ratio = (index: number, usual: string) => {
    const given = args[index] ?? null;
    const element = given === null ? null : elementOf(given, 0, 0, context);
    return optionalNumber(element, RATIO, usual, "IP");
  };
  const [speed, air, size] = [ratio(1, NO_ANSWER), ratio(2, "1"), ratio(3, "1")];
  if (args[1] == null) return oneCell(NO_ANSWER);
  const checks = [...speed.checks, ...air.checks, ...size.checks];
  const guarded = (value: string): string =>
    checks.length === 0 ? value : `IF(AND(${checks.join(",")}),${value},${NO_ANSWER})`;
  const factors = [`${speed.value}*${size.value}^3`, `${speed.value}^2*${size.value}^2*${air.value}`];
  const formulas = Array.from({ length: rowsOf(curve.range) }, (_, row) =>
    factors.map((factor, column) => {
      const cell = cellOf(curve.range, row, column, context.sheet);
      const heading = `IF(${isBlankOrZero(cell)},"",${cell})`;
      const kind = place.kind(row);
      return `IF(${kind}="point",${guarded(`${cell}*${factor}`)},IF(${kind}="heading",${heading},""))`;
    }),
  );
  return { kind: "cells", formulas };
};

export const fan: Readonly<Record<string, Translator>> = {
  FANPRESSURE: fanPressure,
  FANLAW: fanLaw,
  OPERATINGPOINT: operatingPoint,
  AIRPOWER: scalar(airPower, ({ airflow, pressure, efficiency }) => `${airflow}*${pressure}/${efficiency}`),
};
