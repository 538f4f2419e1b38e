import { version } from "../../../package.json";
import "../../support/customFunctions";
import { exampleCurve, exampleRuns } from "../../../src/functions/exampleTables";
import { gains } from "../../../src/functions/systems/gains";
import { solve } from "../../../src/functions/systems/solve";
import { together } from "../../../src/functions/systems/together";
import type { Calculate } from "../../../src/taskpane/functions/askWorker";
import { systemOf } from "../../../src/taskpane/start/systemOf";
import { seenOf } from "../../support/books";

const functions: Record<string, (...args: never[]) => unknown> = { SOLVE: solve, TOGETHER: together, GAINS: gains };
const calculate: Calculate = async ({ id, args }) => {
  try {
    return { rows: functions[id]!(...(args as never[])) as number[][] };
  } catch (error) {
    return { error: "#VALUE!", message: (error as Error).message };
  }
};
const fan = { rows: [["Airflow (cfm)", "Fan static pressure (in.w.g.)"], ...exampleCurve.slice(1)] };
const noGates = exampleRuns.map((row) => row.slice(0, -1));
const tried = { rows: [["Wrong"]] };

describe("an owner's system at a glance", () => {
  test("has a line for each machine, as SOLVE finds it with that gate alone open, and what GAINS puts first", async () => {
    const system = (await systemOf(seenOf({ Runs: { rows: exampleRuns }, Fan: fan, Try: tried }), calculate))!;
    expect(typeof system.ducts).toBe("object");
    if (typeof system.alone === "string") throw new Error(system.alone);
    expect(system.alone.map(({ machine, wants }) => [machine, wants])).toEqual([
      ["saw", 400],
      ["sander", 400],
    ]);
    for (const { machine, gets, velocity, advice } of system.alone) {
      const rows = solve(exampleRuns as never, exampleCurve as never, [[machine]] as never) as (string | number)[][];
      const own = rows.find(([name]) => name === machine)!;
      expect(gets).toBeCloseTo(Number(own[1]) - Number(own[4]), 9);
      expect(velocity).toBeCloseTo(Number(own[2]), 9);
      const [, first] = gains(
        ...([exampleRuns, exampleCurve, [[machine]], [[machine]], null, [["IP"]], [["work"]]] as never[] as [never, never, never]), // prettier-ignore
      ) as (string | number)[][];
      const change = String(first![1]);
      expect(advice.toLowerCase()).toContain(change.startsWith("nothing to mend") ? "nothing: it works" : change);
    }
  });

  test("is led by word of another version that computed the book's cells, wherever ABOUT stands", async () => {
    const bookBy = (by: string) => ({
      Runs: { rows: exampleRuns },
      Fan: fan,
      About: { rows: [["Duct Ledger", "version", by]], formulas: { A1: "=DUCT.ABOUT()" } },
    });
    const toldOf = async (by: string) =>
      (await systemOf(seenOf(bookBy(by)), calculate))!.next.map(({ finding }) => finding.what);
    expect(await toldOf("1.0.0")).toEqual([`C1 says that version 1.0.0 computed it; this is ${version}.`]);
    expect(await toldOf(version)).toEqual([]);
  });

  // Two wishes of 400 cfm at a fan that moves 1331.5 cfm through both (worked by hand in picture.test.ts): with a main of 6 in that
  // is 6781 fpm, and 400 cfm or more in a branch of 4 in 4584 fpm or more, above the 3937 fpm of wood dust. In a main of 14 in it is
  // 1331.5 / 1.069 ft² = 1246 fpm, if the wider main does not more than triple what the fan moves, of 2000 cfm at most.
  test("says which machines can run together, as TOGETHER has it", async () => {
    const withMain = (diameter: number) =>
      exampleRuns.map((row) => (row[0] === "main" ? row.map((cell) => (cell === 6 ? diameter : cell)) : row));
    const saidOf = async (rows: typeof exampleRuns) =>
      (await systemOf(seenOf({ Runs: { rows }, Fan: fan }), calculate))!.together;
    expect(await saidOf(exampleRuns)).toBe("Can run together: saw + sander.");
    expect(await saidOf(withMain(14) as typeof exampleRuns)).toMatch(/^No two of them can run together: /);
  });

  test("refuses a wrong point of the curve that the book's own functions take, below two good ones, too", async () => {
    const [first, second, ...rest] = exampleCurve.slice(1);
    const rows = [["Airflow (cfm)", "Fan static pressure (in.w.g.)"], first!, second!, ["12O0", 5], ...rest];
    const flow = { rows: [["Run"]], formulas: { A1: `=IF(B2=1,1,DUCT.SOLVE(Runs!A1:J4,Fan!$A$1:$B$${rows.length}))` } };
    const seen = seenOf({ Runs: { rows: exampleRuns }, Fan: { rows }, Flow: flow });
    const { ducts } = (await systemOf(seen, calculate))!;
    expect(ducts).toMatch(/curve.*12O0/);
  });

  test.each([
    [{ error: "#VALUE!" } as const, /density.*#VALUE!/],
    ["warm", /density.*warm/],
  ])("refuses %p for the air's density, as the sheets do", async (density, why) => {
    const sheets = { Runs: { rows: exampleRuns }, Fan: fan, Start: { rows: [[density]] } };
    const { ducts, alone } = (await systemOf(
      seenOf(sheets, [{ name: "density", sheet: "Start", at: "A1" }]),
      calculate,
    ))!;
    expect(ducts).toMatch(why);
    expect(alone).toMatch(why);
  });

  test("sends first to where the air's density fails, before the functions that it is handed to", async () => {
    const error = { error: "#VALUE!", message: 'temperature must be a number (°F); got "warm"' } as const;
    const start = { rows: [[error]], formulas: { A1: "=DUCT.DENSITY(B1)" } };
    const handed = { error: "#VALUE!", message: "density must be a number (lb/ft³); got the error #VALUE!" } as const;
    const budget = { rows: [[handed]], formulas: { A1: "=DUCT.BUDGET(Runs!A1:J4,density)" } };
    const seen = seenOf({ Start: start, Runs: { rows: exampleRuns }, Fan: fan, Budget: budget, Try: start }, [
      { name: "density", sheet: "Start", at: "A1" },
    ]);
    const { next } = (await systemOf(seen, calculate))!;
    expect(next[0]!.finding).toMatchObject({ sheet: "Start", at: "A1" });
    expect(next.map(({ finding }) => finding.sheet)).not.toContain("Try");
  });

  test("says that it goes by the ducts as typed where the sheets go by the calibrated ones", async () => {
    const asTyped = async (choice: string) => {
      const flow = { rows: [["Flow"], ["", choice], ["Run"]], formulas: { A3: "=DUCT.SOLVE(Runs!A1:J4,Fan!A1:B9)" } };
      return (await systemOf(seenOf({ Runs: { rows: exampleRuns }, Fan: fan, Flow: flow }), calculate))!.asTyped;
    };
    expect([await asTyped("as calibrated"), await asTyped("as entered")]).toEqual([true, false]);
  });

  test("says where a table of runs cannot be read, which no other part of it shows", async () => {
    const message = 'runs must be a table whose first row has the headers Run, To and Diameter (Diameter is missing); got "Run"';
    const rows = exampleRuns.map((row, index) => (index === 0 ? row.map((head) => String(head).replace("Diameter", "Width")) : row));
    const budget = { rows: [[{ error: "#VALUE!", message } as const]], formulas: { A1: "=DUCT.BUDGET(Runs!A1:J4)" } };
    const other = { rows: [[{ error: "#VALUE!", message: "area" } as const]], formulas: { A1: "=DUCT.AREA(B1)" } };
    const seen = (await systemOf(seenOf({ Runs: { rows }, Try: other, Budget: budget }), calculate))!;
    expect([seen.ducts, seen.alone]).toEqual(["No table of runs can be read in this book.", ""]);
    expect(seen.next).toEqual([{ finding: expect.objectContaining({ sheet: "Budget", at: "A1", what: `A1: ${message}.` }) as unknown, more: 0 }]);
    expect(await systemOf(seenOf({ Runs: { rows }, Try: other }), calculate)).toBeNull();
  }); // prettier-ignore

  test("says what it waits for: runs, a curve, gates", async () => {
    expect(await systemOf(seenOf({}), calculate)).toBeNull();
    expect((await systemOf(seenOf({ Runs: { rows: exampleRuns } }), calculate))!.alone).toMatch(/two points or more/);
    const alone = async (rows: typeof exampleRuns) =>
      (await systemOf(seenOf({ Runs: { rows }, Fan: fan }), calculate))!.alone;
    expect(await alone(noGates)).toMatch(/^No run has a gate: type open or shut under Gate/);
    const clsd = exampleRuns.map((row, at) => [...row.slice(0, -1), at === 0 ? "Gate" : at === 1 ? "clsd" : ""]);
    expect(await alone(clsd)).toMatch(/^What each machine gets alone has no answer: Gate of run "saw" .*got "clsd"\.$/);
  });
});
