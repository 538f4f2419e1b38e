import { findingsIn } from "../../../../src/taskpane/check/findingsIn";
import { foundIn as found, runsWith, seenOf, solveHeader } from "../../../support/books";

describe("dust settles", () => {
  // 200 cfm in 4 in: 200 / 0.08727 ft² = 2292 fpm, below the 20 m/s (3937 fpm) of wood dust; 400 cfm makes 4584 fpm. The size in
  // which air Q has velocity v is sqrt(4 Q / (pi v)): 3.05 in for 200 cfm, so 3 in, of 0.04909 ft²: 4074 fpm; 3.74 in for 300 cfm,
  // so 3.5 in, of 0.06681 ft²: 4490 fpm; 103 mm for 600 m³/h, so 100 mm, of 0.007854 m²: 21.2 m/s.
  test("where the airflow asked for is too little for the duct", () => {
    expect(found({ Runs: { rows: runsWith("saw", "Airflow", 200) } })).toEqual([
      {
        rule: "Dust settles",
        what: 'saw: the airflow asked for makes 2,292 fpm; "wood dust" needs 3,937 fpm. This much air would carry it in 3 in, at 4,074 fpm.',
        sheet: "Runs",
        at: "D2",
      },
    ]);
    const withDevice = runsWith("saw", "Airflow", 200).map((row, at) => [
      ...row,
      ...(at === 0 ? ["Device loss", "Device airflow"] : row[0] === "saw" ? [0.5, 800] : ["", ""]),
    ]);
    expect(found({ Runs: { rows: withDevice } })).toEqual([]); // air in or behind a device is taken to be clean
  });

  test("where an answer says so, at the diameter that mends it; a shut run carries no dust", () => {
    const answer = [
      solveHeader,
      ["saw", 300, 3437, 2, 0, 1, "open", 'dust settles: "wood dust" needs 3937 fpm'],
      ["planer", 5, 57, 2, 5, 1, "shut", "gate shut: only its leak flows"],
      ["Fan", 305, "", 3, 5, "", "", "2 % of the air is lost to leaks"],
    ];
    const rows = runsWith("saw", "Airflow", 300);
    expect(found({ Runs: { rows }, Flow: { rows: answer, at: { column: 2, row: 10 } } })).toEqual([
      {
        rule: "Dust settles",
        what: 'saw: air flows at 3,437 fpm; "wood dust" needs 3,937 fpm. This much air would carry it in 3.5 in, at 4,490 fpm.',
        sheet: "Runs",
        at: "D2",
      },
    ]);
  });

  test("but not behind a device, whose air is taken to be clean: there the note of the answer says it", () => {
    const rows = runsWith("saw", "Airflow", 300).map((row, at) => [
      ...row,
      ...(at === 0 ? ["Device loss", "Device airflow"] : row[0] === "main" ? [0.5, 800] : ["", ""]),
    ]);
    const settles = 'dust settles: "wood dust" needs 3937 fpm';
    const answer = [solveHeader, ["saw", 300, 3437, 2, 0, 1, "open", settles], ["main", 300, 1528, 2, 0, 1, "", settles]]; // prettier-ignore
    expect(found({ Runs: { rows }, Flow: { rows: answer } }).map(({ rule, what }) => [rule, what])).toEqual([
      ["Dust settles", expect.stringMatching(/^saw: /)],
      [
        "A note",
        `main: ${settles}; there is a device in it or before it, and air behind a device is taken to be clean.`,
      ],
    ]);
  });

  test("once for a run that two answers find, by what its hood asks for", () => {
    const budget = [
      ["Run", "Airflow (cfm)", "Velocity (fpm)", "Path loss to fan (in.w.g.)", "Note"],
      ["saw", 300, 3437, 2, ""],
    ];
    const solved = [solveHeader, ["Saw", 200, 2292, 2, 0, 1, "open", ""]];
    const findings = found({
      Runs: { rows: runsWith("saw", "Airflow", 300) },
      Budget: { rows: budget },
      Flow: { rows: solved },
    }).filter(({ rule }) => rule === "Dust settles");
    expect(findings.map(({ what, sheet, at }) => [what.split(";")[0], sheet, at])).toEqual([
      ["saw: air would flow at 3,437 fpm", "Runs", "D2"],
    ]);
  });

  test("in each answer, where two budgets have a run of that name", () => {
    const rows = runsWith("saw", "Airflow", 300);
    const answer = (velocity: number) => [solveHeader, ["saw", 300, velocity, 2, 0, 1, "open", ""]];
    const findings = found({
      Runs: { rows },
      "Runs 2": { rows },
      Flow: { rows: answer(3437) },
      "Flow 2": { rows: answer(3000) },
    }).filter(({ rule }) => rule === "Dust settles");
    expect(findings.map(({ sheet, at }) => [sheet, at])).toEqual([
      ["Flow", "C2"],
      ["Flow 2", "C2"],
    ]);
  });

  test("but not behind a device nor after the fan, nor by another dust than both have, where two tables have a run of that name", () => {
    const rows = runsWith("saw", "Airflow", 300).map((row, at) => [
      ...row,
      ...(at === 0 ? ["Device loss", "Device airflow", "Dust"] : row[0] === "main" ? [0.5, 800, ""] : ["", "", "heavy moist waste"]), // prettier-ignore
    ]);
    const out = ["out", "outside", "", 12, "", "", "", "", "", "", "", ""];
    const both = [...rows, out];
    const answer = [
      solveHeader,
      ["saw", 350, 4010, 2, 0, 1, "open", ""],
      ["main", 350, 1782, 2, 0, 1, "", ""],
      ["out", 350, 446, 0, 0, 1, "", ""],
    ];
    const told = (second: typeof both) =>
      found({ Runs: { rows: both }, "Runs 2": { rows: second }, Flow: { rows: answer } })
        .filter(({ rule }) => rule === "Dust settles")
        .map(({ what }) => what.split(" needs")[0]);
    // in the one dust that both have, slower than its 4500 fpm
    expect(told(both)).toEqual(['saw: air flows at 4,010 fpm; "heavy moist waste"']);
    const without = both.map((row) => row.map((cell) => (cell === 0.5 ? "" : cell)));
    expect(told(without)).toContain('main: air flows at 1,782 fpm; "wood dust"'); // in one of them it is behind no device
  });

  test("without a size where none of the stock is small enough", () => {
    // 1 cfm: 3937 fpm need 0.22 in, and the least size is 2 in, where it makes 46 fpm
    expect(found({ Runs: { rows: runsWith("saw", "Airflow", 1) } })[0]?.what).toMatch(/needs 3,937 fpm\.$/);
  });

  test("in SI likewise, and not at the very velocity", () => {
    const rows = (velocity: number) => [
      ["Run", "Airflow (m³/h)", "Velocity (m/s)", "Path loss to fan (Pa)", "Note"],
      ["saw", 600, velocity, 500, ""],
    ];
    expect(found({ Budget: { rows: rows(19.9) } })[0]?.what).toBe(
      'saw: air would flow at 19.9 m/s; "wood dust" needs 20 m/s. This much air would carry it in 100 mm, at 21.2 m/s.',
    );
    expect(found({ Budget: { rows: rows(20) } })).toEqual([]);
  });
});

