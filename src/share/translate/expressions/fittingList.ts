import { type FittingItem, parseFittingList } from "../../../core/fittings/fittingList";
import { lossCoefficient } from "../../../core/fittings/lossCoefficient";
import { plain } from "../../../core/naming/findNamed";
import { LARGEST_COEFFICIENT } from "../../../core/largest";
import { MITRE } from "../../../reference/fittings/mitres";
import { unitOf, type UnitSystem } from "../../../reference/quantities";
import { cellAddress } from "../../../sheets/address";
import { onAnySheet } from "../../formula/ranges";
import { quotedText } from "../../references";
import type { LookupTables } from "../lookupTables";
import { BRANCH_AT, BRANCH_LINE, BY_DIAMETER, SLOW_AIR } from "../tableBlocks/fittingBlocks";
import { lineHolds, readLine } from "../tableBlocks/lineBlock";
import { diameterItemOf, unlessRefused } from "../tableBlocks/offeredEntries";
import type { RangeRef } from "../../../sheets/rangeRef";
import type { Workings } from "../workings";
import { digitsOf, withoutDigits } from "./digits";
import { NO_ANSWER, num, plainName } from "./text";
import { sheetPrefix } from "../../../sheets/sheetPrefix";

/** So many entries of a list the plain formulas read, or as many as the book's longest has; a longer list gets #N/A. */
const USUAL_ENTRIES = 8;

const mostEntries = ({ longestList }: LookupTables): number => Math.max(USUAL_ENTRIES, longestList);

export interface ListCall {
  readonly system: UnitSystem; // of the diameter and of plain diameters inside the list
  readonly tables: LookupTables;
  readonly workings: Workings;
  readonly sheet: string; // on which the texts of the cells are right
}

/**
 * K of a list of fittings in a cell, as the reference of a cell of the workings, where each entry has a line. An entry is looked
 * up without its count, which are digits behind its last x ("x2"); else its name has a line through its printed points, on which
 * the number behind the name is read; else it must be a bare K. What is none of these gives #N/A, never a wrong K.
 *
 * @param list the cell
 * @param diameter of the duct, in the unit of `system`, for fittings that go by it; null where none is known
 */
export const fittingsK = (list: string, diameter: string | null, call: ListCall): string =>
  totalOf(1, list, diameter, call);

/** Of the same list the part that is of mitres. */
export const mitresK = (list: string, diameter: string | null, call: ListCall): string =>
  totalOf(3, list, diameter, call);

/** Of the same list the angle of its first branch, below 0 where that is plain, and 0 where it names none; and K of that branch once. */
export const firstBranch = (list: string, diameter: string | null, call: ListCall): { angle: string; k: string } => ({
  angle: totalOf(5, list, diameter, call),
  k: totalOf(7, list, diameter, call),
});

/** Of the same list the first entry that is no name of any, without its count; an empty text where there is none. */
export const wrongEntry = (list: string, diameter: string | null, call: ListCall): string =>
  totalOf(9, list, diameter, call);

/** A cell of the first line of a list's workings. */
function totalOf(place: number, list: string, diameter: string | null, call: ListCall): string {
  const { workings, sheet, system } = call;
  const where = {
    ...call,
    list: onAnySheet(list, sheet),
    diameter: diameter === null ? null : onAnySheet(diameter, sheet),
  };
  const key = `fittings ${system} ${where.list} ${where.diameter ?? ""}`;
  const { top, left } = workings.once(key, () =>
    workings.place(mostEntries(call.tables) + 2, COLUMNS.length, (place) => listRows(place, where)),
  );
  return `${sheetPrefix(call.workings.sheet.name)}$${cellAddress(left + place, top).replace(/(\d+)/, "$$$1")}`;
}

const COLUMNS = [
  "list from here",
  "entry",
  "its last x",
  "times",
  "name",
  "row of the table",
  "last word",
  "number at its end",
  "on the line",
  "at",
  "K of one",
  "K",
  "K of mitres",
  "branch so far at",
  "its K",
] as const;
type Column = (typeof COLUMNS)[number];

interface Where extends ListCall {
  readonly list: string;
  readonly diameter: string | null;
}

