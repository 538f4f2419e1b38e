import type { ConditionalRule } from "hucre/xlsx";
import { rectangles } from "../../../share/fixed/rectangles";
import { cellAddress } from "../../../sheets/address";
import type { ShownCell } from "../../../sheets/calculated";
import { addressesIn, rectangleOf, rectangleText } from "../../../sheets/rectangle";
import { oldRule } from "../../../sheets/oldRule";
import type { Sheet } from "../../../sheets/workbook";
import { toFileText } from "../xlsxText";
import { flagStyle } from "./look";

const WORD = '"old "';

/**
 * The rules that strike old numbers out. A rule has one format for numbers, so the cells of a mark are told apart by theirs; a text keeps
 * its own, since some programs show signs in place of a long text that has a format. Each rectangle is a rule of its own: programs
 * differ in what a rule's formula means in the second of two.
 */
export function oldRules(
  { name, oldMarks = [], cells }: Sheet,
  shown: ReadonlyMap<string, ShownCell> | undefined,
): ConditionalRule[] {
  const formats = new Map(cells.map(({ at, format }) => [at, format]));
  const formatAt = (at: string): string | null =>
    formats.get(at) ?? (typeof shown?.get(at)?.value === "number" ? "General" : null);
  const look = flagStyle("flag");
  const rules: ConditionalRule[] = [];
  for (const { ranges, state } of oldMarks) {
    const byFormat = new Map<string | null, string[]>();
    for (const at of ranges.flatMap((range) => addressesIn(rectangleOf(range)))) {
      const format = formatAt(at);
      byFormat.set(format, [...(byFormat.get(format) ?? []), `${name}!${at}`]);
    }
    for (const [format, keys] of byFormat)
      for (const range of rectangles(keys))
        rules.push({
          type: "expression",
          formula: oldRule(state, cellAddress(range.left, range.top)),
          priority: rules.length + 1,
          range: rectangleText(range),
          style: {
            ...look,
            font: { ...look.font, strikethrough: true },
            ...(format === null ? {} : { numFmt: toFileText(saysOld(format)) }),
          },
        });
  }
  return rules;
}

/** A number's format with the word before it, also where it is below 0. */
function saysOld(format: string): string {
  const sections = format.match(/(?:"[^"]*"|\\.|[^;"\\])+/g) ?? [format];
  const [above = format, below = `-${above}`] = sections;
  return [above, below, ...sections.slice(2, 3)].map((section) => WORD + section).join(";");
}
