/** Small files that ask much of whoever opens them, written part by part as the format has it. */
import { zipped } from "./xlsxParts";

const SHEETS = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

const relation = (kind: string, target: string): string =>
  `<Relationships xmlns="${PACKAGE}"><Relationship Id="r1" Type="${OFFICE}/${kind}" Target="${target}"/></Relationships>`;

/** A file of one sheet, "One", that holds these rows and what comes behind them. */
export const rawFile = (rows: string, behind = ""): Uint8Array =>
  zipped([
    ["_rels/.rels", relation("officeDocument", "xl/workbook.xml")],
    [
      "xl/workbook.xml",
      `<workbook xmlns="${SHEETS}" xmlns:r="${OFFICE}"><sheets><sheet name="One" sheetId="1" r:id="r1"/></sheets></workbook>`,
    ],
    ["xl/_rels/workbook.xml.rels", relation("worksheet", "worksheets/sheet1.xml")],
    ["xl/worksheets/sheet1.xml", `<worksheet xmlns="${SHEETS}"><sheetData>${rows}</sheetData>${behind}</worksheet>`],
  ]);

const cell = (at: string, inside: string): string => `<row r="${/\d+/.exec(at)![0]}"><c r="${at}">${inside}</c></row>`;

/** Something of ours, so that the file is a budget at all. */
const OURS = cell("A1", "<f>_xldudf_DUCT_AREA(4)</f>");

export const farValue = (at: string, formula = "1"): Uint8Array =>
  rawFile(OURS + cell("A2", `<f>${formula}</f>`) + cell(at, "<v>1</v>"));

export const farValueThatIsRead = rawFile(OURS + cell("A2", "<f>SUM(A3:A1048576)</f>") + cell("A1048576", "<v>1</v>"));

export const heavyFormula = (formula: string): Uint8Array => rawFile(OURS + cell("A2", `<f>${formula}</f>`));

const WHOLE = "A1:XFD1048576";

/** Each rule of it is over the whole sheet. */
export const wholeSheetRules = rawFile(
  OURS,
  `<cols><col min="1" max="16384" width="9"/></cols>` +
    `<conditionalFormatting sqref="${WHOLE}"><cfRule type="containsText" priority="1" text="x"><formula>TRUE</formula></cfRule></conditionalFormatting>` +
    `<dataValidations><dataValidation type="list" sqref="${WHOLE}"><formula1>"a,b"</formula1></dataValidation></dataValidations>` +
    `<mergeCells>${Array.from({ length: 5000 }, (_, row) => `<mergeCell ref="A${row + 2}:XFD${row + 2}"/>`).join("")}</mergeCells>`,
);
