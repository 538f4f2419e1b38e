import { unitsInWords } from "../../reference/typedUnit";
import type { Amount } from "../../reference/claimFacts";
import { inWords } from "../../reference/inWords";
import { unitOf } from "../../reference/quantities";
import { num } from "../translate/expressions/text";
import { digitPattern, zerosAhead } from "./cellTexts";
import { type FactColumn, KIND } from "./claimNames";
import type { FactCells, FactsReader } from "./factsReader";
import { literal } from "./say";

const LARGEST_SHARE = 1.5; // as the function has it: a person types 65, a spreadsheet holds 0.65
const LARGEST_POWER = 99; // of ten; nothing that is meant has one
const NO_NUMBER = '"none"';

/** Texts of a fact's name: those that may say the unit of a bare number, and those that may hold one of something else. */
export interface UnitsInName {
  readonly units: readonly string[];
  readonly strays: readonly string[];
}

/** An amount as the function reads it: digit by digit, so that no program's locale has a say. */
export function amountCells(
  { facts, tables, system }: FactsReader,
  amount: Amount,
  row: number,
  number: string,
  { units, strays }: UnitsInName,
): FactCells {
  const at = (column: FactColumn): string => facts.cell(column, row);
  const { quantity, low, high, unit, thinkable = high, several } = amount;
  const label = unit ?? unitOf(quantity, system).label;
  const own = unit === undefined ? unitOf(quantity, system).factor : 1;
  const isShare = label === "%";
  const sign = `IF(LEFT(${at("text")},1)="-",0-1,1)`;
  const decimals = `10^MAX(0,${at("part")}-1)`;
  const signOf = (text: string): string => `IF(OR(${text}="+",${text}="-"),1,0)`;
  const from = (start: string): string => `MID(${at("pattern")},${start},999)`;
  const behind = `${at("mantissa")}+1`;
  const powerLength = `IF(${at("powerDigits")}=0,0,1+${at("powerSign")}+${at("powerDigits")})`;
  const power = `IF(${at("powerDigits")}=0,0,IF(MID(${at("text")},${behind}+1,1)="-",0-1,1)*MIN(${LARGEST_POWER},VALUE(MID(${at("text")},${behind}+1+${at("powerSign")},MAX(1,MIN(9,${at("powerDigits")}))))))`;
  // of digits with commas: groups of three, or one comma with digits on both sides
  const groups = `SUBSTITUTE("|"&SUBSTITUTE(MID(${at("pattern")},${at("sign")}+1,${at("whole")}),",",",,")&",",",000,","")`;
  const begins = `MID(${at("text")},${at("sign")}+1,1)<>"0"`;
  const isGrouped = `AND(${at("powerDigits")}=0,${at("part")}<>1,${begins},OR(${groups}="|0,",${groups}="|00,",${groups}="|000,"))`;
  const commas = `LEN(${at("digits")})-LEN(SUBSTITUTE(${at("digits")},",",""))`;
  const isDecimal = `AND(${at("mantissa")}>0,${at("powerDigits")}=0,${at("part")}=0,${commas}=1,RIGHT(${at("digits")},1)<>",")`;
  const isDotted = `AND(${at("mantissa")}>0,${at("powerDigits")}=0,${at("part")}=4,${commas}=0,${at("whole")}>0,${at("whole")}<4,${begins})`;
  const plainly = (text: string): string =>
    ['"²","2"', '"³","3"', '" ",""', '".",""'].reduce((inner, change) => `SUBSTITUTE(${inner},${change})`, text);
  const factorOf = (text: string): string => tables.factor(amount, plainly(text));
  const isAny = (text: string): string => `${tables.isUnit(plainly(text))}=1`;
  const isStray = (text: string): string =>
    unit === undefined ? isAny(text) : `AND(${isAny(text)},${factorOf(text)}=0)`; // where it may name a unit, none is named here
  const named = unit !== undefined ? "0" : `IF(${at("row")}=0,0,${firstOf(units.map(factorOf))})`;
  const bare = named === "0" ? num(own) : `IF(${at("named")}=0,${num(own)},${at("named")})`;
  const isBare = `OR(${at("kind")}=${KIND.number},${at("rest")}="")`;
  const inSI = (value: "first" | "second"): string => {
    const factor = isShare
      ? `IF(AND(${isBare},ABS(${at(value)})>${LARGEST_SHARE}),0.01,${at("factor")})`
      : at("factor");
    return `IF(ISNUMBER(${at(value)}),${at(value)}*${factor},0)`;
  };
  const isWithin = (value: "firstSI" | "secondSI", end: number): string =>
    `AND(${at(value)}>=${num(low)},${at(value)}<=${num(end)})`;
  const isMeant = (value: "firstSI" | "secondSI"): string => isWithin(value, thinkable);
  const isTaken = (value: "firstSI" | "secondSI"): string => isWithin(value, high);
  const ends = [low, high].map((end) =>
    unit === undefined ? inWords(end, quantity, system) : `${isShare ? 100 * end : end} ${unit}`,
  );
  const read = `a number, bare (${label}) or with its unit: ${unitsInWords(quantity, label)}${several === undefined ? "" : `; ${several}`}`;
  const range = (unitOfBare: string): string =>
    literal(`from ${ends.join(" to ")} (a bare number is read in ${unitOfBare})`);
  const outside =
    named === "0" ? range(label) : `IF(${at("named")}=0,${range(label)},${range("the unit of its name")})`;
  const whole = label === "stages" ? `IF(${at("value")}<>INT(${at("value")}),"a whole number","")` : '""';
  const strayed = `"typed with its unit, for "&CHAR(34)&${at("stray")}&CHAR(34)&" in its name is none of it (${unitsInWords(quantity, label)})"`;
  const either = `"written as "&MAX(${at("first")},${at("second")})&" or as "&MIN(${at("first")},${at("second")})`;
  return {
    text: `LOWER(${at("raw")})`,
    pattern: digitPattern(at("text")),
    sign: signOf(`LEFT(${at("pattern")},1)`),
    whole: `IF(MID(${at("pattern")},${at("sign")}+1,1)="0",${zerosAhead(from(`${at("sign")}+1`), true)},0)`,
    part: partLength(at("sign"), at("whole"), at("pattern")),
    mantissa: `IF(${at("whole")}+${at("part")}=0,0,${at("sign")}+${at("whole")}+${at("part")})`,
    powerSign: signOf(`MID(${at("pattern")},${behind}+1,1)`),
    powerDigits: `IF(${at("mantissa")}=0,0,IF(MID(${at("pattern")},${behind},1)="e",${zerosAhead(from(`${behind}+1+${at("powerSign")}`))},0))`,
    rest: `IF(${at("mantissa")}=0,"",TRIM(${withoutWords(`MID(${at("text")},${behind}+${powerLength},999)`, amount)}))`,
    named,
    stray: `IF(OR(${at("kind")}=0,${at("named")}<>0,NOT(${isBare})),"",${strays.reduceRight((rest, text) => `IF(${isStray(text)},${text},${rest})`, '""')})`,
    factor: `IF(${at("kind")}=${KIND.number},${bare},IF(${at("mantissa")}=0,0,IF(${at("rest")}="",${bare},${factorOf(at("rest"))})))`,
    digits: `IF(${at("mantissa")}=0,"",MID(${at("text")},${at("sign")}+1,${at("whole")}+${at("part")}))`,
    integer: `IF(${at("mantissa")}=0,0,${sign}*VALUE(SUBSTITUTE(SUBSTITUTE(${at("digits")},",",""),".","")))`,
    first: `IF(${at("kind")}=${KIND.number},${number},IF(${at("mantissa")}=0,${NO_NUMBER},IF(${commas}=0,${tenTimes(at("integer"), `(${power})`)}/${decimals},IF(${isGrouped},${at("integer")}/${decimals},${NO_NUMBER}))))`,
    second: `IF(${isDecimal},${at("integer")}/10^(LEN(${at("digits")})-FIND(",",${at("digits")})),IF(${isDotted},${at("integer")},${NO_NUMBER}))`,
    firstSI: inSI("first"),
    secondSI: inSI("second"),
    fits: `IF(${isMeant("firstSI")},1,0)+IF(${isMeant("secondSI")},1,0)`,
    value: `IF(AND(${at("fits")}=1,${at("stray")}=""),IF(${isTaken("firstSI")},${at("firstSI")},IF(${isTaken("secondSI")},${at("secondSI")},0)),0)`,
    wrong: `IF(${at("kind")}=0,"",IF(${at("factor")}=0,${literal(read)},IF(${at("stray")}<>"",${strayed},IF(${at("fits")}>1,${either},IF(${at("value")}=0,${outside},${whole})))))`,
  };
}

/** As the function has it. */
const withoutWords = (text: string, { noRating }: Amount): string =>
  noRating === undefined
    ? text
    : [...noRating, "(", ")"].reduce((inner, word) => `SUBSTITUTE(${inner},"${word}","")`, text);

/** A number times a power of ten; divided by a whole power where that is negative, as the nearest number asks. */
const tenTimes = (number: string, power: string): string =>
  `IF(${power}<0,${number}/10^ABS(${power}),${number}*10^MAX(0,${power}))`;

/** How many signs the point and the digits behind it are; without digits before it there must be some behind it. */
export function partLength(sign: string, whole: string, pattern: string): string {
  const point = `${sign}+${whole}+1`;
  const digits = zerosAhead(`MID(${pattern},${point}+1,999)`);
  return `IF(MID(${pattern},${point},1)=".",IF(AND(${whole}=0,MID(${pattern},${point}+1,1)<>"0"),0,1+${digits}),0)`;
}

/** The first of some numbers that is not 0. */
const firstOf = (numbers: readonly string[]): string =>
  numbers.slice(0, -1).reduceRight((rest, one) => `IF(${one}=0,${rest},${one})`, numbers.at(-1)!);
