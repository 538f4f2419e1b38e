import { findingsIn } from "../../../src/taskpane/check/findingsIn";
import { seenIn } from "../../../src/taskpane/check/seenIn";
import {
  bookOf,
  foundIn as found,
  runsWith,
  seenOf,
  type SheetOfTest,
  solveHeader,
  soundRuns,
} from "../../support/books";

const rulesIn = (sheets: Record<string, SheetOfTest>) => found(sheets).map(({ rule }) => rule);

test("a sound budget has nothing to be found, wherever its table stands", () => {
  expect(found({ Runs: { rows: soundRuns } })).toEqual([]);
  expect(found({ "Any name": { rows: soundRuns, at: { column: 5, row: 17 } } })).toEqual([]);
  expect(found({ Empty: { rows: [] } })).toEqual([]);
});

test("every finding has a reason and a source", () => {
  const rows = runsWith("saw", "Flex", 12).map((row) =>
    row.map((cell) => (cell === "elbow 2" ? "elbow 1; mitre" : cell)),
  );
  const findings = findingsIn(seenOf({ Runs: { rows } }));
  expect(findings.length).toBe(3);
  for (const { why, source } of findings) {
    expect(why).not.toBe("");
    expect(source).not.toBe("");
  }
});

describe("a main smaller than a branch", () => {
  test("is found at the main", () => {
    expect(
      found({ Runs: { rows: runsWith("saw", "Diameter", 7) } }).filter(({ rule }) => rule.startsWith("Main")),
    ).toEqual([
      {
        rule: "Main smaller than its branch",
        what: "main has 6 in, but saw, which joins it, has 7 in.",
        sheet: "Runs",
        at: "D4",
      },
    ]);
  });

  test("is none where both have one size", () => {
    expect(rulesIn({ Runs: { rows: runsWith("saw", "Diameter", 6) } })).toEqual(["Dust settles"]);
  });

  test("is found also where the branch spells its name otherwise, as the join allows", () => {
    const rows = runsWith("saw", "Diameter", 7).map((row) =>
      row.map((cell, column) => (cell !== "main" ? cell : column === 0 ? "Big main" : "big-main")),
    );
    expect(rulesIn({ Runs: { rows } })).toContain("Main smaller than its branch");
  });
});

describe("long hose", () => {
  test.each([
    [6, []],
    [6.1, ["Long hose"]],
    ["", []],
    ["long", []],
  ])("%s ft: %j", (length, rules) =>
    expect(rulesIn({ Runs: { rows: runsWith("saw", "Flex", length) } })).toEqual(rules),
  );
});

describe("tight elbows", () => {
  // SMACNA Table A-7: an elbow of 4 pieces has 0.37 at r/D 1 and 0.27 at 1.5.
  test("of r/D 1 are found, with what 1.5 would have", () => {
    expect(found({ Runs: { rows: runsWith("saw", "Fittings", "elbow 1 x2; branch 30") } })).toEqual([
      { rule: "Tight elbow", what: "saw has 2 elbows of r/D 1 (K 0.37, at 1.5 it is 0.27).", sheet: "Runs", at: "G2" },
    ]);
  });

  test.each([
    ["elbow", []],
    ["elbow 1.5", []],
    ["mitre", ["Tight elbow"]],
    ["branch 30; gate", []],
    ["bell mouth 0.1", []],
    ["no such fitting 1", []],
    ["<script>alert(1)</script>", []],
  ])("%s: %j", (fittings, rules) =>
    expect(rulesIn({ Runs: { rows: runsWith("saw", "Fittings", fittings) } })).toEqual(rules),
  );
});

