import { cellAddress, placeOf } from "../../../src/sheets/address";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { answerLetters, FLOW_ANSWER } from "../../../src/sheets/book/parts/answerReferences";
import { readRectangle, rectangleOf } from "../../../src/sheets/rectangle";
import type { Sheet, Workbook } from "../../../src/sheets/workbook";
import { type SheetKey, sheetKeys, usualNames } from "../../../src/sheets/sheetKeys";
import type { Taken } from "../../../src/sheets/book/parts/taken";

const NOTHING: Taken = { sheets: [], names: [] };
const orders = (["IP", "SI"] as const).flatMap((units) =>
  (["example", "empty"] as const).map((contents) => ({ units, contents })),
);
const whole = orders.map(
  (order) => [`${order.units} ${order.contents}`, budgetBook({ ...order, sheets: sheetKeys }, NOTHING)] as const,
);

const formulas = (sheet: Sheet): string[] => sheet.cells.flatMap((cell) => ("formula" in cell ? [cell.formula] : []));
const withoutTexts = (code: string): string => code.replace(/"[^"]*"/g, '""');
/** Names of the sheets that a formula reads. */
const sheetsIn = (code: string): string[] =>
  [...withoutTexts(code).matchAll(/(?:'((?:[^']|'')+)'|([A-Za-z]+))!/g)].map(([, quoted, plain]) => quoted ?? plain!);
const namesOf = (book: Workbook): string[] => book.sheets.map(({ name }) => name);

const order = (sheets: readonly SheetKey[], taken: Taken, contents: "example" | "empty" = "empty"): Workbook =>
  budgetBook({ units: "IP", sheets, contents }, taken);

