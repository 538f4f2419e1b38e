import { findNamed, type Named } from "../../../core/naming/findNamed";
import { headerName } from "../../../core/naming/headerName";
import { isMisspelt } from "../../../core/naming/isMisspelt";
import { allColumns, quantityIn } from "../../../reference/columnsOfRuns";
import { gateConditions } from "../../../reference/gateConditions";
import { materials } from "../../../reference/materials";
import { unitOf } from "../../../reference/quantities";
import type { RunColumn } from "../../../reference/runColumns";
import { transport } from "../../../reference/transport";
import { factorOfTyped } from "../../../reference/typedUnit";
import { cellAddress } from "../../../sheets/address";
import { type CheckRule, type Finding, practice } from "../finding";
import { fittingsNamed } from "../named/namedValue";
import type { BookRuns } from "../runs";
import { numberIn, textIn } from "../tablesIn";

/**
 * A column of a table of runs that no function reads, though it looks like one of theirs: its heading is one with a letter more or less, or what
 * stands in it is what belongs under a heading that the table lacks, over which somebody may have typed another word.
 */
export const unreadColumn: CheckRule = ({ runs }) => runs.flatMap(inTable);

function inTable(runs: BookRuns): Finding[] {
  return columnsOf(runs).map(({ said, meant, column }) => ({
    rule: "A column that is not read",
    what: `No function reads the column "${said}": it counts as one of your own.`,
    why: `If ${meant} is meant, head it so: the ducts are computed without it. If it is your own, all is well.`,
    source: practice,
    sheet: runs.sheet,
    at: cellAddress(column, runs.table.headerRow),
  }));
}

function columnsOf({ table, system }: BookRuns) {
  const there = new Set(table.headers.map(({ name }) => name));
  const lacking = allColumns.filter((name) => !there.has(headerName(name)));
  const rows = table.rows.filter((row) => textIn(table.value(row, "Run")) !== "");
  return table.headers.flatMap(({ name, unit, column }) => {
    if (known.has(name) || name === "") return [];
    const cells = rows.map((row) => table.value(row, name)).filter((value) => value !== null && value !== "");
    if (cells.length === 0) return [];
    const holds = (wanted: RunColumn): boolean => {
      const quantity = quantityIn(wanted);
      if (unit !== "" && (quantity === null || factorOfTyped(unit, quantity, unitOf(quantity, system).label) === undefined)) return false; // prettier-ignore
      return cells.every((cell) =>
        numberIn(cell) === null ? isWordOf(wanted, textIn(cell)) : NUMBERS.includes(wanted),
      );
    };
    const meant = allColumns.find((one) => isAlmost(name, headerName(one))) ?? lacking.find(holds);
    const said = unit === "" ? name : `${name} (${unit})`;
    return meant === undefined ? [] : [{ said, meant, column }];
  });
}

const known = new Set(allColumns.map(headerName));

/** What nearly every table has: numbers under another word may be anything where only a rarer column is lacking. */
const NUMBERS: readonly RunColumn[] = ["Length", "Airflow"];

/** One letter more or less counts in a short word, too, where it begins as the heading does: "Flexx", but not "Date" or "Size". */
const isAlmost = (name: string, wanted: string): boolean =>
  isMisspelt(name, wanted) ||
  (wanted.length > 3 && name.startsWith(wanted.charAt(0)) && (isWithout(name, wanted) || isWithout(wanted, name)));

/** Whether one letter taken away makes the other word. */
const isWithout = (longer: string, shorter: string): boolean =>
  longer.length === shorter.length + 1 &&
  [...longer].some((_, place) => longer.slice(0, place) + longer.slice(place + 1) === shorter);

/** Whether a text is one of those that such a column takes. */
function isWordOf(column: RunColumn, text: string): boolean {
  if (column === "Fittings" || column === "Hood")
    return fittingsNamed(text, unitOf("diameter", "IP").factor, null).length > 0;
  const words = WORDS[column];
  return words !== undefined && findNamed(words, text) !== undefined;
}

const keys = (...words: readonly string[]) => words.map((key) => ({ key }));
const WORDS: Readonly<Partial<Record<RunColumn, readonly Named[]>>> = {
  Gate: keys("open", "shut"),
  Side: keys("suction", "discharge"),
  Material: materials,
  Dust: transport,
  Leak: gateConditions,
  "Leak open": gateConditions,
  "Leak shut": gateConditions,
};
