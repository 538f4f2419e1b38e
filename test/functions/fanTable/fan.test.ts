import "../../support/customFunctions";
import fc from "fast-check";
import { airpower } from "../../../src/functions/fan/airpower";
import { fanlaw } from "../../../src/functions/fan/fanlaw";
import { fanpressure } from "../../../src/functions/fan/fanpressure";
import { operatingpoint } from "../../../src/functions/fan/operatingpoint";
import { refusal, shown } from "../../support/refusal";

// The textbook fan W1 (cfm, in.w.g.), published in data/fans.ts; here it is only a curve that has a hump.
const CURVE = [
  ["Airflow (cfm)", "Pressure (in.w.g.)"],
  [0, 0.9],
  [250, 0.95],
  [500, 0.9],
  [750, 0.75],
  [1000, 0.4],
  [1200, 0],
];
const curve = CURVE as any[][];
const one = (answer: any[][]): unknown => answer[0]![0];

describe("a curve range", () => {
  test.each([
    [["Airflow (m³/h)", "Pressure (in.w.g.)"], "IP", 'a header of curve must be with (cfm) or no unit in this call, unless its units are "SI"; got "Airflow (m³/h)"'],
    [["cfm", "Pa"], "IP", 'a header of curve must be with (in.w.g.) or no unit in this call, unless its units are "SI"; got "Pa"'],
    [["Airflow", "Static (mm)"], "IP", 'a header of curve must be with (in.w.g.) or no unit in this call; got "Static (mm)"'],
    [["Pa", "m³/h"], "SI", 'a header of curve must be with (m³/h) or no unit in this call; got "Pa"'],
    [["Airflow", "in Hg"], "IP", 'a header of curve must be with (in.w.g.) or no unit in this call; got "in Hg"'],
    [["Airflow m³/h", "Pressure in.w.g."], "IP", 'a header of curve must be with (cfm) or no unit in this call, unless its units are "SI"; got "Airflow m³/h"'],
    [["Airflow", "Static pressure, mm H2O"], "SI", 'a header of curve must be with (Pa) or no unit in this call; got "Static pressure, mm H2O"'],
    [["Airflow", "mm H2O"], "SI", 'a header of curve must be with (Pa) or no unit in this call; got "mm H2O"'],
  ])("under the heading %j is not read in %s", (heading, units, message) =>
    expect(refusal(() => fanpressure([heading, ...CURVE.slice(1)], [[500]], [[units]]))).toEqual({ code: "#VALUE!", message })); // prettier-ignore

  test.each([[["Pressure (in.w.g.)", "Airflow (cfm)"]], [["Static pressure", "Flow"]]])(
    "whose columns stand the other way round is refused: %j",
    (heading) => {
      const turned = [heading, ...CURVE.slice(1).map(([airflow, pressure]) => [pressure, airflow])] as any[][];
      const message = `curve must be airflow in the first column and pressure in the second; got "${heading[0]!}"`;
      expect(refusal(() => fanpressure(turned, [[0.5]]))).toEqual({ code: "#VALUE!", message });
      expect(refusal(() => fanlaw(turned, [[1.1]]))).toEqual({ code: "#VALUE!", message });
    },
  );

  test("of total pressure is refused where static pressure is read, and scaled by the fan laws", () => {
    const total = [["Airflow (cfm)", "Total pressure (in.w.g.)"], [0, 8], [1000, 0]]; // prettier-ignore
    expect(refusal(() => fanpressure(total, [[500]]))).toEqual({
      code: "#VALUE!",
      message: `a header of curve must be of fan static pressure: the total less the velocity pressure at the fan's outlet, as the sheet Fan works it out; got "Total pressure (in.w.g.)"`,
    });
    expect((fanlaw(total, [[2]]) as any[][])[1]).toEqual([0, 32]); // 8 in.w.g. times the square of twice the speed
    expect(one(fanpressure([["Airflow", "Total static pressure"], [0, 8], [1000, 0]], [[500]]) as any[][])).toBeCloseTo(4, 12); // prettier-ignore
  });

  test("whose first point cannot be read is refused, and not taken for a heading", () => {
    const message = 'airflow in row 1 of the curve must be a number (cfm); got "100,5"';
    expect(refusal(() => fanpressure([["100,5", "8,5"], [500, 6], [1000, 0]], [[600]]))).toEqual({ code: "#VALUE!", message }); // prettier-ignore
    expect(
      one(
        fanpressure(
          [
            ["3 hp fan", "its curve"],
            [0, 8],
            [1000, 0],
          ],
          [[500]],
        ) as any[][],
      ),
    ).toBeCloseTo(4, 12);
  });

  // The atmosphere, 101325 Pa, is 407.2 in.w.g. of 248.84 Pa (60 °F).
  test("without headings, airflows where the pressures belong are refused, and no pressure that a machine makes", () => {
    const turned = [[12, 0], [8, 900], [1, 1800]]; // prettier-ignore
    const message =
      "pressure in row 2 of the curve must be below that of the atmosphere (airflow stands in the first column, pressure in the second); got 900";
    expect(refusal(() => fanpressure(turned, [[8]]))).toEqual({ code: "#VALUE!", message });
    expect(fanpressure([[0, 406], [100, 0]], [[0]])).toEqual([[406]]); // prettier-ignore
    expect(refusal(() => fanpressure([[0, 408], [100, 0]], [[0]])).code).toBe("#VALUE!"); // prettier-ignore
  });

  test("scaled by ratios keeps any heading", () => {
    const heading = ["Airflow (m³/h)", "Pa"];
    expect(fanlaw([heading, ...CURVE.slice(1)], [[1]])).toEqual([heading, ...CURVE.slice(1)]);
  });

  test("may have a heading, any order of points and blank rows, also blanks that came as 0", () => {
    const [heading, ...rows] = CURVE;
    const shuffled = [
      [null, null],
      heading!,
      rows[3]!,
      ["", ""],
      rows[5]!,
      rows[1]!,
      [0, 0],
      rows[4]!,
      rows[2]!,
      rows[0]!,
    ];
    const at = [[100], [333], [640], [1111]];
    expect(fanpressure(shuffled as any[][], at)).toEqual(fanpressure(curve, at));
    expect(fanpressure(rows as any[][], at)).toEqual(fanpressure(curve, at));
  });

  test("may have a heading over one of its columns only", () => {
    const rows = CURVE.slice(1) as any[][];
    expect(fanpressure([["Fan", null], ...rows], [[640]])).toEqual(fanpressure(rows, [[640]]));
    expect(fanpressure([[null, "Pressure"], ...rows], [[640]])).toEqual(fanpressure(rows, [[640]]));
  });

  test("may hold numbers as text", () => {
    const texts = CURVE.map((row) => row.map(String));
    expect(fanpressure(texts as any[][], [[640]])).toEqual(fanpressure(curve, [[640]]));
  });

  const refused = (...rows: unknown[][]): string => refusal(() => fanpressure(rows, [[100]])).message;

  test.each<[string, unknown[][], string]>([
    ["one point", [[0, 1]], "curve must be at least two points of airflow and pressure; got 1"],
    ["nothing but a heading", [["Airflow", "Pressure"]], "curve must be at least two points of airflow and pressure; got 0"],
    ["an airflow twice", [["Q", "p"], [0, 1], [500, 2], [500, 1]], "airflow in row 4 of the curve must be another one: row 3 has it too; got 500"],
    ["a negative pressure", [[0, 1], [500, -0.2]], "pressure in row 2 of the curve must be at least 0 in.w.g.; got -0.2"],
    ["a negative airflow", [[-5, 1], [500, 0]], "airflow in row 1 of the curve must be at least 0 cfm; got -5"],
    ["text in the middle", [[0, 1], ["then", "less"], [500, 0]], 'airflow in row 2 of the curve must be a number (cfm); got "then"'],
    ["half a row", [[0, 1], [250, null], [500, 0]], "pressure in row 2 of the curve must be given; got a blank cell"],
    ["three columns", [[0, 1, 2], [500, 0, 1]], 'curve must be two columns, airflow and pressure; got "2 by 3 cells"'],
    ["a first row that is half words", [["Airflow", 1], [0, 1], [500, 0]], 'airflow in row 1 of the curve must be a number (cfm); got "Airflow"'],
    ["a first row of a word and TRUE", [["Airflow", true], [0, 1], [500, 0]], 'airflow in row 1 of the curve must be a number (cfm); got "Airflow"'],
    ["a first row of a blank and a number", [[null, 5], [0, 1], [500, 0]], "airflow in row 1 of the curve must be given; got a blank cell"],
    ["a first row of TRUE and a blank", [[true, null], [0, 1], [500, 0]], "airflow in row 1 of the curve must be a number (cfm); got TRUE"],
    ["one cell", [[5]], 'curve must be two columns, airflow and pressure; got "1 by 1 cells"'],
  ])("with %s is refused", (_, rows, message) => expect(refused(...rows)).toBe(message)); // prettier-ignore

  test("with an error in it is refused, and nothing at all as well", () => {
    const error = new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable);
    expect(refused([0, 1], [500, error])).toBe(
      "pressure in row 2 of the curve must be a number (in.w.g.); got the error #N/A",
    );
    expect(refusal(() => fanpressure(null as unknown as any[][], [[1]])).code).toBe("#VALUE!");
  });
});

