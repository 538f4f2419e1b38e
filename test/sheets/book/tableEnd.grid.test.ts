import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { gridOfBook } from "../../support/gridOfBook";

const book = budgetBook({ units: "IP", contents: "example", sheets: sheetKeys }, { sheets: [], names: [] });
const shows = gridOfBook(book);

const ENDS = "The table ends here: what is typed below it is not read.";
const lines = book.sheets.flatMap(({ name, cells }) =>
  cells.flatMap((cell) => ("formula" in cell && cell.formula.includes(ENDS) ? [[name, cell.at] as const] : [])),
);
const split = (at: string): [letters: string, row: number] => {
  const [, letters, row] = /^([A-Z]+)(\d+)$/.exec(at)!;
  return [letters!, Number(row)];
};

test("every table with a last row has such a line", () => {
  expect(lines.map(([name]) => name).sort()).toEqual([
    "Claims",
    "Fan",
    "Fan",
    "Flow",
    "Leaks",
    "Measured",
    "Readings",
    "Sizes",
  ]);
});

test.each(lines)("on %s the line in %s says so where a row was inserted right above it", (name, at) => {
  const [letters, row] = split(at);
  const said = (down: number): unknown => shows.value(name, `${letters}${row + down}`);
  expect(said(0)).toBe(ENDS);
  shows.insertRow(name, row);
  expect(said(1)).toBe("Look: a row inserted right above this line is not read: insert it higher up.");
  shows.deleteRow(name, row);
  expect(said(0)).toBe(ENDS);
  shows.insertRow(name, row - 1); // within the table
  expect(said(1)).toBe(ENDS);
  shows.deleteRow(name, row - 1);
  expect(said(0)).toBe(ENDS);
});

test("a last entry that is cut to another row is none", () => {
  const [name, at] = lines.find(([sheet]) => sheet === "Leaks")!;
  const [, row] = split(at);
  shows.type(name, `A${row - 1}`, "saw");
  shows.cut(name, `A${row - 1}:H${row - 1}`, `A${row - 3}`);
  expect(shows.value(name, at)).toBe(ENDS);
});

test.each(lines)("on %s the line in %s rests on nothing that is computed", (name, at) => {
  const cells = new Map(book.sheets.find((sheet) => sheet.name === name)!.cells.map((cell) => [cell.at, cell]));
  const { formula } = cells.get(at) as { formula: string };
  const read = [...formula.matchAll(/\$([A-Z]+)\$(\d+)/g)].map(([, letters, row]) => cells.get(`${letters}${row}`));
  expect(read).toHaveLength(2);
  expect(read.filter((cell) => cell !== undefined && "formula" in cell)).toEqual([]);
});
