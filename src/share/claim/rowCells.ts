import { type RangeRef, rangeText } from "../../sheets/rangeRef";
import type { BlockColumn, BlockScalar } from "../budget/block";
import { quotedText } from "../references";
import { plainName } from "../translate/expressions/text";
import { type FactPlace, KIND, type RowColumn, rowColumns, type RowPlace, type rowScalars } from "./claimNames";
import type { ClaimTables } from "./claimTables";
import { literal } from "./say";
import {
  asTyped,
  errorShown,
  inBrackets,
  inQuotes,
  kindOfCell,
  numberShown,
  roundBrackets,
  trimmed,
  truthShown,
  withoutBrackets,
  withPlainBlanks,
} from "./cellTexts";

const HEADINGS = ["fact", "facts", "name", "what"];

const LONGER = "The table has more rows than this copy reads: type facts into its own rows, or ask for a new copy.";

/** An unknown name as names are compared, and what is said of those near to it. */
export interface NearNames {
  readonly plain: string;
  readonly near: string;
}

/**
 * The rows of the table of facts as they are read, and a sentence for each that cannot be. The last row is for a table that somebody made longer. Every cell is taken by its
 * place in the range, so a row that is inserted or deleted leaves no hole.
 */
export function rowCells(
  place: RowPlace,
  facts: FactPlace,
  range: RangeRef,
  tables: ClaimTables,
  nearNames: (row: number) => NearNames | null,
): BlockColumn<RowColumn>[] {
  const { cell, all, below, scalar, rows } = place;
  const given = rangeText(range);
  const isExtra = (row: number): boolean => row === rows;
  const reading =
    (read: (row: number, name: string, value: string) => string, blank: string) =>
    (row: number): string =>
      isExtra(row) ? blank : read(row, `INDEX(${given},${row},1)`, `INDEX(${given},${row},2)`);
  const within = (row: number, then: string, otherwise: string): string =>
    `IF(${row}>ROWS(${given}),${otherwise},${then})`;
  const key = (row: number): string => `INDEX(${facts.all("key")},${cell("fact", row)})`;
  const ofFact = (column: "wrong" | "shown", row: number): string =>
    `INDEX(${facts.all(column)},${cell("given", row)})`;
  const isHeading = (row: number): string => `${scalar("heading")}=${row}`;
  const why = (row: number): string => {
    const near = nearNames(row);
    const nearest =
      near === null ? "" : `&IF(${cell("plain", row)}=TRIM(${literal(near.plain)}),${literal(near.near)},"")`;
    const noName = `"Name in row ${row} of the facts must be the name of a fact"${nearest}&"; got "&${cell("nameShown", row)}&"."`;
    const begins = `${key(row)}&" in row ${row} of the facts must be `;
    const times = `COUNTIF(${all("given")},${cell("given", row)})`;
    const places = `INDEX(${all("rows")},MATCH(${cell("given", row)},${all("given")},0))`;
    const twice = `${begins}given once; it stands in rows "&${places}&"; got "&${cell("valueShown", row)}&"."`;
    const wrong = `${begins}"&${ofFact("wrong", row)}&"; got "&${ofFact("shown", row)}&"."`;
    return `IF(OR(${cell("filled", row)}=0,${isHeading(row)}),"",IF(${cell("fact", row)}=0,${noName},IF(${cell("given", row)}=0,"",IF(${times}>1,${twice},IF(${ofFact("wrong", row)}="","",${wrong})))))`;
  };
  const columns: Record<RowColumn, Omit<BlockColumn<RowColumn>, "name">> = {
    nameKind: {
      heading: "Name: 1 text, 2 number, 3 truth, 4 error",
      formula: reading((row, name) => within(row, kindOfCell(name), "0"), "0"),
    },
    nameTyped: {
      heading: "as typed",
      formula: reading((row, name) => `IF(${cell("nameKind", row)}=${KIND.text},${withPlainBlanks(name)},"")`, ""),
    },
    name: {
      heading: "trimmed",
      formula: reading((row) => `IF(${cell("nameTyped", row)}="","",${trimmed(cell("nameTyped", row))})`, ""),
    },
    nameShown: {
      heading: "as a sentence repeats it",
      formula: reading((row, name) => {
        const nought = `IF(ISNUMBER(${name}),IF(TRIM(${name})="","a blank cell","0"),"a blank cell")`;
        return `IF(${cell("filled", row)}=0,"",${byKind(cell("nameKind", row), { text: `IF(${cell("plain", row)}="","a blank cell",${inQuotes(cell("plain", row))})`, number: numberShown(name), truth: truthShown(name), error: errorShown(name) }, nought)})`;
      }, ""),
    },
    brackets: {
      heading: "with round brackets",
      formula: reading((row) => {
        const round = roundBrackets(cell("name", row));
        return ["dB(A))", "dB (A))"].reduce((inner, level) => `SUBSTITUTE(${inner},"${level}","dBA)")`, round); // as factName has it
      }, ""),
    },
    once: {
      heading: "without the first of them",
      formula: reading((row) => withoutBrackets(cell("brackets", row)), ""),
    },
    plain: {
      heading: "as names are compared",
      formula: reading((row) => `LOWER(${plainName(withoutBrackets(cell("once", row)))})`, ""),
    },
    unit: {
      heading: "in its first brackets",
      formula: reading((row) => inBrackets(cell("brackets", row)), ""),
    },
    otherUnit: {
      heading: "and in the next",
      formula: reading((row) => inBrackets(cell("once", row)), ""),
    },
    valueKind: {
      heading: "Value: 1 text, 2 number, 3 truth, 4 error",
      formula: reading((row, _, value) => within(row, kindOfCell(value), "0"), "0"),
    },
    value: {
      heading: "as it stands",
      formula: reading(
        (row, _, value) =>
          byKind(
            cell("valueKind", row),
            { text: value, number: value, truth: truthShown(value), error: errorShown(value) },
            within(row, `IF(ISNUMBER(${value}),IF(TRIM(${value})="","",0),"")`, '""'),
          ),
        '""',
      ),
    },
    valueTyped: {
      heading: "its text",
      formula: reading(
        (row) => `IF(${cell("valueKind", row)}=${KIND.text},${withPlainBlanks(cell("value", row))},"")`,
        "",
      ),
    },
    valueText: {
      heading: "trimmed",
      formula: reading((row) => `IF(${cell("valueTyped", row)}="","",${trimmed(cell("valueTyped", row))})`, ""),
    },
    valueShown: {
      heading: "as a sentence repeats it",
      formula: reading(
        (row) =>
          byKind(
            cell("valueKind", row),
            {
              text: inQuotes(asTyped(cell("value", row), cell("valueTyped", row), cell("valueText", row))),
              number: numberShown(cell("value", row)),
              truth: cell("value", row),
              error: cell("value", row),
            },
            '""',
          ),
        "",
      ),
    },
    filled: {
      heading: "1: something is there",
      formula: (row) =>
        isExtra(row)
          ? `IF(ROWS(${given})>=${row},1,0)`
          : `IF(${cell("nameKind", row)}+${cell("valueKind", row)}>0,1,0)`,
    },
    fact: {
      heading: "Which fact",
      formula: reading(
        (row) =>
          `IF(OR(${cell("nameKind", row)}<>${KIND.text},${isHeading(row)}),0,${tables.fact(cell("plain", row))})`,
        "0",
      ),
    },
    given: {
      heading: "if it has a value",
      formula: reading((row) => `IF(${cell("valueKind", row)}>0,${cell("fact", row)},0)`, "0"),
    },
    rows: {
      heading: "This row and those below with the same",
      formula: reading((row) => {
        const more = below("given", row);
        const at = cell("given", row);
        return `IF(${at}=0,"",${row}&IF(COUNTIF(${more},${at})>0," and "&INDEX(${below("rows", row)},MATCH(${at},${more},0)),""))`;
      }, '""'),
    },
    why: {
      heading: "Why it is not read",
      formula: (row) => (isExtra(row) ? `IF(${cell("filled", row)}=1,${quotedText(LONGER)},"")` : why(row)),
    },
    check: {
      heading: "What the row is called",
      formula: (row) =>
        isExtra(row)
          ? `"Row ${row} and those below"`
          : `IF(${cell("why", row)}="","",IF(${cell("fact", row)}=0,"Row ${row}",${key(row)}&", row ${row}"))`,
    },
  };
  return rowColumns.map((name) => ({ name, ...columns[name] }));
}

