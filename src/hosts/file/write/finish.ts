import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { ROW_POINTS } from "../../../sheets/pagesBegin";
import { KEY_NAMES } from "../../../sheets/sheetKeys";
import { MARK } from "../xlsxText";
import { looksTyped, mapTextCells, quotedStyles } from "./quotedTexts";
import { orderedFonts } from "./fontOrder";
import { roomyNotes } from "./noteShapes";
import { withSharedFormulas } from "./sharedFormulas";
import { valueAt } from "../../../reference/itemAt";

const WHEN = new Date(1980, 0, 1); // the zip format's first day, so that the same workbook gives the same file

/**
 * What hucre's parts still need before they are a workbook as we want it.
 *
 * @param recalculate whether the program that opens the file computes everything anew
 */
export function finished(bytes: Uint8Array, recalculate: boolean): Uint8Array {
  const parts = new Map(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
  const change = (name: string, edit: (xml: string) => string): void => {
    const part = parts.get(name);
    if (part !== undefined) parts.set(name, edit(part));
  };
  change("xl/workbook.xml", (xml) => hiddenNames(calculation(xml, recalculate)));
  change("docProps/core.xml", (xml) => xml.replace(/<dcterms:modified[^>]*>[^<]*<\/dcterms:modified>/, ""));
  change("docProps/app.xml", (xml) => xml.replace(/<Application>[^<]*</, "<Application>Duct Ledger<"));
  const named = (pattern: RegExp): string[] => [...parts.keys()].filter((name) => pattern.test(name));
  named(/^xl\/worksheets\/sheet\d+\.xml$/).forEach((name) => change(name, (xml) => usualRows(errors(xml))));
  markTexts(parts, named(/^xl\/worksheets\/sheet\d+\.xml$/));
  named(/^xl\/worksheets\/sheet\d+\.xml$/).forEach((name) => change(name, withSharedFormulas));
  change("xl/styles.xml", orderedFonts);
  change("xl/sharedStrings.xml", (xml) => xml.replaceAll(MARK, ""));
  named(/^xl\/charts\/chart\d+\.xml$/).forEach((name) => change(name, straightLines));
  named(/^xl\/comments\d+\.xml$/).forEach((name) => {
    const shapes = name.replace("xl/comments", "xl/drawings/vmlDrawing").replace(".xml", ".vml");
    change(shapes, (vml) => roomyNotes(vml, valueAt(parts, name)));
    change(name, (xml) => xml.replaceAll("<t>", '<t xml:space="preserve">'));
  });
  const files = [...parts].map(([name, xml]) => [name, zipped(xml)] as const);
  return zipSync(Object.fromEntries(files));
}

const zipped = (xml: string): [Uint8Array, { mtime: Date; level: 9 }] => [strToU8(xml), { mtime: WHEN, level: 9 }];

/**
 * hucre asks for a recalculation at every opening. A program without our functions would then show #NAME? in place of the
 * numbers, so a live workbook does not ask for it.
 */
const calculation = (xml: string, recalculate: boolean): string =>
  xml.replace(/<calcPr[^>]*\/>/, `<calcPr calcId="191029"${recalculate ? ' fullCalcOnLoad="1"' : ""}/>`);

/** The names that say which sheet is which are nothing to choose from. */
const hiddenNames = (xml: string): string =>
  xml.replaceAll(`<definedName name="${KEY_NAMES}`, `<definedName hidden="1" name="${KEY_NAMES}`);

/** A formula's error is written as text, and marked by us. */
const errors = (xml: string): string =>
  xml.replace(new RegExp(`t="str"(><f[^>]*>[^<]*</f><v>)${MARK}`, "g"), 't="e"$1');

/** A line of our font needs 12.75 points; hucre's rows of 15 put the last few of forty on a paper of their own. */
const usualRows = (xml: string): string =>
  xml.replace('<sheetFormatPr defaultRowHeight="15"/>', `<sheetFormatPr defaultRowHeight="${ROW_POINTS}"/>`);

/** Without this a chart's lines are drawn as curves through its points. */
const straightLines = (xml: string): string =>
  xml.replaceAll("</c:yVal></c:ser>", '</c:yVal><c:smooth val="0"/></c:ser>');

function markTexts(parts: Map<string, string>, sheets: readonly string[]): void {
  const texts = [...(parts.get("xl/sharedStrings.xml") ?? "").matchAll(/<si><t(?:\/>|[^>]*>([^<]*)<)/g)].map(
    ([, text]) => text ?? "",
  );
  const isTyped = texts.map((text) => looksTyped(text));
  const wanted = new Set<number>();
  for (const name of sheets)
    mapTextCells(valueAt(parts, name), (style, text) => {
      if (isTyped[text]) wanted.add(style);
      return style;
    });
  if (wanted.size === 0) return;
  const { styles, quoted } = quotedStyles(valueAt(parts, "xl/styles.xml"), wanted);
  parts.set("xl/styles.xml", styles);
  for (const name of sheets)
    parts.set(
      name,
      mapTextCells(valueAt(parts, name), (style, text) => (isTyped[text] ? valueAt(quoted, style) : style)),
    );
}
