import { allColumns, columnsForGainsAlone } from "../../reference/columnsOfRuns";
import { quantities, type UnitSystem } from "../../reference/quantities";
import type { RunColumn } from "../../reference/runColumns";
import { quotedText } from "../references";
import { apart, isSameText, together } from "../translate/lettersApart";
import type { BlockScalar } from "./block";
import type { BudgetPlace, BudgetScalar } from "./blockNames";
import type { RunsTable } from "./runsTable";

/**
 * A copy finds its columns and their units once. Where a member writes another header or other units, its formulas would go on with
 * the old ones and show other numbers than were meant: so they compare the headers, and give no answer.
 */

const MOST_LETTERS = 60; // of a header that is quoted

/** The header of a column as it was, where another stands there now; with what parts it from the next. A column that somebody deleted has none. */
export function lostHeader(place: BudgetPlace, table: RunsTable, column: RunColumn): BlockScalar<BudgetScalar> {
  const now = `INDEX(${table.column(column)},1)`;
  const was = table.headed(column);
  const said = was.replace(/\s+/g, " ").trim().slice(0, MOST_LETTERS);
  const bare = said.toLowerCase() === column.toLowerCase() ? [] : [isSameText(now, column)];
  const stands = [isSameText(now, was), ...bare];
  const same = stands.length === 1 ? stands[0]! : `OR(${stands.join(",")})`;
  return {
    name: `lost ${column}`,
    heading: `${column}: its header, if lost`,
    formula: `IF(IFERROR(${same},ISERROR(${place.scalar(`at ${column}`)})),"",", "&CHAR(34)&${together(quotedText(apart(said)))}&CHAR(34))`,
  };
}

/** All headers in a row as BUDGET compares them, each between two strokes, and behind its name whatever is in brackets. */
export function headersInLine({ headers }: RunsTable): string {
  const swaps = [
    ...["CHAR(10)", '"\u00a0"', '"-"', '"_"'].map((sign) => `${sign}," "`),
    ...['"("', '"["'].map((sign) => `${sign},"|"`),
  ];
  const line = swaps.reduce((all, swap) => `SUBSTITUTE(${all},${swap})`, `TEXTJOIN("||",FALSE,${headers})`);
  return `IFERROR(LOWER("|"&SUBSTITUTE(SUBSTITUTE(TRIM(${line})," |","|"),"| ","|")&"|"),"")`;
}

/** How many of them are words that BUDGET takes. */
export function countOfHeaders(place: BudgetPlace): string {
  const known = allColumns.filter((column) => !columnsForGainsAlone.includes(column)).map((name) => `|${name}|`);
  const line = place.scalar("headersInLine");
  const counts = known.map(
    (name) => `(LEN(${line})-LEN(SUBSTITUTE(${line},"${name.toLowerCase()}","")))/${name.length}`,
  );
  return counts.join("+");
}

/** Why the headers, or the units, are not those by which the copy reads its table, in words; an empty text while they are. */
export function headersSaid(place: BudgetPlace, table: RunsTable, system: UnitSystem, stand: string | null): string {
  const lost = table.columns.map((column) => place.scalar(`lost ${column}`)).join("&");
  const [first, last] = [table.columns[0]!, table.columns.at(-1)!];
  const more = `${place.scalar("headers")}>COUNT(${place.scalar(`at ${first}`)}:${place.scalar(`at ${last}`)})`;
  const back = `${quotedText("This copy reads its columns by the headers of the day it was made: put back ")}&MID(${lost},3,200)`;
  const moved = `IF(${lost}<>"",${back},IF(${more},${quotedText(SURPLUS)},""))`;
  return stand === null ? moved : `IF(${stand},${moved},${quotedText(unitsSaid(system))})`;
}

const SURPLUS =
  "A column of the table has a header now that this copy does not look for: give it another, or ask for a new copy";

/** What is told where the units cell has another word. */
export const unitsSaid = (system: UnitSystem): string =>
  `The units cell must stay ${system} (${quantities.diameter[system].label}, ${quantities.airflow[system].label} ...) in this copy: put it back, or ask for a copy in other units`;