describe("sparks on a duct that carries dust that burns", () => {
  const DUST = "Dust";
  const withDust = (dusts: Record<string, string>, rows = soundRuns) =>
    rows.map((row, at) => [...row, at === 0 ? DUST : (dusts[row[0] as string] ?? "")]);
  const named = (name: string) => soundRuns.map((row) => row.map((cell) => (cell === "saw" ? name : cell)));

  test("is found at the main where both meet, by the dusts that are typed", () => {
    expect(found({ Runs: { rows: withDust({ saw: "abrasive dust branch" }) } })).toContainEqual({
      rule: "Metal with wood",
      what: 'main carries grinding or metal dust of saw ("abrasive dust branch") and dust that burns of planer ("wood dust").',
      sheet: "Runs",
      at: "A4",
    });
  });

  test("is found as likely by a machine's name, though wood dust is typed for all", () => {
    const what =
      'main may carry sparks or metal of bench grinder ("wood dust") with dust that burns of planer ("wood dust"), by their names.';
    expect(found({ Runs: { rows: named("bench grinder") } }).map((finding) => finding.what)).toEqual([what]);
    const typed = withDust(
      { "bench grinder": "wood dust", planer: "wood dust", main: "wood dust" },
      named("bench grinder"),
    );
    expect(found({ Runs: { rows: typed } }).map((finding) => finding.what)).toEqual([what]);
  });

  test("is found where a shut gate keeps the two apart for now, and across two mains that meet", () => {
    const rows = [
      soundRuns[0]!,
      ["saw", "main", 400, 4, 3, "flanged end", "elbow 1.5", "open", ""],
      ["wheel", "metal main", 500, 4, 3, "grinder hood", "elbow 2", "shut", ""],
      ["main", "trunk", "", 4, "", "", "", "", ""],
      ["metal main", "trunk", "", 4, "", "", "", "", ""],
      ["trunk", "fan", "", 6, "", "", "", "", ""],
    ];
    const metal = found({ Runs: { rows } }).filter(({ rule }) => rule === "Metal with wood");
    expect(metal.map(({ at }) => at)).toEqual(["A6"]);
  });

  test.each([
    ["wood alone", withDust({ saw: "sawdust", planer: "planer chips" })],
    ["grinding alone", withDust({ saw: "grinding branch", planer: "metal turnings" })],
    ["heavy dust for all", withDust({ saw: "heavy dust", planer: "heavy dust" })],
    ["a stump grinder", named("stump grinder")],
  ])("is not found: %s", (_, rows) => {
    expect(rulesIn({ Runs: { rows } })).not.toContain("Metal with wood");
  });
});

describe("plastic pipe", () => {
  test.each([
    ["pvc pipe", ["Plastic pipe"]],
    ["PVC", ["Plastic pipe"]],
    ["drain-pipe", ["Plastic pipe"]],
    ["plastic coated pipe", []],
    ["galvanised steel", []],
    ["", []],
  ])("%j: %j", (material, rules) => {
    const rows = soundRuns.map((row, at) => [...row, at === 0 ? "Material" : at === 1 ? material : ""]);
    expect(rulesIn({ Runs: { rows } })).toEqual(rules);
  });
});

describe("a gate turned round", () => {
  test.each([
    ["shut wrong side", ["Gate turned round"]],
    ["Wrong Side", ["Gate turned round"]],
    ["shut seated", []],
    [0.5, []],
  ])("%s: %j", (condition, rules) =>
    expect(rulesIn({ Runs: { rows: runsWith("saw", "Leak shut", condition) } })).toEqual(rules),
  );
});

describe("an area typed into a meter", () => {
  // By hand: π/4 (7/12)² = 0.267 ft²; the 0.349 of an 8 in duct is 1.31 times that.
  const readings = (entered: unknown) => [
    ["Place", "Area typed in (ft²)", "True area (ft²)", "Reading (cfm)"],
    ["saw", entered as number, 0.267, 940],
  ];
  test.each([
    [2.67, "is 10 times too large"],
    [0.0267, "is 10 times too small"],
    [26.7, "is 100 times too large"],
    [0.349, "is too large by a factor of 1.31"],
  ])("%s ft² %s", (entered, words) => {
    const [finding] = found({ Readings: { rows: readings(entered) } });
    expect(finding).toMatchObject({ rule: "Area in the meter", sheet: "Readings", at: "B2" });
    expect(finding!.what).toContain(words);
  });

  test.each([0.267, 0.27, "", "about 0.3", 0])("%s ft² is no slip", (entered) =>
    expect(found({ Readings: { rows: readings(entered) } })).toEqual([]),
  );
});

describe("the fan can't give it", () => {
  const flow = (airflow: number, gate = "open", leak = 0) => [
    solveHeader,
    ["saw", airflow, 4500, 2, leak, 1, gate, ""],
    ["planer", 400, 4584, 2, 0, 1, "open", ""],
    ["main", 800, 4074, 2, 0, 1, "", ""],
    ["Fan", 800, "", 3, 0, "", "", ""],
  ];
  test.each<[number, string, number, string[]]>([
    [400, "open", 0, []],
    [381, "open", 0, []],
    [379, "open", 0, ["The fan can't give it"]],
    [400, "open", 30, ["The fan can't give it"]],
    [5, "shut", 5, []],
  ])("%d cfm with the gate %s and %d of it leak: %j", (airflow, gate, leak, rules) =>
    expect(rulesIn({ Runs: { rows: soundRuns }, Flow: { rows: flow(airflow, gate, leak) } })).toEqual(rules),
  );
});

