import { budgetBook } from "../../src/sheets/book/budgetBook";
import { type SheetKey, sheetKeys, usualNames } from "../../src/sheets/sheetKeys";
import { stepLinks } from "../../src/sheets/stepLinks";
import { writeBook } from "../../src/hosts/file/writeBook";
import { elementsOf, partsOf } from "../support/xlsxParts";

const bookWith = (sheets: readonly SheetKey[]) =>
  budgetBook({ units: "IP", sheets, contents: "empty" }, { sheets: [], names: [] });

test("the steps of Start lead to the other sheets in their order; no other sheet has any, nor has one that has another name now", () => {
  const workbook = bookWith(sheetKeys);
  const sheets = workbook.sheets.map(({ name }) => name);
  expect(stepLinks(workbook, 0).map(({ sheet }) => sheet)).toEqual(sheets.slice(1));
  expect(sheets.slice(1)).toContain(usualNames.tables);
  expect(stepLinks(workbook, 1)).toEqual([]);
  const renamed = { ...workbook, sheets: workbook.sheets.map((sheet) => (sheet.name === "Fan" ? { ...sheet, name: "My fan" } : sheet)) }; // prettier-ignore
  expect(stepLinks(renamed, 0).map(({ sheet }) => sheet)).not.toContain("Fan");
});

test("in a file they are links to cells of it, and to nothing outside", async () => {
  const workbook = bookWith(["start", "runs", "fan"]);
  const parts = partsOf(await writeBook({ workbook, shown: new Map() }, { title: "Shop" }));
  const links = elementsOf(parts.get("xl/worksheets/sheet1.xml")!).filter(({ name }) => name === "hyperlink");
  expect(links.map(({ attributes }) => [attributes.ref, attributes.location])).toEqual(
    stepLinks(workbook, 0).map(({ at, sheet }) => [at, `${sheet}!A1`]),
  );
  expect(links.length).toBeGreaterThan(2);
  for (const [name, xml] of parts) if (name.endsWith(".rels")) expect(xml).not.toContain("hyperlink");
});
