/** The tables of a copy as a reader finds them. */
import { lossFamilies } from "../../../src/reference/lossFamilies";
import { familyK } from "../../../src/share/translate/expressions/familyK";
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
    "Fittings and hood entries: coefficient K (in where a diameter is meant); columns C to E count in its first rows alone",
    ["entry", "K", "goes by diameter as", "more in slow air", "branch at (degrees; below 0: plain)"],
  ],
  ["hoods SI", "Hood entries: coefficient K (mm where a diameter is meant)", ["entry", "K", "goes by diameter as"]],
  [
    "diameter items SI",
    "Fittings that go by the duct's diameter, mm; then those that go by the number behind their name",
    ["line", "at", "K", "start", "change of slope"],
  ],
];

test.each(TITLES)("%s has its title and its headers", (name, title, headers) => {
  const { sheet, tables } = copyTables("SI");
  tables.block(name);
  const shown = (at: string): unknown => {
    const cell = sheet.cells.find((one) => one.at === at);
    return cell === undefined ? undefined : "value" in cell ? [cell.value, cell.style] : cell;
  };
  expect(shown("A4")).toEqual([title, "section"]);
  expect(["A5", "B5", "C5", "D5", "E5", "F5", "G5", "H5"].map(shown).filter((one) => one !== undefined)).toEqual(
    [...headers, "source", "basis"].map((header) => [header, "header"]),
  );
});

test.each(TITLES)("%s: its figures look like what they are", (name) => {
  const { sheet, tables } = copyTables("SI");
  tables.block(name);
  const styles = sheet.cells.flatMap((cell) =>
    "value" in cell && typeof cell.value === "number" ? [cell.style ?? ""] : [],
  );
  expect([...new Set(styles)]).toEqual([name === "units" ? "text" : "input"]);
});

test("the table of a single fitting says which, and in what its diameters are", () => {
  const title = (fitting: string): unknown => {
    const { sheet, tables } = copyTables("SI");
    familyK(
      lossFamilies.find(({ key }) => key === fitting)!,
      "A1",
      "B1",
      "SI",
      tables,
    );
    return sheet.cells.flatMap((cell) => (cell.at === "A4" && "value" in cell ? [cell.value] : []))[0];
  };
  expect(title("elbow pleated")).toBe('Printed points of "elbow pleated", mm');
  expect(title("elbow smooth")).toBe('Printed points of "elbow smooth"');
  expect(title("branch")).toBe('Printed points of "branch"');
});

test("the sheet says what it is; a figure that a reader may change looks as an input, a name does not", () => {
  const { sheet, tables } = copyTables("IP");
  tables.block("materials");
  tables.block("units");
  expect(sheet.cells.slice(0, 3)).toEqual([
    { at: "A1", value: "Look-up tables", style: "title" },
    {
      at: "A2",
      value:
        "The formulas of the other sheets look here. Change a figure and they follow; its source and basis are then yours.",
      style: "note",
    },
    { at: "A3", value: "Leave the names: where one is replaced, nothing has an answer.", style: "note" },
  ]);
  expect(sheet).toMatchObject({
    name: "Lookups",
    columns: [34, 16, 16, 16, 16, 16, 16],
    frozen: { rows: 0, columns: 0 },
  });
  const styleOf = (at: string) => sheet.cells.find((cell) => cell.at === at)?.style;
  expect([styleOf("A6"), styleOf("B6")]).toEqual(["text", "input"]);
  const first = sheet.cells.find((cell) => "value" in cell && String(cell.value).startsWith("Units:"))!;
  const row = Number(first.at.slice(1)) + 2;
  expect([styleOf(`A${row}`), styleOf(`C${row}`)]).toEqual(["text", "text"]);
});

/** The rows of a table, as the values of their cells; a formula is undefined. */
function rowsOf(kind: BlockName, units: "IP" | "SI", used: readonly string[]): unknown[][] {
  const { sheet, tables } = copyTables(units, { entries: used, longest: 0 });
  tables.block(kind);
  const rows = new Map<string, unknown[]>();
  for (const cell of sheet.cells.slice(3)) {
    const [, column, row] = /^([A-Z])(\d+)$/.exec(cell.at)!;
    rows.set(row!, rows.get(row!) ?? []);
    rows.get(row!)!["ABCDEFG".indexOf(column!)] = "value" in cell ? cell.value : undefined;
  }
  return [...rows.values()].slice(2);
}

test("entries that a book has beside the offered ones follow them; hoods take hoods alone", () => {
  const used = ["elbow 1.71", "elbow 1.5", "elbow 99", "plain end 7", "0.4", "", "elbow pleated 60", "bell mouth 0.07"];
  const entries = (kind: BlockName): unknown[] => rowsOf(kind, "IP", used).map(([text]) => text);
  const fittings = entries("fittings IP");
  expect(fittings.slice(-2)).toEqual(["elbow 1.71", "bell mouth 0.07"]);
  expect(fittings).toContain("elbow pleated 60");
  expect(fittings.filter((text) => text === "elbow 1.5")).toHaveLength(1);
  expect(fittings).toEqual(expect.arrayContaining(["plain end", "branch 30"]));
  const hoods = entries("hoods IP");
  expect(hoods).toEqual(expect.arrayContaining(["plain end", "bell mouth 0.1"]));
  expect(hoods.at(-1)).toBe("bell mouth 0.07");
  for (const fitting of ["elbow 1.5", "elbow 1.71", "branch 30", "elbow pleated"]) expect(hoods).not.toContain(fitting);
});

