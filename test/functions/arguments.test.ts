/** Cells as hosts hand them over, and arguments as people type them, where no single function is the better place to ask. */
import "../support/customFunctions";
import { MOST_ANSWERS } from "../../src/functions/answer";
import { CellErrorValue, toMatrix } from "../../src/functions/cells";
import { density } from "../../src/functions/duct/density";
import { pitotvelocity } from "../../src/functions/measuring/pitotvelocity";
import { velocitypressure } from "../../src/functions/losses/velocitypressure";
import { area } from "../../src/functions/duct/area";
import { airflow } from "../../src/functions/duct/airflow";
import { tradesize } from "../../src/functions/duct/tradesize";
import { velocity } from "../../src/functions/duct/velocity";
import { gains } from "../../src/functions/systems/gains";
import { scenarios } from "../../src/functions/systems/scenarios";
import { solve } from "../../src/functions/systems/solve";
import { inHost } from "../../src/functions/inHost";
import { operatingpoint } from "../../src/functions/fan/operatingpoint";
import { seamleak } from "../../src/functions/leaks/seamleak";
import { fittingloss } from "../../src/functions/losses/fittingloss";
import { friction } from "../../src/functions/losses/friction";
import { hoodsuction } from "../../src/functions/hoods/hoodsuction";
import { losscoefficient } from "../../src/functions/losses/losscoefficient";
import { runloss } from "../../src/functions/losses/runloss";
import { airflowerror } from "../../src/functions/measuring/airflowerror";
import { difference } from "../../src/functions/measuring/difference";
import { fanlaw } from "../../src/functions/fan/fanlaw";
import { traverse } from "../../src/functions/measuring/traverse";
import { traversepoints } from "../../src/functions/measuring/traversepoints";
import { convertunit } from "../../src/functions/duct/convertunit";
import { refusal } from "../support/refusal";

type CellFunction = (...args: any[]) => any[][];
const call = (fn: CellFunction, ...args: unknown[]): any =>
  fn(...args.map((arg) => (arg === null ? arg : [[arg]])))[0]![0];
const said = (fn: CellFunction, ...args: unknown[]): string => refusal(() => call(fn, ...args)).message;
const SI = "SI";

describe("a cell as a host hands it over", () => {
  const error = (basicValue?: unknown) => ({ type: "Error", basicType: "Error", basicValue });
  test.each<[string, unknown, unknown]>([
    ["an error value", error("#DIV/0!"), new CellErrorValue("#DIV/0!")],
    ["an error value that does not say which", error(), new CellErrorValue("#VALUE!")],
    ["an error that was thrown", { code: "#N/A" }, new CellErrorValue("#N/A")],
    ["a number with a format", { type: "Double", basicValue: 4 }, 4],
    ["an entity whose basic value is no value", { type: "Entity", basicValue: { text: "x" } }, null],
    ["a blank text", " \t", null],
    ["nothing", undefined, null],
    ["a function", () => 4, null],
  ])("%s", (_, given, cell) => expect(toMatrix([[given]])).toEqual([[cell]]));

  test("a bare value, a bare row, and no cell at all", () => {
    expect(toMatrix(4)).toEqual([[4]]);
    expect(toMatrix([4, "x"])).toEqual([[4], ["x"]]);
    for (const none of [[], [[]], [[], []]]) expect(toMatrix(none)).toEqual([[null]]);
    expect(toMatrix([[1, 2, 3], [4], []])).toEqual([
      [1, 2, 3],
      [4, null, null],
      [null, null, null],
    ]);
  });
});

