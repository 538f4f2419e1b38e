import type { WriteSheet } from "hucre/xlsx";
import type { Sheet } from "../../../sheets/workbook";
import { columnLetters } from "../../../sheets/address";
import { MARGINS } from "../../../sheets/paper";
import { rangeText } from "../../../sheets/rangeRef";
import { readRectangle } from "../../../sheets/rectangle";
import { sheetPrefix } from "../../../sheets/sheetPrefix";
import { toFileText } from "../xlsxText";

interface PrintName {
  readonly name: string;
  readonly range: string;
  readonly scope: string;
}

/** As many pages wide and high as it needs or was told; the workbook and the sheet above, the pages' numbers below. */
export function pageSetup(
  { print }: Sheet,
  title: string,
): Pick<WriteSheet, "pageSetup" | "headerFooter" | "rowBreaks" | "colBreaks"> {
  if (print === undefined) return {};
  const { shared } = print;
  return {
    pageSetup: {
      paperSize: print.paper === "A4" ? "a4" : "letter",
      orientation: print.landscape ? "landscape" : "portrait",
      ...(shared === undefined
        ? { fitToPage: true, fitToWidth: print.pagesWide ?? 1, fitToHeight: print.pagesHigh ?? 0 }
        : { scale: shared.scale }),
      margins: MARGINS,
    },
    // hucre counts from 0, and names the last row or column before the break
    ...(shared === undefined ? {} : { rowBreaks: shared.rows.map(before), colBreaks: shared.columns.map(before) }),
    headerFooter: {
      oddHeader: `&L${toFileText(title).replaceAll("&", "&&")}&R&A`,
      oddFooter: "&RPage &P of &N",
    },
  };
}

const before = (place: number): number => place - 2;

/** What is printed, and which rows and columns come back on every page: two names that the format reserves. */
export function printNames({ name: sheet, print }: Sheet): PrintName[] {
  const area = print?.area === undefined ? null : readRectangle(print.area);
  const { titleRows, titleColumns } = print ?? {};
  const titles = [
    ...(titleColumns === undefined
      ? []
      : [`$${columnLetters(titleColumns.first)}:$${columnLetters(titleColumns.last)}`]),
    ...(titleRows === undefined ? [] : [`$${titleRows.first}:$${titleRows.last}`]),
  ].map((lines) => `${sheetPrefix(sheet)}${lines}`);
  return [
    ...(area === null ? [] : [{ name: "_xlnm.Print_Area", range: rangeText({ sheet, ...area }), scope: sheet }]),
    ...(titles.length === 0 ? [] : [{ name: "_xlnm.Print_Titles", range: titles.join(","), scope: sheet }]),
  ];
}
