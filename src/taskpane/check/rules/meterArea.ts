import { type Finding, practice, type CheckRule } from "../finding";
import { type FoundTable, type LookedThrough, numberIn, tablesWith } from "../tablesIn";

const DECADE = 0.1; // of a power of ten, in powers of ten: about a quarter either way
const CLOSE = 0.05; // of the ratio of two areas: what two tapes may differ by

/** An area typed into a meter that is not the duct's own: a decimal place off, or another duct's. */
export const meterArea: CheckRule = ({ sheets }) =>
  readingTables(sheets).flatMap(({ table, typed, real }) =>
    table.rows.flatMap((row): Finding[] => {
      const entered = numberIn(table.value(row, typed));
      const area = numberIn(table.value(row, real));
      if (entered === null || area === null || entered <= 0 || area <= 0) return [];
      const ratio = entered / area;
      if (Math.abs(ratio - 1) <= CLOSE) return [];
      const decades = Math.round(Math.log10(ratio));
      const isDecade = decades !== 0 && Math.abs(Math.log10(ratio) - decades) < DECADE;
      const size = ratio > 1 ? "large" : "small";
      const times = isDecade
        ? `${10 ** Math.abs(decades)} times too ${size}`
        : `too ${size} by a factor of ${brief(ratio > 1 ? ratio : 1 / ratio)}`;
      return [
        {
          rule: "Area in the meter",
          what: `The area typed into the meter, ${brief(entered)}, is ${times}: the duct has ${brief(area)}.`,
          why: `A meter multiplies by the area that it was given, so this airflow is wrong by the same factor. ${isDecade ? "A decimal place slipped. " : ""}CORRECTEDREADING gives what it should have shown.`,
          source: practice,
          sheet: table.sheet,
          at: table.address(row, typed),
        },
      ];
    }),
  );

const TYPED = /^area (that was )?(typed|entered|in the meter|set|keyed)|^(typed|entered|meter'?s?) area/;
const REAL = /^(true|real|duct'?s?|own) area|^area (of the duct|at the probe|true|really|where)/;

function readingTables(sheets: readonly LookedThrough[]): { table: FoundTable; typed: string; real: string }[] {
  const heads = sheets.flatMap((sheet) => sheet.heads);
  const pairs = heads.flatMap(({ headers }) => {
    const typed = headers.find(({ name }) => TYPED.test(name))?.name;
    const real = headers.find(({ name }) => REAL.test(name))?.name;
    return typed === undefined || real === undefined ? [] : [{ typed, real }];
  });
  const kinds = new Map(pairs.map((pair) => [`${pair.typed}\n${pair.real}`, pair]));
  return [...kinds.values()].flatMap((pair) =>
    tablesWith(sheets, [pair.typed, pair.real]).map((table) => ({ table, ...pair })),
  );
}

const brief = (value: number): number => Number(value.toPrecision(3));
