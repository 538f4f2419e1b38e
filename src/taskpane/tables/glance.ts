import type { ReferenceTable } from "../../reference";
import type { UnitSystem } from "../../reference/quantities";
import { systemOfUnit } from "./amounts";
import { brief, type Cell, display, type Value } from "./values";
import { valuesInWords } from "./wording";
import { itemAt } from "../../reference/itemAt";

const ONLY_IN_DETAILS = ["key", "also", "note"];

export interface Line {
  readonly name: string;
  readonly text: string;
}

/**
 * A row at a glance: its values rounded, those in the reader's units first, the ends of a range as one, and no range where it
 * is the value itself.
 */
export function glance(table: ReferenceTable, row: readonly Cell[], system: UnitSystem): Line[] {
  const values = valuesInWords(table, row)
    .filter(({ name }) => !ONLY_IN_DETAILS.includes(name))
    .map((value) => ownUnitsFirst(value, system));
  const lines: Line[] = [];
  for (let i = 0; i < values.length; i++) {
    const [value, next] = [itemAt(values, i), values[i + 1]];
    const pair = next !== undefined && (isPair(value, next, "low", "high") || isPair(value, next, "from", "to"));
    if (pair) i++;
    const line = pair ? { name: "range", text: rangeText(value, next) } : { name: value.name, text: inShort(value) };
    if (line.name !== "range" || line.text !== lines[0]?.text) lines.push(line);
  }
  const ofAValue = lines.length > 1 ? itemAt(lines, 0).text : null;
  return lines.filter(({ name, text }) => !(["low", "high"].includes(name) && text === ofAValue));
}

const ownUnitsFirst = ({ name, parts }: Value, system: UnitSystem): Value => {
  const isOwn = ({ unit }: Value["parts"][number]): boolean => systemOfUnit(unit) === system;
  return { name, parts: [...parts.filter(isOwn), ...parts.filter((part) => !isOwn(part))] };
};

const isPair = (one: Value, other: Value, low: string, high: string): boolean =>
  one.name === low && other.name === high && one.parts.length === other.parts.length;

const shown = (cell: Cell): string => (typeof cell === "number" ? String(brief(cell)) : display(cell));

const inShort = ({ parts }: Value): string =>
  parts.map(({ cell, unit }) => `${shown(cell)} ${unit}`.trim()).join(" = ");

/** "0.09 to 0.2 mm = 0.0035 to 0.0079 in"; one number where both ends are the same. */
const rangeText = (low: Value, high: Value): string =>
  low.parts
    .map(({ cell, unit }, i) => {
      const [from, to] = [shown(cell), shown(itemAt(high.parts, i).cell)];
      return `${from === to ? from : `${from} to ${to}`} ${unit}`.trim();
    })
    .join(" = ");
