import { referenceTables } from "../../../src/reference";
import { cautions } from "../../../src/reference/cautions";
import { isWeak } from "../../../src/reference/schema";
import { sources } from "../../../src/reference/sources";
import { columnLetters, placeOf } from "../../../src/sheets/address";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { aboutSheet } from "../../../src/sheets/book/about/aboutSheet";
import type { Frame } from "../../../src/sheets/book/frame";
import { arrangedTables } from "../../../src/sheets/book/tables/arranged";
import type { Sheet, SheetCell } from "../../../src/sheets/workbook";
import { sheetKeys, usualNames } from "../../../src/sheets/sheetKeys";
import { steps } from "../../../src/sheets/book/start/startSteps";

const book = budgetBook(
  { units: "IP", sheets: ["tables", "cautions", "about"], contents: "empty" },
  { sheets: [], names: [] },
);
const sheet = (name: string): Sheet => book.sheets.find((one) => one.name === name)!;
const byPlace = (of: Sheet): Map<string, SheetCell> => new Map(of.cells.map((cell) => [cell.at, cell]));
const shown = (cells: Map<string, SheetCell>, at: string): unknown => {
  const cell = cells.get(at);
  return cell !== undefined && "value" in cell ? cell.value : "";
};

describe("the sheet of tables", () => {
  const tables = sheet("Tables");
  const cells = byPlace(tables);

  test("computes nothing, so that it stays where nothing computes", () => {
    expect(tables.cells.filter((cell) => "formula" in cell)).toEqual([]);
  });

  test("has every reference table but the cautions, row for row, with different headers in each", () => {
    const wanted = referenceTables.filter(({ name }) => name !== "cautions");
    expect(tables.tables!.length).toBe(wanted.length);
    expect(new Set(tables.tables!.map(({ name }) => name)).size).toBe(wanted.length);
    wanted.forEach((table, index) => {
      const { name, range } = tables.tables![index]!;
      expect(name).toMatch(/^ref_Tables_[A-Za-z_]+$/);
      const [from, to] = range.split(":").map(placeOf) as [ReturnType<typeof placeOf>, ReturnType<typeof placeOf>];
      expect(to.row - from.row).toBe(table.rows.length);
      const headers = Array.from({ length: to.column }, (_, at) => shown(cells, `${columnLetters(at + 1)}${from.row}`));
      expect(new Set(headers).size).toBe(headers.length);
      headers.forEach((header) => expect(header).toMatch(/\S/));
      table.rows.forEach((row, down) => expect(shown(cells, `A${from.row + 1 + down}`)).toBe(row[0]));
    });
  });

  test("keeps every number of a table under a header with its unit", () => {
    const arranged = arrangedTables();
    for (const table of referenceTables.filter(({ name }) => name !== "cautions")) {
      const { headers, rows } = arranged.find(({ name }) => name === table.name)!;
      table.columns.forEach(({ name, unit }, column) => {
        const place = headers.indexOf(unit === "" ? name : `${name} (${unit})`);
        table.rows.forEach((row, down) => {
          if (typeof row[column] === "number") expect(rows[down]![place]).toBe(row[column]);
        });
      });
    }
  });

  test("keeps every text: a weak row says so, a source's short name stands in the last table", () => {
    const arranged = arrangedTables();
    const keys = new Set(Object.keys(sources));
    for (const table of referenceTables.filter(({ name }) => !["cautions", "sources"].includes(name))) {
      const { rows } = arranged.find(({ name }) => name === table.name)!;
      const weak = table.columns.findIndex(({ name }) => name === "weak");
      rows.forEach((row, down) => {
        expect(String(row[3]).endsWith(": weak")).toBe(table.rows[down]![weak] === "weak");
        expect(keys).toContain(/\[(\w+)(, .+)?\]$/.exec(String(row[2]))?.[1]);
        const words = String(table.rows[down]![1]);
        expect(String(row[1]).startsWith(words)).toBe(true);
      });
    }
    expect(arranged.at(-1)!.name).toBe("sources");
  });

  test("no table meets another, and the header stays in sight", () => {
    const rows = tables.tables!.map(({ range }) => range.split(":").map((at) => placeOf(at).row) as [number, number]);
    rows.slice(1).forEach(([first], index) => expect(first).toBeGreaterThan(rows[index]![1] + 1));
    expect(tables.frozen.rows).toBe(4);
    expect(tables.print).toMatchObject({ paper: "Letter", landscape: true, area: expect.stringMatching(/^A1:F\d\d$/) }); // its list
  });
});

describe("the sheet of cautions", () => {
  const cells = byPlace(sheet("Cautions"));

  test("has every caution with its source as plain text, and says who decides", () => {
    expect([...cells.values()].filter((cell) => "formula" in cell)).toEqual([]);
    cautions.forEach((row, index) => {
      const at = 7 + index;
      expect(shown(cells, `B${at}`)).toBe(row.text);
      expect(shown(cells, `C${at}`)).toBe(row.basis);
      expect(shown(cells, `D${at}`)).toBe(sources[row.source].title);
    });
    expect(cautions.some(isWeak)).toBe(true);
    expect(shown(cells, "A2")).toMatch(/^Local codes and licensed practice decide\./);
  });
});

describe("the sheet about the workbook", () => {
  const frame: Frame = {
    units: "SI",
    sheet: (key) => usualNames[key],
    has: () => true,
    adds: () => true,
    ref: (key, range) => `${usualNames[key]}!${range}`,
    name: (key) => key,
  };
  const words = (of: Sheet): string => of.cells.map((cell) => ("value" in cell ? String(cell.value) : "")).join("\n");

  test("keeps what must be read without the add-in as text; only the version is computed", () => {
    const about = aboutSheet(frame, null);
    expect(about.cells.flatMap((cell) => ("formula" in cell ? [cell.formula] : []))).toEqual(["=DUCT.ABOUT()"]);
    expect(words(about)).toMatch(/boxed cell/);
    expect(words(about)).not.toMatch(/[Ii]nvented/);
    expect(about.print!.paper).toBe("A4");
  });

  test("says that an example is invented", () => {
    expect(words(aboutSheet(frame, { invented: "Invented: no such shed exists." }))).toMatch(
      /Invented: no such shed exists\./,
    );
  });
});

test("the steps on Start come in the order of the tabs", () => {
  const keys = steps.map(([key]) => key);
  expect(keys).toEqual(sheetKeys.filter((key) => keys.includes(key)));
});