test("of a hood out of which air blows Check says so", () => {
  const rows = [solveHeader, ["saw", -30, -340, -2, 0, 1, "open", ""], ["Fan", 800, "", 3, 0, "", "", ""]];
  expect(found({ Runs: { rows: soundRuns }, Flow: { rows } })).toContainEqual(
    expect.objectContaining({ what: "saw gets nothing of the 400 cfm wanted: 30 cfm blow out of it." }),
  );
});

describe("our formulas", () => {
  const nameError = { error: "#NAME?" } as const;
  test("at #NAME? are counted once per sheet; others' are not ours", () => {
    const rows = [[nameError, nameError, nameError, nameError]];
    const spokenOf = '="see DUCT.AREA(4)"&NOBODYS(1)';
    const formulas = { A1: "=DUCT.AREA(4)", B1: "=2*_xldudf_DUCT_AREA(4)", C1: "=OTHER.AREA(4)", D1: spokenOf };
    expect(found({ One: { rows, formulas } })).toEqual([
      { rule: "#NAME?", what: "2 formulas stand at #NAME? on the sheet One.", sheet: "One", at: "A1" },
    ]);
  });

  test("that refuse say why in their own words; one that computes is no finding", () => {
    const refused = { error: "#VALUE!", message: "diameter must be above 0 in; got -4" } as const;
    const formulas = { A1: "=DUCT.AREA(-4)", B1: "=DUCT.AREA(5)" };
    expect(found({ One: { rows: [[refused, 0.1364]], formulas } })).toEqual([
      { rule: "#VALUE!", what: "A1: diameter must be above 0 in; got -4.", sheet: "One", at: "A1" },
    ]);
  });

  test("that refuse some rows of a range say which and why, also where the host keeps the code alone", () => {
    const refused = { error: "#VALUE!", message: "diameter must be above 0 in; got -4" } as const;
    const formulas = { A1: "=DUCT.AREA(C1:C4)" };
    const book = bookOf({ One: { rows: [[0.0873], [refused], [""], [{ error: "#N/A" }]], formulas } });
    const there = book.shown.get("One")!;
    const shown = new Map([["One", new Map([...there, ["A1", { value: 0.0873, fills: { rows: 4, columns: 1 } }]])]]);
    expect(findingsIn(seenIn({ ...book, shown })).map(({ rule, what, at }) => ({ rule, what, at }))).toEqual([
      { rule: "#VALUE!", what: "A2: diameter must be above 0 in; got -4.", at: "A2" },
      { rule: "#N/A", what: "The answer in A4 is #N/A.", at: "A4" },
    ]);
  });
});

describe("answers that no workshop's ducts can have", () => {
  // 400 m³/h through 4 mm, an inch size in a call in SI; and an airflow where a velocity was meant.
  test("are told of with what to look at, a slip of units most of all", () => {
    const formulas = {
      A1: '=DUCT.FRICTION(400,4,,,"SI")',
      B1: "=DUCT.AIRFLOW(13200000,4)",
      C1: "=DUCT.FRICTION(400,4)",
    };
    expect(found({ One: { rows: [[743_343_238, 1_151_917, 9.3]], formulas } })).toEqual([
      {
        rule: "Far out",
        what: "A1: 743,343,238 Pa per m is far above the 5,000 Pa per m of any workshop.",
        sheet: "One",
        at: "A1",
      },
      {
        rule: "Far out",
        what: "B1: 1,151,917 cfm is far above the 105,944 cfm of any workshop.",
        sheet: "One",
        at: "B1",
      },
    ]);
  });

  test("in the units of a cell, in every row of a range, and below 0", () => {
    const formulas = { B1: "=DUCT.VELOCITY(C1:C3,4,,A1)" };
    const book = bookOf({
      One: {
        rows: [
          ["SI", 20],
          [null, 101],
          [null, -3],
        ],
        formulas,
      },
    });
    const there = book.shown.get("One")!;
    const shown = new Map([["One", new Map([...there, ["B1", { value: 20, fills: { rows: 3, columns: 1 } }]])]]);
    expect(findingsIn(seenIn({ ...book, shown })).map(({ what, at }) => ({ what, at }))).toEqual([
      { what: "B2: 101 m/s is far above the 100 m/s of any workshop.", at: "B2" },
      { what: "B3: -3 m/s is below 0.", at: "B3" },
    ]);
  });

  test("are looked for in what BUDGET and SOLVE say of each run; a formula that only begins with a call is no such answer", () => {
    const answer = [solveHeader, ["saw", 400, 22_000, 2, 0, 1, "open", ""], ["Fan", 400, "", 3, 0, "", "", ""]];
    expect(found({ Flow: { rows: answer } })).toEqual([
      {
        rule: "Far out",
        what: "saw: 22,000 fpm is far above the 19,685 fpm of any workshop.",
        sheet: "Flow",
        at: "C2",
      },
    ]);
    expect(found({ One: { rows: [[1e9]], formulas: { A1: "=DUCT.VELOCITY(400,4)*1E6" } } })).toEqual([]);
  });
});