describe("numbers as text", () => {
  // A percent sign makes a hundredth; a length, a pressure or an airflow has no percent.
  test("a percentage is a share of 1, and nothing else", () => {
    for (const half of ["50%", " 50 % ", "0.5"]) expect(call(density, 70, 0, half)).toBe(call(density, 70, 0, 0.5));
    expect(said(area, "8%")).toBe('diameter must be a number (in); got "8%"');
    const curve = [[0, 10], [1000, 5]]; // prettier-ignore
    expect(fanlaw(curve, [["110%"]])).toEqual(fanlaw(curve, [[1.1]]));
    for (const typed of ["3%", "60%"]) {
      expect(said(airflowerror, 900, 6, typed)).toBe(`percent must be a number; got "${typed}"`);
      expect(refusal(() => difference([[1], [2]], [[3], [4]], [[typed]])).message).toBe(
        `percent must be a number; got "${typed}"`,
      );
    }
    expect(said(density, 70, 0, "50%%")).toBe('humidity must be a number; got "50%%"');
  });

  // 4 in across: pi/4 (4/12)^2 = 0.0872665 ft2; 12 in: 0.785398 ft2; 0.5 in: 0.00136354 ft2.
  test.each([
    ["4", 0.0872665],
    [" +4.0 ", 0.0872665],
    ["4.", 0.0872665],
    ["12", 0.785398],
    [".5", 0.00136354],
    ["0.05e1", 0.00136354],
    ["400E-2", 0.0872665],
    [".004e+03", 0.0872665],
    ["40e-01", 0.0872665],
    [".25e1 ", 0.0340885], // 2.5 in
  ])('"%s"', (text, square) => expect(call(area, text)).toBeCloseTo(square, 6));

  test.each(["4 in", "in 4", "4e", "e4", ".", "4..0", "x4", "4x", "=4", "1,5", "0x4", "4e+", "--4", "Infinity"])('"%s" is none', (text) => {
    expect(said(area, text)).toBe(`diameter must be a number (in); got "${text}"`);
  }); // prettier-ignore

  test.each([
    ["1.200", 1200, 1.2],
    [" 12.500 ", 12500, 12.5],
    ["+4.000", 4000, 4],
    ["-1.250", -1250, -1.25],
  ])('"%s" may be two numbers, and is none', (text, thousands, decimals) => {
    const may = `a number, not a text that may mean ${thousands} or ${decimals}; got "${text.trim()}"`;
    expect(said(area, text)).toBe(`diameter must be ${may}`);
    expect(refusal(() => traverse([[900], [text]])).message).toBe(`row 2, column 1 of readings must be ${may}`);
  });

  // 0.125 in: pi/4 (0.125/12)^2 = 8.52211e-5 ft2; 4.0000 and 4.00 in are 4 in; nobody parts thousands as in 1234.500.
  test.each([
    ["0.125", 8.52211e-5],
    ["4.0000", 0.0872665],
    ["4.00", 0.0872665],
  ])('"%s" can only be one', (text, square) => expect(call(area, text)).toBeCloseTo(square, 6));
});

describe("the functions of air, by hand", () => {
  // 4005 fpm = 20.3454 m/s: half of 1.2013848 x 413.935 = 248.65 Pa = 0.99924 in.w.g.; SI: 0.6 x 20^2 = 240 Pa in air of 1.2 kg/m3.
  test("velocity pressure and back", () => {
    expect(call(velocitypressure, 4005)).toBeCloseTo(0.99924, 4);
    expect(call(velocitypressure, 20, 1.2, SI)).toBeCloseTo(240, 9);
    expect(call(pitotvelocity, 0.99924)).toBeCloseTo(4005, 0);
    expect(call(pitotvelocity, 240, 1.2, SI)).toBeCloseTo(20, 9);
  });

  // Dry air at sea level: 101325 / (287.05 x T): 20 °C 1.2041 kg/m3, 0 °C 1.2923, 70 °F 0.07492 lb/ft3 (ISO 2533: R = 287.05287).
  // At 1000 m ISO 2533 has 89874.6 Pa: 1.0681 at 20 °C. Water in the air makes it lighter.
  test("density: a temperature of 0 is told in words, an altitude and humidity of 0 are left out", () => {
    expect(call(density, 20, null, null, SI)).toBeCloseTo(1.2041, 3);
    expect(call(density, "0°", 0, 0, SI)).toBeCloseTo(1.2923, 3);
    expect(call(density)).toBeCloseTo(0.07492, 4);
    expect(call(density, 20, 1000, 0, SI)).toBeCloseTo(1.0681, 3);
    expect(call(density, 20, 0, 1, SI)).toBeLessThan(call(density, 20, 0, 0, SI));
  });

  test("what is out of range is said in the user's units", () => {
    expect(said(velocitypressure, -1)).toBe("velocity must be at least 0 fpm; got -1");
    expect(said(pitotvelocity, -1, null, SI)).toBe("pressure must be at least 0 Pa; got -1");
    expect(said(density, 500)).toMatch(/^temperature must be from -58 to 212 °F; got 500$/);
    expect(said(density, 20, 99_999, 0, SI)).toMatch(/^altitude must be from -500 to 11000 m; got 99999$/);
    expect(said(density, 70, 0, 2)).toBe("humidity must be from 0 to 1; got 2");
  });
});

