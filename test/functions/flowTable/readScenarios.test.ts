import { DomainError } from "../../../src/core/errors";
import { CellErrorValue, type Matrix } from "../../../src/functions/cells";
import { readOpen } from "../../../src/functions/flowTable/openRuns";
import { readScenarios } from "../../../src/functions/flowTable/readScenarios";
import { readRuns } from "../../../src/functions/runsTable/readRuns";
import { expectRefusal } from "../../support/coreRefusal";

const HEADERS = ["Run", "To", "Diameter", "Gate"];
const RUNS: Matrix = [
  HEADERS,
  ["saw", "main", 4, "open"],
  ["band saw", "main", 4, "shut"],
  ["lathe; old", "main", 4, "open"],
  ["main", "fan", 6, null],
];
const ERROR = new CellErrorValue("#N/A");

const runNames = (table: Matrix) => readRuns(table, "IP").names;

/** Each scenario as its name and the runs that it opens; a blank row as null. */
const read = (sets: Matrix) =>
  readScenarios(sets, runNames(RUNS)).map((scenario) => scenario && [scenario.name, ...scenario.open].join(" | "));

describe("scenarios as names of open runs", () => {
  test.each<[string, Matrix, (string | null)[]]>([
    ["one column", [["saw"], ["saw, band saw"], ["SAW\nBand-Saw"]], ["saw | saw", "saw, band saw | saw | band saw", "SAW\nBand-Saw | saw | band saw"]],
    ["one column under a heading", [["Open runs"], ["saw"]], ["saw | saw"]],
    ["one column under a name for scenarios", [["scenarios"], ["saw"]], ["saw | saw"]],
    ["a run whose name holds the sign between names", [["lathe; old"], ["saw; band saw"]], ["lathe; old | lathe; old", "saw; band saw | saw | band saw"]],
    ["two columns", [["ripping", "saw"], ["both", "saw; band saw"]], ["ripping | saw", "both | saw | band saw"]],
    ["two columns under headings", [["Scenario", "Open runs"], ["ripping", "saw"]], ["ripping | saw"]],
    ["two columns under one heading", [[null, "open"], ["ripping", "saw"]], ["ripping | saw"]],
    ["names of runs as names of scenarios", [["saw", "saw"], ["band saw", "saw; band saw"]], ["saw | saw", "band saw | saw | band saw"]],
    ["one row, its name a run", [["saw", "band saw"]], ["saw | band saw"]],
    ["several rows, only the second a list", [["saw", "saw"], ["pause", null], ["rip", "band saw"]], ["saw | saw", "pause", "rip | band saw"]],
    ["a name alone, nothing open", [["tea", null], ["rip", "saw"]], ["tea", "rip | saw"]],
    ["blank rows", [["rip", "saw"], [null, null], [null, "saw"]], ["rip | saw", null, "saw | saw"]],
    ["a number and an error for a name", [[7, "saw"], [ERROR, "saw"]], ["7 | saw", " | saw"]],
    ["all, none, and a separator too many", [["all"], ["none"], ["saw; ; "]], ["all | saw | band saw | lathe; old | main", "none", "saw; ;  | saw"]],
    ["a zero, as some hosts send a blank", [["rip", "saw"], [0, 0]], ["rip | saw", "0"]],
  ])("%s", (_, sets, expected) => expect(read(sets)).toEqual(expected)); // prettier-ignore
});

describe("scenarios as marks under names of runs", () => {
  test.each<[string, Matrix, (string | null)[]]>([
    ["names before them", [["Name", "saw", "band saw"], ["rip", "x", null], ["both", 1, true]], ["rip | saw", "both | saw | band saw"]],
    ["names under a blank heading", [[null, "saw", "band saw"], ["rip", "x", 0]], ["rip | saw"]],
    ["no names: called by their runs", [["band saw", "saw"], ["x", "x"], [null, "x"]], ["band saw; saw | band saw | saw", "saw | saw"]],
    ["names and one run", [["Name", "saw"], ["rip", "x"], ["rest", "no"]], ["rip | saw", "rest"]],
    ["names under a word of one's own", [["Case", "saw", "band saw"], ["rip", "x", null]], ["rip | saw"]],
    ["a blank column between", [["Name", null, "saw"], ["rip", null, "x"]], ["rip | saw"]],
    ["blank rows, also as zeros", [["Name", "saw", "band saw"], [null, null, null], [0, 0, 0], ["rip", "x", 0]], [null, null, "rip | saw"]],
    ["a number and an error for a name", [["Name", "saw", "main"], [7, "x", 0], [ERROR, "x", 0]], ["7 | saw", " | saw"]],
    ["a name alone, nothing open", [["Name", "saw", "main"], ["tea", null, null]], ["tea"]],
    ["words and dashes for shut", [["Name", "saw", "main"], ["a", "off", "x"], ["b", "–", "x"], ["c", "0", "yes"], ["d", "Closed ", "-"]], ["a | main", "b | main", "c | main", "d"]],
    ["a long dash and a minus sign", [["Name", "saw", "main"], ["a", "—", "x"], ["b", "−", "✓"]], ["a | main", "b | main"]],
    ["words for no", [["Name", "saw", "main"], ["a", "n", "x"], ["b", "N/A", "Y"], ["c", "None", "x"]], ["a | main", "b | main", "c | main"]],
    ["the run's own name for a mark", [["Name", "saw", "main"], ["main", "SAW", null]], ["main | saw"]],
    ["names of no run open: its name stays empty", [["saw", "main"], ["no", "no"]], [""]],
  ])("%s", (_, sets, expected) => expect(read(sets)).toEqual(expected)); // prettier-ignore
});

