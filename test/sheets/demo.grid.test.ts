/** What the demo shows, sheet by sheet, to the digits that it shows, and what its first changes do: the walk that its own words propose. */
import { budgetBook } from "../../src/sheets/book/budgetBook";
import { THROTTLES, THROTTLES_LAST } from "../../src/sheets/book/fan/fanLayout";
import { demoBook } from "../../src/sheets/demo";
import { singleCellsSheet } from "../../src/sheets/demo/singleCellsSheet";
import { sheetKeys } from "../../src/sheets/sheetKeys";
import { callsOf } from "../support/levelsOfCalls";
import { gridOfBook } from "../support/gridOfBook";
import { numberOf } from "../support/numberOf";
import { takenBack } from "../support/takenBack";

const demo = demoBook();
const grid = gridOfBook(demo);

const change = takenBack(grid);

const readOne = (sheet: string, at: string): string => grid.texts(sheet, at)[0]![0]!;

/** The rows of the budget's answer by the run's name, each by its column's letter. */
const budget = (): Record<string, Record<string, string>> =>
  Object.fromEntries(
    grid
      .texts("Budget", "B9:N18")
      .map((row) => [row[0]!, Object.fromEntries(row.map((cell, index) => ["BCDEFGHIJKLMN"[index]!, cell]))]),
  );

test("it says on its first sheet that it is invented and what to do, and on the next what to try", () => {
  expect(readOne("Start", "A3")).toMatch(/^Invented for trying out/);
  expect(grid.texts("Start", "A14:A18").flat()).toEqual(["1. Start", "2. Runs", "3. Fan", "4. Budget", "5. Flow"]);
  expect(readOne("Runs", "C2")).toMatch(/^Try it: the drum sander asks for 400 cfm; type 600 in D11/);
});

// Excel asks for a function's answer once all that it reads has come, so each level waits for the one before. These may only fall.
// DENSITY stays a call: it refuses in words, Check knows the cells that it takes, and only a change of temperature or altitude asks it again.
test("its budget calls our functions 46 times in 26 cells, of which at most three wait for one another", () => {
  const budgetAlone = { ...demo, sheets: demo.sheets.filter(({ name }) => name !== singleCellsSheet.name) };
  const { calls, cells, chain } = callsOf(grid.calculated(budgetAlone));
  expect({ calls, cells: cells.length, chain }).toEqual({
    calls: 46,
    cells: 26,
    chain: ["Start!B9", "Fan!K38", "Flow!B10"], // DENSITY, FANCURVE, SOLVE
  });
});

test("without readings of its own fan at most two wait", () => {
  change(() => grid.clear("Fan", `A${THROTTLES + 1}:I${THROTTLES_LAST}`));
  const { chain } = callsOf(grid.calculated(demo));
  expect([chain.length, chain[0]]).toEqual([2, "Start!B9"]); // DENSITY, and whatever takes it
});

test.each(["IP", "SI"] as const)("in an empty budget in %s at most two wait for one another", (units) => {
  const empty = budgetBook({ units, sheets: sheetKeys, contents: "empty" }, { sheets: [], names: [] });
  const { calls, cells, chain } = callsOf(gridOfBook(empty).calculated(empty));
  expect({ calls, cells: cells.length, waits: chain.length }).toEqual({ calls: 46, cells: 26, waits: 2 });
});

