/** Files that are small and would exhaust who reads them: each is read or refused in a sentence, within bounded memory. */
import { strToU8, zipSync } from "fflate";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { boundedReader } from "../../support/boundedReader";
import { partsOf } from "../../support/xlsxParts";
import { sampleBook } from "./sampleBook";

const MEGABYTES = 800; // a million cells need about 500

const read = boundedReader(MEGABYTES);
const TOO_LARGE = "This file unpacks to more than a workbook of budgets ever needs, so it is not opened.";

let whole: ReadonlyMap<string, string>;
beforeAll(async () => {
  whole = partsOf(await writeBook(sampleBook, { title: "x" }));
});

const SHEET = "xl/worksheets/sheet1.xml";
const RELATIONS = "xl/worksheets/_rels/sheet1.xml.rels";

/** The sample with parts changed, packed loosely so that no part packs like a bomb. */
function changed(edits: Readonly<Record<string, (xml: string) => string>>): Uint8Array {
  const parts = new Map(whole);
  for (const [name, edit] of Object.entries(edits)) parts.set(name, edit(parts.get(name) ?? ""));
  return zipSync(Object.fromEntries([...parts].map(([name, xml]) => [name, strToU8(xml)])), { level: 0 });
}

const many = (count: number, one: (index: number) => string): string =>
  Array.from({ length: count }, (_, i) => one(i)).join("");
const withCells = (cells: string) =>
  changed({ [SHEET]: (xml) => xml.replace(/<sheetData>.*<\/sheetData>/s, () => `<sheetData>${cells}</sheetData>`) });
const atTheEnd = (inside: string) =>
  changed({ [SHEET]: (xml) => xml.replace("</worksheet>", () => `${inside}</worksheet>`) });

test("nearly a million cells are read", async () => {
  const outcome = await read(withCells(`<row>${"<c><v>1</v></c>".repeat(10)}</row>`.repeat(99_900)));
  expect(outcome).toEqual({ cells: expect.any(Number) });
  expect((outcome as { cells: number }).cells).toBeGreaterThan(999_000);
});

test.each<[string, () => Uint8Array, string]>([
  ["two million elements that nobody asks for", () => atTheEnd(`<x>${"<a/>".repeat(2e6)}</x>`), TOO_LARGE],
  ["two million elements in one row", () => withCells(`<row>${"<a/>".repeat(2e6)}</row>`), TOO_LARGE],
  ["three million attributes", () => atTheEnd(`<x${many(3e6, (index) => ` a${index}=""`)}/>`), TOO_LARGE],
  [
    "one large part that is referred to four hundred times",
    () =>
      changed({
        "xl/tables/large.xml": () => `<table ref="A1:B2">${`<!--${"x".repeat(1e6)}-->`}</table>`,
        [RELATIONS]: (xml) =>
          xml.replace(
            "</Relationships>",
            `${many(400, (index) => `<Relationship Id="x${index}" Type="x/table" Target="../tables/large.xml"/>`)}$&`,
          ),
      }),
    TOO_LARGE,
  ],
  [
    "a long formula that stands in one cell for all",
    () =>
      withCells(
        `<row><c r="A1"><f t="shared" si="0">${"A1+".repeat(2600)}1</f></c></row>` +
          many(1e5, () => '<row><c><f t="shared" si="0"/></c></row>'),
      ),
    TOO_LARGE,
  ],
  [
    "the width of every column a hundred thousand times",
    () =>
      changed({
        [SHEET]: (xml) =>
          xml
            .replace(/<cols>.*<\/cols>/s, `<cols>${'<col min="1" max="16384" width="9"/>'.repeat(1e5)}</cols>`)
            .replace(/<sheetData>.*<\/sheetData>/s, '<sheetData><row><c r="XFD1"><v>1</v></c></row></sheetData>'),
      }),
    TOO_LARGE,
  ],
  [
    "three million ranges of one list",
    () =>
      changed({
        [SHEET]: (xml) =>
          xml.replace(/(<dataValidation [^>]*sqref=")[^"]*/, (_, before: string) => `${before}${"A1 ".repeat(3e6)}`),
      }),
    "This file has more than a million cells, so it is not opened.",
  ],
  [
    "a formula of a million characters",
    () => withCells(`<row><c><f>${"a (".repeat(350_000)}</f></c></row>`),
    "This file has a formula that is far too long.",
  ],
])("%s: refused", async (_, made, sentence) => {
  expect(await read(made())).toEqual({ refused: sentence });
});

test("a million empty rows are read, and so is a text of eight million characters", async () => {
  expect(await read(withCells("<row/>".repeat(1e6)))).toEqual({ cells: expect.any(Number) });
  const text = "_x000D_'".repeat(1e6);
  expect(await read(withCells(`<row><c t="str"><v>${text}</v></c></row>`))).toEqual({ cells: expect.any(Number) });
});