describe("refused", () => {
  const nearest = '(nearest: "saw", "band saw", "lathe; old")';
  const marks = "marks below names of runs, or all names of a scenario in one cell";
  const shapes = "one or two columns with names of open runs, or a heading row of run names with marks below";
  test.each<[string, Matrix, string]>([
    ["three columns without names of runs", [["rip", "x", "y"], ["z", "x", "y"]], `scenarios must be ${shapes}; got "2 by 3 cells"`],
    ["a column for a run that is none", [["Name", "saw", "sew"], ["rip", "x", "x"]], `scenarios must be headed by names of runs in the table ${nearest}; got "sew"`],
    ["a column headed by a number", [["Name", "saw", 7], ["rip", "x", "x"]], `scenarios must be headed by names of runs in the table ${nearest}; got "7"`],
    ["a run that is none", [["rip", "sew"]], `scenarios must be names of runs in the table ${nearest}; got "sew"`],
    ["a name in each cell", [["rip", "saw", null], ["both", "saw", "band saw"]], `scenarios must be ${marks}; got "band saw"`],
    ["a name below another run's", [["rip", "saw", "main"], ["both", "saw", "Band saw"]], `scenarios must be ${marks}; got "Band saw"`],
    ["a name below the first run's", [["saw", "main"], ["main", null]], `scenarios must be ${marks}; got "main"`],
    ["a mark below a heading that was cleared", [["Name", "saw", null], ["rip", "x", "x"]], `scenarios must be ${marks}; got "x"`],
    ["a cross, which beside a tick is a no", [["Name", "saw", "main"], ["rip", "✓", "✗"]], `scenarios must be ${marks}; got "✗"`],
    ["a question for a mark", [["Name", "saw", "main"], ["rip", "?", "x"]], `scenarios must be ${marks}; got "?"`],
    ["an error for a mark", [["Name", "saw", "main"], ["rip", ERROR, "x"]], `scenarios must be ${marks}; got the error #N/A`],
    ["an error for runs", [["rip", ERROR]], "scenarios must be names of runs; got the error #N/A"],
    ["FALSE for runs", [["rip", false]], "scenarios must be names of runs; got FALSE"],
  ])("%s", (_, sets, sentence) => expectRefusal(() => read(sets), DomainError, sentence)); // prettier-ignore
});

describe("the names of a table's runs", () => {
  const table: Matrix = [
    ["Run", "To", "Diameter"],
    ["Band-Saw", "fan", 4],
    [null, null, null],
    [ERROR, null, 4],
    [7, "fan", 4],
  ];

  test("leave out blank cells and errors", () => {
    expect([...runNames(table)]).toEqual([
      ["band saw", "Band-Saw"],
      ["7", "7"],
    ]);
  }); // prettier-ignore

  test("nothing is written where all cells are blank or 0", () => {
    expect(readOpen("open", [[null], [0]], runNames(table))).toBeNull();
    expect([...readOpen("open", [[0], [7]], runNames(table))!]).toEqual(["7"]);
  });

  test("all and none may be names of runs themselves", () => {
    const odd = runNames([["Run", "To", "Diameter"], ["all", "fan", 4], ["none", "all", 4], ["saw", "all", 4]]); // prettier-ignore
    expect([...readOpen("open", "all", odd)!]).toEqual(["all"]);
    expect([...readOpen("open", "none", odd)!]).toEqual(["none"]);
  });
});

describe("a table with some gates open", () => {
  const gates = (open: readonly string[] | null, table = RUNS) =>
    readRuns(table, "IP")
      .runs(open && new Set(open))
      .runs.map(({ run }) => run.gate);

  test("shuts every other gate, and adds none", () => {
    expect(gates(["saw"])).toEqual(["open", "shut", "shut", "none"]);
    expect(gates(["main", "band saw"])).toEqual(["shut", "open", "shut", "none"]);
    expect(gates([])).toEqual(["shut", "shut", "shut", "none"]);
    expect(gates(null)).toEqual(["open", "shut", "open", "none"]);
  });

  test("knows a run by its plain name, and asks a gate's own cell only where none are named", () => {
    const odd: Matrix = [HEADERS, ["Band-Saw", "fan", 4, "ajar"]];
    expect(gates(["band saw"], odd)).toEqual(["open"]);
    expectRefusal(
      () => gates(null, odd),
      DomainError,
      'Gate of run "Band-Saw" (row 2) must be "open" or "shut"; got "ajar"',
    );
  });

  test("each gate with the leak of its place, in whatever order the states are asked for", () => {
    const leaky: Matrix = [
      [...HEADERS, "Leak", "Leak open", "Leak shut"],
      ["saw", "fan", 4, "open", 1, 0.25, 0.5],
    ];
    const reader = readRuns(leaky, "IP");
    const leaks = [["saw"], [], null].map((open) => reader.runs(open && new Set(open)).runs[0]!.run.leakArea);
    const inches = leaks.map((leak) => Number((leak / 0.0254 ** 2).toPrecision(12)));
    expect(inches).toEqual([1.25, 1.5, 1.25]);
  });

  test("a leak's cell is read in its gate's state only, whichever was asked for before", () => {
    const bad: Matrix = [
      [...HEADERS, "Leak shut"],
      ["saw", "fan", 4, "open", "a gap"],
    ];
    const reader = readRuns(bad, "IP");
    const shut = () => reader.runs(new Set());
    const sentence = /^Leak shut of run "saw" \(row 2\) must be an open area or a name in the table "gates"/;
    expect(shut).toThrow(sentence);
    expect(reader.runs(null).runs[0]!.run.leakArea).toBe(0);
    expect(shut).toThrow(sentence);
    expect(shut).toThrow(DomainError);
  });
});
