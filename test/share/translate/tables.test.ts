/** The tables of a copy as a reader finds them. */
import { copyTables } from "../../../src/share/translate/lookupTables";
import type { BlockName } from "../../../src/share/translate/tableBlocks/blocks";

const TITLES: readonly (readonly [BlockName, string, readonly string[]])[] = [
  ["materials", "Wall roughness of duct materials, mm", ["name", "roughness"]],
  ["gates", "Leak of slide gates, estimates: gap mm, length in diameters", ["name", "gap", "length"]],
  ["leakage", "Seam leakage: m³/s through a m² at a pressure of p Pa is constant x p^0.65", ["name", "constant"]],
  ["sizes IP", "Stock diameters, in", ["size"]],
  ["sizes SI", "Stock diameters, mm", ["size"]],
  ["units", "Units: what one of it is in SI", ["unit", "quantity", "factor"]],
  [
    "fittings IP",
    "Fittings and hood entries: coefficient K (in where a diameter is meant)",
    ["entry", "K", "goes by diameter as"],
  ],
  ["hoods SI", "Hood entries: coefficient K (mm where a diameter is meant)", ["entry", "K", "goes by diameter as"]],
  ["diameter items SI", "Fittings that go by the duct's diameter, mm", ["line", "at", "K", "start", "change of slope"]],
];

test.each(TITLES)("%s has its title and its headers", (name, title, headers) => {
  const { sheet, tables } = copyTables("SI");
  tables.block(name);
  const shown = (at: string): unknown => {
    const cell = sheet.cells.find((one) => one.at === at);
    return cell === undefined ? undefined : "value" in cell ? [cell.value, cell.style] : cell;
  };
  expect(shown("A4")).toEqual([title, "section"]);
  expect(["A5", "B5", "C5", "D5", "E5", "F5"].map(shown).filter((one) => one !== undefined)).toEqual(
    headers.map((header) => [header, "header"]),
  );
});

test("the sheet says what it is; a figure that a reader may change looks as an input, a name does not", () => {
  const { sheet, tables } = copyTables("IP");
  tables.block("materials");
  tables.block("units");
  expect(sheet.cells.slice(0, 2)).toEqual([
    { at: "A1", value: "Look-up tables", style: "title" },
    { at: "A2", value: "The formulas of the other sheets look here. Change a figure and they follow.", style: "note" },
  ]);
  expect(sheet).toMatchObject({ name: "Lookups", columns: [34, 16, 16, 16, 16, 16], frozen: { rows: 0, columns: 0 } });
  const styleOf = (at: string) => sheet.cells.find((cell) => cell.at === at)?.style;
  expect([styleOf("A6"), styleOf("B6")]).toEqual(["text", "input"]);
  const first = sheet.cells.find((cell) => "value" in cell && String(cell.value).startsWith("Units:"))!;
  const row = Number(first.at.slice(1)) + 2;
  expect([styleOf(`A${row}`), styleOf(`C${row}`)]).toEqual(["text", "text"]);
});

test("entries that a book has beside the offered ones follow them; hoods take hoods alone", () => {
  const entries = (kind: BlockName): unknown[] => {
    const { sheet, tables } = copyTables("IP", ["elbow 1.71", "elbow 1.5", "elbow 99", "plain end 7"]);
    tables.block(kind);
    return sheet.cells.flatMap((cell) => ("value" in cell && cell.at.startsWith("A") ? [cell.value] : []));
  };
  const fittings = entries("fittings IP");
  expect(fittings.at(-1)).toBe("elbow 1.71");
  expect(fittings.filter((text) => text === "elbow 1.5")).toHaveLength(1);
  expect(fittings).not.toContain("elbow 99");
  expect(entries("hoods IP")).not.toContain("elbow 1.71");
});
