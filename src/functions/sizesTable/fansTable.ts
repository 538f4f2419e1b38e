import { better } from "../../core/network/sizes/localSearch";
import { sayNote } from "../../reference/notes";
import type { Value } from "../answerRows";
import type { NamedFan } from "./readFans";
import { sizesRow } from "./sizesRow";
import { sizesTable } from "./sizesTable";
import type { Wish } from "./sizeTaskOf";

/** The answer of SIZES with fans: of several the one that serves with the least pipe, then how each of them does. */
export function fansTable(wish: Wish, fans: readonly NamedFan[]): Value[][] {
  const answers = fans.map(({ name, curve }) => ({ name, ...sizesTable(wish, curve, fans.length) }));
  const best = answers.reduce((a, b) => (better(b.chosen.judged, a.chosen.judged) ? b : a));
  if (answers.length === 1) return best.rows;
  const each = answers.map(({ name, whole }) => sizesRow({ ...whole, run: `fan: ${name}` }, wish.system));
  return [...best.rows, sizesRow({ run: "which fan", need: sayNote("sizesOfFan", { fan: best.name }) }, wish.system), ...each]; // prettier-ignore
}
