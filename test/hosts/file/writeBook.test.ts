import { writeBook } from "../../../src/hosts/file/writeBook";
import { elementsOf, partsOf, valuesOf } from "../../support/xlsxParts";
import { sheetOf } from "../../support/sheetOf";
import { bookOf, sampleBook } from "./sampleBook";

let parts: Map<string, string>;
const part = (name: string): string => parts.get(name)!;

beforeAll(async () => {
  parts = partsOf(await writeBook(sampleBook, { title: "Shed & yard" }));
});

const cell = (sheet: string, at: string): string =>
  new RegExp(`<c r="${at}"(?: [^>]*?)?(?:/>|>.*?</c>)`).exec(part(`xl/worksheets/${sheet}.xml`))?.[0] ?? "no such cell";

describe("the parts of a file", () => {
  test("every part is well-formed", () => {
    expect(parts.size).toBeGreaterThan(10);
    for (const xml of parts.values()) expect(() => elementsOf(xml)).not.toThrow();
  });

  test("every relation leads to a part, once, and every part has a kind", () => {
    const kinds = part("[Content_Types].xml");
    const overrides = valuesOf(kinds, "Override", "PartName");
    const extensions = valuesOf(kinds, "Default", "Extension");
    expect(new Set(overrides).size).toBe(overrides.length);
    overrides.forEach((name) => expect(parts.has(name.slice(1))).toBe(true));
    for (const name of parts.keys())
      expect(overrides.includes(`/${name}`) || extensions.includes(name.split(".").at(-1)!)).toBe(true);
    for (const [name, xml] of parts) {
      if (!name.endsWith(".rels")) continue;
      const ids = valuesOf(xml, "Relationship", "Id");
      expect(new Set(ids).size).toBe(ids.length);
      const folder = name.replace(/_rels\/[^/]*$/, "");
      for (const target of valuesOf(xml, "Relationship", "Target"))
        expect(parts.has(new URL(target, `file:///${folder}`).pathname.slice(1))).toBe(true);
    }
  });

  test("every id that a part uses is one of its relations", () => {
    for (const [name, xml] of parts) {
      const used = elementsOf(xml).flatMap(({ attributes }) => attributes["r:id"] ?? []);
      const rels = parts.get(name.replace(/([^/]*)$/, "_rels/$1.rels"));
      const known = rels === undefined ? [] : valuesOf(rels, "Relationship", "Id");
      expect(known).toEqual(expect.arrayContaining(used));
    }
  });

  test("styles, texts and sheets are numbered within what there is, and no id stands twice", () => {
    const styles = elementsOf(part("xl/styles.xml"));
    const count = (group: string, name: string): number => {
      const from = styles.findIndex((tag) => tag.name === group);
      return styles
        .slice(from + 1, from + 1 + Number(styles[from]!.attributes.count))
        .filter((tag) => tag.name === name).length;
    };
    const xfs = valuesOf(part("xl/styles.xml"), "cellXfs", "count").map(Number)[0]!;
    const inList = /<cellXfs.*<\/cellXfs>/s.exec(part("xl/styles.xml"))![0];
    expect(valuesOf(inList, "xf", "fontId")).toHaveLength(xfs);
    expect(count("dxfs", "dxf")).toBeGreaterThan(0);
    const texts = valuesOf(part("xl/sharedStrings.xml"), "sst", "uniqueCount").map(Number)[0]!;
    expect(elementsOf(part("xl/sharedStrings.xml")).filter(({ name }) => name === "si")).toHaveLength(texts);
    for (const sheet of ["sheet1", "sheet2", "sheet3"]) {
      const xml = part(`xl/worksheets/${sheet}.xml`);
      valuesOf(xml, "c", "s").forEach((style) => expect(Number(style)).toBeLessThan(xfs));
      for (const [, text] of xml.matchAll(/<c [^>]*t="s"[^>]*><v>(\d+)<\/v>/g))
        expect(Number(text)).toBeLessThan(texts);
      const places = valuesOf(xml, "c", "r");
      expect(new Set(places).size).toBe(places.length);
    }
    const sheetIds = valuesOf(part("xl/workbook.xml"), "sheet", "sheetId");
    expect(new Set(sheetIds).size).toBe(3); // the two of the sample, and the lists that are too long
    const shapes = valuesOf(part("xl/drawings/vmlDrawing1.vml"), "v:shape", "id");
    expect(new Set(shapes).size).toBe(2);
  });

  test("formulas of ours are stored as Excel stores them, with what they show", () => {
    expect(cell("sheet1", "D4")).toMatch(/><f>_xldudf_DUCT_AREA\(4,,units\)<\/f><v>0.08726646259971647<\/v>/);
    expect(cell("sheet1", "D5")).toMatch(/t="str"><f>IF\(C5&gt;0,"mend it",""\)<\/f><v>mend it<\/v>/);
    expect(cell("sheet1", "F4")).toMatch(/t="e"><f>C4\/0<\/f><v>#DIV\/0!<\/v>/);
    expect(cell("sheet1", "G4")).toMatch(/t="b"><f>C4&gt;1<\/f><v>1<\/v>/);
  });

  test("a formula that fills cells says how far, and they hold what it shows there", () => {
    const anchor = cell("sheet2", "A1");
    expect(anchor).toMatch(
      /cm="1" t="str"><f t="array" ref="A1:B3">_xldudf_DUCT_BUDGET\(Runs!\$A\$3:\$C\$5,,units\)<\/f>/,
    );
    expect(cell("sheet2", "A2")).toMatch(/<v>100<\/v>/);
    expect(cell("sheet2", "B2")).toBe('<c r="B2" t="e"><v>#N/A</v></c>');
    expect(part("xl/metadata.xml")).toContain('fDynamic="1"');
  });

  test("a formula that shows one value now, and fills cells once its inputs are there, is marked as well", async () => {
    const cells = [
      { at: "A1", formula: '=IF(B1="","Fill in B1 first",DUCT.SOLVE(B1:C9,E1:F9))' },
      { at: "A2", formula: "=DUCT.AREA(B1)" },
    ];
    const shown = new Map(cells.map(({ at }) => [at, { value: "Fill in B1 first" }]));
    const written = partsOf(
      await writeBook(bookOf([sheetOf("One", cells)], new Map([["One", shown]])), { title: "x" }),
    );
    const xml = written.get("xl/worksheets/sheet1.xml")!;
    expect(xml).toContain('<c r="A1" cm="1" t="str"><f t="array" ref="A1">');
    expect(xml).toContain('<c r="A2" t="str"><f>_xldudf_DUCT_AREA(B1)</f>');
  });

  test("a live workbook is not computed anew when it is opened; one that is has no values of formulas, but all else", async () => {
    const [live, copy] = await Promise.all(
      [false, true].map(async (recalculate) => partsOf(await writeBook(sampleBook, { title: "x", recalculate }))),
    );
    expect(live!.get("xl/workbook.xml")).toContain('<calcPr calcId="191029"/>');
    expect(copy!.get("xl/workbook.xml")).toContain('fullCalcOnLoad="1"');
    const RESULT = /(<f\b[^>]*>[^<]*<\/f>|<f\b[^>]*\/>)<v>[^<]*<\/v>/g;
    const sheet = "xl/worksheets/sheet1.xml";
    expect(live!.get(sheet)).toMatch(RESULT);
    expect(copy!.get(sheet)).not.toMatch(RESULT);
    const bare = (xml: string): string => xml.replaceAll(RESULT, "$1").replaceAll(/ t="(?:str|e|b)"(?=[^>]*><f)/g, "");
    expect(bare(copy!.get(sheet)!)).toBe(bare(live!.get(sheet)!));
  });

  test("a list that the format has no room for is kept in a sheet that is not shown", () => {
    const validations = part("xl/worksheets/sheet1.xml");
    expect(validations).toContain('<formula1>"IP,SI"</formula1>');
    expect(validations).toContain("<formula1>'Duct lists'!$A$1:$A$40</formula1>");
    expect(validations).toContain("<formula1>'Duct lists'!$B$1:$B$2</formula1>"); // a comma would part it
    expect(part("xl/workbook.xml")).toMatch(/<sheet name="Duct lists" sheetId="3" r:id="rId3" state="veryHidden"/);
    for (const [, literal] of validations.matchAll(/<formula1>"([^<]*)"<\/formula1>/g))
      expect(literal!.length).toBeLessThanOrEqual(255);
  });

  test("lines of a chart are straight, and its words and names are there", () => {
    const chart = part("xl/charts/chart1.xml");
    expect(valuesOf(chart, "c:smooth", "val")).toEqual(["0", "0"]);
    expect(chart).toContain("'Fan''s curve'!$B$1:$B$3");
    ["Fan &amp; system", "Airflow (cfm)", "Pressure", "fan &lt;new&gt;"].forEach((words) =>
      expect(chart).toContain(words),
    );
  });

  test("paper, titles and the printed range are set, each with its sheet's name", () => {
    expect(part("xl/workbook.xml")).toContain(">Runs!$A$1:$G$20<");
    expect(part("xl/workbook.xml")).toContain(">Runs!$A:$B,Runs!$3:$3<"); // columns first, as Excel writes them
    const [landscape, portrait] = ["sheet1", "sheet2"].map((name) => part(`xl/worksheets/${name}.xml`));
    expect(landscape).toMatch(/<pageSetup paperSize="9" orientation="landscape" fitToWidth="2" fitToHeight="0"\/>/);
    expect(portrait).toMatch(/<pageSetup paperSize="1" orientation="portrait" fitToWidth="1" fitToHeight="2"\/>/);
    expect(landscape).toContain("&amp;LShed &amp;&amp; yard&amp;R&amp;A"); // a & of a title is doubled there
  });

  test("a sheet that is shared out has its scale, and breaks that name what stands before them", async () => {
    const print = { paper: "A4" as const, landscape: false, shared: { scale: 85, rows: [8], columns: [4, 7] } };
    const book = bookOf([sheetOf("One", [{ at: "A1", value: "end" }], { print })]);
    const xml = partsOf(await writeBook(book, { title: "One" })).get("xl/worksheets/sheet1.xml")!;
    expect(xml).toMatch(/<pageSetup paperSize="9" orientation="portrait" scale="85"\/>/);
    expect(xml).not.toContain("fitToPage");
    // ISO/IEC 29500-1, CT_Break: the id is how many rows or columns stand before the break
    expect(xml).toMatch(/<rowBreaks count="1" manualBreakCount="1"><brk id="7" max="16383" man="1"\/><\/rowBreaks>/);
    expect([...xml.matchAll(/<brk id="(\d)" max="1048575" man="1"\/>/g)].map(([, id]) => id)).toEqual(["3", "6"]);
  });

  test("the parts of a font stand in the order of the format's schema", () => {
    // ISO/IEC 29500-1, CT_Font: what ours use of it
    const order = ["b", "i", "sz", "color", "name"];
    const fonts = [...part("xl/styles.xml").matchAll(/<font>(.*?)<\/font>/gs)].map(([, parts]) =>
      [...parts!.matchAll(/<(\w+)/g)].map(([, name]) => name!),
    );
    expect(fonts.flat()).toEqual(expect.arrayContaining(order.filter((name) => name !== "i")));
    for (const names of fonts) expect(names).toEqual(order.filter((name) => names.includes(name)));
  });

  test("an input cell has a box around it, and no other style of ours has", () => {
    const boxes = /<borders.*<\/borders>/s.exec(part("xl/styles.xml"))![0].match(/<left style="thin">/g);
    expect(boxes).toHaveLength(1);
  });

  test("the file names its title, and neither an author nor a place nor a time", () => {
    expect(part("docProps/core.xml")).toContain("<dc:title>Shed &amp; yard</dc:title>");
    expect(part("docProps/core.xml")).not.toMatch(/creator|lastModifiedBy|created|modified/);
    expect(part("docProps/app.xml")).toMatch(
      /<Application>Duct Ledger<\/Application><DocSecurity>0<\/DocSecurity><\/Properties>$/,
    );
    expect(part("xl/comments1.xml")).toContain("<author/>");
  });

  test("the same workbook gives the same file", async () => {
    const [one, other] = [await writeBook(sampleBook, { title: "x" }), await writeBook(sampleBook, { title: "x" })];
    expect(Buffer.from(one).equals(Buffer.from(other))).toBe(true);
  });

  test("ranges of rules and tables stand without dollar signs, which the format does not allow there", async () => {
    const cells = [
      { at: "A1", value: "Run" },
      { at: "A2", value: "saw" },
    ];
    const sheet = sheetOf("One", cells, {
      lists: [{ range: "$A$2:$A$3", choices: ["saw"], strict: true }],
      flags: [{ range: "$A$2:$A$3", containsText: "saw", style: "flag" }],
      tables: [{ name: "T", range: "$A$1:$A$2" }],
    });
    const written = partsOf(await writeBook(bookOf([sheet]), { title: "x" }));
    const xml = written.get("xl/worksheets/sheet1.xml")!;
    expect([...xml.matchAll(/sqref="([^"]*)"/g)].map(([, range]) => range)).toEqual(["A2:A3", "A2:A3"]);
    expect(xml).toContain('SEARCH("saw",A2)');
    expect(written.get("xl/tables/table1.xml")).toContain('ref="A1:A2"');
  });

  test("a table whose headers are no longer different texts is written as cells", async () => {
    const cells = [
      { at: "A1", value: "Run" },
      { at: "B1", value: "run" },
      { at: "A2", value: 1 },
    ];
    const book = bookOf([sheetOf("One", cells, { tables: [{ name: "T", range: "A1:B2" }] })]);
    const written = partsOf(await writeBook(book, { title: "x" }));
    expect([...written.keys()].filter((name) => name.startsWith("xl/tables/"))).toEqual([]);
  });
});
