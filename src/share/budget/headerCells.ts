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

/** How many cells of the first row are headed by a word that BUDGET takes. */
export function countOfHeaders({ headers }: RunsTable): string {
  const known = allColumns.filter((column) => !columnsForGainsAlone.includes(column));
  const spelt = known.flatMap((name) => ["", "(*", " (*", " [*"].map((unit) => `COUNTIF(${headers},"${name}${unit}")`));
  return spelt.join("+");
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
