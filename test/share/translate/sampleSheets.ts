import type { UnitSystem } from "../../../src/reference/quantities";
import type { CellValue } from "../../../src/sheets/workbook";
import { type Sample, samples } from "./corpus";
import { ours } from "./ourFunctions";
import type { Given } from "./plainBook";
import { seeded } from "./random";

export const SYSTEMS: readonly UnitSystem[] = ["IP", "SI"];
const SAMPLES = 100; // of each function: the first half as single calls, the second as calls over ranges
const SHARED = 5; // calls that have some arguments in common
const ANSWER = "J";

export interface Expected {
  readonly name: string;
  readonly sheet: string;
  readonly at: string;
  readonly inputs: readonly CellValue[];
  readonly answer: string | number; // "refused" where the function raises an error
}

/**
 * A sheet for each function and unit system, and what the function itself answers for each of its rows.
 *
 * @param share of the samples
 */
export function sampleSheets(share = 1): { given: readonly Given[]; expected: readonly Expected[] } {
  const expected: Expected[] = [];
  const given = samples.flatMap((sample, index) =>
    SYSTEMS.map((system, half): Given => {
      const sheet = `${sample.name} ${system}`;
      const rows = rowsOf(sample, system, 1000 * index + half, share * SAMPLES);
      const units = sample.units ? [[[system]]] : [];
      rows.forEach((inputs, row) => {
        const answer = ours(sample.name, [...inputs.map((value) => [[value]]), ...units]);
        const value = answer === "refused" ? answer : answer[0]![0]!;
        expected.push({ name: sample.name, sheet, at: `${ANSWER}${row + 1}`, inputs, answer: value });
      });
      return { name: sheet, rows, formulas: formulasOf(sample, system, rows) };
    }),
  );
  return { given, expected };
}

function rowsOf({ inputs, shared = [] }: Sample, system: UnitSystem, seed: number, count: number): CellValue[][] {
  const random = seeded(seed);
  const rows = Array.from({ length: count }, () => inputs(random, system));
  return rows.map((row, at) =>
    row.map((value, column) => (shared.includes(column) ? rows[firstOf(at)]![column]! : value)),
  );
}

const firstOf = (row: number): number => row - (row % SHARED);

function formulasOf(
  { name, units, shared }: Sample,
  system: UnitSystem,
  rows: readonly (readonly CellValue[])[],
): Record<string, string> {
  const singles = rows.length / 2;
  const last = units ? `,"${system}"` : "";
  const letters = rows[0]!.map((_, column) => String.fromCharCode(65 + column));
  const isShared = (column: number): boolean => shared?.includes(column) ?? false;
  const call = (cells: readonly string[]): string => `=DUCT.${name}(${cells.join(",")}${last})`;
  const formulas: Record<string, string> = {};
  for (let row = 0; row < singles; row++) {
    const cells = letters.map((letter, column) => `${letter}${(isShared(column) ? firstOf(row) : row) + 1}`);
    formulas[`${ANSWER}${row + 1}`] = call(cells);
  }
  const size = shared === undefined ? rows.length - singles : SHARED;
  for (let row = singles; row < rows.length; row += size) {
    const cells = letters.map((letter, column) =>
      isShared(column) ? `${letter}${row + 1}` : `${letter}${row + 1}:${letter}${row + size}`,
    );
    formulas[`${ANSWER}${row + 1}`] = call(cells);
  }
  return formulas;
}
