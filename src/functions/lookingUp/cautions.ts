import { cautions as cautionRows } from "../../reference/cautions";
import type { Guide } from "../guide";
import { inHost } from "../inHost";
import { cautionTable } from "../tables/cautionTable";

/**
 * Cautions for work on dust collection, with their sources, as rows (no unit).
 * @customfunction CAUTIONS
 * @param [topic] Topic, or a word for one such as fire: machines, health, explosion, electrical, air, work, numbers, law
 * @returns table
 */
export function cautions(topic?: unknown[][]): unknown[][] {
  return inHost(null, () => cautionTable(cautionRows, topic));
}

export const guide: Guide = {
  maths: "The cautions as rows",
  source: "tables",
  basis: "",
  limits: "All of them stand in the view Cautions.",
  also: ["safety", "warnings"],
  example: { asks: "What a number can't do", args: ["numbers"] },
};
