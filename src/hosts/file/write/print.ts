import type { WriteSheet } from "hucre/xlsx";
import type { Sheet } from "../../../sheets/workbook";
import { rangeText } from "../../../sheets/rangeRef";
import { readRectangle } from "../../../sheets/rectangle";
import { sheetPrefix } from "../../../sheets/sheetPrefix";
import { toFileText } from "../xlsxText";

interface PrintName {
  readonly name: string;
  readonly range: string;
  readonly scope: string;
}

/** One page wide, as many high as it needs or was told; the workbook and the sheet above, the pages' numbers below. */
export function pageSetup({ print }: Sheet, title: string): Pick<WriteSheet, "pageSetup" | "headerFooter"> {
  if (print === undefined) return {};
  return {
    pageSetup: {
      paperSize: print.paper === "A4" ? "a4" : "letter",
      orientation: print.landscape ? "landscape" : "portrait",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: print.pagesHigh ?? 0,
      margins: { left: 0.5, right: 0.5, top: 0.75, bottom: 0.6, header: 0.3, footer: 0.3 },
    },
    headerFooter: {
      oddHeader: `&L${toFileText(title).replaceAll("&", "&&")}&R&A`,
      oddFooter: "&RPage &P of &N",
    },
  };
}

/** What is printed, and which rows come back on every page: two names that the format reserves. */
export function printNames({ name: sheet, print }: Sheet): PrintName[] {
  const area = print?.area === undefined ? null : readRectangle(print.area);
  const rows = print?.titleRows;
  return [
    ...(area === null ? [] : [{ name: "_xlnm.Print_Area", range: rangeText({ sheet, ...area }), scope: sheet }]),
    ...(rows === undefined
      ? []
      : [{ name: "_xlnm.Print_Titles", range: `${sheetPrefix(sheet)}$${rows.first}:$${rows.last}`, scope: sheet }]),
  ];
}