describe("FANPRESSURE", () => {
  test("passes through the points, in both unit systems", () => {
    expect(fanpressure(curve, [[500], [1200]])).toEqual([[expect.closeTo(0.9, 12)], [expect.closeTo(0, 12)]]);
    expect(fanpressure(curve, [[0]])).toEqual([[0.9]]); // alone; in a range a 0 counts as blank
    const si = CURVE.slice(1).map(([airflow, pressure]) => [
      Number(airflow) * 1.69901079552,
      Number(pressure) * 248.84,
    ]);
    const metric = Number(one(fanpressure(si, [[640 * 1.69901079552]], [["SI"]]))) / 248.84;
    expect(Math.abs(metric / Number(one(fanpressure(curve, [[640]]))) - 1)).toBeLessThan(1e-12);
  });

  test("beyond the curve is #N/A and says how far it reaches; in a range only that row", () => {
    const beyond = "the fan curve reaches from 0 cfm to 1200 cfm; asked for 1201 cfm";
    expect(refusal(() => fanpressure(curve, [[1201]]))).toEqual({ code: "#N/A", message: beyond });
    const range = fanpressure(curve, [[500], [1201], [null]]).map(([cell]) => shown(cell));
    expect(range).toEqual([expect.closeTo(0.9, 12), `#N/A ${beyond}`, ""]);
  });

  test("refuses an airflow that is none", () => {
    expect(refusal(() => fanpressure(curve, [[-1]]))).toEqual({
      code: "#VALUE!",
      message: "airflow must be at least 0 cfm; got -1",
    });
    expect(refusal(() => fanpressure(curve, [["lots"]])).message).toBe('airflow must be a number (cfm); got "lots"');
  });
});

