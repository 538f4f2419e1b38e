import { shownColumns } from "../../../src/reference/columnsOfRuns";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { runCell, RUNS_FIRST, RUNS_HEADER } from "../../../src/sheets/book/layout";
import type { Calculated, ShownCell } from "../../../src/sheets/calculated";
import type { CellValue, Sheet } from "../../../src/sheets/workbook";
import { sizesAsked } from "../../../src/taskpane/build/sizes/sizesAsked";
import { leaksRead, leakToWrite, type ReadLeak } from "../../../src/taskpane/build/leaks/leaksRead";

/** Leak areas as the sheet would work them out; here they are typed, so that nothing is computed. */
const AREAS = { G43: 0.8446, H43: 0.081213, G44: 0.111, H44: 0.0501, G45: 0.525, H45: 0.626, G46: 0.657, H46: "", G47: 0.30946, H47: "" }; // prettier-ignore

const workbook = budgetBook({ units: "IP", sheets: ["leaks"], contents: "example" }, { sheets: [], names: [] });
const typedIn = ({ cells }: Sheet): Map<string, ShownCell> =>
  new Map(cells.flatMap((cell) => ("value" in cell ? [[cell.at, { value: cell.value }] as const] : [])));
const book: Calculated = { workbook, shown: new Map(workbook.sheets.map((sheet) => [sheet.name, typedIn(sheet)])) };
for (const [at, value] of Object.entries(AREAS)) (book.shown.get("Leaks") as Map<string, ShownCell>).set(at, { value });
for (const { name } of shownColumns)
  (book.shown.get("Runs") as Map<string, ShownCell>).set(runCell(name, RUNS_HEADER), { value: `${name} (its unit)` });

const PLANER = RUNS_FIRST + 1;

/** The book with cells that show something else, by sheet and address. */
function showing(changes: Readonly<Record<string, CellValue>>): Calculated {
  const shown = new Map([...book.shown].map(([name, cells]) => [name, new Map(cells)]));
  for (const [key, value] of Object.entries(changes)) {
    const [sheet, at] = key.split("!") as [string, string];
    shown.get(sheet)!.set(at, { value });
  }
  return { ...book, shown };
}

function listed(of: Calculated): readonly ReadLeak[] {
  const read = leaksRead(of);
  if ("why" in read) throw new Error(read.why);
  return read.leaks;
}

const whyOf = (run: string, changes: Readonly<Record<string, CellValue>>): unknown => {
  const found = listed(showing(changes)).find((one) => one.run === run)!;
  return "why" in found ? found.why : found;
};

