import { MEND_NEXT_CELL } from "../../../src/sheets/book/leaks/layout";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { runCell, RUNS_FIRST } from "../../../src/sheets/book/layout";
import type { UnitSystem } from "../../../src/reference/quantities";
import { difference } from "../../../src/functions/measuring/difference";
import { gridOfBook, type Shows } from "../../support/gridOfBook";

const call = (...args: any[]): unknown[][] => (difference as (...all: any[]) => unknown[][])(...args);

const shown = (units: UnitSystem, contents: "example" | "empty"): Shows =>
  gridOfBook(budgetBook({ units, sheets: ["leaks"], contents }, { sheets: [], names: [] }));
const number = (shows: Shows, at: string, sheet = "Leaks"): number => {
  const value = shows.value(sheet, at);
  if (typeof value !== "number") throw new Error(`${at} shows ${String(value)}`);
  return value;
};

/** A gate of the log: its row, its name, and the cells from column D on. */
const log = (shows: Shows, row: number, name: string, ...cells: readonly string[]): void =>
  [name, "", "", ...cells].forEach((cell, index) => {
    if (cell !== "") shows.type("Leaks", `${"ABCDEFGH"[index]!}${row}`, cell);
  });

test("what no sum has is told where the sums stand, and a cost that is none is not skipped", () => {
  const shows = shown("IP", "example");
  const sums = (): unknown[] => [shows.value("Leaks", "D7"), shows.value("Leaks", "B10"), shows.value("Leaks", "B11")];
  const plain = "Plain sum: by the readings, 3 mended gates leak 22.7 cfm less than before.";
  expect(sums()).toEqual([plain, 13, 34]);
  shows.type("Leaks", "F23", "about 2"); // of the planer: 26 before; 1.7 - 2.5 = -0.8 is left of the sum
  const less = "Plain sum: by the readings, 2 mended gates leak -0.8 cfm less than before.";
  expect(sums()[0]).toBe(`Not counted: 0 leaks before, 1 after; column J says why. ${less}`);
  expect(shows.value("Leaks", "J23")).toBe("check it: the leak after must be a number");
  shows.type("Leaks", "E23", "much");
  expect(sums()[0]).toBe(`Not counted: 1 leaks before, 1 after; column J says why. ${less}`);
  shows.type("Leaks", "E23", "26");
  shows.type("Leaks", "F23", "2.5");
  expect(sums()[0]).toBe(plain);
  shows.type("Leaks", "A30", "");
  shows.type("Leaks", "E30", "9"); // of no gate
  expect(sums()[0]).toBe(`Not counted: 1 leaks before, 0 after; column J says why. ${plain}`);
  shows.type("Leaks", "G23", "six");
  shows.type("Leaks", "H24", "a while");
  expect([...sums().slice(1), shows.value("Leaks", "B12")]).toEqual(["see G", "see H", "see G"]);
});

// 12 + 7 + 15 minutes in the example; 0:12 on a clock is 12/1440 of a day
test("a time as a clock shows it is told, and never added as next to nothing", () => {
  const shows = shown("IP", "example");
  expect(shows.value("Leaks", "B11")).toBe(34);
  shows.type("Leaks", "H23", "0:12");
  expect(shows.value("Leaks", "H23")).toBeCloseTo(12 / 1440, 12);
  expect(shows.value("Leaks", "B11")).toBe("see H");
  shows.clear("Leaks", "H23");
  shows.type("Leaks", "H26", "0");
  expect(shows.value("Leaks", "B11")).toBe(22);
});

test("a machine that is told by the suction at its port is a hood here, too, and one that wants no known airflow shows none", () => {
  const shows = shown("IP", "example");
  const saw = RUNS_FIRST;
  shows.type("Runs", runCell("Hood", saw), "");
  shows.type("Runs", runCell("Port suction", saw), "1.5");
  shows.type("Runs", runCell("Port airflow", saw), "400");
  const line = ["A", "B", "C", "F", "G"].map((letter) => shows.column("Leaks", `${letter}70:${letter}75`));
  const [names, wants, gets, sealed, gains] = line as [unknown[], unknown[], unknown[], unknown[], unknown[]];
  const at = names.indexOf(shows.value("Runs", runCell("Run", saw)));
  expect([wants[at], Number(gains[at]) > 0]).toEqual([400, true]); // every leak of this shed is after all before the fan
  expect(gains[at]).toBe(Number(sealed[at]) - Number(gets[at]));
  const said = (sheet: string, cell: string): string | undefined =>
    /open hoods(?: get)? (\d+) cfm/.exec(String(shows.value(sheet, cell)))?.[1];
  expect(said("Leaks", "D10")).toMatch(/^\d+$/);
  expect(said("Leaks", "D10")).toBe(said("Flow", "Q3"));
  shows.type("Runs", runCell("Airflow", saw), "");
  expect([shows.value("Flow", "Q11"), shows.value("Leaks", "B70")]).toEqual(["", ""]);
});