describe("OPERATINGPOINT", () => {
  // Fan 10 - 0.01 Q in.w.g. against 5 (Q/500)^2: they meet in their own design point, 500 cfm and 5 in.w.g.
  const line = [[0, 10], [1000, 0]]; // prettier-ignore

  test("gives airflow and pressure side by side, for a range of design points", () => {
    expect(operatingpoint(line, [[500]], [[5]])).toEqual([[expect.closeTo(500, 9), expect.closeTo(5, 9)]]);
    // 10 - 0.01 Q = 1.25 (Q/250)^2 is the same line; 0 is free air: 1000 cfm
    expect(operatingpoint(line, [[250], [500]], [[1.25], [0]])).toEqual([
      [expect.closeTo(500, 9), expect.closeTo(5, 9)],
      [expect.closeTo(1000, 9), 0],
    ]);
  });

  test("with a hump says that several points meet", () => {
    const hump = [[0, 10], [100, 1.5], [200, 9], [400, 0]]; // prettier-ignore
    const [row] = operatingpoint(hump, [[200]], [[7.2]]); // 1.8 in at 100 cfm: over the fan; 7.2 at 200: under it
    expect(row).toHaveLength(3);
    // The other stable point is where the system, 7.2 (Q/200)^2, is the fan's pressure again.
    const less = Number(
      /^the curve has a hump: 3 points meet, two are stable; from rest the fan stays at ([\d.]+) cfm$/.exec(
        String(row![2]),
      )?.[1],
    );
    expect(less).toBeLessThan(100);
    expect(Math.abs(Number(fanpressure(hump, [[less]])[0]![0]) - 7.2 * (less / 200) ** 2)).toBeLessThan(0.01);
    expect(operatingpoint(hump, [[200]], [[3]])[0]).toHaveLength(2);
  });

  test("with a hump says of each of several design points which have several answers", () => {
    const hump = [[0, 10], [100, 1.5], [200, 9], [400, 0]]; // prettier-ignore
    const row = operatingpoint(hump, [[200, 200, 200]], [[3, 7.2, 7.2]])[0]!;
    expect(row).toHaveLength(7); // three airflows, three pressures, the note
    expect(row[6]).toBe(
      "the curve has a hump: 3 points meet at design point 2, 3 points meet at design point 3; the answers are the stable ones",
    );
    const column = operatingpoint(hump, [[200], [200], [200]], [[3], [7.2], [-1]]);
    expect(column.map((line) => line[2])).toEqual([
      "",
      expect.stringMatching(/^the curve has a hump: 3 points meet, two are stable; from rest the fan stays at/),
      "",
    ]);
  });

  test("finds no answer beyond the curve, and says which way it lies", () => {
    const short = [[100, 9], [600, 4]]; // prettier-ignore
    const said = (...args: number[]) =>
      refusal(() => operatingpoint(short, ...(args.map((arg) => [[arg]]) as [any, any])));
    expect(said(1000, 1)).toEqual({
      code: "#N/A",
      message: "the fan curve ends at 600 cfm, and this system would take more air",
    });
    expect(said(100, 20).message).toBe("the fan curve starts at 100 cfm, and this system would take less air");
    expect(refusal(() => operatingpoint(line, [[500]], [[15]], [[12]]))).toEqual({
      code: "#N/A",
      message: "the system asks for more pressure than this fan has at any airflow",
    });
  });

  test("refuses a fixed part above the whole, in the user's unit", () => {
    expect(refusal(() => operatingpoint(line, [[500]], [[1]], [[2]])).message).toBe(
      "pressure must be at least 2 in.w.g.; got 1",
    );
  });
});

