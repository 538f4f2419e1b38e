import { FASTEST_READING } from "../../../core/measuring/traverseVelocity";
import { holds } from "../../../core/measuring/traversePoints";
import { plain } from "../../../core/naming/findNamed";
import { DUCT_SIZE } from "../../../core/section/section";
import { takes as airflowError } from "../../../functions/measuring/airflowerror";
import { takes as correctedReading } from "../../../functions/measuring/correctedreading";
import { takes as pitotVelocity } from "../../../functions/measuring/pitotvelocity";
import { DENSITY } from "../../../functions/signature";
import { unitOf, type UnitSystem } from "../../../reference/quantities";
import { offeredTraverses, type TraverseRow, type TraverseRule } from "../../../reference/traverseFractions";
import { NOT_READ, STILL } from "../../../reference/zeroWords";
import { cellOf } from "../../formula/ranges";
import { type RangeRef, rangeText } from "../../../sheets/rangeRef";
import { scalar } from "../arrayRule";
import { elementOf } from "../element";
import { both, fromSIText, inSI, isOneOf, NO_ANSWER, num, plainName, within } from "../expressions/text";
import { roundArea } from "../expressions/flow";
import { optionalNumber } from "../readers";
import { type Argument, type CallContext, fixed, oneCell, type Translation, type Translator } from "../translation";
import { unitsOf } from "../unitsOf";
import { difference } from "./difference";
import { columnsOf, rowsOf } from "../../../sheets/rectangle";

/** What one cell shows now as a word; null where it is blank, undefined where it cannot be told. */
function wordNow(arg: Argument | null): string | null | undefined {
  if (arg === null) return null;
  const value =
    arg.computed === true || arg.value.length > 1 || arg.value[0]!.length > 1 ? undefined : arg.value[0]![0];
  if (value === null || value === 0 || value === "") return null;
  return typeof value === "string" ? plain(value) : undefined;
}

/** Each reading gets a cell of the workings with the velocity [m/s] it stands for, blank where nobody read. */
const traverse: Translator = (args, context) => {
  const [readings, kind, density] = [args[0] ?? null, args[1] ?? null, args[2] ?? null];
  const units = unitsOf(args[3] ?? null, context);
  const word = wordNow(kind);
  if (units === null || word === undefined) return fixed("its units or its kind are worked out by a formula");
  if (readings === null) return oneCell(NO_ANSWER);
  if (readings.range === undefined) return fixed("its readings are no range of cells");
  const byVelocity = word === null || word === "velocity";
  if (!byVelocity && word !== "velocity pressure" && word !== "pressure") return oneCell(NO_ANSWER);
  const element = density === null ? null : elementOf(density, 0, 0, context);
  const air = optionalNumber(element, DENSITY, num(DENSITY.usual), units);
  const rho = context.workings.cell(air.value, context.sheet);
  const velocities = velocityCells(readings.range, byVelocity ? null : rho, units, context);
  const checks = [
    ...air.checks,
    ...(kind?.range === undefined ? [] : [sameWord(kind, word)]),
    `COUNT(${velocities})>0`,
  ];
  const mean = fromSIText(`AVERAGE(${velocities})`, "velocity", units);
  return oneCell(`IF(${both(checks)},${mean},${NO_ANSWER})`);
};

/** @param density the cell that holds it where the readings are velocity pressures */
function velocityCells(
  readings: RangeRef,
  density: string | null,
  units: UnitSystem,
  { workings }: CallContext,
): string {
  const one = (row: number, column: number): string => {
    const cell = cellOf(readings, row, column, workings.sheet.name);
    const si = inSI(cell, density === null ? "velocity" : "pressure", units);
    const velocity = density === null ? si : `SQRT(2*${si}/${density})`;
    const right = `IF(${cell}>0,IF(${velocity}<=${FASTEST_READING},${velocity},${NO_ANSWER}),${NO_ANSWER})`;
    const word = `IF(${isOneOf(cell, STILL)},0,IF(${isOneOf(cell, NOT_READ)},"",${NO_ANSWER}))`;
    return `IF(ISNUMBER(${cell}),${right},${word})`;
  };
  const [rows, columns] = [rowsOf(readings), columnsOf(readings)];
  const place = workings.place(rows, columns, () =>
    Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => one(row, column))),
  );
  return rangeText(place);
}

/** The word in a cell is still the one for which the formula was made. */
const sameWord = ({ text }: Argument, word: string | null): string =>
  word === null ? `OR(${text}=0,TRIM(${text})="")` : `${plainName(text)}="${word}"`;

const RULES: readonly TraverseRule[] = ["log-linear", "log-Tchebycheff"];

const traversePoints: Translator = (args, context) => {
  const [diameter, points, rule] = [args[0] ?? null, args[1] ?? null, args[2] ?? null];
  const units = unitsOf(args[3] ?? null, context);
  const word = wordNow(rule);
  if (units === null || word === undefined || points?.computed === true || diameter?.computed === true)
    return fixed("how many points it has hangs on a formula");
  const named = word === null ? RULES[0]! : RULES.find((one) => plain(one) === word);
  const size = diameter?.value[0]?.[0];
  if (named === undefined || diameter === null || typeof size !== "number") return oneCell(NO_ANSWER);
  const count = points?.value[0]?.[0] ?? null;
  const asked = typeof count === "number" && count !== 0 ? count : null;
  const rows = offeredTraverses(named);
  const usual = asked === null;
  const row = usual
    ? rows.find((one) => one.usual !== null && holds(one.usual, size * unitOf("diameter", units).factor))
    : rows.find(({ fractions }) => fractions.length === asked);
  if (row === undefined) return oneCell(NO_ANSWER);
  const { text } = elementOf(diameter, 0, 0, context);
  const checks = [
    `ISNUMBER(${text})`,
    ...within(text, DUCT_SIZE, "diameter", units),
    ...(usual ? within(text, row.usual!, "diameter", units) : []),
    ...(points?.range === undefined
      ? []
      : [usual ? `OR(${points.text}=0,TRIM(${points.text})="")` : `${points.text}=${asked}`]),
    ...(rule?.range === undefined ? [] : [sameWord(rule, word)]),
  ];
  return depths(row, text, checks);
};

function depths(row: TraverseRow, width: string, checks: readonly string[]): Translation {
  const formulas = row.fractions.map((fraction) => [
    `IF(AND(${checks.join(",")}),${num(fraction)}*${width},${NO_ANSWER})`,
  ]);
  return { kind: "cells", formulas };
}

export const measuring: Readonly<Record<string, Translator>> = {
  PITOTVELOCITY: scalar(pitotVelocity, ({ pressure, density }) => `SQRT(2*${pressure}/${density})`),
  AIRFLOWERROR: scalar(airflowError, ({ velocity, diameter, percent, floor, diametererror }) => ({
    value: `${roundArea(diameter)}*SQRT((${percent}/100*${velocity})^2+${floor}^2+(2*${velocity}*${diametererror}/${diameter})^2)`,
    checks: [`${diametererror}<${diameter}`],
  })),
  CORRECTEDREADING: scalar(
    correctedReading,
    ({ reading, areaentered, areatrue }) => `${reading}*${areatrue}/${areaentered}`,
  ),
  TRAVERSE: traverse,
  DIFFERENCE: difference,
  TRAVERSEPOINTS: traversePoints,
};
