import { plain } from "../../core/naming/findNamed";
import { factorOfTyped, otherUnits, plainUnit, spellings, unreadUnits } from "../../reference/typedUnit";
import { type Amount, type ClaimFact, claimFacts, type Words } from "../../reference/claimFacts";
import { convertibleUnits, unitOf } from "../../reference/quantities";
import { isListed } from "../translate/expressions/text";
import type { LookupTables } from "../translate/lookupTables";
import type { TableBlock } from "../translate/tableBlocks/block";
import { wordsOf } from "./patternWords";

/** Expressions that look up how people name facts, their words and their units; what is not there is 0, or an empty text. */
export interface ClaimTables {
  readonly fact: (name: string) => string; // its number, from 1
  readonly word: (key: string, name: string) => string; // the key of one of a fact's words
  readonly factor: (amount: Amount, unit: string) => string; // SI units in one of a unit
  readonly isUnit: (text: string) => string; // 1 where it is one of anything
}

export function claimTables(tables: LookupTables): ClaimTables {
  const found = (what: string, make: () => TableBlock, name: string, otherwise: string): string => {
    const place = tables.ownBlock(`claim ${what}`, make);
    const names = place.range("name");
    return `IF(${isListed(name, names)},INDEX(${place.range("meaning")},MATCH(${name},${names},0)),${otherwise})`;
  };
  return {
    fact: (name) => found("facts", factNames, name, "0"),
    word: (key, name) => found("words", factWords, `("${key}: "&${name})`, '""'),
    factor: (amount, unit) => found("units", factUnits, `("${kindOf(amount)}: "&${unit})`, "0"),
    isUnit: (text) => found("anything", anyUnits, text, "0"),
  };
}

const block = (title: string, rows: TableBlock["rows"]): TableBlock => ({
  title,
  inputs: false,
  columns: ["name", "meaning"],
  rows,
});

const factNames = (): TableBlock =>
  block(
    "What the facts of a data sheet are called, and which one it is",
    once(claimFacts.flatMap((fact, index) => namesOf(fact).map((name) => [name, index + 1] as const))),
  );

const factWords = (): TableBlock =>
  block(
    "Words that a fact may be",
    once(
      claimFacts.flatMap(({ key, takes }: ClaimFact) =>
        takes.kind === "words" ? wordRows(takes).map(([name, word]) => [`${key}: ${name}`, word] as const) : [],
      ),
    ),
  );

const wordRows = ({ words }: Words): (readonly [string, string])[] =>
  words.flatMap((word) => namesOf(word).map((name) => [name, word.key] as const));

const namesOf = ({ key, aliases }: { readonly key: string; readonly aliases: readonly string[] }): string[] =>
  [key, ...aliases].map(plain);

/** Units by what they measure, as people type them behind a number, without blanks and dots. */
const factUnits = (): TableBlock =>
  block(
    "Units as they are typed behind a number: what one of it is in SI",
    once(
      amounts().flatMap((amount) =>
        typedUnits().flatMap((name) => {
          const factor = factorOfTyped(name, amount.quantity, labelOf(amount));
          return factor === undefined ? [] : [[`${kindOf(amount)}: ${name}`, factor] as const];
        }),
      ),
    ),
  );

const anyUnits = (): TableBlock =>
  block(
    "Units of anything, as they are typed: 1",
    [...typedUnits(), ...unreadUnits].map((name) => [name, 1]),
  );

/** One row for each name: of two that are alike the first counts, as where names are looked up. */
const once = <Meaning>(rows: readonly (readonly [string, Meaning])[]): (readonly [string, Meaning])[] =>
  rows.filter(([name], index) => rows.findIndex(([other]) => other === name) === index);

const amounts = (): Amount[] => claimFacts.flatMap(({ takes }: ClaimFact) => (takes.kind === "amount" ? [takes] : []));

/** What an amount is measured in where its quantity has a unit in either system, else its own unit. */
const kindOf = ({ quantity, unit }: Amount): string => unit ?? quantity;
const labelOf = ({ quantity, unit }: Amount): string => unit ?? unitOf(quantity, "IP").label;

const typedUnits = (): readonly string[] => [
  ...new Set(
    [
      ...spellings.flatMap(([pattern]) => wordsOf(pattern)),
      ...Object.values(convertibleUnits).flatMap((units) => units.flatMap(({ names }) => names)),
      ...Object.entries(otherUnits).flat(2),
    ].map(plainUnit),
  ),
];
