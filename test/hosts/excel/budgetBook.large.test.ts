import { excelHost } from "../../../src/hosts/excel/excelHost";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { demoBook } from "../../../src/sheets/demo";
import { addNewSheets } from "../../../src/hosts/excel/addNewSheets";
import type { Workbook } from "../../../src/sheets/workbook";
import { record, type Recorder } from "../../support/excelRecorder/recorder";
import { watching } from "./watch";
import { type SheetKey, sheetKeys } from "../../../src/sheets/sheetKeys";

const demo = demoBook();

/** Formulas by sheet and cell, as the description has them and as Excel was given them. */
const described = ({ sheets }: Workbook): Record<string, string> =>
  Object.fromEntries(
    sheets.flatMap(({ name, cells }) =>
      cells.flatMap((cell) => ("formula" in cell ? [[`${name}!${cell.at}`, cell.formula]] : [])),
    ),
  );

const entered = ({ book }: Recorder, names: readonly string[]): Record<string, string> =>
  Object.fromEntries(
    book.sheets
      .filter(({ name }) => names.includes(name))
      .flatMap(({ name, cells }) =>
        [...cells].flatMap(([at, { formula }]) => (formula === null ? [] : [[`${name}!${at}`, formula]])),
      ),
  );

describe.each(["IP", "SI"] as const)("addSheets in %s", (units) => {
  test.each(["empty", "example"] as const)(
    "enters an %s budget: each formula as described, each text as text",
    async (contents) => {
      const excel = record();
      const order = { units, sheets: sheetKeys, contents };
      const wanted = budgetBook(order, { sheets: ["Sheet1"], names: [] });
      const names = wanted.sheets.map(({ name }) => name);
      expect(await excelHost().addSheets(order, watching().watch)).toEqual({ added: true, refused: [], sheets: names });
      expect(Object.keys(described(wanted)).length).toBeGreaterThan(50);
      expect(entered(excel, names)).toEqual(described(wanted));
      for (const { name, cells } of wanted.sheets) {
        const there = excel.book.sheets.find((sheet) => sheet.name === name)!;
        const texts = cells.filter((cell) => "value" in cell && typeof cell.value === "string");
        expect(texts.map(({ at }) => [at, there.cells.get(at)!.value])).toEqual(
          texts.map((cell) => [cell.at, "value" in cell ? cell.value : null]),
        );
      }
    },
  );
});

describe("addSheets", () => {
  const order = (sheets: readonly SheetKey[]) => ({ units: "IP" as const, sheets, contents: "example" as const });

  test("gives names with a number where they are taken, by sheets and by cells", async () => {
    const excel = record();
    excel.fill("Runs", "A1", [["the user's"]]);
    excel.book.names.push({ name: "units", formula: "=Sheet1!$A$1", visible: true });
    const outcome = await excelHost().addSheets(order(["runs"]), watching().watch);
    expect(outcome).toMatchObject({ added: true, sheets: expect.arrayContaining(["Runs 2"]) });
    expect(excel.book.sheets[1]!.cells.get("A1")!.value).toBe("the user's");
    expect(excel.book.names.map(({ name }) => name)).toContain("units_2");
  });

  test("a later sheet uses those of ours that are there, whatever they are called by now", async () => {
    const excel = record();
    await excelHost().addSheets(order(["runs"]), watching().watch);
    const before = excel.book.sheets.map(({ name }) => name);
    excel.book.sheets.find(({ name }) => name === "Runs")!.name = "My ducts";
    const outcome = await excelHost().addSheets(order(["readings"]), watching().watch);
    expect(outcome).toEqual({ added: true, refused: [], sheets: ["Readings"] });
    expect(excel.book.sheets).toHaveLength(before.length + 1);
  });

  test("a sheet of ours that somebody duplicates, with its mark, stays the one; the duplicate is none, until it is all that is left", async () => {
    const excel = record();
    await excelHost().addSheets(order(["runs"]), watching().watch);
    const runs = excel.book.sheets.find(({ name }) => name === "Runs")!;
    for (const [place, name] of [
      [0, "Runs (2)"], // Excel puts a duplicate before the sheet that is selected, or last
      [excel.book.sheets.length + 1, "Runs (3)"],
    ] as const)
      excel.book.sheets.splice(place, 0, { ...runs, id: `{${name}}`, name, marks: new Map(runs.marks) });
    const marked = async (): Promise<string[]> =>
      (await excelHost().readBook()).workbook.sheets.filter(({ key }) => key === "runs").map(({ name }) => name);
    expect(await marked()).toEqual(["Runs"]);
    await excelHost().addSheets(order(["flow"]), watching().watch);
    const flow = excel.book.sheets.find(({ name }) => name === "Flow")!;
    const read = new Set(
      [...flow.cells.values()].flatMap(({ formula }) => formula?.match(/'Runs[^'!]*'!|Runs!/g) ?? []),
    );
    expect([...read]).toEqual(["Runs!"]);
    excel.book.sheets = excel.book.sheets.filter(({ name }) => name !== "Runs" && name !== "Runs (3)");
    expect(await marked()).toEqual(["Runs (2)"]);
  });

  test.each([null, ["R", "C"], ["Z", "S"]] as const)(
    "a workbook that came from a file of ours says by hidden names which sheets are a budget's own, in whatever style of references (%p)",
    async (countedBy) => {
      const excel = record();
      excel.book.countedBy = countedBy;
      for (const [key, name] of [
        ["start", "Begin here"],
        ["runs", "My ducts"],
      ] as const) {
        excel.fill(name, "A1", [["words"]]);
        excel.book.names.push({ name: `ductledger.sheet.${key}`, formula: `='${name}'!$A$1:$Z$200`, visible: false });
      }
      const outcome = await excelHost().addSheets(order(["readings"]), watching().watch);
      expect(outcome).toEqual({ added: true, refused: [], sheets: ["Readings"] });
      const keys = (await excelHost().readBook()).workbook.sheets.map(({ name, key }) => [name, key]);
      expect(keys).toEqual([
        ["Sheet1", undefined],
        ["Begin here", "start"],
        ["My ducts", "runs"],
        ["Readings", "readings"],
      ]);
    },
  );

  test("takes every sheet of the demo", async () => {
    const excel = record();
    expect(await addNewSheets(async () => demo, watching().watch)).toMatchObject({ added: true });
    expect(
      entered(
        excel,
        demo.sheets.map(({ name }) => name),
      ),
    ).toEqual(described(demo));
  });
});
