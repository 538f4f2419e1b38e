import { plain } from "../../../core/naming/findNamed";
import { type ReferenceTable, referenceTables } from "../../../reference";
import { type Element, elementOf } from "../element";
import { isListed, NO_ANSWER, plainName } from "../expressions/text";
import type { TableBlock } from "../tableBlocks/block";
import { type Argument, fixed, type Translator } from "../translation";
import { quotedText } from "../../references";
import { itemAt } from "../../../reference/itemAt";

/** One value of a reference table and its source with its basis, looked up; the table and all its spellings come into the copy. */
const reference: Translator = (args, context) => {
  const [table, key, column] = [args[0] ?? null, args[1] ?? null, args[2] ?? null];
  const name = table?.value[0]?.[0];
  const listed = referenceTables.find((one) => typeof name === "string" && plain(one.name) === plain(name));
  const single = (arg: Argument | null): arg is Argument =>
    arg !== null && arg.value.length === 1 && itemAt(arg.value, 0).length === 1;
  if (listed === undefined || table?.range !== undefined || !single(key) || !single(column))
    return fixed("a printed table, which nothing in the sheet changes");
  const block = context.tables.ownBlock(`reference ${listed.name}`, () => referenceBlock(listed));
  const [row, place] = [elementOf(key, 0, 0, context), elementOf(column, 0, 0, context)];
  const names = block.range(NAME);
  const wanted = nameText(row);
  const header = typeof place.literal === "string" ? quotedText(place.literal.trim()) : `TRIM(${place.text})`;
  const cell = (headerText: string): string =>
    `INDEX(${block.all},MATCH(${wanted},${names},0),MATCH(${headerText},${block.headers},0))`;
  const ifListed = (answer: string): string => `IF(${isListed(wanted, names)},${answer},${NO_ANSWER})`;
  const value = `IF(${cell(header)}="","",${cell(header)})`; // what a book does not say is blank, never 0
  const [source, basis] = [cell('"source"'), cell('"basis"')];
  // as titleWithBasis: a title that says its basis itself is not told twice
  const told = `${source}&IF(OR(${basis}="",ISNUMBER(SEARCH(${basis},${source}))),""," ("&${basis}&")")`;
  return { kind: "cells", formulas: [[ifListed(value), ifListed(told)]] };
};

const NAME = "name";

const nameText = ({ literal, text }: Element): string =>
  typeof literal === "string" ? quotedText(plain(literal)) : plainName(text);

/** A reference table by every spelling of its keys, its headers with their units. */
function referenceBlock({ title, columns, rows }: ReferenceTable): TableBlock {
  const also = columns.findIndex(({ name }) => name === "also");
  const headers = columns.map(({ name, unit: label }) => (label === "" ? name : `${name} (${label})`));
  const spellings = (row: (typeof rows)[number]): string[] => [
    plain(String(row[0])),
    ...(also < 0
      ? []
      : String(row[also] ?? "")
          .split(", ")
          .filter((word) => word !== "")
          .map(plain)),
  ];
  return {
    title,
    columns: [NAME, ...headers],
    inputs: false,
    rows: rows.flatMap((row) => spellings(row).map((name) => [name, ...row.map((cell) => cell ?? "")])),
  };
}

export const lookingUp: Readonly<Record<string, Translator>> = { REFERENCE: reference };
