import { cellAddress, placeOf } from "../../sheets/address";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import { TEXT } from "../../sheets/textCells";
import type { CellValue } from "../../sheets/workbook";
import type { CellBlock, WriteOutcome } from "../host";
import { isEditing, sentenceOf } from "./faults";
import { isFormula } from "./isFormula";
import { asLiteral } from "./literal";
import { rangeAt } from "./rangeAt";

/**
 * Writes values into cells of the open workbook, all or none: looks first whether they are there, take them and are still as the
 * caller saw them, then whether they hold them, and puts back what was there where one does not.
 */
export const writeBlocks = (blocks: readonly CellBlock[], still: readonly CellBlock[] = []): Promise<WriteOutcome> =>
  Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    const names = [...new Set([...blocks, ...still].map(({ sheet }) => sheet))];
    const gone = names.find((wanted) => !worksheets.items.some(({ name }) => name === wanted));
    if (gone !== undefined) return { written: false, why: `There is no sheet called ${gone} any more.` };
    const written = [...new Set(blocks.map(({ sheet }) => sheet))];
    const protections = written.map((name) => ({ name, protection: worksheets.getItem(name).protection }));
    for (const { protection } of protections) protection.load("protected");
    const [lines, seen] = [blocks, still].map((some) => some.flatMap((block) => linesOf(worksheets, block))) as [Line[], Line[]]; // prettier-ignore
    for (const { range } of seen) range.load("values");
    for (const { range } of lines) range.load("values,formulas,numberFormat,hasSpill");
    await context.sync();
    const locked = protections.find(({ protection }) => protection.protected);
    if (locked !== undefined)
      return { written: false, why: `The sheet ${locked.name} is protected: take the protection off first.` };
    const why = seen.flatMap(changed)[0] ?? lines.flatMap(unfit)[0];
    if (why !== undefined) return { written: false, why };

    const before = lines.map((line) => ({ ...line, contents: contentsOf(line), held: line.range.values }));
    for (const line of lines) {
      line.range.formulas = [asWritten(line)];
      line.range.load("values"); // in the same request, in which nobody can come between
    }
    const wrong = await context.sync().then(
      () => lines.flatMap(otherwise)[0],
      (fault: unknown) => {
        if (isEditing(fault)) throw fault; // nothing of the request was done
        return sentenceOf(fault);
      },
    );
    if (wrong === undefined) return { written: true };
    const isBack = await putBack(context, before);
    return {
      written: false,
      why: `${wrong} ${isBack ? "What was there stands there again." : "Undo what was written."}`,
    };
  });

interface Before extends Line {
  readonly contents: readonly unknown[];
  readonly held: unknown;
}

const enterAlone = async (context: Excel.RequestContext, { range, contents }: Before): Promise<void> => {
  range.formulas = [[...contents]];
  await context.sync().catch(() => undefined);
};

/** Line by line, since Excel may refuse one again; answers whether all hold again what they held. */
async function putBack(context: Excel.RequestContext, lines: readonly Before[]): Promise<boolean> {
  for (const line of lines) await enterAlone(context, line);
  for (const { range } of lines) range.load("values");
  return context.sync().then(
    () => lines.every(({ range, held }) => JSON.stringify(range.values) === JSON.stringify(held)),
    () => false,
  );
}

interface Line {
  readonly range: Excel.Range;
  readonly values: readonly CellValue[];
  readonly addressOf: (across: number) => string;
}

/** A row at a time: over rows that a filter hides, Excel has been seen to write a block's first row again and again (office-js issue 224). */
function linesOf(worksheets: Excel.WorksheetCollection, { sheet, at, rows }: CellBlock): Line[] {
  const { row, column } = placeOf(at);
  return rows.map((values, down) => {
    const top = row + down;
    const range = { top, bottom: top, left: column, right: column + values.length - 1 };
    return {
      range: rangeAt(worksheets.getItem(sheet), range),
      values,
      addressOf: (across) => `${sheetPrefix(sheet)}${cellAddress(column + across, top)}`,
    };
  });
}

const formatAt = ({ range }: Line, across: number): string => String(range.numberFormat[0]?.[across]);

const literal = (line: Line, content: unknown, across: number): unknown =>
  typeof content === "string" ? asLiteral(content, formatAt(line, across)) : content;

/** An empty text empties a cell; null would leave it as it is. */
const asWritten = (line: Line): unknown[] => line.values.map((value, across) => literal(line, value ?? "", across));

/** What stands there, as it must be entered to stand there again. */
const contentsOf = (line: Line): unknown[] =>
  (line.range.formulas[0] ?? []).map((content: unknown, across) =>
    isFormula(content, line.range.values[0]?.[across]) ? content : literal(line, content, across),
  );

const changed = ({ range, values, addressOf }: Line): string[] =>
  values.flatMap((value, across) =>
    isSame(range.values[0]?.[across], value ?? "")
      ? []
      : [`${addressOf(across)} has been changed meanwhile, so nothing was written: try again.`],
  );

/** Where a cell cannot hold what is to be written; that is known before. */
function unfit(line: Line): string[] {
  const { range, values, addressOf } = line;
  if (range.hasSpill !== false)
    return [
      `A formula fills ${addressOf(0)} or a cell beside it, so nothing was written: change that formula yourself.`,
    ];
  return values.flatMap((value, across) =>
    typeof value === "number" && formatAt(line, across) === TEXT
      ? [`${addressOf(across)} is formatted as text, so nothing was written: give it the number format General.`]
      : [],
  );
}

/** A sentence for each cell that holds something else than was written. */
const otherwise = ({ range, values, addressOf }: Line): string[] =>
  values.flatMap(
    (value, across) =>
    isSame(range.values[0]?.[across], value ?? "")
      ? []
      : [`${addressOf(across)} did not take what was written: take a filter off the sheet, part merged cells, and try again.`], // prettier-ignore
  );

const CLOSE = 1e-12; // of a number, for the digits that an answer of Excel may leave out

const isSame = (held: unknown, written: CellValue): boolean =>
  typeof held === "number" && typeof written === "number"
    ? Math.abs(held - written) <= CLOSE * Math.abs(written)
    : held === written;