test("entries that go by the diameter, the air or an angle stand first, so that the columns which say so end with them", () => {
  const used = ["elbow pleated 60", "mitre 37", "branch 37", "elbow 1.71"];
  const { sheet, tables } = copyTables("IP", { entries: used, longest: 0 });
  const block = tables.block("fittings IP");
  const [, last] = /\$(\d+)$/.exec(block.head("entry"))!;
  const filled = sheet.cells.flatMap(({ at }) => {
    const [, column, row] = /^([A-Z])(\d+)$/.exec(at)!;
    return /[CDE]/.test(column!) && Number(row) > Number(last) ? [at] : [];
  });
  expect(filled).toEqual([]);
  expect(block.rest("entry", "K")).toMatch(
    new RegExp(`\\$A\\$${Number(last) + 1}:\\$B\\$${sheet.cells.at(-1)!.at.slice(1)}$`),
  );
  const head = rowsOf("fittings IP", "IP", used).slice(0, Number(last) - 5);
  expect(head.map(([text]) => text)).toEqual(expect.arrayContaining(used.slice(0, 3)));
  expect(head.filter((row) => [2, 3, 4].every((column) => row[column] === undefined))).toEqual([]);
});

test("what goes by the duct's diameter has no K of its own but a line of points, from small to large", () => {
  const rowOf = (text: string) => rowsOf("fittings SI", "SI", ["elbow pleated 60"]).find(([first]) => first === text);
  expect(rowOf("elbow pleated 45")).toEqual(["elbow pleated 45", undefined, "elbow pleated 45"]);
  expect(rowOf("pleated elbow")).toEqual(["pleated elbow", undefined, "elbow pleated"]);
  expect(rowOf("elbow pleated 60")).toEqual(["elbow pleated 60", undefined, "elbow pleated 60"]);
  expect(rowOf("tee")!.slice(0, 2)).toEqual(["tee", expect.any(Number)]);
  const lines = rowsOf("diameter items SI", "SI", ["elbow pleated 60"]);
  const at = (name: string): unknown[] => lines.filter(([line]) => line === name).map(([, diameter]) => diameter);
  expect(at("elbow pleated 60").length).toBeGreaterThan(2);
  for (const name of new Set(lines.map(([line]) => String(line))))
    expect(at(name)).toEqual([...at(name)].sort((a, b) => Number(a) - Number(b)));
  expect(at("elbow pleated")[0]).toBe(100);
});

test.each([
  ["materials", "flex", /duct design chapter/, "from memory"],
  ["materials", "pvc", /duct roughness factors/, "second-hand"],
  ["gates", "open bare slot", /Common practice/, "common practice"],
  ["leakage", "en a", /EN 12237/, "second-hand"],
  ["units", "in.w.g.", /NIST/, "from memory"],
  ["fittings IP", "branch 30", /ACGIH.*from memory/, "from memory"],
  ["fittings IP", "branch 45", /Filled duct sheet/, "read"],
  ["fittings IP", "elbow 3 piece 1.5", /ASHRAE Handbook Fundamentals 2009/, "second-hand"],
  ["hoods SI", "plain end", /exam/, "read"],
] as const)("of %s, %s keeps its source and its basis", (kind, name, source, basis) => {
  const row = rowsOf(kind, "IP", []).find(([first]) => first === name)!;
  expect(row.at(-2)).toMatch(source);
  expect(row.at(-1)).toBe(basis);
});

test("between a printed point and one from memory an entry names both", () => {
  const row = rowsOf("fittings IP", "IP", ["mitre 50"]).find(([first]) => first === "mitre 50")!;
  expect(row.at(-1)).toBe("from memory and read");
});

test("every figure of a table has a source and a basis beside it", () => {
  for (const [kind] of TITLES) {
    const rows = rowsOf(kind, "SI", []);
    const figures = rows.filter((row) => row.some((cell) => typeof cell === "number"));
    expect(figures.length).toBeGreaterThan(3);
    expect(figures.filter((row) => [row.at(-2), row.at(-1)].some((cell) => typeof cell !== "string"))).toEqual([]);
  }
});

test("a sheet of tables has no lists, no flags and no cells without anything in them", () => {
  const { sheet, tables } = copyTables("SI");
  tables.block("hoods SI");
  expect(sheet).toMatchObject({ lists: [], flags: [], tallRows: [] });
  expect(sheet.cells.filter((cell) => "value" in cell && cell.value === null)).toEqual([]);
});

test("a table finds the row of a name, and has no other columns than its own", () => {
  const block = copyTables("SI").tables.block("materials");
  expect([block.rowOf("galvanized steel") ?? block.rowOf("galvanised steel")]).toEqual([expect.any(Number)]);
  expect(block.rowOf("no such wall")).toBeNull();
  expect(() => block.range("colour")).toThrow("the table Wall roughness of duct materials, mm has no column colour");
});