function byKind(kind: string, cases: Readonly<Record<keyof typeof KIND, string>>, blank: string): string {
  return (Object.keys(KIND) as (keyof typeof KIND)[]).reduceRight(
    (rest, one) => `IF(${kind}=${KIND[one]},${cases[one]},${rest})`,
    blank,
  );
}

/** The row of a heading, 0 where there is none: the first row that is filled, if both of its cells are texts and the first one is a word for it. */
export function rowScalarCells(place: RowPlace): BlockScalar<(typeof rowScalars)[number]>[] {
  const { all, scalar } = place;
  const inFirst = (column: RowColumn): string => `INDEX(${all(column)},${scalar("first")})`;
  const isWord = `OR(${HEADINGS.map((word) => `${inFirst("plain")}="${word}"`).join(",")})`;
  return [
    { name: "first", heading: "First row that is filled", formula: `IFERROR(MATCH(1,${all("filled")},0),0)` },
    {
      name: "headOnce",
      heading: "its value without brackets",
      formula: `IF(${scalar("first")}=0,"",${withoutBrackets(roundBrackets(inFirst("valueText")))})`,
    },
    { name: "head", heading: "of any kind", formula: `TRIM(${withoutBrackets(scalar("headOnce"))})` },
    {
      name: "heading",
      heading: "Row of the heading; 0 none",
      formula: `IF(${scalar("first")}=0,0,IF(AND(${isWord},${scalar("head")}<>""),${scalar("first")},0))`,
    },
  ];
}
