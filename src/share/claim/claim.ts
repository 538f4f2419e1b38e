import { shown as quoted } from "../../core/errors";
import { findNamed, nearestNames } from "../../core/naming/findNamed";
import { factName } from "../../core/naming/factName";
import { claimColumns } from "../../reference/answerColumns";
import { headerIn } from "../../reference/columnsOfAnswers";
import { claimFacts } from "../../reference/claimFacts";
import type { UnitSystem } from "../../reference/quantities";
import type { RangeRef } from "../../sheets/rangeRef";
import { columnsOf, rowsOf } from "../../sheets/rectangle";
import { blockCells, blockHeight, blockPlace } from "../budget/block";
import { quotedText } from "../references";
import { type Argument, type CallContext, fixed, type ShownValue, type Translator } from "../translate/translation";
import { unitsOf } from "../translate/unitsOf";
import { inlet, systemAirflow } from "./checks/air";
import { type Check, givenFacts } from "./checks/checked";
import { faceVelocity, filterRating } from "./checks/filter";
import { hoseFlow } from "./checks/hose";
import { airPower, efficiency, supply, unratedPower } from "./checks/power";
import { soundLevel } from "./checks/sound";
import { tip, wheelFlow } from "./checks/wheel";
import {
  FACT_ROWS,
  factColumns,
  type FactPlace,
  lineColumns,
  type LinePlace,
  lineScalars,
  rowColumns,
  type RowPlace,
  rowScalars,
} from "./claimNames";
import { claimTables } from "./claimTables";
import { factColumnsOf } from "./factCells";
import { inShort, LAST_LINES, lineCells, lineScalarCells, type Lines } from "./lineCells";
import { type NearNames, rowCells, rowScalarCells } from "./rowCells";
import { newSteps, STEPS_WIDE } from "./steps";

/** In the order of the answer. */
const checks: readonly Check[] = [
  systemAirflow,
  inlet,
  unratedPower,
  airPower,
  supply,
  efficiency,
  tip,
  wheelFlow,
  faceVelocity,
  filterRating,
  hoseFlow,
  soundLevel,
];

/** More rows than this are no data sheet. */
const MOST_ROWS = 100;

/** CLAIM as plain formulas: the facts read, every check worked out on the sheet of workings, and those that apply in a row each. */
export const claim: Translator = ([facts, units], context) => {
  const system = unitsOf(units ?? null, context);
  if (system === null) return fixed("its units are worked out by a formula or are none");
  if (facts?.range === undefined || columnsOf(facts.range) !== 2)
    return fixed("its facts are not two columns of cells");
  if (rowsOf(facts.range) > MOST_ROWS) return fixed(`its facts have more than ${MOST_ROWS} rows`);
  if (facts.value.flat().some(isOtherError))
    return fixed("an error stands among its facts, which plain formulas cannot name");
  const range = facts.range;
  const height = workings({ sheet: "", top: 1, left: 1, bottom: 1, right: 1 }, range, facts.value, system, context)
    .cells.length;
  const width = Math.max(rowColumns.length, factColumns.length, lineColumns.length, STEPS_WIDE);
  let answer: string[][] = [];
  context.workings.place(height, width, (there) => {
    const { cells, lines } = workings(there, range, facts.value, system, context);
    answer = answerCells(lines, rowsOf(range), system);
    return cells;
  });
  return { kind: "cells", formulas: answer };
};

/** A name that no fact has while the copy is made, and those near to it, which formulas cannot look for. */
function nearNames(name: ShownValue | undefined): NearNames | null {
  if (typeof name !== "string" || name.trim() === "") return null;
  const plain = factName(name);
  if (findNamed(claimFacts, plain) !== undefined) return null;
  return { plain, near: ` (nearest: ${nearestNames(claimFacts, plain).map(quoted).join(", ")})` };
}

const isOtherError = (value: ShownValue): boolean =>
  typeof value === "object" && value !== null && value.error !== "#N/A";

/** The blocks one below the other: the rows of the table, the facts, the lines of the answer, and the steps of the checks. */
function workings(
  there: RangeRef,
  range: RangeRef,
  shown: Argument["value"],
  system: UnitSystem,
  context: CallContext,
) {
  const tables = claimTables(context.tables);
  const count = rowsOf(range) + 1; // one for a table that somebody made longer
  const below = (top: number): RangeRef => ({ ...there, top });
  const rows: RowPlace = blockPlace(there, count, rowColumns, rowScalars);
  const factsTop = there.top + blockHeight(count) + 1;
  const facts: FactPlace = blockPlace(below(factsTop), FACT_ROWS, factColumns, []);
  const linesTop = factsTop + blockHeight(FACT_ROWS) + 1;
  const given = givenFacts(facts);
  const checkCount = checks.flatMap((check) => check(given, newSteps(1, system, []))).length;
  const lineCount = count + checkCount + LAST_LINES;
  const place: LinePlace = blockPlace(below(linesTop), lineCount, lineColumns, lineScalars);
  const stepsTop = linesTop + blockHeight(lineCount) + 1;
  const steps: string[][] = [];
  const list = newSteps(stepsTop, system, steps);
  const found = checks.flatMap((check) => check(given, list));
  const closing = inShort(given, list, (column) => place.cell(column, count + checkCount));
  const lines: Lines = { place, rows, facts, checks: found, inShort: closing };
  const of = `of the claim in ${context.sheet}!${context.at}`;
  const cells = [
    ...blockCells(
      `Facts ${of}, row by row`,
      count,
      rowCells(rows, facts, range, tables, (row) => nearNames(shown[row - 1]?.[0])),
      rowScalarCells(rows),
    ),
    [],
    ...blockCells(`Facts ${of}, read`, FACT_ROWS, factColumnsOf({ facts, rows, tables, system }), []),
    [],
    ...blockCells(`Lines ${of}`, lineCount, lineCells(lines), lineScalarCells(lines)),
    [],
    ...steps,
  ];
  return { cells, lines };
}

/**
 * CLAIM's answer on any sheet. A row that is not read has a line and so has a check, which takes a fact of its own: there are no more than the table has rows, and
 * a closing one.
 */
function answerCells({ place }: Lines, rows: number, system: UnitSystem): string[][] {
  const { all, cell, scalar } = place.onOtherSheets;
  const ok = `${scalar("ok")}=1`;
  const header = claimColumns.map((column, index) =>
    index === 0
      ? `IF(${ok},${quotedText(headerIn(column, system))},NA())`
      : `IF(${ok},${quotedText(headerIn(column, system))},"")`,
  );
  const body = Array.from({ length: rows + 1 }, (_, index) => {
    const shows = cell("shows", index + 1);
    return claimColumns.map(({ key }) => `IF(${shows}=0,"",INDEX(${all(key)},${shows}))`);
  });
  return [header, ...body];
}