test("a gate in two rows, however it is spelled, has no sum: only its owner knows whether it was mended twice", () => {
  const shows = shown("IP", "example");
  const sums = (): unknown[] => ["B8", "B9", "B12", "D7", "D8"].map((at) => shows.value("Leaks", at));
  const before = sums();
  log(shows, 27, "Bench-HOOD", "3", "13", "9");
  expect(shows.value("Leaks", "A25")).not.toBe(shows.value("Leaks", "A27"));
  shows.type("Leaks", "A26", "bench hood");
  const said = "check it: this gate has more than one row. Keep one, with its first reading before and its last after";
  expect(shows.column("Leaks", "J26:J27")).toEqual([said, said]);
  expect(sums()).toEqual(["see J", "see J", "see J", "", ""]);
  shows.clear("Leaks", "A27:F27");
  expect(shows.value("Leaks", "J26")).not.toBe(said);
  expect(
    sums()
      .slice(0, 2)
      .every((sum) => typeof sum === "number"),
  ).toBe(true);
  expect(before[0]).toBeCloseTo(22.7, 9);
});

test("a reading and a cost in a row that was inserted right below the headings count", () => {
  const shows = shown("IP", "example");
  shows.insertRow("Leaks", 23);
  shows.type("Leaks", "G23", "5");
  expect(shows.value("Leaks", "B10")).toBe(18); // 13 + 5
  log(shows, 23, "new gate", "3", "7", "2");
  expect(shows.value("Leaks", "D7")).toBe("Plain sum: by the readings, 4 mended gates leak 27.7 cfm less than before."); // 22.7 + 5
  expect(number(shows, "B9")).toBeCloseTo(48.2, 9); // 46.2 + 2
  expect(number(shows, "B12")).toBeCloseTo(18 / 27.7, 9);
});

test("a gate is a run of Flow by its name as the functions compare it, and by no other", () => {
  const shows = shown("IP", "example");
  shows.type("Leaks", "A25", "Drum-Sander");
  shows.type("Leaks", "A24", "band*");
  expect([shows.value("Leaks", "J45"), shows.value("Leaks", "J44")]).toEqual([
    "sheet Flow, where the run has this name",
    "as typed: sheet Flow gives none for this name",
  ]);
  expect(shows.value("Leaks", "D44")).toBe(2.8);
});

test("the cost of the saving is that of the gates that were read again: one bought for and not yet mended has saved nothing", () => {
  const shows = shown("IP", "example");
  shows.type("Leaks", "G26", "50");
  expect(shows.value("Leaks", "B10")).toBe(63); // 13 + 50
  expect(number(shows, "B12")).toBeCloseTo(13 / 22.7, 9);
});

