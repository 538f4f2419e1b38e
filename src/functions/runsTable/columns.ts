import { DomainError } from "../../core/errors";
import { nearestNames } from "../../core/naming/findNamed";
import { allColumns, neededColumns, quantityIn } from "../../reference/columnsOfRuns";
import type { UnitSystem } from "../../reference/quantities";
import type { RunColumn } from "../../reference/runColumns";
import type { Cell, Matrix } from "../cells";
import { headersOf } from "../headersOf";

/** Where each column stands in the table; a column that is not there is left out. */
export type ColumnPlaces = Readonly<Partial<Record<RunColumn, number>>>;

const columns = allColumns.map((name) => ({ name, quantity: quantityIn(name) }));

/**
 * Finds the columns by their headers, in any order and case; text in brackets after a header is ignored unless it is
 * another unit, and so are columns with other headers, which are the user's own unless they are misspelt ones.
 *
 * @throws DomainError if a needed header is missing (with the nearest one there is), one stands twice or tells another unit
 */
export function findColumns(table: Matrix, system: UnitSystem): ColumnPlaces {
  const places: Partial<Record<RunColumn, number>> = Object.fromEntries(headersOf("runs", table, columns, system));
  const missing = neededColumns.find((column) => places[column] === undefined);
  if (missing !== undefined) throw missingHeader(missing, table[0] ?? [], places);
  return places;
}

function missingHeader(missing: RunColumn, header: readonly Cell[], places: ColumnPlaces): DomainError {
  const others = header.filter(
    (cell, place): cell is string => typeof cell === "string" && !Object.values(places).includes(place),
  );
  const [near] = nearestNames(
    others.map((key) => ({ key })),
    missing,
  );
  const hint = near === undefined ? "" : `; the nearest header there is "${near.slice(0, 30)}"`;
  return new DomainError(
    "runs",
    header[0] ?? null,
    `a table whose first row has the headers ${inWords(neededColumns)} (${missing} is missing${hint})`,
  );
}

const inWords = (names: readonly string[]): string => `${names.slice(0, -1).join(", ")} and ${names.at(-1)!}`;

/** Where a 0 and a blank are two answers: a wall without roughness is not the usual one, a hood without loss is not none. */
const ZERO_IS_NO_BLANK: readonly RunColumn[] = ["Material", "Hood"];

/**
 * One cell of a row by its column; a 0 counts as blank, since some hosts send blanks as 0. Where that would be another answer,
 * it does not in a table in which a blank is told: there a 0 was typed.
 */
export function cellOf(
  rows: Matrix,
  row: number,
  places: ColumnPlaces,
  column: RunColumn,
  blanksAreTold: boolean,
): Cell {
  const place = places[column];
  const cell = place === undefined ? null : (rows[row]![place] ?? null);
  if (cell !== 0 && cell !== "0") return cell;
  return blanksAreTold && ZERO_IS_NO_BLANK.includes(column) ? 0 : null;
}
