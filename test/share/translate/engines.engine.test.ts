/**
 * The plain formulas against the add-in's own functions, in two independent spreadsheet engines. The functions themselves are
 * held against published values elsewhere; here the copy must say what the add-in says.
 */
import { ironCalc } from "../../support/ironCalc";
import { hardRecalculation } from "../../support/hardRecalculation";
import { hasLibreOffice } from "../../support/libreOffice";
import type { EngineValues } from "../../support/engine";
import { samples } from "./corpus";
import { plainBook } from "./plainBook";
import { type Expected, sampleSheets } from "./sampleSheets";
import { wholeCalls } from "./wholeCalls";

const CLOSE = 1e-6; // relative
const NOTHING = 1e-12; // what a sum of numbers near 1 may leave where the answer is 0
const MOST_NESTED = 64;
const MOST_CHARACTERS = 8192;

/** Calls of every function, as many as the engine's own speed allows, and what the functions themselves answer. */
function callsFor(share: number) {
  const [scalars, wholes] = [sampleSheets(share), wholeCalls(share)];
  return { given: [...scalars.given, ...wholes.given], expected: [...scalars.expected, ...wholes.expected] };
}
const all = callsFor(1);
const some = callsFor(0.3);
const names = [...samples.map(({ name }) => name), ...wholeCalls(0).names];
const { workbook, translations } = plainBook(all.given, "IP");

/** The cells of one function that differ from the add-in's answer by more than allowed. */
function wrongCells(name: string, expected: readonly Expected[], values: EngineValues): string[] {
  return expected
    .filter((one) => one.name === name)
    .flatMap(({ sheet, at, inputs, answer }) => {
      const shown = values.get(sheet)?.get(at);
      const right =
        typeof answer === "number"
          ? typeof shown === "number" && Math.abs(shown - answer) <= CLOSE * Math.abs(answer) + NOTHING
          : answer === "refused"
            ? shown === "#N/A"
            : String(shown ?? "") === answer; // a text of digits comes back from an engine's output as a number
      return right ? [] : [`${sheet}!${at} of ${JSON.stringify(inputs)}: ${String(shown)} instead of ${answer}`];
    });
}

test("every call of the samples stays live", () => {
  const fixed = [...translations].filter(([, { kind }]) => kind !== "cells");
  expect(fixed).toEqual([]);
});

test("no formula is too long or too deeply nested for the file format", () => {
  const formulas = workbook.sheets.flatMap(({ cells }) =>
    cells.flatMap((cell) => ("formula" in cell ? [cell.formula] : [])),
  );
  expect(formulas.filter((formula) => formula.length > MOST_CHARACTERS)).toEqual([]);
  expect(formulas.filter((formula) => depthOf(formula) >= MOST_NESTED)).toEqual([]);
  expect(formulas.length).toBeGreaterThan(all.expected.length);
});

function depthOf(formula: string): number {
  let [depth, most] = [0, 0];
  for (const character of formula) {
    if (character === "(") most = Math.max(most, ++depth);
    if (character === ")") depth--;
  }
  return most;
}

describe("the independent engine", () => {
  let values: EngineValues;
  beforeAll(() => {
    // A workbook to each sheet: the engine takes in a cell the more slowly, the more formulas it has already.
    values = ironCalc(...some.given.map((sheet) => plainBook([sheet], "IP").workbook));
  });
  test.each(names)("%s", (name) => expect(wrongCells(name, some.expected, values)).toEqual([]));
});

(hasLibreOffice ? describe : describe.skip)("LibreOffice with hard recalculation", () => {
  let values: EngineValues;
  beforeAll(async () => {
    values = await hardRecalculation(workbook);
  });
  test.each(names)("%s", (name) => expect(wrongCells(name, all.expected, values)).toEqual([]));
});