describe("the dust that a whole budget carries", () => {
  // 390 cfm in 3.5 in: 390 / 0.06681 ft² = 5837 fpm. In 4 in: 390 / 0.08727 ft² = 4469 fpm, below the 4500 fpm of heavy moist waste, above the 3937 fpm of wood dust
  const settlingWith = (material: string | number, rows = runsWith("saw", "Airflow", 390)) =>
    findingsIn(
      seenOf({ Runs: { rows }, Start: { rows: [["Dust carried", material]] } }, [
        { name: "Dust", sheet: "Start", at: "B1" },
      ]),
    ).map(({ what }) => what);
  const withColumn = (material: string) =>
    runsWith("saw", "Airflow", 390).map((row, at) => [...row, at === 0 ? "Dust" : at === 1 ? material : ""]);

  test("is that of the cell of that name", () => {
    expect(settlingWith("heavy moist waste")).toEqual([
      'saw: the airflow asked for makes 4,469 fpm; "heavy moist waste" needs 4,500 fpm. This much air would carry it in 3.5 in, at 5,837 fpm.',
    ]);
    expect(settlingWith("wood dust")).toEqual([]);
  });

  test("gives way to a run's own, and stands where that is blank", () => {
    expect(settlingWith("heavy moist waste", withColumn("wood dust"))).toEqual([]);
    expect(settlingWith("wood dust", withColumn("heavy moist waste"))).toHaveLength(1);
    expect(settlingWith("heavy moist waste", withColumn(" "))).toHaveLength(1);
  });

  test("counts for an answer too, also for a run of no table", () => {
    const rows = [
      ["Run", "Airflow (cfm)", "Velocity (fpm)", "Path loss to fan (in.w.g.)", "Note"],
      ["elsewhere", 390, 4469, 2, ""],
    ];
    expect(settlingWith("heavy moist waste", rows)).toEqual([
      'elsewhere: air would flow at 4,469 fpm; "heavy moist waste" needs 4,500 fpm. This much air would carry it in 3.5 in, at 5,837 fpm.',
    ]);
  });

  test.each(["", "no such dust", 12, "constructor"])("is wood dust where that cell says %j", (material) => {
    expect(settlingWith(material)).toEqual([]);
    expect(settlingWith(material, runsWith("saw", "Airflow", 200))).toEqual([
      'saw: the airflow asked for makes 2,292 fpm; "wood dust" needs 3,937 fpm. This much air would carry it in 3 in, at 4,074 fpm.',
    ]);
  });
});
