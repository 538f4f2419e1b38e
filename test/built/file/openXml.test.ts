/** Files of each kind by the validator of the Open XML SDK: what it objects to, Excel would offer to repair. */
import { calculate } from "../../../scripts/calculate";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { clubCopy } from "../../../src/share/clubCopy";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import type { Calculated } from "../../../src/sheets/calculated";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { sampleBook } from "../../hosts/file/sampleBook";
import { hasOpenXmlValidator, openXmlFaults } from "../../support/openXml";
import { partsOf, zipped } from "../../support/xlsxParts";

const describeIf = hasOpenXmlValidator ? describe : describe.skip;

describeIf("a file as the validator of Open XML reads it", () => {
  const order = { units: "SI", sheets: sheetKeys, contents: "example" } as const;
  let live: Calculated;
  beforeAll(() => {
    live = calculate(budgetBook(order, { sheets: [], names: [] }));
  });
  const copyOf = (kind: "formulas" | "values"): Calculated =>
    clubCopy(live, { kind, date: "2026-11-25", version: "0.2.0" }).book;

  test.each([
    ["a workbook with one thing of each kind", () => sampleBook],
    ["the example", () => live],
    ["its copy for a club", () => copyOf("formulas")],
    ["its copy with values only", () => copyOf("values")],
  ])("%s has nothing to repair", async (_, book) => {
    expect(openXmlFaults(await writeBook(book(), { title: "Air budget" }))).toEqual([]);
  });

  test("it does object to a file whose fonts are in another order", async () => {
    const parts = partsOf(await writeBook(sampleBook, { title: "x" }));
    const styles = parts.get("xl/styles.xml")!.replace(/(<sz [^>]*>)(<color [^>]*>)/, "$2$1");
    parts.set("xl/styles.xml", styles);
    expect(openXmlFaults(zipped(parts)).join()).toContain("unexpected child element");
  });
});
