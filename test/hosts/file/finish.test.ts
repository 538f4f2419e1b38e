/** What a workbook's parts still need when the writer's library has made them, each on a part of its own. */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { finished } from "../../../src/hosts/file/write/finish";
import { MARK } from "../../../src/hosts/file/xlsxText";

/** The parts of a finished file that had these. */
function partsAfter(parts: Readonly<Record<string, string>>, recalculate = false): Readonly<Record<string, string>> {
  const zipped = zipSync(Object.fromEntries(Object.entries(parts).map(([name, xml]) => [name, strToU8(xml)])));
  return Object.fromEntries(
    Object.entries(unzipSync(finished(zipped, recalculate))).map(([name, part]) => [name, strFromU8(part)]),
  );
}

const after = (name: string, xml: string, recalculate?: boolean): string =>
  partsAfter({ [name]: xml }, recalculate)[name]!;

describe("each thing that is mended", () => {
  test.each([
    [false, '<calcPr calcId="191029"/>'],
    [true, '<calcPr calcId="191029" fullCalcOnLoad="1"/>'],
  ])("a file is computed anew when it opens: %s", (recalculate, expected) => {
    const asked = '<workbook><calcPr calcId="1" fullCalcOnLoad="1"/></workbook>';
    expect(after("xl/workbook.xml", asked, recalculate)).toBe(`<workbook>${expected}</workbook>`);
  });

  test("the names that say which sheet is which are hidden, and nobody else's", () => {
    const names = '<definedName name="ductledger.sheet.runs">Runs!$A$1</definedName><definedName name="units">';
    expect(after("xl/workbook.xml", names)).toBe(names.replace("<definedName name", '<definedName hidden="1" name'));
  });

  test("no hour of writing and no library's name", () => {
    const core = '<a/><dcterms:modified xsi:type="dcterms:W3CDTF">2026-01-02T03:04:05Z</dcterms:modified><b/>';
    expect(after("docProps/core.xml", core)).toBe("<a/><b/>");
    expect(after("docProps/app.xml", "<Application>Somebody</Application>")).toBe(
      "<Application>Duct Ledger</Application>",
    );
  });

  test("a formula's error is an error, and a text that reads like one stays a text", () => {
    const cells = `<c r="A1" t="str"><f>NA()</f><v>${MARK}#N/A</v></c><c r="A2" t="str"><f>"#N/A"</f><v>#N/A</v></c>`;
    expect(after("xl/worksheets/sheet1.xml", cells)).toBe(
      '<c r="A1" t="e"><f>NA()</f><v>#N/A</v></c><c r="A2" t="str"><f>"#N/A"</f><v>#N/A</v></c>',
    );
  });

  test("a formula that is filled down a column stands once", () => {
    const sheet = (...cells: readonly string[]): string =>
      cells.map((formula, index) => `<c r="B${index + 1}" s="2">${formula}<v>${index}</v></c>`).join("");
    const plain = (formula: string): string => `<f>${formula}</f>`;
    const filled = (row: number): string => plain(`LOG10($A${row})+$C$1+1E5*A${row}&amp;"A1"`);
    expect(after("xl/worksheets/sheet1.xml", sheet(filled(1), filled(2), filled(3), plain("A1"), plain("A2")))).toBe(
      sheet(
        filled(1).replace("<f>", '<f t="shared" ref="B1:B3" si="0">'),
        '<f t="shared" si="0"/>',
        '<f t="shared" si="0"/>',
        '<f t="shared" ref="B4:B5" si="1">A1</f>',
        '<f t="shared" si="1"/>',
      ),
    );
    const others = sheet(plain("Runs!A1"), plain("Runs!A2"), plain("_xldudf_DUCT_AREA(A3)"), plain("LOG10(A4)"));
    expect(after("xl/worksheets/sheet1.xml", others)).toBe(others);
  });

  test("no mark of ours is left among the texts", () => {
    expect(after("xl/sharedStrings.xml", `<sst><si><t>${MARK}#N/A</t></si></sst>`)).toBe(
      "<sst><si><t>#N/A</t></si></sst>",
    );
  });

  test("a text that begins like a formula has a style that keeps it one; other texts keep theirs", () => {
    const done = partsAfter({
      "xl/sharedStrings.xml": "<sst><si><t>=1+1</t></si><si><t>saw</t></si></sst>",
      "xl/styles.xml": '<cellXfs count="2"><xf fontId="0"/><xf fontId="1"/></cellXfs>',
      "xl/worksheets/sheet1.xml": '<c r="A1" t="s" s="1"><v>0</v></c><c r="A2" t="s" s="1"><v>1</v></c>',
    });
    expect(done["xl/styles.xml"]).toBe(
      '<cellXfs count="3"><xf fontId="0"/><xf fontId="1"/><xf quotePrefix="1" fontId="1"/></cellXfs>',
    );
    expect(done["xl/worksheets/sheet1.xml"]).toBe(
      '<c r="A1" t="s" s="2"><v>0</v></c><c r="A2" t="s" s="1"><v>1</v></c>',
    );
  });

  test("what a font is made of stands in the schema's order", () => {
    const font = (inside: string): string => `<fonts count="1"><font>${inside}</font></fonts>`;
    expect(after("xl/styles.xml", font('<b/><color rgb="FF0000"/><sz val="11"/><name val="A"/>'))).toBe(
      font('<b/><sz val="11"/><color rgb="FF0000"/><name val="A"/>'),
    );
  });

  test("a chart's lines go straight from point to point", () => {
    const series = "<c:ser><c:yVal>1</c:yVal></c:ser>";
    expect(after("xl/charts/chart1.xml", series)).toBe('<c:ser><c:yVal>1</c:yVal><c:smooth val="0"/></c:ser>');
  });

  test("a note keeps its blanks, and its box is as high as its lines", () => {
    const shape = "<v:shape style='width:96pt;height:55pt'><x:Anchor>1,15,0,2,3,15,4,16</x:Anchor></v:shape>";
    const done = partsAfter({
      "xl/comments1.xml": `<comment ref="A1"><text><r><t>${"m".repeat(45)}\n two</t></r></text></comment>`,
      "xl/drawings/vmlDrawing1.vml": shape,
    });
    expect(done["xl/comments1.xml"]).toContain('<t xml:space="preserve">m');
    // 45 letters take two lines of 44, the line behind them one: three, and one to spare, at 15 points
    expect(done["xl/drawings/vmlDrawing1.vml"]).toContain("width:250pt;height:60pt");
    expect(done["xl/drawings/vmlDrawing1.vml"]).toContain("<x:Anchor>1,15,0,2,5,15,4,2</x:Anchor>");
  });
});

test("the same parts give the same file, and a part of another kind stays as it is", () => {
  const parts = { "xl/theme/theme1.xml": strToU8("<calcPr a='1'/>") };
  const zipped = zipSync(parts, { mtime: new Date(2020, 5, 5) });
  const later = zipSync(parts, { mtime: new Date(2024, 1, 1) });
  expect(Buffer.from(finished(zipped, true))).toEqual(Buffer.from(finished(later, true)));
  expect(after("xl/theme/theme1.xml", "<calcPr a='1'/>")).toBe("<calcPr a='1'/>");
});
