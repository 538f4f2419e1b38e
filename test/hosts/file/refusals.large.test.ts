import { strToU8, zipSync } from "fflate";
import { FileRefusal } from "../../../src/hosts/file/fileRefusal";
import { openBudget, readBook } from "../../../src/hosts/file/readBook";
import { writeBook } from "../../../src/hosts/file/writeBook";
import type { Calculated } from "../../../src/sheets/calculated";
import { partsOf, zipped } from "../../support/xlsxParts";
import { sheetOf } from "../../support/sheetOf";
import { bookOf, sampleBook, textsBook } from "./sampleBook";

async function refused(action: Promise<unknown>): Promise<string> {
  const error = await action.then(
    () => "nothing was refused",
    (why: unknown) => why,
  );
  expect(error).toBeInstanceOf(FileRefusal);
  return (error as FileRefusal).message;
}

let whole: Uint8Array;
beforeAll(async () => {
  whole = await writeBook(sampleBook, { title: "x" });
});

/** The sample's file with a part changed. */
function changed(name: string, edit: (xml: string) => string): Uint8Array {
  const parts = partsOf(whole);
  parts.set(name, edit(parts.get(name)!));
  return zipped(parts);
}

const FIRST = "xl/worksheets/sheet1.xml";
const withCells = (cells: string): Uint8Array =>
  changed(FIRST, (xml) => xml.replace(/<sheetData>.*<\/sheetData>/s, `<sheetData>${cells}</sheetData>`));

describe("a file that is not read", () => {
  test.each([
    ["nothing", new Uint8Array()],
    ["a text", strToU8("Run,To,Airflow\nsaw,main,350\n")],
    ["another zip", zipSync({ "readme.txt": strToU8("hello") })],
  ])("%s is no workbook", async (_, bytes) => {
    expect(await refused(readBook(bytes))).toBe("This file is no .xlsx workbook.");
  });

  test("half a file is cut short", async () => {
    expect(await refused(readBook(whole.subarray(0, whole.length / 2)))).toBe("This file is damaged or was cut short.");
  });

  test("a file with a password, or of the old format, says what to do", async () => {
    const container = Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0);
    expect(await refused(readBook(container))).toBe(
      "This file is encrypted or in the old .xls format; save it as an .xlsx workbook without a password and open that.",
    );
  });

  test("a zip with a password says so", async () => {
    const bytes = whole.slice();
    const entry = Buffer.from(bytes).indexOf(Uint8Array.of(0x50, 0x4b, 1, 2));
    bytes[entry + 8] = 1;
    expect(await refused(readBook(bytes))).toBe("This file is encrypted; save it without a password and open that.");
  });

  const TOO_LARGE = "This file unpacks to more than a workbook of budgets ever needs, so it is not opened.";

  test("a part that packs far too well is a bomb", async () => {
    const bytes = zipSync({ "[Content_Types].xml": new Uint8Array(5e6) }, { level: 9 });
    expect(bytes.length).toBeLessThan(10000);
    expect(await refused(readBook(bytes))).toBe(TOO_LARGE);
  });

  test("more parts than any workbook has are not opened", async () => {
    const parts = Object.fromEntries(Array.from({ length: 2001 }, (_, index) => [`part${index}`, strToU8("x")]));
    expect(await refused(readBook(zipSync(parts, { level: 0 })))).toBe(TOO_LARGE);
  });

  test("parts that promise more than a workbook needs are not unpacked", async () => {
    const bytes = whole.slice();
    const entry = Buffer.from(bytes).indexOf(Uint8Array.of(0x50, 0x4b, 1, 2));
    new DataView(bytes.buffer).setUint32(entry + 24, 2e8, true);
    expect(await refused(readBook(bytes))).toBe(TOO_LARGE);
  });

  test("a part that unpacks to more than it promised is stopped", async () => {
    const bytes = zipSync({ "_rels/.rels": new Uint8Array(4e6).fill(32) }, { level: 9 });
    const entry = Buffer.from(bytes).indexOf(Uint8Array.of(0x50, 0x4b, 1, 2));
    new DataView(bytes.buffer).setUint32(entry + 24, 1000, true);
    expect(await refused(readBook(bytes))).toBe("This file is damaged or was cut short.");
  });

  test("a part whose bytes do not add up is damaged", async () => {
    const parts = partsOf(whole);
    const bytes = zipSync(Object.fromEntries([...parts].map(([name, xml]) => [name, strToU8(xml)])), { level: 0 });
    const at = Buffer.from(bytes).indexOf("350.125");
    bytes[at] = "9".charCodeAt(0); // a number that would be wrong without a word
    expect(await refused(readBook(bytes))).toBe("This file is damaged or was cut short.");
  });

  test.each([
    ["not closed", "<row r='1'><c r='A1'>"],
    ["an unknown entity", "<row r='1'><c r='A1' t='str'><v>&secret;</v></c></row>"],
  ])("a part that is not well-formed (%s) is refused", async (_, cells) => {
    expect(await refused(readBook(withCells(cells)))).toBe("This file has a part that is not well-formed.");
  });

  test("a part with a document type is refused, since it could define entities", async () => {
    const declared = changed(FIRST, (xml) =>
      xml.replace("<worksheet", '<!DOCTYPE w [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]><worksheet'),
    );
    expect(await refused(readBook(declared))).toBe(
      "This file has a part that defines things of its own, which a workbook has no need of.",
    );
  });

  test("a part that is nested too deeply is refused", async () => {
    const nest = `${"<x>".repeat(10000)}${"</x>".repeat(10000)}`;
    expect(await refused(readBook(withCells(nest)))).toBe("This file has a part that is nested too deeply.");
  });

  test("a part in another encoding is refused", async () => {
    const parts = partsOf(whole);
    const bytes = Object.fromEntries([...parts].map(([name, xml]) => [name, strToU8(xml)]));
    bytes[FIRST] = Uint8Array.of(...bytes[FIRST]!, 0xff, 0xfe);
    expect(await refused(readBook(zipSync(bytes)))).toBe("This file has a part that is no readable text.");
  });

  test("more than a million cells are refused, those counted that a formula fills", async () => {
    const fill = (range: string): string =>
      `<row r="1"><c r="A1"><f t="array" ref="${range}">1</f><v>1</v></c><c r="ZZ1"><v>2</v></c></row>`;
    expect(await refused(readBook(withCells(fill("A1:J100000"))))).toBe(
      "This file has more than a million cells, so it is not opened.",
    );
    const { shown } = await readBook(withCells(fill("A1:J1000")));
    expect(shown.get("Runs")!.get("A1")).toEqual({ value: 1, fills: { rows: 1000, columns: 10 } });
  });

  test("a text, a formula or a place that is not there is refused", async () => {
    expect(await refused(readBook(withCells('<row r="1"><c r="A1" t="s"><v>999</v></c></row>')))).toBe(
      "This file refers to a text that it does not have.",
    );
    expect(await refused(readBook(withCells('<row r="1"><c r="A1"><f t="shared" si="7"/><v>1</v></c></row>')))).toBe(
      "This file has a formula that refers to another which it does not have.",
    );
    expect(await refused(readBook(withCells('<row r="1"><c r="XFE1"><v>1</v></c></row>')))).toBe(
      "This file has a cell that lies outside its sheet.",
    );
  });

  test("a part that is not there is refused, and so is a part whose list of others is gone", async () => {
    const LOST = "This file is damaged: it refers to a part that it does not have.";
    for (const name of ["xl/comments1.xml", "xl/worksheets/_rels/sheet1.xml.rels", "xl/charts/chart1.xml"]) {
      const parts = partsOf(whole);
      parts.delete(name);
      expect([name, await refused(readBook(zipped(parts)))]).toEqual([name, LOST]);
    }
  });

  test("a workbook without a sheet of cells is refused", async () => {
    const none = changed("xl/workbook.xml", (xml) => xml.replace(/<sheets>.*<\/sheets>/s, "<sheets/>"));
    expect(await refused(readBook(none))).toBe("This file has no sheet of cells.");
  });

  test("a workbook with nothing of ours is no budget", async () => {
    const bytes = await writeBook(textsBook("Run to the hills", "=DUCT.AREA(4)"), { title: "x" });
    expect(await refused(openBudget(bytes))).toBe(
      "This file holds no Duct Ledger sheet: no formula calls DUCT, and no table of runs stands in it.",
    );
    expect((await readBook(bytes)).workbook.sheets).toHaveLength(1);
  });

  test("a formula of ours, or a table of runs, makes a budget", async () => {
    expect((await openBudget(whole)).workbook.sheets).toHaveLength(2);
    const header = [
      { at: "C5", value: "Run" },
      { at: "D5", value: "To" },
    ];
    const runs = await writeBook(bookOf([sheetOf("One", header)]), { title: "x" });
    expect((await openBudget(runs)).workbook.sheets).toHaveLength(1);
    const call = await writeBook(bookOf([sheetOf("One", [{ at: "A1", formula: "=1+DUCT.AREA(4)" }])]), { title: "x" });
    expect((await openBudget(call)).workbook.sheets).toHaveLength(1);
  });
});

