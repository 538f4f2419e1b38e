import { RATIO_LIMITS } from "../../../core/fan/fanLaws";
import { takes as airPower } from "../../../functions/fan/airpower";
import { takes as fanPressureTakes } from "../../../functions/fan/fanpressure";
import { needed, withoutUnits } from "../../../functions/signature";
import { cellOf, onAnySheet } from "../../formula/ranges";
import { scalar } from "../arrayRule";
import { elementOf } from "../element";
import { curvePlace, pressureOnCurve } from "../expressions/fanCurve";
import { isBlankOrZero, NO_ANSWER } from "../expressions/text";
import { optionalNumber } from "../readers";
import { type Argument, fixed, oneCell, type Translator } from "../translation";
import { unitsOf } from "../unitsOf";
import { columnsOf, rowsOf } from "../../../sheets/rectangle";

const WRONG_SHAPE = "its curve is not two columns of cells";

const isCurve = (curve: Argument | null): curve is Argument & { range: NonNullable<Argument["range"]> } =>
  curve?.range !== undefined && columnsOf(curve.range) === 2;

/** The cubic does not change with the units, so the curve's own numbers serve in both systems. */
const fanPressure: Translator = (args, context) => {
  const curve = args[0] ?? null;
  if (unitsOf(args[2] ?? null) === null) return fixed("its units are worked out by a formula or are none");
  if (!isCurve(curve)) return fixed(WRONG_SHAPE);
  const place = curvePlace(curve.range, context.workings);
  const { limits } = fanPressureTakes.takes.airflow;
  return scalar(withoutUnits({ airflow: needed("ratio", limits) }), ({ airflow }) =>
    pressureOnCurve(place, onAnySheet(airflow, context.sheet), context.workings),
  )([args[1] ?? null], context);
};

const RATIO = { quantity: "ratio", limits: RATIO_LIMITS, zero: "usual" } as const;

const fanLaw: Translator = (args, context) => {
  const curve = args[0] ?? null;
  if (!isCurve(curve)) return fixed(WRONG_SHAPE);
  const place = curvePlace(curve.range, context.workings);
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
  AIRPOWER: scalar(airPower, ({ airflow, pressure, efficiency }) => `${airflow}*${pressure}/${efficiency}`),
};
