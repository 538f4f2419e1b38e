/**
 * What a runs table is refused for, as SOLVE, SCENARIOS, GAINS and all that need the whole of it say: the row and the column
 * by name. BUDGET says the same beside the row.
 */
import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { gains } from "../../../src/functions/systems/gains";
import { scenarios } from "../../../src/functions/systems/scenarios";
import { sizes } from "../../../src/functions/systems/sizes";
import { solve } from "../../../src/functions/systems/solve";
import { together } from "../../../src/functions/systems/together";
import { uncertainty } from "../../../src/functions/systems/uncertainty";
import { refusal, shown } from "../../support/refusal";
import { type Row, table } from "../../support/tables";

const saw: Row = { Run: "saw", To: "main", Diameter: 4, Length: 10, Hood: "plain end", Airflow: 350, Gate: "open" };
const sander: Row = { ...saw, Run: "sander", Length: 20 };
const main: Row = { Run: "main", To: "fan", Diameter: 5, Length: 10 };

const CURVE = [
  [0, 10],
  [1500, 8],
  [3000, 0],
];

const bySolve = (rows: readonly Row[]): string => refusal(() => solve(table(rows), CURVE)).message;

/** The notes of BUDGET's rows, and as what error the numbers beside stand. */
const byBudget = (rows: readonly Row[]): string[] =>
  budget(table(rows))
    .slice(1)
    .map((row) => `${String(shown(row[1])).split(" ")[0]!}: ${String(row.at(-1))}`);

/** Where BUDGET tells of each row what SOLVE says of the whole: in the tests of what waits. */
const SAID_OTHERWISE = ["an unknown To", "no last run"];

