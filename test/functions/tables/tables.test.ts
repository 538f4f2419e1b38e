import "../../support/customFunctions";
import { about } from "../../../src/functions/lookingUp/about";
import { cautions } from "../../../src/functions/lookingUp/cautions";
import { convertunit } from "../../../src/functions/duct/convertunit";
import { reference } from "../../../src/functions/lookingUp/reference";
import { version } from "../../../package.json";
import { referenceTables } from "../../../src/reference";
import { refusal, shown } from "../../support/refusal";

const call = (fn: (...args: any[]) => any[][], ...args: unknown[]): any[][] => fn(...args);

describe("REFERENCE", () => {
  test.each(referenceTables.map((table) => table.name))(
    "%s comes whole, rectangular, with headers and without blanks that are no text",
    (name) => {
      const answer = reference([[name]]);
      expect(new Set(answer.map((row) => row.length)).size).toBe(1);
      expect(answer.length).toBeGreaterThan(1);
      expect(answer.flat().every((cell) => typeof cell === "string" || Number.isFinite(cell))).toBe(true);
      expect(answer[0]!.slice(-4)).toEqual(["basis", "weak", "source", "where"]);
    },
  );

  // ASHRAE table of duct roughness factors (second-hand): commercial steel 0.00015 ft = 0.04572 mm
  test("a key and a column give the value beside its source", () => {
    const [[value, source]] = call(reference, [["materials"]], [["steel"]], [["roughness (mm)"]]) as [[number, string]];
    expect(Math.abs(value - 0.04572)).toBeLessThanOrEqual(0.000005);
    expect(source).toMatch(/ASHRAE/);
  });

  // The 3-piece elbow's 0.34 stands in the same book as its neighbours, but was read in a copy.
  test.each([
    [
      "fittings",
      "elbow 3-piece 1.5",
      "coefficient",
      "ASHRAE Handbook Fundamentals 2009 (SI), duct fittings, read in a copy of the pages (second-hand)",
    ],
    ["fittings", "elbow 3-piece 1", "coefficient", "ASHRAE Handbook Fundamentals 2009 (SI), duct fittings (read)"],
    ["transport", "wood dust en 12779", "low (m/s)", /, from memory$/],
    ["gates", "open bare slot", "gap (mm)", "Common practice of the trade, no source"],
    ["exposure", "alberta", "region", /\(not read\)$/],
    ["sources", "nistSp811", "year", /^NIST Special Publication 811, [^(]*$/],
  ])("a value of %s, %s, says how it is known beside its source", (table, key, column, source) => {
    const [answer] = call(reference, [[table]], [[key]], [[column]]);
    expect(answer).toHaveLength(2);
    expect(answer![1]).toEqual(typeof source === "string" ? source : expect.stringMatching(source));
  });

  test("no single value hides that it was never seen in print", () => {
    for (const table of referenceTables.filter(({ name }) => name !== "sources")) {
      const basis = table.columns.findIndex(({ name }) => name === "basis");
      for (const row of table.rows) {
        const answer = call(reference, [[table.name]], [[row[0]]], [[table.columns[1]!.name]]);
        for (const [, told] of answer) expect(String(told).toLowerCase()).toContain(String(row[basis]));
      }
    }
  });

  test("a key may be another spelling, and a family's name gives all its rows", () => {
    expect(call(reference, [["materials"]], [["galvanized steel"]])[1]![0]).toBe("galvanised steel");
    const elbows = call(reference, [["fittings"]], [["elbow smooth"]]);
    expect(elbows.slice(1).every(([key]) => /^elbow smooth [\d.]+$/.test(String(key)))).toBe(true);
    expect(elbows.length).toBeGreaterThan(4);
  });

  test.each([
    [/^table must be the name of a table \(nearest: "fittings", .*\); got "fitings"$/, ["fitings"], [], []],
    [/^table must be a name: materials, fittings, .*; got a blank cell$/, [], [], []],
    [/^key must be a key of the table "materials" \(nearest: .*\); got "cheese"$/, ["materials"], ["cheese"], []],
    [
      /^column must be a column of the table "materials" \(nearest: .*\); got "colour"$/,
      ["materials"],
      ["steel"],
      ["colour"],
    ],
    [/^key must be given beside a column; got a blank cell$/, ["materials"], [], ["low (mm)"]],
    [/^table must be a name; got TRUE$/, [true], [], []],
    [/^key must be a name; got FALSE$/, ["materials"], [false], []],
    [/^column must be a name; got TRUE$/, ["materials"], ["steel"], [true]],
  ])("refuses, and says why: %s", (message, table, key, column) => {
    const { code, message: said } = refusal(() => call(reference, [[table[0]]], [[key[0]]], [[column[0]]]));
    expect(code).toBe("#VALUE!");
    expect(said).toMatch(message);
  });
});

describe("REFERENCE's columns and keys", () => {
  const firstOf = (table: string, key: unknown, column: unknown) => call(reference, [[table]], [[key]], [[column]])[0]![0]; // prettier-ignore

  // 2 in are 50.8 mm; TRGS 553 (read) gives the pendulum saw 820 m3/h; EN 12237's class ATC 6 is 0.0675 L/(s m2) per Pa^0.65.
  test("a column may be named without its unit: the first of that name is meant", () => {
    expect(firstOf("trade sizes", "2 in", "diameter")).toBeCloseTo(50.8, 9);
    expect(firstOf("trade sizes", "2 in", "Diameter (IN)")).toBeCloseTo(2, 9);
    expect(firstOf("machines", "pendulum saw", "airflow")).toBe(820);
    expect(firstOf("leakage", "atc 6", "coefficient")).toBe(0.0675);
  });

  test("the first column is one as well, and a value that is not there is an empty text", () => {
    expect(firstOf("leakage", "atc6", "key")).toBe("atc 6");
    expect(firstOf("leakage", "atc 6", "class")).toBe("");
  });

  test("a 0 for a key or a column counts as blank, as some hosts send one", () => {
    expect(call(reference, [["gates"]], [[0]], [[0]])).toEqual(reference([["gates"]]));
    expect(refusal(() => reference([[0]])).message).toMatch(/^table must be a name: materials, fittings, .*; got a blank cell$/); // prettier-ignore
  });

  test("a number is a key where a key begins with one, and no key otherwise", () => {
    expect(refusal(() => call(reference, [["trade sizes"]], [[2]])).message).toMatch(
      /^key must be a key of the table "trade sizes" \(nearest: "2 in", .*\); got "2"$/,
    );
    expect(call(reference, [["traverse"]], [["log-linear"]]).slice(1).map(([key]) => key)).toContain("log-linear 4"); // prettier-ignore
  });

  test("a table without other spellings has none: its label or its first column's word is no key", () => {
    expect(refusal(() => call(reference, [["machines"]], [["Pendulum (trim) saw, duct under the slot and catcher"]])).message).toMatch(/^key must be /); // prettier-ignore
    expect(refusal(() => call(reference, [["fittings"]], [["elbow smo"]])).message).toMatch(/^key must be /);
  });

  test("more than one cell is refused by the argument's name", () => {
    const two = [["materials"], ["gates"]];
    expect(refusal(() => reference(two)).message).toBe('table must be one cell; got "2 by 1 cells"');
    expect(refusal(() => reference([["gates"]], two)).message).toBe('key must be one cell; got "2 by 1 cells"');
    expect(refusal(() => reference([["gates"]], [["x"]], two)).message).toBe('column must be one cell; got "2 by 1 cells"'); // prettier-ignore
    expect(refusal(() => call(cautions, two)).message).toBe('topic must be one cell; got "2 by 1 cells"');
  });
});

describe("CONVERTUNIT", () => {
  // NIST SP 811, exact by definition: 1 cfm = 1.69901079552 m3/h; 1 fpm = 0.00508 m/s
  test.each([
    [1, "cfm", "m³/h", 1.69901079552],
    [1, "fpm", "m/s", 0.00508],
    [1, "in.w.g.", "Pa", 248.84],
    [1, "hp", "W", 745.699872],
    [12, "IN", " ft ", 1],
    [1, "lb/ft3", "kg/m3", 16.01846337396014],
  ])("%p %s in %s is %p", (value, from, to, expected) => {
    expect(Number(convertunit([[value]], [[from]], [[to]])[0]![0]) / expected).toBeCloseTo(1, 12);
  });

  test("a column with one pair of units gives a column", () => {
    const answers = convertunit([[1], [null], ["x"]], [["kPa"]], [["Pa"]]).map(([cell]) => shown(cell));
    expect(answers).toEqual([1000, "", '#VALUE! value must be a number; got "x"']);
  });

  test("kinds do not mix, and unknown units are answered with the nearest", () => {
    expect(refusal(() => convertunit([[1]], [["cfm"]], [["fpm"]])).message).toBe(
      'to must be a unit of airflow like "cfm", not of velocity; got "fpm"',
    );
    expect(refusal(() => convertunit([[1]], [["cfn"]], [["fpm"]])).message).toMatch(
      /^from must be a unit we know \(nearest: .*"cfm"/,
    );
    expect(refusal(() => convertunit([[1]], [[5]], [["fpm"]])).message).toBe("from must be a name; got 5");
  });
});

describe("CAUTIONS and ABOUT", () => {
  test("each caution has its source", () => {
    const [header, ...rows] = call(cautions);
    expect(header).toEqual(["Topic", "Caution", "Basis", "Source", "Where"]);
    expect(rows.length).toBeGreaterThan(8);
    for (const row of rows) for (const cell of row) expect(String(cell).length).toBeGreaterThan(1);
  });

  test("a topic gives its own rows, whatever the case", () => {
    const rows = call(cautions, [[" Health "]]).slice(1);
    expect(rows.length).toBeGreaterThan(0);
    expect(new Set(rows.map(([topic]) => topic))).toEqual(new Set(["health"]));
  });

  test("another topic is answered with the nearest", () => {
    expect(refusal(() => call(cautions, [["helth"]])).message).toMatch(
      /^topic must be a topic of the cautions \(nearest: "health", /,
    );
  });

  test.each([
    ["fire", "explosion", /smoulders|glow in a bin/],
    ["Ember", "explosion", /glow/],
    ["extinguisher", "explosion", /extinguisher/],
    ["grinding", "explosion", /Give grinding, buffing and welding a duct, filter and bin of their own/],
    ["venting", "explosion", /licensed/],
    ["solvents", "explosion", /thinner/],
    ["static", "electrical", /can light solvent vapour and fine dust/],
    ["PVC", "electrical", /plastic pipe/],
    ["carbon monoxide", "air", /fit an alarm/],
    ["make-up air", "air", /a way in/],
    ["asbestos", "work", /tested before you cut/],
    ["lead", "work", /paint/],
    ["roof", "work", /Skylights/],
    ["emptying", "work", /respirator/],
    ["compressed air", "work", /eyes and lungs/],
    ["over-speed", "machines", /greatest speed/],
  ])("the word %j leads to the topic %s", (word, topic, says) => {
    const [, ...rows] = call(cautions, [[word]]);
    expect(new Set(rows.map(([one]) => one))).toEqual(new Set([topic]));
    expect(rows.map(([, text]) => text).join(" ")).toMatch(says);
    expect(rows).toEqual(call(cautions, [[topic]]).slice(1));
  });

  test.each([
    ["fier", "explosion"],
    ["statik", "electrical"],
    ["stoves", "air"],
    ["asbestus", "work"],
  ])("a word that is none, %j, is answered with the topic of the nearest: %s", (word, topic) => {
    const { code, message } = refusal(() => call(cautions, [[word]]));
    expect(code).toBe("#VALUE!");
    expect(message).toMatch(
      new RegExp(`^topic must be a topic of the cautions \\(nearest: "${topic}", .*\\); got "${word}"$`),
    );
  });

  test("all topics come for a 0, as some hosts send a blank; a topic that is no text is refused with the topics", () => {
    expect(call(cautions, [[0]])).toEqual(call(cautions));
    expect(refusal(() => call(cautions, [[5]])).message).toBe(
      "topic must be one of machines, health, explosion, electrical, air, work, numbers, law; got 5",
    );
  });
});

describe("ABOUT", () => {
  // 1 in.w.g. is 248.84 Pa for water at 60 °F and standard air 0.075 lb/ft³ (NIST SP 811 for the pound and the foot).
  test("names the version of the package, the date of the tables and the numbers that all rests on", () => {
    const pound = 0.45359237;
    const foot = 0.3048;
    const rows = Object.fromEntries(about().map(([subject, unit, value]) => [String(subject), [unit, value]]));
    expect(rows["Duct Ledger"]).toEqual(["version", version]);
    expect(rows["Tables of"]).toEqual(["date", expect.stringMatching(/^20\d\d-\d\d-\d\d$/)]);
    expect(rows["Inch of water gauge (60 °F)"]).toEqual(["Pa", 248.84]);
    expect(rows["Standard air"]).toEqual(["kg/m³", expect.closeTo((0.075 * pound) / foot ** 3, 12)]);
    expect(rows["Viscosity of air, held constant"]).toEqual(["Pa s", 1.819e-5]);
  });

  test("says in words how it computes, and that an estimate is no measurement", () => {
    const words = about().slice(5);
    expect(words.map(([subject]) => subject)).toEqual([
      "Friction", "Fittings and hoods", "Suction", "Leaks", "BUDGET", "Units", "Estimates are no measurement",
    ]); // prettier-ignore
    const says = [
      /Darcy-Weisbach.*Colebrook-White from Re 4000, 64\/Re to Re 2000, linear between/,
      /K x velocity pressure.*own duct; where runs meet, by the momentum of their air; table values linear between printed points/,
      /deficit of total pressure.*static suction is that plus the velocity pressure/,
      /sharp-edged.*0\.6.*0\.65/,
      /each open hood gets the airflow it asks for; the strongest path at a junction governs/,
      /IP or SI.*last argument.*inside all is SI/,
      /local codes and licensed practice decide; see CAUTIONS/,
    ];
    expect(words.map(([, unit]) => unit)).toEqual(says.map(() => ""));
    says.forEach((pattern, row) => expect(words[row]![2]).toMatch(pattern));
  });
});
