/** Files as other programs write them; the parts are made here by hand after what ECMA-376 allows. */
import { readBook } from "../../../src/hosts/file/readBook";
import type { Calculated } from "../../../src/sheets/calculated";
import type { Sheet, SheetCell } from "../../../src/sheets/workbook";
import { zipped } from "../../support/xlsxParts";

const MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const R = 'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';
const TYPE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const relations = (...list: readonly (readonly [string, string, string])[]): string =>
  `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${list
    .map(([id, kind, target]) => `<Relationship Id="${id}" Type="${TYPE}/${kind}" Target="${target}"/>`)
    .join("")}</Relationships>`;

interface Given {
  readonly sheet: string; // all inside <worksheet>
  readonly styles?: string;
  readonly texts?: string;
  readonly names?: string;
  readonly more?: string; // more sheets
}

const workbook = ({ sheet, styles = "", texts = "", names = "", more = "" }: Given): Promise<Calculated> =>
  readBook(
    zipped([
      ["_rels/.rels", relations(["rId1", "officeDocument", "/xl/workbook.xml"])],
      [
        "xl/workbook.xml",
        `<workbook ${MAIN} ${R}><sheets><sheet name="One" sheetId="1" r:id="rId1"/>${more}</sheets>${names}</workbook>`,
      ],
      [
        "xl/_rels/workbook.xml.rels",
        relations(
          ["rId1", "worksheet", "worksheets/sheet1.xml"],
          ["rId2", "styles", "./styles.xml"],
          ["rId3", "sharedStrings", "/xl/sharedStrings.xml"],
          ["rId4", "theme", "theme/theme1.xml"],
          ["rId5", "chartsheet", "chartsheets/sheet1.xml"],
        ),
      ],
      ["xl/worksheets/sheet1.xml", `<worksheet ${MAIN} ${R}>${sheet}</worksheet>`],
      ["xl/styles.xml", `<styleSheet ${MAIN}>${styles}</styleSheet>`],
      ["xl/sharedStrings.xml", `<sst ${MAIN}>${texts}</sst>`],
      [
        "xl/theme/theme1.xml",
        '<a:theme xmlns:a="x"><a:themeElements><a:clrScheme name="x">' +
          '<a:dk1><a:sysClr val="windowText" lastClr="000000"/></a:dk1><a:lt1><a:sysClr val="window" lastClr="FFFFFF"/></a:lt1>' +
          '<a:dk2><a:srgbClr val="44546A"/></a:dk2><a:lt2><a:srgbClr val="E7E6E6"/></a:lt2>' +
          '<a:accent1><a:srgbClr val="4472C4"/></a:accent1></a:clrScheme></a:themeElements></a:theme>',
      ],
    ]),
  );

const data = (cells: string): string => `<sheetData>${cells}</sheetData>`;
const only = (book: Calculated): Sheet => book.workbook.sheets[0]!;
const contents = (cells: readonly SheetCell[]): Record<string, unknown> =>
  Object.fromEntries(cells.map((cell) => [cell.at, "formula" in cell ? cell.formula : cell.value]));

test("a formula said once for many cells is each cell's own", async () => {
  const book = await workbook({
    sheet: data(
      '<row r="1"><c r="A1"><v>4</v></c><c r="B1"><f t="shared" ref="B1:B3" si="0">_xldudf_DUCT_AREA(A1,,$C$1)</f><v>1</v></c></row>' +
        '<row r="2"><c r="B2"><f t="shared" si="0"/><v>2</v></c></row><row r="3"><c r="B3"><f t="shared" si="0"/><v>3</v></c></row>',
    ),
  });
  expect(contents(only(book).cells)).toEqual({
    A1: 4,
    B1: "=DUCT.AREA(A1,,$C$1)",
    B2: "=DUCT.AREA(A2,,$C$1)",
    B3: "=DUCT.AREA(A3,,$C$1)",
  });
  expect(book.shown.get("One")!.get("B3")).toEqual({ value: 3 });
});

test("cells and rows that do not say where they stand follow each other", async () => {
  const book = await workbook({
    sheet: data(
      '<row><c><v>1</v></c><c><v>2</v></c></row><row><c r="C2"><v>3</v></c><c><v>4</v></c></row><row r="9"><c><v>5</v></c></row>',
    ),
  });
  expect(contents(only(book).cells)).toEqual({ A1: 1, B1: 2, C2: 3, D2: 4, A9: 5 });
});

test("texts in runs, inline texts, truth values, dates and errors are read", async () => {
  const book = await workbook({
    texts:
      '<si><r><t>two </t></r><r><rPr><b/></rPr><t xml:space="preserve">runs</t></r><rPh sb="0" eb="1"><t>not this</t></rPh></si>',
    sheet: data(
      '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="inlineStr"><is><t>in_x0041_line</t></is></c><c r="C1" t="b"><v>1</v></c>' +
        '<c r="D1" t="e"><v>#REF!</v></c><c r="E1" t="d"><v>2026-11-25</v></c><c r="F1" t="str"><v> kept </v></c></row>',
    ),
  });
  // 25 November 2026 is day 46351 of the sheets' count: 45658 is 1 January 2025, and 365 + 328 days follow
  expect(contents(only(book).cells)).toEqual({
    A1: "two runs",
    B1: "inAline",
    C1: true,
    D1: "=#REF!",
    E1: 46351,
    F1: " kept ",
  });
  expect(book.shown.get("One")!.get("D1")).toEqual({ value: { error: "#REF!" } });
});