describe("a reading of the log as the leak of its run", () => {
  // In manual calculation the area beside a reading is that of the reading before.
  test("is none in a book that Excel calculates only when asked, nor do sizes come of it", () => {
    const manual: Calculated = { ...book, settings: ["calculates when asked"] };
    const why = "Excel calculates this book only when asked, so its cells may show old numbers: set Formulas › Calculation Options to Automatic first."; // prettier-ignore
    expect(leaksRead(manual)).toEqual({ why });
    expect(leakToWrite(manual, listed(book)[0]!)).toHaveProperty("why");
    expect(sizesAsked(manual)).toEqual({ why });
    expect(leaksRead({ ...book, settings: ["rounds as shown"] })).toHaveProperty("leaks");
  });

  test("is its area as mended, else as found, in the column of the gate's state", () => {
    const now = book.shown.get("Runs")!.get(runCell("Leak shut", PLANER))!.value;
    expect(now).not.toBeNull();
    expect(listed(book)).toEqual([
      { run: "planer", when: "as mended", column: "Leak shut", area: 0.08121, at: runCell("Leak shut", PLANER), runAt: runCell("Run", PLANER), sheet: "Runs", now }, // prettier-ignore
      expect.objectContaining({ run: "band saw", when: "as mended", column: "Leak open", area: 0.0501 }),
      expect.objectContaining({ run: "drum sander", when: "as mended", area: 0.626 }),
      { run: "bench hood", why: "no run on the sheet Runs is called so" },
      expect.objectContaining({ run: "router table", when: "as found", column: "Leak shut", area: 0.3095 }),
    ]);
  });

  test("goes where the gate stands where its condition says neither, and where there is no gate is always there", () => {
    const gate = `Runs!${runCell("Gate", PLANER)}`;
    for (const [changes, column] of [
      [{ "Leaks!C23": "loose collar", [gate]: "shut" }, "Leak shut"],
      [{ "Leaks!C23": "", [gate]: "open" }, "Leak open"],
      [{ "Leaks!C23": " Shut", [gate]: "open" }, "Leak shut"],
      [{ "Leaks!C23": "open", [gate]: "shut" }, "Leak open"],
      [{ [gate]: null }, "Leak"],
    ] as const)
      expect(listed(showing(changes))[0]).toMatchObject({ run: "planer", column, at: runCell(column, PLANER) });
  });

  const always = runCell("Leak", PLANER);
  test.each<[string, Readonly<Record<string, CellValue>>, string]>([
    ["no reading", { "Leaks!E23": "", "Leaks!F23": "" }, "its leak is not read"],
    ["no suction", { "Leaks!H43": "", "Leaks!J43": "type the suction in D23" }, "no leak area follows from its reading: type the suction in D23"], // prettier-ignore
    ["a condition of nobody knows which state", { "Leaks!C23": "shut, leaky", [`Runs!${runCell("Gate", PLANER)}`]: "open" }, 'C23 of the sheet Leaks, "shut, leaky", does not say whether its gate was open or shut: choose a name of the list there, or type open or shut'], // prettier-ignore
    ["another run of that name", { [`Runs!${runCell("Run", PLANER + 1)}`]: "Planer" }, "more than one run on the sheet Runs is called so"], // prettier-ignore
    ["a leak that is always there", { [`Runs!${always}`]: 0.5 }, `${always} of the sheet Runs has a leak that is always there, and a reading is of all together: clear that cell first`], // prettier-ignore
  ])("says why it cannot be taken: %s", (_, changes, why) => {
    expect(whyOf("planer", changes)).toBe(why);
  });

  test("is not written over a formula", () => {
    const at = runCell("Leak shut", PLANER);
    const sheets = book.workbook.sheets.map(
      (sheet) =>
      sheet.name === "Runs" ? { ...sheet, cells: [...sheet.cells.filter((cell) => cell.at !== at), { at, formula: "=1+1" }] } : sheet, // prettier-ignore
    );
    expect(listed({ ...book, workbook: { ...book.workbook, sheets } })[0]).toEqual({
      run: "planer",
      why: `${at} of the sheet Runs holds a formula: change that cell yourself`,
    });
  });

  test("is one cell, and nothing once the log or the run is no longer as it was offered", () => {
    const [offered, , , noRun] = listed(book) as [ReadLeak, ReadLeak, ReadLeak, ReadLeak];
    const at = runCell("Leak shut", PLANER);
    const written = leakToWrite(book, offered);
    const held = book.shown.get("Runs")!.get(at)!.value;
    expect(written).toEqual({
      block: { sheet: "Runs", at, rows: [[0.08121]] },
      still: [
        { sheet: "Runs", at, rows: [[held]] },
        { sheet: "Runs", at: runCell("Run", PLANER), rows: [["planer"]] },
      ],
    });
    for (const changes of [{ [`Runs!${at}`]: 0.3 }, { "Leaks!H43": 0.7 }])
      expect(leakToWrite(showing(changes), offered)).toEqual({
        why: "The log or the run planer has changed meanwhile, so nothing was written: read the log again.",
      });
    expect(leakToWrite(book, noRun)).toEqual({
      why: "Nothing was written: no run on the sheet Runs is called so.",
    });
  });

  test("says why there is none at all", () => {
    expect(leaksRead({ workbook: { ...book.workbook, sheets: [] }, shown: new Map() })).toEqual({
      why: "There is no sheet Leaks beside a sheet Runs in this workbook: add it above first.",
    });
    expect(leaksRead(showing({ "Leaks!A22": "moved" }))).toEqual({
      why: expect.stringMatching(/^Rows or columns of the sheet Leaks were moved/),
    });
    const rows = [23, 24, 25, 26, 27].map((row) => [`Leaks!A${row}`, ""] as const);
    expect(leaksRead(showing(Object.fromEntries(rows)))).toEqual({ why: "The log of the sheet Leaks is empty." });
  });
});
