import { shown } from "../../../core/errors";
import { placeOf } from "../../../sheets/address";
import { itemAt } from "../../../reference/itemAt";
import { markOf } from "../../../reference/notes";
import { cellOf } from "../callArguments";
import { curveTables } from "../curves";
import type { FailedFormula } from "../failedFormulas";
import type { CheckRule, Finding } from "../finding";
import { type BookRuns, sameName } from "../runs";
import { type FoundTable, textIn } from "../tablesIn";

const whyOf = (error: string, message: string | undefined): string =>
  error === "#SPILL!"
    ? "Something stands where the answer wants to go: clear the cells below and beside it."
    : message === "#BUSY!"
      ? "It waits for its answer. Where it stays so, Repair, in the view Share, enters it again."
      : "What depends on this cell has no answer until its arguments are right.";

/**
 * Our functions that refuse what they are given, with their own sentence: where one answer says it of many cells, at the first. What BUDGET, SOLVE and
 * others say of one cell of the runs is told once, with the way to that cell; what only waits for it is not told beside it.
 */
export const refusal: CheckRule = ({ failed, runs, sheets }) => {
  const curves = curveTables(sheets);
  const said = new Set<string>();
  const isNew = (words: string): boolean => !said.has(words) && said.add(words).has(words);
  const told = failed
    .filter(({ error }) => error.error !== "#NAME?")
    .map((one) => {
      const message = one.error.message ?? "";
      return { ...one, mend: cellToMend(message, runs) ?? pointToMend(message, curves) };
    });
  const isOneWrong = told.some(({ mend }) => mend !== null);
  return told
    .filter(({ error, mend }) => mend !== null || !(isOneWrong && waits(error)))
    .filter(({ sheet, of, error, mend }) =>
      isNew(JSON.stringify(mend === null ? [sheet, of, error.error, error.message ?? ""] : [error.message])),
    )
    .map(({ sheet, at, error: { error, message }, mend }) => ({
      rule: error,
      what:
        message === undefined || message === ""
          ? `The answer in ${at} is ${error}.`
          : mend === null
            ? `${at}: ${message.replace(/\.$/, "")}.` // the grid's own sentences end with a full stop, ours do not
            : `${capital(withoutItsRows(message, mend))}.`,
      why: mend === null ? whyOf(error, message) : "What depends on this cell has no answer until it is right.",
      source: "the function's own answer",
      ...(mend ?? { sheet, at }),
    }));
};

type Place = Pick<Finding, "sheet" | "at">;

/** "Diameter of run "saw" (row 2) ...", or of a row without a name. */
const OF_RUN = /^(.+?) of (?:run "(.*?)" \(row (\d+)\)|row (\d+)\b)/s;

/** The cell of the runs that a sentence is about; null where it is about none, or nobody knows which table is meant. */
function cellToMend(message: string, tables: readonly BookRuns[]): Place | null {
  const [, what, name, rowOfRun, rowAlone] = OF_RUN.exec(message) ?? [];
  if (what === undefined) return null;
  const column = what.endsWith(" in the fittings") ? "Fittings" : what;
  const place = Number(rowOfRun ?? rowAlone) - 1; // a sentence counts the headings as row 1
  const found = tables.flatMap(({ table }) => {
    const row = table.headerRow + place;
    const isThere = table.rows.includes(row) && table.address(row, column) !== table.address(row, "");
    const isNamed = name === undefined || sameName(textIn(table.value(row, "Run")), name);
    return isThere && isNamed ? [{ sheet: table.sheet, at: table.address(row, column) }] : [];
  });
  return found.length === 1 ? itemAt(found, 0) : null;
}

/** "pressure in row 3 of the curve ...": a sentence counts the headings as row 1. */
const OF_CURVE = /^(airflow|pressure) in row (\d+) of the curve must be .*; got /s;

/** The cell of a fan's curve that a sentence is about; null where none in that row holds what came, or several do. */
function pointToMend(message: string, tables: readonly FoundTable[]): Place | null {
  const [, what, row] = OF_CURVE.exec(message) ?? [];
  if (what === undefined) return null;
  const header = what === "airflow" ? what : "fan static pressure";
  const found = tables.flatMap(({ sheet, headerRow, value, address }) => {
    const at = headerRow + Number(row) - 1;
    return message.endsWith(`; got ${shown(cellOf(value(at, header)))}`) ? [{ sheet, at: address(at, header) }] : [];
  });
  return found.length === 1 ? itemAt(found, 0) : null;
}

/** The sentence of a function, which knows no sheet: its rows count from the headings. The way to the cell tells the sheet's own. */
function withoutItsRows(message: string, { at }: Place): string {
  if (OF_RUN.test(message)) return message.replace(OF_RUN, (told) => told.replace(/(?: \(row \d+\)| of row \d+)$/, ""));
  const shift = placeOf(at).row - Number(OF_CURVE.exec(message)![2]);
  return message.replace(/^.*; got /s, (told) =>
    told.replace(/\brow (\d+)/g, (_, row) => `row ${Number(row) + shift}`),
  );
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const waits = ({ error, message }: FailedFormula["error"]): boolean =>
  error === "#N/A" && (message ?? "").includes(markOf("waits"));
