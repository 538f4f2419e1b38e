import {
  type Amount,
  type ClaimFact,
  claimFacts,
  ofAll,
  severalSpelt,
  severalWords,
  type Words,
} from "../../reference/claimFacts";
import type { BlockColumn } from "../budget/block";
import { quotedText } from "../references";
import { plainName } from "../translate/expressions/text";
import { amountCells, type UnitsInName } from "./amountCells";
import { inQuotes, trimmed } from "./cellTexts";
import {
  type FactColumn,
  factColumns,
  type FactPlace,
  factRow,
  KIND,
  type RowColumn,
  RATED_AIRFLOW,
  RATED_PRESSURE,
} from "./claimNames";
import type { FactCells, FactsReader } from "./factsReader";
import { literal } from "./say";

const HEADINGS: Readonly<Record<FactColumn, string>> = {
  key: "Fact",
  row: "stands in row; 0 is not given once",
  kind: "1 text, 2 number, 3 truth, 4 error",
  raw: "as text",
  text: "in small letters",
  pattern: "with 0 for each digit",
  sign: "signs: + or -",
  whole: "digits and commas",
  part: "point and digits behind it",
  mantissa: "all of these",
  powerSign: "sign of an exponent",
  powerDigits: "its digits",
  rest: "behind the number",
  named: "SI units in one of what its name says; 0 none",
  stray: "a unit in its name that is none of it",
  factor: "in one of its own; 0 unknown",
  digits: "the number",
  integer: "without comma and point",
  first: "as it is read",
  second: "with a comma of decimals, or a point of thousands",
  firstSI: "the one in SI",
  secondSI: "the other",
  fits: "how many can be meant",
  value: "Value, SI",
  wrong: "What it must be",
  shown: "as a sentence repeats it",
  has: "1: given and read; 2: and no rating",
};

/** Each fact that a data sheet may give, read from the one row that gives it. */
export function factColumnsOf(reader: FactsReader): BlockColumn<FactColumn>[] {
  const cells = [
    ...claimFacts.map((fact: ClaimFact, index) => factCells(reader, fact, index + 1)),
    partCells(reader, "airflow", RATED_AIRFLOW),
    partCells(reader, "pressure", RATED_PRESSURE),
  ];
  return factColumns.map((name) => ({
    name,
    heading: HEADINGS[name],
    formula: (row) => cells[row - 1]![name] ?? "",
  }));
}

function factCells(reader: FactsReader, { key, takes }: ClaimFact, row: number): FactCells {
  const { facts, rows } = reader;
  const at = (column: FactColumn): string => facts.cell(column, row);
  const isGiven = `COUNTIF(${rows.all("given")},${row})=1`;
  const ofRow = (column: RowColumn): string => `INDEX(${rows.all(column)},${at("row")})`;
  const common: FactCells = {
    key: quotedText(key.charAt(0).toUpperCase() + key.slice(1)),
    row: `IF(${isGiven},MATCH(${row},${rows.all("given")},0),0)`,
    kind: `IF(${at("row")}=0,0,${ofRow("valueKind")})`,
    raw: `IF(${at("kind")}=${KIND.text},${ofRow("valueText")},"")`,
    shown: `IF(${at("row")}=0,"",${ofRow("valueShown")})`,
    has: `IF(${at("kind")}>0,IF(${at("wrong")}="",1,0),0)`,
  };
  const inBrackets = (["unit", "otherUnit"] as const).map(ofRow);
  const named: UnitsInName = { units: [ofRow("plain"), ...inBrackets], strays: inBrackets };
  const isTextOrNumber = `OR(${at("kind")}=${KIND.text},${at("kind")}=${KIND.number})`;
  switch (takes.kind) {
    case "amount":
      return {
        ...common,
        ...aloneCells(takes, ofRow("name"), at, amountCells(reader, takes, row, `${ofRow("value")}`, named)),
        ...ratedCells(takes, ofRow("name"), at),
      };
    case "words":
      return {
        ...common,
        raw: `IF(${isTextOrNumber},${ofRow("value")}&"","")`,
        text: `LOWER(${plainName(at("raw"))})`,
        value: `IF(${at("raw")}="","",${reader.tables.word(key, at("text"))})`,
        wrong: `IF(${at("kind")}=0,"",IF(${at("value")}="",${literal(oneOfWords(takes))},""))`,
      };
    case "text":
      return {
        ...common,
        value: `IF(${isTextOrNumber},${ofRow("value")},"")`,
        wrong: `IF(${at("kind")}>${KIND.number},"a number or a text","")`,
      };
    case "pair":
      return { ...common, ...pairCells(facts, row, ofRow) };
  }
}

