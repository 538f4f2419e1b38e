import { convertUnit } from "../core/convertUnit";
import { cautions as cautionRows } from "../reference/cautions";
import { answer } from "./answer";
import { needed, text } from "./arguments";
import { inHost } from "./inHost";
import { about as aboutRows } from "./tables/about";
import { cautionTable } from "./tables/cautionTable";
import { lookUp } from "./tables/lookUp";

/**
 * A reference table, one row of it, or one value with its source; columns carry their unit in both systems.
 * @customfunction REFERENCE
 * @param table Name of the table: materials, fittings, hoods, transport, machines, leakage, gates, filters, exposure ...
 * @param [key] Key of a row, such as "pvc pipe"; the whole table when left out
 * @param [column] Header of a column, such as "roughness (mm)"; the whole row when left out
 * @returns table
 */
export function reference(table: any[][], key?: any[][], column?: any[][]): any[][] {
  return inHost(null, () => lookUp(table, key, column));
}

/**
 * A value in another unit of airflow, velocity, pressure, length, area, density or power, such as "cfm" to "m³/h".
 * @customfunction CONVERTUNIT
 * @param value Number in the first unit
 * @param from Unit it is in, such as "cfm", "m³/h", "fpm", "in.w.g.", "Pa", "hp"
 * @param to Unit wanted, of the same kind
 * @returns value
 */
export function convertunit(value: any[][], from: any[][], to: any[][]): any[][] {
  return answer(null, "ratio", [needed("value", value, "ratio"), text("from", from), text("to", to)], convertUnit);
}

/**
 * Cautions for work on dust collection, with their sources, as rows (no unit).
 * @customfunction CAUTIONS
 * @param [topic] One topic only: machines, health, explosion, electrical, air, work, numbers or law
 * @returns table
 */
export function cautions(topic?: any[][]): any[][] {
  return inHost(null, () => cautionTable(cautionRows, topic));
}

/**
 * Version, definitions and the date of the tables, as rows (no unit).
 * @customfunction ABOUT
 * @returns table
 */
export function about(): any[][] {
  return inHost(null, aboutRows);
}