function listRows(place: RangeRef, where: Where): string[][] {
  const { list } = where;
  const first = place.top + 2;
  const at = (column: Column, row: number): string => cellAddress(place.left + COLUMNS.indexOf(column), row);
  const last = first + mostEntries(where.tables) - 1;
  const sum = `SUM(${at("K", first)}:${at("K", last)})`;
  const tooMuch = `TRIM(SUBSTITUTE(${behindFirst(at("list from here", last))},";",""))<>""`;
  const isEmptyList = `TRIM(SUBSTITUTE(SUBSTITUTE(${list},CHAR(10),""),";",""))=""`;
  const ofList = `IF(${isEmptyList},${NO_ANSWER},IF(OR(${tooMuch},${sum}>${LARGEST_COEFFICIENT}),${NO_ANSWER},${sum}))`;
  const total = `IF(ISNUMBER(${list}),IF(AND(${list}>=0,${list}<=${LARGEST_COEFFICIENT}),${list},${NO_ANSWER}),${ofList})`;
  const mitres = `IF(ISNUMBER(${list}),0,SUM(${at("K of mitres", first)}:${at("K of mitres", last)}))`;
  const rest = new Array<string>(COLUMNS.length - 10).fill("");
  const isNone = (row: number): string =>
    `IF(AND(${at("row of the table", row)}=0,${at("on the line", row)}=""),${at("name", row)},"")`;
  const firstWrong = Array.from({ length: mostEntries(where.tables) }, (_, index) => first + index).reduceRight(
    (further, row) => `IF(ISERROR(${at("K of one", row)}),${isNone(row)},${further})`,
    '""',
  );
  return [
    [
      ...['"K of the list"', total, '"of which mitres"', mitres],
      ...['"branch at"', at("branch so far at", last), '"its K"', at("its K", last)],
      ...['"no name"', `IF(ISNUMBER(${list}),"",${firstWrong})`, ...rest],
    ],
    COLUMNS.map(quotedText),
    ...Array.from({ length: mostEntries(where.tables) }, (_, index) => {
      const before = index === 0 ? tidyList(list) : behindFirst(at("list from here", first + index - 1));
      const entry = (column: Column): string => at(column, first + index);
      const above = (column: Column): string => (index === 0 ? "0" : at(column, first + index - 1));
      return [before, ...entryRow(entry, where), ...branchSoFar(entry, above, where)];
    }),
  ];
}

/** A list with a semicolon behind each entry. Wildcards are taken out, so that looking up reads none. */
function tidyList(list: string): string {
  const replaced: readonly (readonly [from: string, to: string])[] = [
    ["×", "x"],
    ["°", ""],
    [",", "."],
    ["*", "#"],
    ["?", "#"],
    ["~", "#"],
  ];
  const tidy = replaced.reduce((inner, [from, to]) => `SUBSTITUTE(${inner},"${from}","${to}")`, list);
  return `SUBSTITUTE(${tidy},CHAR(10),";")&";"`;
}

/** What follows the first entry of such a list. */
const behindFirst = (cell: string): string => `IF(${cell}="","",MID(${cell},FIND(";",${cell})+1,9999))`;

/** One entry: cut out, freed of its count, looked up, and its K times the count. */
function entryRow(at: (column: Column) => string, where: Where): string[] {
  const { diameter, system, tables } = where;
  const block = tables.block(`fittings ${system}`);
  const lines = tables.block(`diameter items ${system}`);
  const named = tables.block("line names");
  const lineOf = (name: string): string =>
    `IFERROR(INDEX(${named.range("line")},MATCH(${name},${named.range("name")},0)),"")`;
  const [list, entry, mark, count, name, row, last, number, line, x, one, all] = COLUMNS.map(at) as [
    ...[string, string, string, string, string, string, string, string, string, string, string, string],
  ];
  const behind = `TRIM(MID(${entry},${mark}+1,9))`;
  const isBelowNought = `ISNUMBER(FIND(" -",${entry}))`; // plain names have no hyphen, so "elbow -1" would be "elbow 1"
  const words = plainName(name);
  const lastBlank = `FIND("*",SUBSTITUTE(${words}," ","*",LEN(${words})-LEN(SUBSTITUTE(${words}," ",""))))`;
  const ofLine = `IF(${lineHolds(lines, line, x)},${readLine(lines, line, x)},${NO_ANSWER})`;
  const ofEntry = `IF(${row}=0,${digitsOf(name, NO_ANSWER)},INDEX(${block.range("K")},${row}))`;
  const times = `IF(${count}="",1,IF(LEN(${count})<5,IF(AND(VALUE(${count})>=1,VALUE(${count})<=1000),VALUE(${count}),${NO_ANSWER}),${NO_ANSWER}))`;
  return [
    `IF(${list}="","",TRIM(LEFT(${list},FIND(";",${list})-1)))`,
    `IFERROR(FIND("*",SUBSTITUTE(LOWER(${entry}),"x","*",LEN(${entry})-LEN(SUBSTITUTE(LOWER(${entry}),"x","")))),0)`,
    `IF(${mark}>1,IF(${withoutDigits(behind)}="",${behind},""),"")`,
    `IF(${isBelowNought},"#",IF(${count}="",${entry},TRIM(LEFT(${entry},${mark}-1))))`,
    `IF(${name}="",0,IFERROR(MATCH(${plainName(name)},${block.range("entry")},0),0))`,
    `IF(OR(${row}>0,ISERROR(FIND(" ",${words}))),"",MID(${words},${lastBlank}+1,40))`,
    digitsOf(last, '""'),
    `IF(${row}>0,${moreOf(row, BY_DIAMETER, '""', where)}&"",IF(${number}="","",${lineOf(`LEFT(${words},${lastBlank}-1)`)}))`,
    `IF(${row}=0,${number},${diameter ?? '""'})`,
    `IF(${entry}="",0,IF(${line}="",${ofEntry},${ofLine}))`,
    `IF(${entry}="",0,${times}*${one})`,
    `IF(${row}=0,0,IF(${moreOf(row, SLOW_AIR, '""', where)}="yes",${all},0))`,
  ];
}