test("every cell of its sheets has an answer, but for the one that shows a wrong value", () => {
  expect(demo.sheets.length).toBe(15);
  const troubles = demo.sheets.flatMap(({ name }) =>
    grid
      .texts(name, name === "Flow" ? "A1:Z120" : "A1:Z60")
      .flat()
      .filter((cell) => /^(#|see [A-Z])/.test(cell))
      .map((cell) => `${name}: ${cell}`),
  );
  expect(troubles).toEqual(["Single cells: #VALUE!"]);
});

test("a drum sander that draws 400 cfm through 5 in settles; 600 cfm does not", () => {
  // By hand: 5 in is pi/4 (5/12)^2 = 0.136354 ft2. 400/0.136354 = 2933.5 fpm, under 3937; 600/0.136354 = 4400.3 fpm, over.
  change(() => grid.clear("Runs", "S11")); // without its gate's small leak
  expect(readOne("Runs", "A11")).toBe("settles: 2934 fpm; 4 in would carry it (4584 fpm)");
  expect(readOne("Runs", "F7")).toBe("1");
  change(() => grid.type("Runs", "D11", "600"));
  expect(readOne("Runs", "A11")).toBe("ok: 4400 fpm");
  expect(readOne("Runs", "F7")).toBe("0");
});

test("without leaks the fan's airflow is what the hoods ask for, follows a change to the last cfm, and adds up at each junction", () => {
  change(() => grid.clear("Runs", "R9:T48"));
  const pressure = numberOf(readOne("Runs", "F6"));
  // 400 + 550 + 400 + 400 at the four hoods
  expect(readOne("Runs", "F5")).toBe("1,750");
  change(() => grid.type("Runs", "D11", "525"));
  expect(readOne("Runs", "F5")).toBe("1,875");
  expect(numberOf(readOne("Runs", "F6"))).toBeGreaterThan(pressure);

  const rows = budget();
  expect(grid.texts("Budget", "F4:F6").flat()).toEqual(["1,875", "0", "1,875"]);
  const airflow = (run: string): number => numberOf(rows[run]!.C);
  expect(airflow("north main")).toBe(airflow("band saw") + airflow("planer"));
  expect(airflow("south main")).toBe(airflow("drum sander") + airflow("router table"));
  expect(airflow("trunk")).toBe(airflow("north main") + airflow("south main"));
  for (const run of ["separator", "filter", "Fan"]) expect(airflow(run)).toBe(airflow("trunk"));
});

test("the totals are read from the budget's last row, and its flags from its notes", () => {
  const rows = budget();
  const [left, right] = [grid.texts("Budget", "F4:F7"), grid.texts("Budget", "K4:K7")];
  expect(left[2]![0]).toBe(rows.Fan!.C);
  expect(right[0]![0]).toBe(rows.Fan!.K);
  // a gauge reads the velocity pressure on top of the suction that is of total pressure
  const gauges = Object.values(rows).flatMap(({ E: velocityPressure, J: total }) =>
    velocityPressure === "" || total === "" ? [] : [numberOf(velocityPressure) + numberOf(total)],
  );
  expect(Math.abs(numberOf(right[1]![0]) - Math.max(...gauges))).toBeLessThanOrEqual(0.015001);
  // what the fan is asked for is the suction before it and the losses after it; each figure is rounded to 0.01
  expect(Math.abs(numberOf(rows.Fan!.K) - numberOf(rows.Fan!.J) - numberOf(rows.filter!.I))).toBeLessThanOrEqual(
    0.015001,
  );
  const resized = Object.values(rows).filter(({ N: note }) => note!.includes("resize"));
  expect(right[3]![0]).toBe(String(resized.length));
  expect(resized.length).toBeGreaterThan(0);
  const flags = ["band saw", "planer", "drum sander", "router table", "north main", "south main"].map((run) =>
    ["settles", "resize"].filter((word) => rows[run]!.N!.includes(word)).join(", "),
  );
  expect(flags).toContain("settles, resize");
  expect(grid.texts("Budget", "A9:A14").flat()).toEqual(flags);
});

test("a shut gate is said beside its run and lowers what the fan is asked for", () => {
  const before = numberOf(readOne("Runs", "F5"));
  change(() => grid.type("Runs", "J10", "shut"));
  expect(readOne("Runs", "A10")).toBe("gate shut");
  expect(numberOf(readOne("Runs", "F5"))).toBeLessThan(before - 500); // the planer's 550 less its leaks
  // by hand: 400 cfm in 6 in (0.19635 ft2) are 2037 fpm, and two gates' leaks add a little, so the north main settles now
  expect(readOne("Runs", "A13")).toMatch(/^settles: 2[0-2]\d\d fpm; /);
  expect(readOne("Budget", "F4")).toBe("1,200"); // 1750 less the planer's 550
});

test("a wrong row is told beside it, no total stands without it, and undo brings all back", () => {
  const sound = grid.texts("Runs", "A9:A17");
  grid.type("Runs", "C12", "nowhere");
  expect(readOne("Runs", "A12")).toMatch(/; waiting for nowhere, which no row has/);
  expect(readOne("Runs", "A9")).toBe(sound[0]![0]);
  expect(readOne("Budget", "C3")).toMatch(/^Look: Runs row 12, router table: waiting for nowhere/);
  expect(readOne("Budget", "C15")).toBe("#N/A");
  // no total stands there with a 0 that means "unknown"
  expect([...grid.texts("Budget", "F4:F7").flat(), ...grid.texts("Budget", "K4:K7").flat()]).toEqual(
    Array.from({ length: 8 }, () => "see C3"),
  );
  grid.undo();
  expect(grid.texts("Runs", "A9:A17")).toEqual(sound);
  expect(readOne("Runs", "C12")).toBe("south main");
});
