import { sameName } from "../../../src/taskpane/check/runs";
import { fanRows, treeRows } from "../../../src/taskpane/check/picture/pictureTables";
import { type Ducts, ductsOf, type Picture, pictureOf } from "../../../src/taskpane/check/picture/pictureOf";
import { runWords } from "../../../src/taskpane/check/picture/DuctTree";
import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { fanpressure } from "../../../src/functions/fan/fanpressure";
import { solve } from "../../../src/functions/systems/solve";
import type { Calculate } from "../../../src/taskpane/functions/askWorker";
import { seenOf, solveHeader, type SheetOfTest } from "../../support/books";
import { exampleCurve, exampleRuns } from "../../../src/functions/exampleTables";

const functions: Record<string, (...args: never[]) => unknown> = {
  BUDGET: budget,
  SOLVE: solve,
  FANPRESSURE: fanpressure,
};
const calculate: Calculate = async ({ id, args }) => {
  try {
    return { rows: functions[id]!(...(args as never[])) as number[][] };
  } catch (error) {
    return { error: "#VALUE!", message: (error as Error).message };
  }
};
const curve = { rows: [["Airflow (cfm)", "Fan static pressure (in.w.g.)"], ...exampleCurve.slice(1)] };
const draw = async (sheets: Record<string, SheetOfTest>) => {
  const picture = await pictureOf(seenOf(sheets), calculate);
  if (typeof picture === "string") throw new Error(picture);
  return picture;
};

// The ducts of the examples, worked by hand: they take 1.5085e-6 Q² and meet 8 - 0.004 Q at 1331.5 cfm and 2.674 in.w.g.
describe("a fan and ducts whose numbers were worked by hand", () => {
  let picture: Picture;
  beforeAll(async () => {
    picture = await draw({ Runs: { rows: exampleRuns }, Fan: curve });
  });

  test("meet where they should", () => {
    expect(Math.abs(picture.fan!.works.x - 1331.5)).toBeLessThan(1);
    expect(Math.abs(picture.fan!.works.y - 2.674)).toBeLessThan(0.005);
  });

  test("the ducts' line is their square law, and passes through that point", () => {
    expect(picture.fan!.ducts.length).toBeGreaterThan(4);
    for (const { x, y } of picture.fan!.ducts) expect(Math.abs(y / (1.5085e-6 * x * x) - 1)).toBeLessThan(2e-3);
  });

  test("the fan's line runs from one end of its curve to the other", () => {
    expect(picture.fan!.curve[0]).toEqual({ x: 0, y: 8 });
    expect(picture.fan!.curve.at(-1)!.x).toBe(2000);
    for (const { x, y } of picture.fan!.curve) expect(y).toBeCloseTo(8 - 0.004 * x, 6);
  });

  test("the tree has the main before its branches, with velocities", () => {
    expect(picture.runs.map(({ name, depth, joins }) => [name, depth, joins])).toEqual([
      ["main", 0, "fan"],
      ["saw", 1, "main"],
      ["sander", 1, "main"],
    ]);
    expect(runWords({ ...picture.runs[0]!, airflow: 800, velocity: 4074.4 }, "IP")).toBe("6 in, 800 cfm, 4,074 fpm");
  });

  test("both have their numbers as tables", () => {
    expect(fanRows(picture.fan!, "IP")[0]).toEqual(["What", "Airflow (cfm)", "Pressure (in.w.g.)"]);
    expect(fanRows(picture.fan!, "IP")[1]![0]).toBe("works here");
    expect(treeRows(picture.runs, "IP").map(([name]) => name)).toEqual(["Run", "main", "saw", "sander"]);
  });
});

// 1331.5 cfm in 14 in are 1246 fpm, below the 3937 fpm of wood dust (as in systemOf.test.ts)
test("a run too slow for its dust is drawn so, but not with a device in it, since TOGETHER takes that air to be clean", async () => {
  const settlesWith = async (device: readonly (string | number)[]) => {
    const rows = exampleRuns.map((row, at) => [
      ...row.map((cell) => (row[0] === "main" && cell === 6 ? 14 : cell)),
      ...(at === 0 ? ["Device loss", "Device airflow"] : row[0] === "main" ? device : ["", ""]),
    ]);
    const { runs } = await draw({ Runs: { rows }, Fan: curve });
    return runs.filter(({ settles }) => settles).map(({ name }) => name);
  };
  expect(await settlesWith(["", ""])).toEqual(["main"]);
  expect(await settlesWith([0.5, 800])).toEqual([]);
});