/** A number that is one of several, as its name says, is none for all of them. */
function aloneCells(
  { several }: Amount,
  name: string,
  at: (column: FactColumn) => string,
  cells: FactCells,
): FactCells {
  if (several === undefined) return cells;
  const plain = severalSpelt.reduce(
    (said, [as, plainly]) => `SUBSTITUTE(${said},"${as}","${plainly}")`,
    `LOWER(${name})`,
  );
  const isOne = severalWords.map((word) => `ISNUMBER(FIND("${word}",${plain}))`).join(",");
  const wrong = `IF(${at("kind")}=0,"",IF(OR(${isOne}),${literal(ofAll(several))},${cells.wrong}))`;
  return { ...cells, wrong };
}

/** A number that its words, or those of its name, say is no rating. */
function ratedCells({ noRating }: Amount, name: string, at: (column: FactColumn) => string): FactCells {
  if (noRating === undefined) return {};
  const said = `LOWER(${name})&" "&${at("text")}`;
  const isNone = noRating.map((word) => `ISNUMBER(FIND("${word}",${said}))`).join(",");
  return { has: `IF(AND(${at("kind")}>0,${at("wrong")}=""),IF(OR(${isNone}),2,1),0)` };
}

const oneOfWords = ({ words }: Words): string => `one of ${words.map(({ key }) => key).join(", ")}`;

const PAIR = 'an airflow at a pressure in one cell, such as "1000 at 8"';

/** An airflow, "at" or @, and a pressure: the mark that parts them is counted. */
function pairCells(facts: FactPlace, row: number, ofRow: (column: "valueTyped" | "valueShown") => string): FactCells {
  const at = (column: FactColumn): string => facts.cell(column, row);
  const first = (column: FactColumn): string => facts.cell(column, RATED_AIRFLOW);
  const second = (column: FactColumn): string => facts.cell(column, RATED_PRESSURE);
  const isFirst = `${first("wrong")}<>""`;
  const whole = (part: (column: FactColumn) => string): string => `IF(${at("has")}=1,${part("value")},0)`;
  return {
    raw: `IF(${at("kind")}=${KIND.text},${ofRow("valueTyped")},"")`, // a blank at its end may belong to an "at"
    text: parted(at("raw")),
    firstSI: whole(first),
    secondSI: whole(second),
    fits: `LEN(${at("text")})-LEN(SUBSTITUTE(${at("text")},"@",""))`,
    wrong: `IF(${at("kind")}=0,"",IF(${at("fits")}<>1,${literal(PAIR)},IF(${isFirst},${first("wrong")},${second("wrong")})))`,
    shown: `IF(${at("row")}=0,"",IF(${at("fits")}<>1,${ofRow("valueShown")},IF(${isFirst},${first("shown")},${second("shown")})))`,
  };
}

const parted = (text: string): string =>
  ["at", "AT", "At", "aT"].reduce((inner, word) => `SUBSTITUTE(${inner}," ${word} ","@")`, text);

/** One of the two amounts of the rated point. */
function partCells(reader: FactsReader, key: "airflow" | "pressure", row: number): FactCells {
  const { facts, rows } = reader;
  const at = (column: FactColumn): string => facts.cell(column, row);
  const said = `SUBSTITUTE(${parted(`INDEX(${rows.all("unit")},${at("row")})`)}&"@",",","@")`; // what its name has in brackets, in two
  const behind = `MID(${said},FIND("@",${said})+1,999)`;
  const units = [`LEFT(${said},FIND("@",${said})-1)`, `LEFT(${behind}&"@",FIND("@",${behind}&"@")-1)`];
  const pair = (column: FactColumn): string => facts.cell(column, factRow("rated point"));
  const mark = `FIND("@",${pair("text")})`;
  const part = row === RATED_AIRFLOW ? `LEFT(${pair("text")},${mark}-1)` : `MID(${pair("text")},${mark}+1,999)`;
  const amount = claimFacts.find((fact) => fact.key === key)!.takes as Amount;
  return {
    key: quotedText(`Rated ${key}`),
    row: pair("row"),
    kind: `IF(${pair("fits")}=1,${KIND.text},0)`,
    raw: `IF(${at("kind")}=0,"",IF(TRIM(${part})="","",${trimmed(part)}))`,
    shown: `IF(${at("raw")}="","a blank cell",${inQuotes(at("raw"))})`,
    has: pair("has"),
    ...amountCells(reader, amount, row, "0", { units, strays: [] }),
  };
}