describe("units in refusals", () => {
  test.each<[string, () => string, string]>([
    ["a velocity", () => said(airflow, -1, 4), "velocity must be at least 0 fpm; got -1"],
    ["a length", () => said(runloss, 350, 100, -1, null, null, SI), "length must be from 0 to 3048 m; got -1"],
    ["a count", () => said(fittingloss, 350, 4, 0.5, -1), "count must be at least 0; got -1"],
    ["a kind of unit", () => said(convertunit, 1, "cfm", 5), "to must be a name; got 5"],
  ])("of %s", (_, message, expected) => expect(message()).toBe(expected));
});

describe("fittings, materials and words", () => {
  test("a fitting that is no text and no number says what it may be", () => {
    expect(said(losscoefficient, true)).toBe("fitting must be a fitting's name, a list of them, or a K; got TRUE");
    expect(said(losscoefficient, null)).toMatch(
      /^fitting must be a fitting's name, a list of them, or a K; got a blank/,
    );
    expect(said(losscoefficient, { code: "#N/A" })).toMatch(/ or a K; got the error #N\/A$/);
    expect(said(hoodsuction, 350, 4, true)).toBe("entry must be a hood entry's name or its K; got TRUE");
    expect(said(losscoefficient, "; ;")).toBe('fitting must be given; got "; ;"');
  });

  test("a material may be a number typed as text", () => {
    expect(call(friction, 350, 4, "0.01")).toBe(call(friction, 350, 4, 0.01));
  });

  test("a column of blanks computes beside an argument whose 0 cannot be meant", () => {
    const column = pitotvelocity([[1], [1]], [[null], [0.07]]);
    expect(column.flat()).toEqual([call(pitotvelocity, 1), call(pitotvelocity, 1, 0.07)]);
    expect(
      tradesize([[4.2], [4.2]], [["up"], [null]])
        .flat()
        .every(Number.isFinite),
    ).toBe(true);
  });

  test("one blank row among fittings stays blank", () => {
    expect(losscoefficient([["tee"], [null]])).toEqual([[call(losscoefficient, "tee")], [""]]);
    expect(seamleak([[6], [null]], [[100]], [[2]])[1]).toEqual([""]);
  });
});

describe("a leakage class", () => {
  // The constant of EN class C is 0.003 L/(s m2) per Pa^0.65; class 6 is 6 cfm per 100 ft2 at 1 in.w.g.: 6 cfm through 100 ft2 there.
  test("may be a number, a number as text, a letter or a name of the table", () => {
    expect(call(seamleak, 6, 100, 1)).toBeCloseTo(6, 9);
    expect(call(seamleak, " 6 ", 100, 1)).toBeCloseTo(6, 9);
    expect(call(seamleak, "C", 1, 1, SI)).toBeCloseTo(0.003 * 3.6, 9);
    expect(call(seamleak, "atc 3", 1, 1, SI)).toBeCloseTo(0.003 * 3.6, 9);
  });

  test("is refused when it is none", () => {
    expect(said(seamleak, null, 100, 1)).toBe("class must be a class number or an EN letter A to D; got a blank cell");
    expect(said(seamleak, "Q", 100, 1)).toMatch(/^class must be a class number or an EN letter A to D \(nearest: /);
  });
});

describe("ranges", () => {
  test("that would make more cells than a call may have are refused by their shape", () => {
    const many = Array.from({ length: 1100 }, () => [350]);
    const wide = [Array.from({ length: 1100 }, () => 4)];
    expect(refusal(() => velocity(many, wide)).message).toBe(
      `the answer must be at most ${MOST_ANSWERS} cells in all; got "1100 by 1100 cells"`,
    );
  });

  test("of one row or one column are answered in that shape", () => {
    expect(velocity([[350, 350]], [[4]])).toHaveLength(1);
    expect(velocity([[350, 350]], [[4]])[0]).toHaveLength(2);
    expect(velocity([[350], [350]], [[4]])).toHaveLength(2);
  });

  test("with a hump in some rows say so in those rows only", () => {
    const hump = [[0, 10], [100, 1.5], [200, 9], [400, 0]]; // prettier-ignore
    const [high, low] = operatingpoint(hump, [[200], [300]], [[7.2], [1]]);
    expect(high![2]).toMatch(/^the curve has a hump: 3 points meet, two are stable; from rest the fan stays at/);
    expect(low).toHaveLength(3);
    expect(low![2]).toBe("");
    expect(operatingpoint(hump, [[300], [300]], [[1], [1]]).map((row) => row.length)).toEqual([2, 2]);
  });
});

describe("whole-table functions", () => {
  const runs = [["Run", "To", "Diameter", "Gate"], ["saw", "main", 4, "open"], ["lathe", "main", 4, "open"], ["main", "fan", 6, null]]; // prettier-ignore
  const fan = [[0, 9], [1400, 0]]; // prettier-ignore

  test("name the argument that takes one cell", () => {
    const two = [["a"], ["b"]];
    expect(refusal(() => traversepoints([[4]], undefined, two)).message).toBe('rule must be one cell; got "2 by 1 cells"'); // prettier-ignore
    expect(refusal(() => traverse([[4000]], two)).message).toBe('kind must be one cell; got "2 by 1 cells"');
    expect(refusal(() => traverse([[4000]], [["speed"]])).message).toMatch(
      /^kind must be "velocity" or "velocity pressure"/,
    );
  });

  test("refuse gates by the argument's name", () => {
    expect(refusal(() => gains(runs, fan, [["saw"]], [["lath"]])).message).toMatch(/^open must be names of runs in the table/); // prettier-ignore
  });

  test("keep their answers apart, though the inputs are the same", () => {
    const first = [solve, scenarios, gains].map((fn) => (fn as CellFunction)(runs, fan, [["saw"]]));
    expect(first.map((answer) => answer[0]![0])).toEqual(["Run", "Scenario", "Run"]);
    expect(first[2]![0]).toHaveLength(5);
    const [one, both] = ["saw", "saw; lathe"].map((open) => gains(runs, fan, [["saw"]], [[open]]));
    expect(one).not.toEqual(both);
  });

  test("never answer with a number that is none", () => {
    for (const wrong of [[[NaN]], [["Run", 1], ["x", Infinity]]])
      expect(refusal(() => inHost(null, () => wrong))).toEqual({ code: "#N/A", message: "no finite result for these inputs" }); // prettier-ignore
    expect(inHost(null, () => [["Run", 1]])).toEqual([["Run", 1]]);
  });

  test("an error's part of none is none, in each of the three", () => {
    const none = "none";
    expect(call(airflowerror, 4000, 4, none, none, none)).toBe(0);
    for (const parts of [
      [3, none, none],
      [none, 40, none],
      [none, none, 0.1],
    ])
      // prettier-ignore
      expect(call(airflowerror, 4000, 4, ...parts)).toBeGreaterThan(0);
  });
});