describe("the leaks of the invented shed", () => {
  const shows = shown("IP", "example");
  shows.type("Start", "B9", "0.075"); // the density, so that the areas below can be worked by hand

  test("shows no error, and names the gate to mend next", () => {
    expect(shows.errors()).toEqual([]);
    expect(shows.value("Leaks", MEND_NEXT_CELL)).toBe("bench hood");
  });

  // By hand: 26 - 2.5 = 23.5, 3.1 - 1.4 = 1.7, 13 - 15.5 = -2.5; their sum 22.7; before 68.9, so 46.2 are still there.
  test("adds the savings up plainly, the negative one too", () => {
    expect(shows.column("Leaks", "I23:I25").map((saved) => Number(Number(saved).toFixed(6)))).toEqual([
      23.5, 1.7, -2.5,
    ]);
    expect(number(shows, "B8")).toBeCloseTo(22.7, 9);
    expect(number(shows, "B9")).toBeCloseTo(46.2, 9);
    expect([number(shows, "B10"), number(shows, "B11")]).toEqual([13, 34]);
    expect(number(shows, "B12")).toBeCloseTo(13 / 22.7, 9);
    expect(shows.value("Leaks", "D8")).toBe(
      "1 of them reads more after than before: no saving, and it counts against the sum. Measure again.",
    );
  });

  // By hand: 6 / 23.5 = 0.2553 a cfm; the band saw's 1.7 cfm may be chance, so they have no price.
  test("says what a saved cfm has cost, where more was saved than by chance", () => {
    expect(number(shows, "I43")).toBeCloseTo(0.2553, 4);
    expect(shows.column("Leaks", "I44:I47")).toEqual(["", "", "", ""]);
  });

  // By hand, head 2.75 in: A = π/4 (2.75/12)² = 0.041247 ft². 26 cfm: V = 630.3 fpm; ± A sqrt((0.03 V)² + 39.37² + (2 V 0.03937/2.75)²)
  // = 0.041247 sqrt(357.6 + 1550.0 + 325.7) = 1.949.
  test("says what a reading is worth by the meter's data sheet", () => {
    expect(number(shows, "R43")).toBeCloseTo(1.949, 3);
  });

  /*
   * By hand: 13.4, 12.1, 13.9, 12.5, 13.0 have the mean 12.98; deviations 0.42, -0.88, 0.92, -0.48, 0.02 with squares 2.028 in all,
   * s = sqrt(2.028 / 4) = 0.71204. Student's t of 5 % on one side, four degrees, as printed: 2.132. At 3.1 cfm ± 2.132 x 0.71204 x sqrt 2
   * = 2.147, and 1.7 is 2.3875 s: 2 (1.6449 + 0.8416)² / 5.7002 + 0.68 = 2.85, so 3 readings. At 26 cfm s grows to 26/12.98 of itself: 4.300.
   */
  test("holds a difference against how far one reading strays from the next", () => {
    expect(shows.value("Leaks", "J19")).toBe("One reading strays from the next by 0.7 cfm (standard deviation).");
    expect(Math.abs(number(shows, "S43") - 4.3)).toBeLessThan(0.002);
    expect(Math.abs(number(shows, "S44") - 2.147)).toBeLessThan(0.001);
    expect(shows.column("Leaks", "T43:T46")).toEqual(["", 3, "", ""]);
    expect(shows.column("Leaks", "J23:J27")).toEqual([
      "mended: more than the ± 4.3 cfm of chance",
      "too small to tell within ± 2.1 cfm: 3 readings each would",
      "after is above before by 2.5 cfm: measure again",
      "mend this one next",
      "not mended: number 2 in turn",
    ]);
  });

  test("as DIFFERENCE itself does, of each gate with both readings", () => {
    const repeats = [[13.4, 12.1, 13.9, 12.5, 13]];
    [
      [43, 26, 2.5],
      [44, 3.1, 1.4],
      [45, 13, 15.5],
    ].forEach(([row, before, after]) => {
      const [, answer] = call(before, after, null, null, repeats, "less");
      expect(number(shows, `S${row}`)).toBeCloseTo(Number(answer![3]), 9);
      expect(shows.value("Leaks", `T${row}`)).toBe(answer![6]);
    });
  });

  test("gives no verdict where nothing says how far a reading strays", () => {
    const kept = ["B", "C", "D", "E", "F"].map((letter) => String(shows.value("Leaks", `${letter}19`)));
    ["B", "C", "D", "E", "F"].forEach((letter) => shows.type("Leaks", `${letter}19`, ""));
    expect(shows.value("Leaks", "J23")).toBe("no verdict: read one leak again and again in row 19");
    expect(shows.value("Leaks", "J19")).toBe("Read one leak twice or more here, or no difference gets a verdict.");
    expect(shows.errors()).toEqual([]);
    kept.forEach((value, index) => shows.type("Leaks", `${"BCDEF"[index]!}19`, value));
    shows.type("Leaks", "C19", "none");
    expect(shows.value("Leaks", "J19")).toBe("check it: the readings must be numbers, or no difference gets a verdict");
    shows.type("Leaks", "C19", kept[1]!);
    expect(shows.value("Leaks", "J23")).toBe("mended: more than the ± 4.3 cfm of chance");
  });

  /*
   * By hand: 3.4 in.w.g. = 846.06 Pa, 0.075 lb/ft³ = 1.20139 kg/m³, sqrt(2 x 846.06 / 1.20139) = 37.530 m/s;
   * 26 cfm = 0.0122706 m³/s; / (0.6 x 37.530) = 544.93 mm² = 0.8446 in². 2.5 cfm: 0.8446 x 2.5/26 = 0.0812 in².
   */
  test("turns a leak into the opening that a patch has to close", () => {
    expect(number(shows, "G43")).toBeCloseTo(0.8446, 4);
    expect(number(shows, "H43")).toBeCloseTo(0.0812, 4);
    expect(shows.value("Leaks", "H46")).toBe(""); // not mended yet
  });

  // GATELEAK beside it: "open bare slot" is a gap of 3/16 in along one diameter; 0.6 x 3/16 x 6 / 144 ft² x 4005 sqrt 2.4 = 29.08 cfm in standard air
  test("estimates a leak for its condition at the suction that was read", () => {
    expect([shows.value("Leaks", "C26"), shows.value("Leaks", "B26"), shows.value("Leaks", "D26")]).toEqual([
      "open bare slot",
      6,
      2.4,
    ]);
    expect(number(shows, "C46")).toBeCloseTo(29.08, 1);
  });

  test("carries each leak to the suction that SOLVE finds, by the square root, and says where it finds none", () => {
    const suction = number(shows, "E12", "Flow");
    expect(shows.value("Flow", "B12")).toBe("planer");
    expect(number(shows, "D43")).toBe(suction);
    expect(number(shows, "E43")).toBeCloseTo(26 * Math.sqrt(suction / 3.4), 9);
    expect(number(shows, "D46")).toBe(2.4); // the bench hood is no run: as typed
    expect(shows.value("Leaks", "J46")).toBe("as typed: sheet Flow gives none for this name");
  });

  // The areas of the worked rows typed into Runs, and SOLVE asked on Flow: the log must have said the same before.
  test("says in the log what the open hoods gain by each reading, as SOLVE does with its area typed into Runs", () => {
    const [open, leak] = [runCell("Leak open", RUNS_FIRST + 1), runCell("Leak", RUNS_FIRST + 1)];
    const kept = String(shows.value("Runs", open));
    expect([shows.value("Runs", runCell("Run", RUNS_FIRST + 1)), shows.value("Runs", leak)]).toEqual(["planer", ""]);
    const said = ["Q23", "R23", "S23"].map((at) => number(shows, at)); // before, after, gained
    const byFlow = ["G43", "H43"].map((area) => {
      shows.type("Runs", open, String(number(shows, area)));
      return ["C70", "C71", "C72", "C73"].reduce((sum, at) => sum + number(shows, at), 0);
    });
    shows.type("Runs", open, kept);
    byFlow.forEach((air, index) => expect(Math.abs(air - said[index]!)).toBeLessThan(1e-3));
    expect(said[2]).toBeCloseTo(said[1]! - said[0]!, 9);
    expect(said[2]).toBeGreaterThan(0);
    expect(said[2]).toBeLessThan(23.5); // a saved leak is not air gained
    expect(shows.column("Leaks", "P23:P28")).toEqual([
      ...["planer", "band saw", "drum sander", "bench hood", "router table", ""],
    ]);
    expect(number(shows, "S25")).toBeLessThan(0); // it reads more after than before
    expect(shows.column("Leaks", "T23:T25")).toEqual(["", "", ""]);
    expect(shows.value("Leaks", "T26")).toMatch(/^gate must be the name of a run in the table .*; got "bench hood"$/);
    expect(shows.value("Leaks", "T27")).toBe(
      'leak after must be a reading (cfm), or "still" for no leak; got a blank cell',
    );
  });

  test("takes a suction that is left blank from what is solved, as the worked rows do, and says how much it took", () => {
    const typed = String(shows.value("Leaks", "D24"));
    const solved = number(shows, "E11", "Flow");
    shows.type("Leaks", "D24", String(solved));
    const [said, note] = [["Q24", "R24", "S24"].map((at) => number(shows, at)), shows.value("Leaks", "T24")];
    shows.clear("Leaks", "D24");
    ["Q24", "R24", "S24"].forEach((at, index) => expect(number(shows, at)).toBeCloseTo(said[index]!, 8));
    expect([note, shows.value("Leaks", "T24")]).toEqual(["", `taken at the suction that is solved there, ${solved.toFixed(2)} in.w.g.`]); // prettier-ignore
    expect(shows.value("Leaks", "J44")).toBe("sheet Flow, as in column D left blank");
    shows.type("Leaks", "D24", "0"); // a typed 0 is no blank
    expect(shows.value("Leaks", "T24")).toMatch(/^suction must be above 0 in\.w\.g\.; got 0$/);
    shows.type("Leaks", "D24", typed);
  });

  // The planer's gate was read shut, and is open on Flow: the suction there is another one than that of the reading, and the leak that of a gate that stands open.
  test("takes no suction of a gate that stands otherwise than it was found, and says which gate the gains are of", () => {
    const beside = (): unknown => shows.value("Leaks", "U23");
    expect([shows.value("Leaks", "C23"), shows.value("Flow", "H12")]).toEqual(["shut wrong side", "open"]);
    expect(beside()).toBe(
      "found shut, but open on the sheet Flow: what the hoods gain counts its leak with the gate as it is there",
    );
    expect(shows.value("Leaks", "G43")).toBeGreaterThan(0); // by the suction that was typed
    const typed = String(shows.value("Leaks", "D23"));
    shows.clear("Leaks", "D23");
    expect(["J43", "E43", "G43", "H43"].map((at) => shows.value("Leaks", at))).toEqual([
      "type the suction in D23: found shut, but open on the sheet Flow", "", "", "",
    ]); // prettier-ignore
    expect(shows.value("Leaks", "T23")).toBe("suction must be a number (in.w.g.); got a blank cell");
    shows.type("Flow", "A12", "shut planer");
    expect([shows.value("Leaks", "J43"), beside()]).toEqual(["sheet Flow, as in column D left blank", ""]);
    expect(shows.value("Leaks", "G43")).toBeGreaterThan(0);
    shows.type("Leaks", "C23", " Open");
    expect(beside()).toBe(
      "found open, but shut on the sheet Flow: what the hoods gain counts its leak with the gate as it is there",
    );
    shows.type("Leaks", "C23", "loose collar"); // leaks either way
    expect(beside()).toBe("");
    shows.type("Leaks", "C23", "shut wrong side");
    shows.clear("Flow", "A12");
    shows.type("Leaks", "D23", typed);
  });

  test("gives no number of a hood with all leaks mended where the sheet Flow has none", () => {
    shows.type("Runs", runCell("Length", RUNS_FIRST), "long");
    expect(String(shows.value("Flow", "T10"))).toMatch(/^#/);
    expect(shows.column("Leaks", "F69:F79").filter((cell) => cell !== "")).toEqual(["see Flow"]);
    expect(shows.value("Leaks", "P22")).toBe("#VALUE!");
    shows.undo();
    expect(shows.errors()).toEqual([]);
  });

  test("says what mending gives at each open hood: air in is air out, with the leaks and without", () => {
    const rows = [70, 71, 72, 73];
    const total = (letter: string): number => rows.reduce((sum, row) => sum + number(shows, `${letter}${row}`), 0);
    const leaks = number(shows, "E79");
    expect(shows.value("Leaks", "A79")).toBe("Fan");
    expect(total("F")).toBeCloseTo(number(shows, "F79"), 3); // nothing else lets air in any more
    expect(total("C") + leaks).toBeCloseTo(number(shows, "C79"), 3);
    expect(total("G")).toBeLessThan(leaks);
    rows.forEach((row) => expect(number(shows, `G${row}`)).toBeGreaterThan(0));
    expect(shows.value("Leaks", "D10")).toBe(
      `With all of them mended the open hoods get ${Math.round(total("G"))} cfm more.`,
    );
    expect(shows.value("Leaks", "D9")).toBe(
      `By SOLVE, all leaks of the sheet Runs add up to ${Math.round(leaks)} cfm.`,
    );
  });

  test("where Runs has no leak it says that none is counted, and sets no 0 in a sentence", () => {
    shows.clear("Runs", "R9:T48");
    expect(["D9", "D10", "D11"].map((at) => shows.value("Leaks", at))).toEqual([
      "No leak is counted: none before the fan is entered on Runs for the gates as they are.",
      "",
      "",
    ]);
    shows.undo();
  });
});

describe("a log of one's own", () => {
  const shows = shown("IP", "empty");

  test("is blank at first and shows no error", () => {
    expect(shows.errors()).toEqual([]);
    expect(shows.value("Leaks", MEND_NEXT_CELL)).toBe("no leak logged yet");
    expect(shows.column("Leaks", "J23:J38").every((words) => words === "")).toBe(true);
  });

  test("asks for the meter's head before it orders anything", () => {
    log(shows, 23, "a", "3", "5");
    expect(shows.value("Leaks", "J23")).toBe("type the meter's head in B15");
    expect(shows.value("Leaks", MEND_NEXT_CELL)).toBe("see B15 to B17"); // it is not that none is left
    shows.type("Leaks", "B15", "2.75");
    expect(shows.value("Leaks", "J23")).toBe("mend this one next");
  });

  // By hand: 0.5 cfm is less than the ± of about 1.6; the rest by size, and of the two equal ones the upper first.
  test("orders the gates by their leaks", () => {
    log(shows, 24, "b", "3", "33");
    log(shows, 25, "c", "3", "0.5");
    log(shows, 26, "d", "3", "33");
    log(shows, 27, "e", "3", "12");
    expect(shows.column("Leaks", "B43:B47")).toEqual([4, 1, "", 2, 3]);
    expect(shows.value("Leaks", "J25")).toBe("no more than the meter's error: leave it");
    expect(shows.value("Leaks", MEND_NEXT_CELL)).toBe("b");
    shows.type("Leaks", "F24", "0");
    expect(shows.value("Leaks", MEND_NEXT_CELL)).toBe("d");
    expect(number(shows, "I24")).toBe(33); // a 0 is a reading: nothing measurable
    expect(number(shows, "H44")).toBe(0);
  });

  // By hand: 11811 fpm x 0.041247 ft² = 487 cfm.
  test.each([
    ["E27", "abc", "J27", "check it: the leak before must be a number"],
    ["E27", "-3", "J27", "check it: the leak before cannot be below 0"],
    ["E27", "500", "J27", "check it: the leak before is above the 487 that the meter can read"],
    ["F27", "500", "J27", "check it: the leak after is above the 487 that the meter can read"],
    ["F27", "12.5", "J27", "after is above before by 0.5 cfm: measure again"],
    ["A27", "", "J27", "give the gate a name"],
    ["D27", "0", "J47", "check it: the suction must be a number above 0"],
    ["D27", "", "J47", "type the suction in D27"],
    ["B15", "0", "B18", "a head must be above 0"],
  ])("%s = %p: one sentence in %s, and no error anywhere", (at, typed, where, sentence) => {
    const before = String(shows.value("Leaks", at));
    shows.type("Leaks", at, typed);
    expect(shows.value("Leaks", where)).toBe(sentence);
    expect(shows.errors()).toEqual([]);
    shows.type("Leaks", at, before);
  });
});

// Flow has 2.89 in.w.g. at the router table: 0.144 is its 20th part, 0.41 more than an 8th, 29 ten times as much.
test.each([
  ["0.144", /^check it: suction 20 times less than the sheet Flow has there now\. A decimal place\?$/],
  ["29", /^check it: suction 10 times more than the sheet Flow has there now\. A decimal place\?$/],
  ["0.41", /^(mend this one next|not mended: number \d in turn)$/],
])("a suction of %s that was typed beside what Flow has there", (typed, says) => {
  const shows = shown("IP", "example");
  expect(number(shows, "D47")).toBeCloseTo(2.89, 2);
  shows.clear("Leaks", "C27"); // whose estimate would be told first
  shows.type("Leaks", "D27", typed);
  expect(shows.value("Leaks", "J27")).toMatch(says);
});

// 0.01 in.w.g. is 2.4884 Pa, in air of 1.2014 kg/m³ sqrt(2 p / rho) = 2.0353 m/s. 100 cfm = 0.047195 m³/s: 0.6 A = 0.02319 m², more than the
// 0.008107 m² of 4 in pipe; of 30 cfm 0.00696, less.
test("a leak that would take an opening as wide as its duct is asked about, of a gate that Flow does not know, too", () => {
  const shows = shown("IP", "example");
  log(shows, 30, "lathe", "0.01", "100");
  shows.type("Leaks", "B30", "4");
  const wide = "check it: suction at which so much takes an opening as wide as the duct. A decimal place?";
  expect(shows.value("Leaks", "J30")).toBe(wide);
  shows.type("Leaks", "E30", "30");
  expect(shows.value("Leaks", "J30")).toBe("mend this one next");
  shows.clear("Leaks", "B30");
  shows.type("Leaks", "E30", "100");
  expect(shows.value("Leaks", "J30")).toBe("mend this one next"); // nobody told how wide it is
});

// The gates of the example are typed over. By hand: of those not mended the largest leak is the third, then the fifth.
test("a log of five gates: which to mend first, and after it is mended which comes next", () => {
  const shows = shown("IP", "example");
  log(shows, 23, "gate one", "3", "6", "1", "1", "2");
  log(shows, 24, "gate two", "3", "9");
  log(shows, 25, "gate three", "3", "30");
  log(shows, 26, "gate four", "3", "12");
  log(shows, 27, "gate five", "3", "20");
  shows.typeColumn("Leaks", "B23", ["4", "4", "5", "4", "4"]);
  shows.clear("Leaks", "F24:F25");
  expect(shows.value("Leaks", MEND_NEXT_CELL)).toBe("gate three");
  expect(shows.column("Leaks", "J23:J27")).toEqual([
    expect.stringMatching(/^mended: more than the ± [\d.]+ .* of chance$/),
    expect.stringMatching(/^check it: 20 times the estimate for its condition\./), // a typed reading, an estimate of the example
    "mend this one next",
    "not mended: number 3 in turn",
    "not mended: number 2 in turn",
  ]);
  expect(number(shows, "B8")).toBe(5); // 6 - 1

  shows.type("Leaks", "F25", "31");
  expect(shows.value("Leaks", "J25")).toBe("after is above before by 1 cfm: measure again");
  expect(number(shows, "B8")).toBe(4); // it counts against the sum
  expect(shows.value("Leaks", MEND_NEXT_CELL)).toBe("gate five");
});

describe("a condition that the table does not have", () => {
  const shows = shown("IP", "example");
  shows.type("Leaks", "C26", "ajar");

  test("is an error where its estimate is asked for, no estimate, and said in words beside it", () => {
    expect(shows.value("Leaks", "C46")).toBe("");
    expect(shows.errors()).toEqual([
      expect.stringMatching(/^Leaks!Y46: #VALUE! condition must be a name in the table/),
    ]);
    expect(shows.value("Leaks", "J46")).toBe(
      "check it: the condition is no name of the table gates, so there is no estimate",
    );
  });

  test("leaves the other gates, the totals and the order as they are", () => {
    expect(number(shows, "C43")).toBeGreaterThan(0);
    expect(number(shows, "B9")).toBeCloseTo(46.2, 9);
    expect(shows.value("Leaks", MEND_NEXT_CELL)).toBe("bench hood");
  });
});

describe("the leaks in SI", () => {
  const shows = shown("SI", "example");

  // By hand: 23 - 5.5 = 17.5, 4.5 - 6 = -1.5, 62 - 7.5 = 54.5; their sum 70.5; before 152.5, so 82 are still there.
  test("compute alike, under headings in SI", () => {
    expect(shows.errors()).toEqual([]);
    expect(number(shows, "B8")).toBeCloseTo(70.5, 9);
    expect(number(shows, "B9")).toBeCloseTo(82, 9);
    expect(shows.column("Leaks", "D22:D22")).toEqual(["Suction there (Pa)"]);
    expect(shows.value("Leaks", "G42")).toBe("Leak area before (mm²)");
    expect(shows.value("Leaks", MEND_NEXT_CELL)).toBe("glue bench");
  });

  // By hand, head 70 mm: A = 0.0038485 m²; 62 m³/h: V = 4.475 m/s; ± A sqrt(0.1343² + 0.2² + (2 x 4.475/70)²) x 3600 = 3.778 m³/h.
  test("take the meter's error in metres per second", () => {
    expect(number(shows, "R45")).toBeCloseTo(3.778, 3);
  });
});