describe("FANLAW", () => {
  test("moves the points and leaves heading and blank rows where they stand", () => {
    const given = [["cfm", "in"], [100, 4], [null, null], [300, 1]]; // prettier-ignore
    expect(fanlaw(given, [[2]], [[1.5]], [[0.5]])).toEqual([
      ["cfm", "in"],
      [100 * 2 * 0.125, 4 * 4 * 0.25 * 1.5],
      ["", ""],
      [300 * 2 * 0.125, 1 * 4 * 0.25 * 1.5],
    ]);
  });

  test("its answer is a curve again", () => {
    const slower = fanlaw(curve, [[0.5]]);
    expect(one(fanpressure(slower, [[250]]))).toBeCloseTo(0.9 / 4, 12);
  });

  test("a fan that speeds up with its system keeps its place on it", () => {
    const line = [[0, 10], [1000, 0]]; // prettier-ignore
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 2, noNaN: true }), (speed) => {
        const [airflow, pressure] = operatingpoint(fanlaw(line, [[speed]]), [[500]], [[5]])[0] as [number, number];
        expect(Math.abs(airflow / (500 * speed) - 1)).toBeLessThan(1e-11);
        expect(Math.abs(pressure / (5 * speed ** 2) - 1)).toBeLessThan(1e-11);
      }),
      { numRuns: 40 },
    );
  });

  test.each<[unknown[], string]>([
    [[null], "speedratio must be above 0; got a blank cell"],
    [[-1], "speedratio must be above 0; got -1"],
    [["fast"], 'speedratio must be a number; got "fast"'],
    [[1, 20], "densityratio must be at most 10; got 20"],
  ])("refuses %j", (ratios, message) => {
    const [speed, density] = ratios.map((ratio) => [[ratio]]) as [any[][], any[][]?];
    expect(refusal(() => fanlaw(curve, speed, density)).message).toBe(message);
  });
});

describe("FANLAW refuses", () => {
  const said = (...ratios: unknown[]): string =>
    refusal(() => fanlaw(curve, ...(ratios.map((ratio) => [[ratio]]) as [any[][]]))).message;

  test("a ratio that is none, by its name", () => {
    expect(said("fast")).toBe('speedratio must be a number; got "fast"');
    expect(said(1.1, "thin")).toBe('densityratio must be a number; got "thin"');
    expect(said(1.1, 1, "big")).toBe('sizeratio must be a number; got "big"');
    expect(said(null)).toBe("speedratio must be above 0; got a blank cell");
    expect(said(0)).toBe("speedratio must be above 0; got 0");
  });

  test("nothing where density and size are left out or sent as 0", () => {
    expect(fanlaw(curve, [[1.1]], [[0]], [[0]])).toEqual(fanlaw(curve, [[1.1]]));
  });
});

describe("AIRPOWER", () => {
  // 1000 cfm at 10 in.w.g.: 0.4719474 m3/s x 2488.4 Pa = 1174.394 W; / 745.699872 = 1.574888 hp. In SI 3600 m3/h at 1000 Pa: 1 kW.
  test("is by hand 1.574888 hp for 1000 cfm at 10 in.w.g., and 1 kW for 1 m3/s at 1000 Pa", () => {
    expect(one(airpower([[1000]], [[10]]))).toBeCloseTo(1.574888, 6);
    expect(one(airpower([[3600]], [[1000]], [[null]], [["SI"]]))).toBeCloseTo(1, 12);
    expect(one(airpower([[3600]], [[1000]], [[0.5]], [["SI"]]))).toBeCloseTo(2, 12);
  });

  test("refuses an efficiency that none has", () => {
    expect(refusal(() => airpower([[1000]], [[10]], [[60]])).message).toBe("efficiency must be at most 1; got 60");
  });
});