/**
 * What a row of the table has in a column that few rows fill: they stand first, so most of the table need not be read. Where a reader
 * has filled such a column further down, nobody knows what was meant.
 */
function moreOf(row: string, column: string, none: string, { system, tables, workings, sheet }: Where): string {
  const block = tables.block(`fittings ${system}`);
  const isBlankBelow = `COUNTA(${block.rest(BY_DIAMETER, BRANCH_AT)})=0`;
  const rows = workings.cell(`IF(${isBlankBelow},ROWS(${block.head(BY_DIAMETER)}),${NO_ANSWER})`, sheet);
  return `IF(${row}>${rows},${none},INDEX(${block.head(column)},${row}))`;
}

/** The first branch of the entries up to here; one that is not listed has its angle as its number. */
function branchSoFar(at: (column: Column) => string, above: (column: Column) => string, where: Where): string[] {
  const [row, before, number] = [at("row of the table"), above("branch so far at"), at("number at its end")];
  const isBranch = `IF(${number}="",FALSE,${at("on the line")}=${quotedText(BRANCH_LINE)})`;
  const own = `IF(${row}=0,IF(${isBranch},${number},0),${moreOf(row, BRANCH_AT, "0", where)}+0)`;
  return [
    `IF(${before}<>0,${before},${own})`,
    `IF(${before}<>0,${above("its K")},IF(${at("branch so far at")}=0,0,${at("K of one")}))`,
  ];
}

/** K of an item that goes by the duct's diameter, by the table of its points; #N/A outside them. */
function byDiameter(item: string, diameter: string | null, system: UnitSystem, tables: LookupTables): string {
  if (diameter === null) return NO_ANSWER;
  const block = tables.block(`diameter items ${system}`);
  return `IF(${lineHolds(block, item, diameter)},${readLine(block, item, diameter)},${NO_ANSWER})`;
}

/** K of a list that is typed into the call itself; null where the function refuses it. Figures come from the tables. */
export const typedListK = (
  text: string,
  kind: "hood" | "any",
  diameter: string | null,
  call: Pick<ListCall, "system" | "tables">,
): string | null => typedSum(text, kind, diameter, call, () => true);

/** Of a list that is typed into the call the part that is of mitres; null where it has none. */
export const typedMitresK = (text: string, call: Pick<ListCall, "system" | "tables">): string | null =>
  typedSum(text, "any", null, call, ({ family }) => family?.key === MITRE);

function typedSum(
  text: string,
  kind: "hood" | "any",
  diameter: string | null,
  { system, tables }: Pick<ListCall, "system" | "tables">,
  counts: (item: FittingItem) => boolean,
): string | null {
  const block = tables.block(`fittings ${system}`);
  const [sum] = unlessRefused(() => {
    const items = parseFittingList("fitting", text, unitOf("diameter", system).factor, kind).filter(counts);
    const parts = items.map(({ family, coefficient, shape, angle, count }) => {
      const k = (): string => {
        if (family === null) return num(coefficient!);
        if (shape === null && family.shape?.quantity === "diameter")
          return byDiameter(quotedText(diameterItemOf(family, angle).name), diameter, system, tables);
        const own = [plain(family.key), shape, angle].filter((part) => part !== null).join(" ");
        const row = block.rowOf(own);
        return row === null ? num(lossCoefficient(family, shape, angle)) : block.cell("K", row);
      };
      return count === 1 ? k() : `${num(count)}*${k()}`;
    });
    return parts.length === 0 ? [] : [`(${parts.join("+")})`];
  });
  return sum ?? null;
}
