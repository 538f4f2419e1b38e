import type { UnitSystem } from "../../../src/reference/quantities";
import type { CellValue } from "../../../src/sheets/workbook";
import { samples } from "./corpus";
import { ours } from "./ourFunctions";
import type { Given } from "./plainBook";
import { seeded } from "./random";

export const SYSTEMS: readonly UnitSystem[] = ["IP", "SI"];
const SAMPLES = Number(process.env.N ?? 200);
const SINGLE = SAMPLES/2; // the first half as single calls, the second as one call over ranges
const ANSWER = "H";

export interface Expected {
  readonly name: string;
  readonly sheet: string;
  readonly at: string;
  readonly inputs: readonly CellValue[];
  readonly answer: string | number; // "refused" where the function raises an error
}

/** A sheet for each function and unit system, and what the function itself answers for each of its rows. */
export function sampleSheets(): { given: readonly Given[]; expected: readonly Expected[] } {
  const expected: Expected[] = [];
  const given = samples.flatMap(({ name, units, inputs }, index) =>
    SYSTEMS.map((system, half): Given => {
      const random = seeded(1000 * index + half);
      const sheet = `${name} ${system}`;
      const rows = Array.from({ length: SAMPLES }, () => inputs(random, system));
      const last = units ? `,"${system}"` : "";
      const letters = rows[0]!.map((_, column) => String.fromCharCode(65 + column));
      const omitted = units ? [[[system]]] : [];
      rows.forEach((row, at) => {
        const answer = ours(name, [...row.map((value) => [[value]]), ...omitted]);
        expected.push({
          name,
          sheet,
          at: `${ANSWER}${at + 1}`,
          inputs: row,
          answer: answer === "refused" ? answer : answer[0]![0]!,
        });
      });
      const singles = rows.slice(0, SINGLE).map((_, at) => {
        const cells = letters.map((letter) => `${letter}${at + 1}`).join(",");
        return [`${ANSWER}${at + 1}`, `=DUCT.${name}(${cells}${last})`];
      });
      const ranges = letters.map((letter) => `${letter}${SINGLE + 1}:${letter}${SAMPLES}`).join(",");
      const formulas = Object.fromEntries([
        ...singles,
        [`${ANSWER}${SINGLE + 1}`, `=DUCT.${name}(${ranges}${last})`],
      ]) as Record<string, string>;
      return { name: sheet, rows, formulas };
    }),
  );
  return { given, expected };
}