describe("a duct narrower or wider than any shop has", () => {
  const table = (unit: string, diameter: number): SheetOfTest["rows"] => [
    ["Run", "To", `Diameter (${unit})`, "Length (m)"],
    ["saw", "main", diameter, 3],
    ["main", "fan", unit === "mm" ? 160 : 6, 3],
  ];
  const told = (rows: SheetOfTest["rows"]) =>
    findingsIn(seenOf({ Runs: { rows } })).flatMap(({ rule, what, why, at }) => (rule === "Far out" ? [[at, what, why]] : [])); // prettier-ignore

  // 25 mm and 1500 mm, 59.06 in
  test.each([
    [
      "mm",
      4,
      "a diameter of 4 mm is narrower than any workshop's duct.",
      "Mostly inches where the table has millimetres: ",
    ],
    [
      "in",
      100,
      "a diameter of 100 in is wider than any workshop's duct.",
      "Mostly millimetres where the table has inches: ",
    ],
    [
      "mm",
      16_000,
      "a diameter of 16,000 mm is wider than any workshop's duct.",
      "Mostly a decimal place that slipped: ",
    ],
    ["in", 0.5, "a diameter of 0.5 in is narrower than any workshop's duct.", "Mostly a decimal place that slipped: "],
  ])("in %s: %d", (unit, diameter, what, why) => {
    const rows = table(unit, diameter).map((row) => row.map((cell) => (unit === "in" && cell === "Length (m)" ? "Length (ft)" : cell))); // prettier-ignore
    expect(told(rows)).toEqual([["C2", `saw: ${what}`, `${why}all that flows is computed with it.`]]);
  });

  test.each([
    ["mm", 25],
    ["mm", 1500],
    ["in", 1.25],
    ["in", 59],
  ])("in %s %d is none", (unit, diameter) => {
    const rows = table(unit, diameter).map((row) => row.map((cell) => (unit === "in" && cell === "Length (m)" ? "Length (ft)" : cell))); // prettier-ignore
    expect(told(rows)).toEqual([]);
  });
});

describe("a run longer than any shop", () => {
  const far = (rows: SheetOfTest["rows"]) =>
    findingsIn(seenOf({ Runs: { rows } })).filter(({ rule }) => rule === "Far out");

  // 2,500 is what whoever writes decimals with a comma types for two and a half; 100 m are 328.08 ft
  test.each(["Flex (ft)", "Length (ft)"])("is told at its %s, with the comma that it mostly comes from", (header) => {
    const rows = runsWith("saw", "Flex", 2500).map((row) => row.map((cell) => (cell === "Flex (ft)" ? header : cell)));
    expect(far(rows)).toEqual([
      expect.objectContaining({
        what: "saw: 2,500 ft is far above the 328 ft of any workshop.",
        why: expect.stringContaining("type 2.5, not 2,500"),
        sheet: "Runs",
        at: "E2",
      }),
    ]);
  });

  test("is none where a long main runs round the shop", () => {
    expect(far(runsWith("saw", "Flex", 300))).toEqual([]);
  });
});

test("notes of BUDGET and SOLVE are listed once, at their cell, without what other rules say", () => {
  const rows = [
    ["Run", "Airflow (cfm)", "Velocity (fpm)", "Path loss to fan (in.w.g.)", "Note"],
    [
      "saw",
      400,
      4584,
      2,
      "resize: its path needs 40 % less suction than the junction has; its leak carries 12 % of its air; metal with wood: sparks or metal and dust that burns share this duct",
    ],
    ["planer", 0, 0, 0, "gate shut: only its leak flows"],
    ["Fan", 400, "", 2, "fan asked for: 400 cfm at 2 in.w.g. fan static pressure"],
  ];
  expect(found({ Budget: { rows } })).toEqual([
    {
      rule: "A note",
      what: "saw: resize: its path needs 40 % less suction than the junction has.",
      sheet: "Budget",
      at: "E2",
    },
    { rule: "A note", what: "saw: its leak carries 12 % of its air.", sheet: "Budget", at: "E2" },
  ]);
});

test("two tables side by side stay two, and a second runs table below a first is read by its own header", () => {
  const rows = [
    [...soundRuns[0]!, null, "Place", "Run", "Note"],
    ...soundRuns.slice(1),
    [],
    ...runsWith("saw", "Flex", 12),
  ];
  expect(found({ Both: { rows } })).toMatchObject([{ rule: "Long hose", at: "E7" }]);
});