test("formats without a code, colours of the theme and sizes other than the usual are understood", async () => {
  const book = await workbook({
    styles:
      '<fonts><font><sz val="11"/></font><font><b val="0"/><i/><sz val="14"/><color theme="4" tint="-0.5"/></font></fonts>' +
      '<fills><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="solid"><fgColor theme="0"/></patternFill></fill></fills>' +
      "<borders><border/></borders>" +
      '<cellXfs><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/><xf numFmtId="10" fontId="1" fillId="1" borderId="0"><alignment horizontal="right"/></xf></cellXfs>',
    sheet: data('<row r="1"><c r="A1" s="1"><v>0.5</v></c><c r="B1" s="0"><v>1</v></c></row>'),
  });
  expect(only(book).cells).toEqual([
    {
      at: "A1",
      value: 0.5,
      format: "0.00%",
      style: { ink: "#223962", fill: "#ffffff", italic: true, size: 14, align: "right" },
    },
    { at: "B1", value: 1 },
  ]);
});

test("a list kept in cells of the same sheet, and one for several ranges", async () => {
  const book = await workbook({
    sheet:
      data('<row r="1"><c r="A1" t="str"><v>open</v></c></row><row r="2"><c r="A2" t="str"><v>shut</v></c></row>') +
      '<dataValidations><dataValidation type="list" sqref="C1:C3 E1" showErrorMessage="1"><formula1>$A$1:$A$5</formula1></dataValidation>' +
      '<dataValidation type="whole" sqref="D1"><formula1>1</formula1></dataValidation>' +
      '<dataValidation type="list" sqref="F1" showErrorMessage="1" errorStyle="warning"><formula1>"a, b"</formula1></dataValidation></dataValidations>',
  });
  expect(only(book).lists).toEqual([
    { range: "C1:C3", choices: ["open", "shut"], strict: true },
    { range: "E1", choices: ["open", "shut"], strict: true },
    { range: "F1", choices: ["a", "b"], strict: false },
  ]);
});

test("the sheet of long lists that version 1.0.0 hid in Excel is no sheet of the book, and its list keeps its words", async () => {
  const list = '<dataValidation type="list" sqref="B1"><formula1>Lists!$A$1:$A$2</formula1></dataValidation>';
  const book = await workbook({
    more: '<sheet name="Lists" sheetId="2" state="veryHidden" r:id="rId1"/>', // both sheets have the same cells here
    sheet:
      data(
        '<row r="1"><c r="A1" t="inlineStr"><is><t>beech</t></is></c></row><row r="2"><c r="A2" t="inlineStr"><is><t>oak</t></is></c></row>',
      ) + `<dataValidations count="1">${list}</dataValidations>`,
  });
  expect(book.workbook.sheets.map(({ name }) => name)).toEqual(["One"]);
  expect(only(book).lists).toEqual([{ range: "B1", choices: ["beech", "oak"], strict: false }]);
});

test("a sheet that is one chart is left out, names of formulas as well, and widths of the empty rest", async () => {
  const book = await workbook({
    more: '<sheet name="Chart" sheetId="2" r:id="rId5"/>',
    names:
      '<definedNames><definedName name="units">One!$A$1</definedName><definedName name="twice">2*One!$A$1</definedName>' +
      '<definedName name="local" localSheetId="0">One!$A$1</definedName><definedName name="gone">#REF!</definedName></definedNames>',
    sheet:
      '<cols><col min="1" max="2" width="20.7109375" customWidth="1"/><col min="4" max="16384" width="9.14"/></cols>' +
      data('<row r="1" ht="41.25" customHeight="1"><c r="A1"><v>1</v></c><c r="E1"><v>2</v></c></row>'),
  });
  expect(book.workbook.sheets.map(({ name }) => name)).toEqual(["One"]);
  expect(book.workbook.names).toEqual([{ name: "units", sheet: "One", at: "A1" }]);
  expect(only(book).columns).toEqual([20, 20, 8.43, 8.43, 8.43]);
  expect(only(book).tallRows).toEqual([{ row: 1, lines: 3 }]);
});

test("columns that a program leaves out have the width that it says for all others", async () => {
  const book = await workbook({
    sheet:
      '<sheetFormatPr defaultColWidth="8.6796875" defaultRowHeight="15"/>' +
      '<cols><col min="1" max="1" width="12.71"/><col min="3" max="3" width="18.71"/></cols>' +
      data('<row r="1"><c r="A1"><v>1</v></c></row>'),
  });
  expect(only(book).columns).toEqual([12, 8, 18]); // 8 characters are 8 + 5/7 in the file, which LibreOffice rounds to 8.68
});