describe.each(whole)("the whole budget, %s", (_, book) => {
  test("has every sheet once, in the usual order", () => {
    expect(namesOf(book)).toEqual(sheetKeys.map((key) => usualNames[key]));
  });

  test("each cell stands once, and every address is one", () => {
    for (const sheet of book.sheets) {
      const addresses = sheet.cells.map(({ at }) => at);
      expect(new Set(addresses).size).toBe(addresses.length);
      expect(() => addresses.forEach(placeOf)).not.toThrow();
    }
  });

  test("under a table that has a last row stands that nothing typed below it is read", () => {
    for (const [key, at, style] of [
      ["fan", "A24", "input"],
      ["fan", "A51", "input"],
      ["flow", "B64", "input"],
      ["sizes", "A32", "input"],
      ["leaks", "A39", "input"],
      ["readings", "A73", "input"],
      ["measured", "B45", "input"],
      ["claims", "A35", "label"], // its facts are named
    ] as const) {
      const { cells } = book.sheets.find((sheet) => sheet.key === key)!;
      const { column, row } = placeOf(at);
      expect(cells.find((cell) => cell.at === cellAddress(column, row - 1))?.style).toBe(style);
      expect(cells.filter((cell) => cell.at === at)).toMatchObject([{ formula: expect.stringContaining('"The table ends here: what is typed below it is not read."') as unknown }]); // prettier-ignore
    }
  });

  test("on paper the name of a number comes back beside no other number", () => {
    for (const { name, print, cells } of book.sheets) {
      const next = print?.shared?.columns[0] ?? Infinity; // the first column of the second paper across
      const comesBack = print?.titleColumns?.last ?? 0;
      const named = cells.filter(({ at, style }) => style === "label" && placeOf(at).column <= comesBack);
      const rows = new Set(named.map(({ at }) => placeOf(at).row));
      const last = readRectangle(print?.area ?? "")?.right ?? Infinity;
      const isBeside = ({ column }: { column: number }): boolean => next <= column && column <= last;
      const beside = cells.filter(({ at, style }) => (style === "total" || style === "unit") && isBeside(placeOf(at)));
      expect([name, beside.map(({ at }) => at).filter((at) => rows.has(placeOf(at).row))]).toEqual([name, []]);
    }
  });

  test("what a heading tells is told in every cell to be filled under it, whole as Excel shows it", () => {
    const hints = book.sheets.flatMap(({ hints = [] }) => hints);
    expect(hints.filter(({ text }) => text.length > 255)).toEqual([]); // an input message takes 255, [MS-OI29500] 2.1.613
    const runs = book.sheets.find(({ key }) => key === "runs")!;
    expect(runs.hints).toHaveLength(
      runs.cells.filter(({ at, note }) => note !== undefined && /^[A-Z]+8$/.test(at)).length,
    );
    expect(runs.hints).toContainEqual({
      range: "E9:E48",
      text: "Inside diameter. A machine's port of another width is a run of its own, 0 long.",
    });
  });

  test("every formula reads only sheets that are there", () => {
    const read = new Set(book.sheets.flatMap(formulas).flatMap(sheetsIn));
    expect([...read].filter((name) => !namesOf(book).includes(name))).toEqual([]);
    expect(read.size).toBeGreaterThan(3);
  });

  // what one of the spreadsheets reads differently or not at all: table and spill references; -2^2, which is 4 in one and
  // -4 in another; functions that not all have, but TEXTJOIN where its error counts for a blank; TEXT, whose codes follow the country
  test.each([
    /^[^=]/,
    /\[|#/,
    /(^|[=(,*/+<>&-])-[A-Z0-9.$]+\^/,
    /LOG10|LET\(|LAMBDA\(|XLOOKUP|FILTER\(|AGGREGATE|(?<!IFERROR\()TEXTJOIN|MAXIFS|IFS\(|\bN\(|\bTEXT\(/,
  ])("no formula holds %s", (avoided) => {
    expect(book.sheets.flatMap(formulas).filter((code) => avoided.test(withoutTexts(code)))).toEqual([]);
  });

  test("brackets close, and no formula is longer than Excel takes", () => {
    const count = (code: string, bracket: string): number => withoutTexts(code).split(bracket).length;
    const codes = book.sheets.flatMap(formulas);
    expect(codes.filter((code) => count(code, "(") !== count(code, ")"))).toEqual([]);
    expect(codes.filter((code) => code.length > 8192)).toEqual([]);
  });

  test("no custom function stands in a flag, a list or a name", () => {
    for (const { flags, lists } of book.sheets)
      [...flags.map(({ containsText }) => containsText), ...lists.flatMap(({ choices }) => choices)].forEach((words) =>
        expect(words).not.toMatch(/DUCT\./),
      );
    expect(JSON.stringify(book.names)).not.toMatch(/DUCT\./);
  });

  test("every named cell is there", () => {
    expect(book.names.map(({ name }) => name)).toEqual(["units", "density", "dust", "transport"]);
    for (const { sheet, at } of book.names)
      expect(book.sheets.find(({ name }) => name === sheet)!.cells.some((cell) => cell.at === at)).toBe(true);
  });

  test("each whole-table formula is told the units", () => {
    const calls = book.sheets
      .flatMap(formulas)
      .filter((code) => /DUCT\.(BUDGET|SOLVE|SCENARIOS|GAINS|DENSITY)\(/.test(code));
    expect(calls.length).toBeGreaterThanOrEqual(6); // SOLVE twice: with its leaks and sealed
    calls.forEach((code) => expect(code).toMatch(/,units[,)]/));
  });

  test("is printed on the paper of its units", () => {
    const paper = book.sheets[0]!.cells.some((cell) => "value" in cell && cell.value === "SI") ? "A4" : "Letter";
    book.sheets.forEach(({ print }) => expect(print?.paper).toBe(paper));
  });

  test("of Flow one prints what flows, then its notes whole, then what sealing gives", () => {
    const { print, cells } = book.sheets.find(({ key }) => key === "flow")!;
    expect(print).toMatchObject({ landscape: false, area: expect.stringMatching(/^A1:V\d\d$/) });
    const [note, sealing] = print!.shared!.columns;
    const headings = cells.flatMap((cell) => ("value" in cell && String(cell.value).startsWith("What each open hood") ? [placeOf(cell.at).column] : [])); // prettier-ignore
    expect(placeOf(`${answerLetters(FLOW_ANSWER, "note")}1`).column).toBe(note);
    expect(headings).toHaveLength(1);
    expect(headings[0]! - note!).toBeGreaterThanOrEqual(7); // columns that a note may run over
    expect(sealing).toBeLessThanOrEqual(headings[0]!);
    expect(sealing! - note!).toBeGreaterThanOrEqual(7);
  });

  test("on paper no letter is smaller than seven points for ten, and no picture is parted", () => {
    for (const { print, charts = [] } of book.sheets) {
      if (print?.shared === undefined) continue;
      expect(print.shared.scale).toBeGreaterThanOrEqual(70);
      const area = readRectangle(print.area ?? "A1:XFD1048576")!;
      for (const { left, right, top, bottom } of charts.map(({ over }) => rectangleOf(over))) {
        if (left > area.right || top > area.bottom) continue; // not printed
        expect(print.shared.columns.filter((column) => left < column && column <= right)).toEqual([]);
        expect(print.shared.rows.filter((row) => top < row && row <= bottom)).toEqual([]);
      }
    }
  });
});

describe("an example", () => {
  test.each(orders)(
    "$units $contents: says that it is invented only where it is, and so for what to try",
    ({ units, contents }) => {
      const book = budgetBook({ units, contents, sheets: ["start", "runs", "flow", "summary"] }, NOTHING);
      const words = JSON.stringify(book);
      expect(/invented/i.test(words)).toBe(contents === "example");
      expect(words.includes("Try it")).toBe(contents === "example");
    },
  );
});

describe("an order of some sheets", () => {
  test("brings those that it reads", () => {
    expect(namesOf(order(["budget"], NOTHING))).toEqual(["Start", "Runs", "Budget"]);
    expect(namesOf(order(["flow"], NOTHING))).toEqual(["Start", "Runs", "Fan", "Budget", "Flow"]);
    expect(namesOf(order(["cautions"], NOTHING))).toEqual(["Cautions"]);
    expect(namesOf(order(["readings"], NOTHING))).toEqual(["Start", "Readings"]);
  });

  test("says on Budget who tells which values are from memory, and names the sheet Tables only where there is one", () => {
    const said = (keys: Parameters<typeof order>[0]): string =>
      order(keys, NOTHING)
        .sheets.find(({ name }) => name === "Budget")!
        .cells.flatMap((cell) =>
          "value" in cell && String(cell.value).includes("from memory") ? [String(cell.value)] : [],
        )
        .join();
    expect(said(["budget"])).toMatch(/the pane's Check names them\.$/);
    expect(said(["budget"])).not.toContain("Tables");
    expect(said(["budget", "tables"])).toContain("Tables marks them");
  });

  test("takes free names for sheets and cells, whatever their case, and every formula uses them", () => {
    const book = order(["budget"], { sheets: ["RUNS", "Runs 2", "Start"], names: ["Units", "units_2", "density"] });
    expect(namesOf(book)).toEqual(["Start 2", "Runs 3", "Budget"]);
    expect(book.names.map(({ name }) => name)).toEqual(["units_3", "density_2", "dust", "transport"]);
    expect(book.names.every(({ sheet }) => sheet === "Start 2")).toBe(true);
    const codes = book.sheets.flatMap(formulas);
    for (const name of codes.flatMap(sheetsIn)) expect(namesOf(book)).toContain(name);
    expect(codes.some((code) => code.includes("DUCT.BUDGET('Runs 3'!$B$8:$V$48,density_2,units_3)"))).toBe(true);
    for (const code of codes)
      expect(withoutTexts(code)).not.toMatch(/(?<![A-Za-z_0-9])(units|density)(?![A-Za-z_0-9])/);
  });

  test("a name never passes 31 characters, nor holds what a sheet's name may not", () => {
    const many = Array.from({ length: 120 }, (_, index) => (index === 0 ? "Cautions" : `Cautions ${index + 1}`));
    const [name] = namesOf(order(["cautions"], { sheets: many, names: [] }));
    expect(name).toBe("Cautions 121");
    expect(name).not.toMatch(/[[\]:*?/\\]|.{32}/);
  });

  const ours = { start: "Start", runs: "My ducts", budget: "Budget" };
  const there: Taken = {
    sheets: Object.values(ours),
    names: ["units", "density"],
    ours,
    ourNames: { units: "units", density: "density" },
  };

  test("uses the sheets that are ours already, and a cell without a name by its address", () => {
    const book = order(["flow"], there, "example");
    expect(namesOf(book)).toEqual(["Fan", "Flow"]);
    expect(book.names).toEqual([]);
    const codes = book.sheets.flatMap(formulas);
    expect(
      codes.some((code) => code.includes("DUCT.SOLVE('My ducts'!$B$8:$V$48,Fan!$D$8:$E$23,$C$9,density,units)")),
    ).toBe(true);
    const readings = order(["readings"], { sheets: ["Start"], names: [], ours: { start: "Start" } });
    expect(readings.sheets.flatMap(formulas).some((code) => code.includes('Start!$B$6="SI"'))).toBe(true);
  });

  test("beside ducts that are there, an example is left out: it would speak of others", () => {
    expect(JSON.stringify(order(["flow"], there, "example"))).not.toMatch(/planer|Try it/);
  });

  test("a second table of runs comes with a second budget, since the first answers for the first", () => {
    expect(namesOf(order(["runs"], there))).toEqual(["Runs", "Budget 2"]);
  });

  test("speaks of no sheet that is not there", () => {
    const [start] = order(["budget"], NOTHING).sheets;
    const words = start!.cells.flatMap((cell) => ("value" in cell ? [String(cell.value)] : []));
    expect(words.some((text) => text.includes("Runs"))).toBe(true);
    for (const absent of ["Leaks", "Claims", "Summary", "sheet Cautions"])
      expect(words.filter((text) => text.includes(absent))).toEqual([]);
  });
});
