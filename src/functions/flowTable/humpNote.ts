import type { Solution } from "../../core/network/solve/solveNetwork";
import { inWords } from "../../reference/inWords";
import { sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";

/** What a row must say where fan and system meet at more than one point; nothing where they meet once. */
export function humpNote({ crossings, fromRest, fanAirflow }: Solution, system: UnitSystem): string {
  if (crossings <= 1) return "";
  return fromRest < fanAirflow
    ? sayNote("twoStableInShort", { count: crossings, less: inWords(fromRest, "airflow", system) })
    : sayNote("humpInShort", { count: crossings });
}