test("gates stand as the book's own answer has them, and a shut run is said to be shut", async () => {
  const answer = [
    solveHeader,
    ["saw", 955, 0, 0, 0, 0, "open", ""],
    ["sander", 0, 0, 0, 0, 0, "shut", ""],
    ["Fan", 955, "", 4, 0, "", "", ""],
  ];
  const picture = await draw({ Runs: { rows: exampleRuns }, Fan: curve, Flow: { rows: answer } });
  expect(Math.abs(picture.fan!.works.x - 955.4)).toBeLessThan(1); // worked by hand, as in the test of the examples
  expect(picture.runs.find(({ name }) => sameName(name, "sander"))!.shut).toBe(true);
});

// The sheet Flow has its own gates typed to the left of the answer, under a header of the same name, each with its run.
test("gates typed beside the answer are not taken for its own", async () => {
  const answer = [
    ["Gate", ...solveHeader],
    ["", "saw", 955, 0, 0, 0, 0, "open", ""],
    ["shut sander", "sander", 0, 0, 0, 0, 0, "shut", ""],
    ["", "Fan", 955, "", 4, 0, "", "", ""],
  ];
  const sheets = { Runs: { rows: exampleRuns }, Fan: curve, "My flow": { rows: answer } };
  const ducts = await ductsOf(seenOf(sheets), calculate);
  expect(ducts).toMatchObject({ gatesOf: "My flow" });
  expect(Math.abs((ducts as Ducts).works!.x - 955.4)).toBeLessThan(1); // as above
});

test("gates of another budget's answer are passed over", async () => {
  const answer = [solveHeader, ["saw", 955, 0, 0, 0, 0, "open", ""], ["lathe", 0, 0, 0, 0, 0, "shut", ""], ["Fan", 955, "", 4, 0, "", "", ""]]; // prettier-ignore
  const ducts = await ductsOf(seenOf({ Runs: { rows: exampleRuns }, Fan: curve, Flow: { rows: answer } }), calculate);
  expect(ducts).toMatchObject({ gatesOf: null });
  expect(Math.abs((ducts as Ducts).works!.x - 1331.5)).toBeLessThan(1);
});

test("scenarios are those that the sheet shows", async () => {
  const scenarios = [
    ["Scenario", "Fan airflow (cfm)", "Fan pressure (in.w.g.)"],
    ["saw", 955, 4.2],
    ["none", "", ""],
  ];
  const picture = await draw({ Runs: { rows: exampleRuns }, Fan: curve, Flow: { rows: scenarios } });
  expect(picture.fan!.scenarios).toEqual([{ name: "saw", point: { x: 955, y: 4.2 } }]);
});

test("without a curve the velocities are those that the hoods ask for", async () => {
  const picture = await draw({ Runs: { rows: exampleRuns } });
  expect(picture.fan).toBeNull();
  expect(Math.abs(picture.runs[0]!.velocity! - 4074.4)).toBeLessThan(0.1); // 800 / 0.19635
});

test("what cannot be drawn is said in a sentence", async () => {
  expect(await pictureOf(seenOf({}), calculate)).toMatch(/no table of runs/);
  const loop = exampleRuns.map((row) => (row[0] === "main" ? ["main", "saw", ...row.slice(2)] : row));
  expect(await pictureOf(seenOf({ Runs: { rows: loop } }), calculate)).toMatch(/^No run ends at the fan/);
});