describe("a workbook that is not written", () => {
  test.each<[string, Calculated, string]>([
    ["no sheet", bookOf([]), "There is no sheet to write into a file."],
    [
      "a text too long",
      textsBook("x".repeat(32768)),
      "The text in Texts!A1 is longer than the 32767 characters that a file holds.",
    ],
    [
      "a formula too long",
      bookOf([sheetOf("One", [{ at: "B2", formula: `=1${"+1".repeat(5000)}` }])]),
      "The formula in One!B2 is longer than the 8192 characters that a file holds.",
    ],
    [
      "a note too long",
      bookOf([sheetOf("One", [{ at: "B2", value: 1, note: "x".repeat(32768) }])]),
      "The note in One!B2 is longer than the 32767 characters that a file holds.",
    ],
    [
      "a name too long",
      bookOf([sheetOf("x".repeat(32), [])]),
      `The sheet "${"x".repeat(32)}" needs a name of 1 to 31 characters to stand in a file.`,
    ],
    [
      "a name with a slash",
      bookOf([sheetOf("a/b", [])]),
      `The sheet "a/b" cannot stand in a file: its name has a character of : \\ / ? * [ ] or an outer '.`,
    ],
    [
      "two names alike",
      bookOf([sheetOf("One", []), sheetOf("ONE", [])]),
      'Two sheets are called "One", which a file cannot hold.',
    ],
    [
      "a list of nothing",
      bookOf([sheetOf("One", [], { lists: [{ range: "A1:A3", choices: [], strict: true }] })]),
      "The list of A1:A3 has nothing to choose from.",
    ],
  ])("%s is said in a sentence", async (_, book, sentence) => {
    expect(await refused(writeBook(book, { title: "x" }))).toBe(sentence);
  });
});