describe("refused, naming the row", () => {
  test.each<[string, Row[], string]>([
    [
      "an unknown To",
      [{ ...saw, To: "man" }, main],
      'To of run "saw" (row 2) must be the name of another run, or "fan" for the last one (nearest: "main", "fan"); got "man"',
    ],
    [
      "no last run",
      [
        { ...saw, To: "main" },
        { ...main, To: "saw" },
      ],
      'To must be "fan" in one row: no run ends at the fan; got a blank cell',
    ],
    [
      "two last runs",
      [{ ...saw, To: "fan" }, main],
      'To must be "fan" in one row only: run "saw" (row 2) and run "main" (row 3) both end there, so let one join the other; got "fan"',
    ],
    [
      "a loop",
      [saw, main, { ...sander, Run: "x", Hood: null, To: "y" }, { ...sander, Run: "y", Hood: null, To: "x" }],
      'To of run "x" (row 4) must be a way to the fan: these runs join each other in a loop; got "y"',
    ],
    [
      "a name twice",
      [saw, saw, main],
      'Run of run "saw" (row 3) must be a name of its own: run "saw" (row 2) has it too; got "saw"',
    ],
    [
      "a hood with runs joining it",
      [saw, { ...main, Hood: "plain end" }],
      'Hood of run "main" (row 3) must be left blank: a hood is an open end, and another run joins this one; got "saw"',
    ],
    [
      "a negative diameter",
      [saw, { ...main, Diameter: -5 }],
      'Diameter of run "main" (row 3) must be above 0 in; got -5',
    ],
    // 20 m are 787.4016 in: the sentence names the row and is in the unit of the cell.
    [
      "a diameter that no duct has",
      [{ ...saw, Diameter: 1000 }, main],
      'Diameter of run "saw" (row 2) must be at most 787.4016 in; got 1000',
    ],
    [
      "a missing diameter",
      [saw, { ...main, Diameter: null }],
      'Diameter of run "main" (row 3) must be a number (in); got a blank cell',
    ],
    ["a missing name", [saw, { ...main, Run: null }], "Run of row 3 must be a name; got a blank cell"],
    [
      "text for a length",
      [{ ...saw, Length: "long" }, main],
      'Length of run "saw" (row 2) must be a number (ft); got "long"',
    ],
    // what Excel makes of 1/2 as it is typed: the 2nd of January 2026, a day by its number
    ...(
      [
        ["Length", " ft"],
        ["Flex", " ft"],
        ["K", ""],
        ["Fittings", ""],
        ["Hood", ""],
      ] as const
    ).map(([column, unit]): [string, Row[], string] => [
      `a day in the column ${column}`,
      [{ ...saw, [column]: 46024 }, main],
      `${column} of run "saw" (row 2) must be from 0 to 10000${unit}; got 46024`,
    ]),
    [
      "another gate",
      [{ ...saw, Gate: "ajar" }, main],
      'Gate of run "saw" (row 2) must be "open" or "shut"; got "ajar"',
    ],
    [
      "a device loss without its airflow",
      [saw, { ...main, "Device loss": 2 }],
      'Device airflow of run "main" (row 3) must be given beside a device loss; got a blank cell',
    ],
    [
      "a device airflow without its loss",
      [saw, { ...main, "Device airflow": 800, "Device exponent": 1 }],
      'Device loss of run "main" (row 3) must be given beside a device airflow, or both left blank; got a blank cell',
    ],
    [
      "a device airflow that is none, without a loss",
      [saw, { ...main, "Device airflow": "rated" }],
      'Device airflow of run "main" (row 3) must be a number (cfm); got "rated"',
    ],
    ...(
      [
        ["Gate", "shut", '"shut"'],
        ["Gate", "open", '"open"'],
        ["Hood", "plain end", '"plain end"'],
        ["Port suction", 3, "3"],
      ] as const
    ).map(([column, value, got]): [string, Row[], string] => [
      `${column} ${value} after the fan`,
      [saw, main, { Run: "bag", To: "outside", Diameter: 6, [column]: value }],
      `${column} of run "bag" (row 4) must be left blank after the fan, where none is counted; got ${got}`,
    ]),
    [
      "a leak as large as the duct",
      [{ ...saw, Leak: 21 }, main],
      'Leak of run "saw" (row 2) must be smaller than the duct itself; got 21',
    ],
    [
      "an elbow outside its table",
      [{ ...saw, Fittings: "elbow 9" }, main],
      'shape in the fittings of run "saw" (row 2) must be from 0.75 to 2 for "elbow 4-piece" (r/D); got 9',
    ],
    [
      "an angle outside its table",
      [{ ...saw, Fittings: "elbow 1.5; cone 0.1 500" }, main],
      'angle in the fittings of run "saw" (row 2) must be from 0 to 180 degrees for "cone" (included angle); got 500',
    ],
    [
      "no hood entry",
      [{ ...saw, Hood: true as unknown as string }, main],
      'Hood of run "saw" (row 2) must be a hood entry\'s name or its K; got TRUE',
    ],
    [
      "a hose of other words",
      [{ ...saw, Flex: "10 ft" }, main],
      'Flex of run "saw" (row 2) must be a length, or one with its kind and how it lies: "10", "10 smooth-bore", "10 compressed 15%", "10 as it hangs"; got "10 ft"',
    ],
    [
      "a hose in a duct so narrow that its waves fill it", // 3 mm of roughness, a fifth of the diameter is 2.54 mm
      [{ ...saw, Diameter: 0.5, Flex: 3 }, main],
      'Flex of run "saw" (row 2) must be left out: hose is too rough for so small a diameter; got 3',
    ],
    ["a negative K", [{ ...saw, K: -1 }, main], 'K of run "saw" (row 2) must be from 0 to 10000; got -1'],
    ["a negative hose", [{ ...saw, Flex: -1 }, main], 'Flex of run "saw" (row 2) must be from 0 to 10000 ft; got -1'],
    [
      "a negative airflow",
      [{ ...saw, Airflow: -1 }, main],
      'Airflow of run "saw" (row 2) must be at least 0 cfm; got -1',
    ],
    ["a negative leak", [{ ...saw, Leak: -1 }, main], 'Leak of run "saw" (row 2) must be at least 0 in²; got -1'],
    [
      "a negative device loss",
      [saw, { ...main, "Device loss": -2 }],
      'Device loss of run "main" (row 3) must be at least 0 in.w.g.; got -2',
    ],
    [
      "a negative device airflow",
      [saw, { ...main, "Device loss": 2, "Device airflow": -1 }],
      'Device airflow of run "main" (row 3) must be above 0 cfm; got -1',
    ],
    [
      "an exponent that no device has",
      [saw, { ...main, "Device loss": 2, "Device airflow": 500, "Device exponent": 3 }],
      'Device exponent of run "main" (row 3) must be from 0.5 to 2.5; got 3',
    ],
    [
      "an exponent below that",
      [saw, { ...main, "Device loss": 2, "Device airflow": 500, "Device exponent": 0.4 }],
      'Device exponent of run "main" (row 3) must be from 0.5 to 2.5; got 0.4',
    ],
    [
      "a wall of another unit",
      [{ ...saw, Material: 0.81 }, main],
      'Material of run "saw" (row 2) must be rough by at most 0.2 of the diameter; got 0.81',
    ],
    [
      "a leak that is an opening as large as the duct",
      [{ ...saw, Diameter: 0.14, "Leak open": "open bare slot" }, main],
      'Leak open of run "saw" (row 2) must be smaller than the duct itself; got "open bare slot"',
    ],
    [
      "another side",
      [{ ...saw, Side: "both" }, main],
      'Side of run "saw" (row 2) must be "suction" or "discharge"; got "both"',
    ],
    [
      "a To that is no name",
      [{ ...saw, To: true as unknown as string }, main],
      'To of run "saw" (row 2) must be the name of a run; got TRUE',
    ],
    [
      "a number for a dust",
      [{ ...saw, Dust: 4000 }, main],
      'Dust of run "saw" (row 2) must be a name in the table "transport"; got 4000',
    ],
    [
      "a run called fan",
      [
        { ...saw, To: "fan" },
        { ...main, Run: "Fan", To: "saw" },
      ],
      'Run of run "Fan" (row 3) must be another word: "fan" is where the last run ends; got "Fan"',
    ],
    [
      "a suction run that joins a discharge run",
      [{ ...saw, To: "out" }, main, { Run: "out", To: null, Diameter: 5, Side: "discharge" }],
      'To of run "saw" (row 2) must be a suction run or "fan": that run is on the discharge side; got "out"',
    ],
  ])("%s", (what, rows, expected) => {
    expect(bySolve(rows)).toBe(expected);
    if (!SAID_OTHERWISE.includes(what)) expect(byBudget(rows)).toContain(`#VALUE!: ${expected}`);
  });

  const wrong = table([saw, { ...sander, Length: "long" }, { ...main, Diameter: -1 }]);
  test.each<[string, () => unknown]>([
    ["SOLVE", () => solve(wrong, CURVE)],
    ["SCENARIOS", () => scenarios(wrong, CURVE, [["saw"]])],
    ["GAINS", () => gains(wrong, CURVE, [["saw"]])],
    ["TOGETHER", () => together(wrong, CURVE)],
    ["SIZES", () => sizes(wrong, CURVE, [["saw"]])],
    ["UNCERTAINTY", () => uncertainty(wrong, CURVE)],
  ])("by %s, which needs the whole table, with the first wrong row alone", (_, call) => {
    expect(refusal(call)).toEqual({
      code: "#VALUE!",
      message: 'Length of run "sander" (row 3) must be a number (ft); got "long"',
    });
  });

  test.each<[string, Row[], string]>([
    [
      "a material that is none",
      [{ ...saw, Material: "cheese" }, main],
      'Material of run "saw" (row 2) must be a name in the table "materials" or a roughness (nearest: ',
    ],
    [
      "a leak by an unknown name",
      [{ ...saw, "Leak open": "open bare slut" }, main],
      'Leak open of run "saw" (row 2) must be an open area or a name in the table "gates" (nearest: "open bare slot", ',
    ],
    [
      "a dust that is none",
      [{ ...saw, Dust: "wood dusk" }, main],
      'Dust of run "saw" (row 2) must be a name in the table "transport" (nearest: "wood dust", ',
    ],
  ])("%s, with the nearest", (_, rows, expected) => {
    expect(bySolve(rows).slice(0, expected.length)).toBe(expected);
    expect(byBudget(rows).filter((said) => said.startsWith(`#VALUE!: ${expected}`)).length).toBe(1);
  });

  test("a table without headers", () => {
    const [, ...rows] = table([saw, main]);
    expect(refusal(() => budget(rows as any[][])).message).toMatch(
      /^runs must be a table whose first row has the headers Run, To and Diameter \(Run is missing/,
    );
  });

  test("a header that is far from the needed one, with the nearest one there is", () => {
    expect(refusal(() => budget(table([{ Run: "a", To: "fan", Diam: 4 }]))).message).toMatch(
      /\(Diameter is missing; the nearest header there is "Diam"\)/,
    );
  });

  test("no rows, a single cell, nothing", () => {
    expect(refusal(() => budget([["Run", "To", "Diameter"]])).message).toBe(
      "runs must be a table with at least one run below its headers; got a blank cell",
    );
    expect(refusal(() => budget([[5]])).code).toBe("#VALUE!");
    expect(refusal(() => budget(null as unknown as any[][])).code).toBe("#VALUE!");
  });

  test("a density that is not air", () => {
    expect(refusal(() => budget(table([saw, main]) as any[][], [[62.4]])).message).toMatch(
      /^density must be from .* lb\/ft³; got 62\.4$/,
    );
  });

  test("an error or TRUE in a cell", () => {
    const error = new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable);
    const said = (column: string, cell: unknown) => bySolve([{ ...saw, [column]: cell } as Row, main]);
    const must = 'of run "saw" (row 2) must be';
    expect(said("Length", error)).toBe(`Length ${must} a number (ft); got the error #N/A`);
    expect(said("Leak", error)).toBe(`Leak ${must} a number (in²); got the error #N/A`);
    expect(said("Leak", true)).toBe(`Leak ${must} a number (in²); got TRUE`);
    expect(said("To", error)).toBe(`To ${must} the name of a run; got the error #N/A`);
    expect(said("Run", error)).toBe("Run of row 2 must be a name; got the error #N/A");
  });
});