describe("a book whose own call says which fan, and in what air", () => {
  const old = { rows: curve.rows.map((row, at) => (at === 0 ? row : [Number(row[0]) / 2, Number(row[1]) / 4])) };
  const called = (formula: string, more: Record<string, SheetOfTest> = {}) =>
    draw({ ...more, Runs: { rows: exampleRuns }, Fan: curve, Flow: { rows: [["x"]], formulas: { A1: formula } } });

  // The fan of the sheet Fan, by hand as above: 1331.5 cfm. The old one at half the speed would move half of that.
  test.each([
    "=DUCT.SOLVE(Runs!A1:Z9,Fan!A1:B9)",
    "=DUCT.SOLVE(Runs!$A:$Z,Fan!$A:$B)",
    "=DUCT.SOLVE(Runs!A1:Z9,Fan!A2:B9)",
  ])("the fan is that of the call, whatever curve stands before it: %s", async (formula) => {
    const { works, curve: line } = (await called(formula, { Old: old })).fan!;
    expect(Math.abs(works.x - 1331.5)).toBeLessThan(1);
    expect(line.at(-1)!.x).toBe(2000); // the curve that is drawn is the same fan's
  });

  test.each([1, 2])(
    "a curve with a wrong point in its row %d is refused, and no fan is said to be missing",
    async (wrong) => {
      const rows = curve.rows.map((row, at) => (at === wrong ? [row[0]!, '6"'] : row));
      const flow = { rows: [["x"]], formulas: { A1: "=DUCT.SOLVE(Runs!A1:Z9,Fan!A1:B9)" } };
      const picture = await pictureOf(seenOf({ Runs: { rows: exampleRuns }, Fan: { rows }, Flow: flow }), calculate);
      expect(picture).toMatch(
        /^The fan and the ducts have no answer: pressure in row \d of the curve must be a number/,
      );
    },
  );

  test.each([0, 1])("where it has %d points yet, the velocities are those that the hoods ask for", async (points) => {
    const fan = { rows: curve.rows.slice(0, 1 + points) };
    const flow = { rows: [["x"]], formulas: { A1: "=DUCT.SOLVE(Runs!A1:Z9,Fan!A1:B9)" } };
    expect((await draw({ Runs: { rows: exampleRuns }, Fan: fan, Old: old, Flow: flow })).fan).toBeNull();
  });

  test("of two calls it is the one that takes this table of runs", async () => {
    const trial = { rows: [["x"]], formulas: { A1: "=DUCT.SOLVE(Elsewhere!A1:D9,Old!A1:B9)" } };
    const { works } = (await called("=DUCT.SOLVE(Runs!A1:Z9,Fan!A1:B9)", { Old: old, Trial: trial })).fan!;
    expect(Math.abs(works.x - 1331.5)).toBeLessThan(1);
  });

  // In air of half the density the fan makes, and the ducts take, half the pressure at any airflow: they meet at the same one.
  test.each([
    ["=DUCT.SOLVE(Runs!A1:Z9,Fan!A1:B9,,0.0375)", 0.5],
    ["=DUCT.SOLVE(Runs!A1:Z9,Fan!A1:B9,,Air!B1)", 0.5],
    ["=DUCT.SOLVE(Runs!A1:Z9,Fan!A1:B9)", 1],
  ])("the air is that of the call: %s", async (formula, share) => {
    const { works, curve: line } = (await called(formula, { Air: { rows: [["thin", 0.0375]] } })).fan!;
    expect(Math.abs(works.x / 1331.5 - 1)).toBeLessThan(0.01);
    expect(Math.abs(works.y / (2.674 * share) - 1)).toBeLessThan(0.02);
    expect(line[0]!.y).toBeCloseTo(8 * share, 3);
  });

  test.each(["DUCT.DENSITY(70,5000)", "1*Air!B1", "Air!B1:B2"])(
    "air that is worked out within the call, as %s, is refused: none is taken in its place",
    async (air) => {
      const sheets = { Start: { rows: [[0.0375]] }, Air: { rows: [["thin", 0.0375]] }, Runs: { rows: exampleRuns }, Fan: curve, Flow: { rows: [["x"]], formulas: { A1: `=DUCT.SOLVE(Runs!A1:Z9,Fan!A1:B9,,${air})` } } }; // prettier-ignore
      const picture = await pictureOf(seenOf(sheets, [{ name: "density", sheet: "Start", at: "A1" }]), calculate);
      expect(picture).toMatch(/density.*; got "worked out within a formula, in no cell"/);
    },
  );

  test("where the call names no air it is standard air, though the book has a cell called density", async () => {
    const sheets = { Start: { rows: [[0.0375]] }, Runs: { rows: exampleRuns }, Fan: curve, Flow: { rows: [["x"]], formulas: { A1: "=DUCT.SOLVE(Runs!A1:Z9,Fan!A1:B9)" } } }; // prettier-ignore
    const picture = await pictureOf(seenOf(sheets, [{ name: "density", sheet: "Start", at: "A1" }]), calculate);
    expect(Math.abs((picture as Picture).fan!.works.y - 2.674)).toBeLessThan(0.005);
  });
});
