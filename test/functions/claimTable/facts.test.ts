import { claimFacts } from "../../../src/reference/claimFacts";
import { refusal } from "../../support/refusal";
import { allRowsOf, call, rowsOf, told } from "./claimCalls";

describe("CLAIM takes any of its facts", () => {
  test.each([
    [{ airflow: 1200 }, ["Airflow on a system"]],
    [{ airflow: 1200, "rated point": "800 at 4" }, []],
    [{ airflow: 1200, "inlet diameter": 6 }, ["Airflow on a system", "Velocity in the inlet"]],
    [{ pressure: 5, "impeller diameter": 12, speed: 3450 }, ["Pressure against the tip speed"]],
    [{ "rated point": "800 at 4", "inlet diameter": 6 }, ["Velocity in the inlet"]],
    [{ sound: "72 dB" }, ["Sound"]],
    [{ "filter rating": 1 }, ["Filter rating"]],
    [{ airflow: 600, "hose diameter": 4 }, ["Airflow on a system", "Velocity in the hose"]],
    [{ efficiency: 0.7 }, ["Efficiency"]],
    [{ "motor power": 2, volts: 120, amps: 15 }, ["Motor power against the supply"]],
    [{ "rated point": "800 at 4", volts: 120, amps: 15 }, ["Air power against the supply"]],
    [{ airflow: 900, "impeller diameter": 12, speed: 3450 }, ["Airflow on a system", "Airflow of its wheel"]],
    [{ airflow: 900, "impeller diameter": 12 }, ["Airflow on a system"]],
    [{ airflow: 900, "impeller diameter": 12, speed: 3450, "wheel kind": "axial" }, ["Airflow on a system"]],
    [{ speed: 3450 }, ["No check"]],
    [{ "inlet diameter": 6 }, ["No check"]],
    [{ "peak hp": 5 }, ["Motor power"]],
    [
      { "peak hp": 5, volts: 120, amps: 15, "rated point": "800 at 4" },
      ["Motor power", "Air power against the supply"],
    ],
    [{ "hose diameter": 4, pressure: 5 }, ["No check"]],
    [{ "filter area": 30 }, ["No check"]],
    [{ "impeller diameter": 12, speed: 3450 }, ["No check"]],
    [{ pressure: 5, "motor power": 2 }, ["No check"]],
    [{ volts: 120, amps: 15 }, ["No check"]],
    [{ airflow: 1200, "motor power": 2 }, ["Airflow on a system"]],
  ] as const)("%j: %j", (facts, checks) => {
    const found = Object.keys(rowsOf(facts));
    expect(found).toEqual(checks.length === 0 ? ["No check"] : checks);
  });

  test("facts that allow no check say what is wanting", () => {
    expect(call([["speed", 3450]]).slice(1)).toEqual([
      ["No check", "", "", "", "cannot tell", "These facts allow no check: most need the airflow or the pressure too.", ""],
    ]); // prettier-ignore
  });

  test.each(["fact", "Facts", "NAME (of it)", "what"])('under the heading "%s"', (word) => {
    expect(call([[word, "IP"], ["airflow", 1200]])).toEqual(call([["airflow", 1200]])); // prettier-ignore
    expect(call([[null, 0], [word, "value"], ["airflow", 1200]])).toEqual(call([["airflow", 1200]])); // prettier-ignore
  });

  test("the ends of what such a thing can be are taken", () => {
    for (const speed of [100, 60_000]) expect(Object.keys(rowsOf({ speed }))).toEqual(["No check"]);
  });

  test("names in any case, with a unit in brackets, under a heading, between blank rows and blank values", () => {
    const plainly = call([
      ["airflow", 1200],
      ["inlet diameter", 6],
    ]);
    expect(
      call([
        [null, 0],
        ["Fact", "Value (IP)"],
        [" AIRFLOW (cfm)", "1200"],
        ["", null],
        ["motor power (hp)", null],
        ["speed", 0],
        ["Inlet-Diameter [in]", 6],
      ]),
    ).toEqual(plainly);
  });

  test.each(["Sound (dB(A))", "noise [dB (A)]", "Sound level (dB(A)) (max)", "sound (dBA)"])(
    "%s is a sound",
    (name) => {
      expect(call([[name, "75 dB"], ["airflow", 1200]])).toEqual(call([["sound", "75 dB"], ["airflow", 1200]])); // prettier-ignore
    },
  );

  test.each([
    ["airflow (dB(A))", "dBA"],
    ["airflow (dB)", "dB"],
  ])("%s has the unit of a sound, so a bare number there is refused", (name, unit) => {
    const why = `Airflow in row 1 of the facts must be typed with its unit, for "${unit}" in its name is none of it (cfm, m³/h, m³/s, m³/min, L/s, L/min); got 80.`;
    expect(call([[name, 80], ["speed", 3450]])[1]).toEqual(["Airflow, row 1", 80, "", "", "not read", why, ""]); // prettier-ignore
  });

  test("every name and every other spelling means one fact", () => {
    const names = claimFacts.flatMap(({ key, aliases }) => [key, ...aliases]);
    expect(new Set(names.map((name) => name.replace(/-/g, " "))).size).toBe(names.length);
  });

  test.each([
    ["CFM", "airflow"],
    ["Max. pressure", "pressure"],
    ["water lift", "shut-off pressure"],
    ["RPM", "speed"],
  ])("%s is understood", (name, key) => {
    if (name === "Max. pressure") return expect(told([name, 5]).why).toMatch(/nearest: "pressure"/); // a full stop is no part of a name
    const partner = { airflow: 1000, pressure: 5, "impeller diameter": 12, speed: 3000 };
    const value = key === "airflow" ? 1000 : key === "speed" ? 3000 : 5;
    const rest = Object.fromEntries(Object.entries(partner).filter(([one]) => one !== key));
    expect(Object.values(rowsOf({ ...rest, [name]: value })).map(({ verdict }) => verdict)).not.toContain("not read");
  });
});

describe("a number may have its unit", () => {
  // 1 in.w.g. is 248.84 Pa, 1 m³/h 0.588578 cfm, 1 hp 745.7 W, 1 m² 10.7639 ft².
  test.each<[string, string, string, number, string | null]>([
    ["airflow", "1700 CFM", "Airflow on a system", 1700, null],
    ["airflow", "1,700 cfm", "Airflow on a system", 1700, null],
    ["airflow", "1,700", "Airflow on a system", 1700, null],
    ["airflow", "1000 m³/h", "Airflow on a system", 589, null],
    ["airflow", "1000 m3/hr", "Airflow on a system", 589, null],
    ["airflow", "1700 SCFM", "Airflow on a system", 1700, null],
    ["airflow", "1000 cfm", "Airflow on a system", 1700, "SI"],
    ["airflow", "1700,5", "Airflow on a system", 1700.5, null],
  ])("%s %s", (name, typed, check, claimed, units) =>
    expect(rowsOf({ [name]: typed }, units)[check]!.claimed).toBe(claimed),
  );

  const wheel = { "impeller diameter": 12, speed: 3450 };
  test.each([
    ["140 in.w.g.", 140],
    ["140 in H2O", 140],
    ['140" WC', 140],
    ["140 inches of water", 140],
    ["140 in. water lift", 140],
    ["2488.4 Pa", 10],
    ["2.4884 kPa", 10],
    ["253.75 mm H2O", 10], // 253.75 x 9.80665 = 2488.4 Pa
  ])("a pressure of %s", (typed, claimed) =>
    expect(rowsOf({ ...wheel, pressure: typed })["Pressure against the tip speed"]!.claimed).toBeCloseTo(claimed, 3),
  );

  test.each([
    [{ "motor power": "1.5 HP" }, 1.5],
    [{ "motor power": "1118.549808 W" }, 1.5],
    [{ "motor power": "1,5 hp" }, 1.5],
    [{ "motor power": ".75 hp" }, 0.75],
  ])("%j", (facts, claimed) =>
    expect(rowsOf({ ...facts, volts: "120 V", amps: "15 amps" })["Motor power against the supply"]!.claimed).toBe(
      claimed,
    ),
  );

  test.each([
    ["65 %", 65],
    [65, 65],
    [0.65, 65], // as a spreadsheet holds 65 %
    ["65 percent", 65],
  ])("an efficiency of %p", (typed, claimed) =>
    expect(rowsOf({ efficiency: typed }).Efficiency!.claimed).toBe(claimed),
  );

  test.each(["1000 at 8", "1000 cfm at 8 in.w.g.", "1,000 CFM @ 8 in H2O", "1000@8", "1699.01 m³/h at 1990.72 Pa"])(
    "a rated point of %s",
    (typed) => {
      // 1000 x 8 / 6349.6 = 1.26 hp
      expect(rowsOf({ "rated point": typed, hp: 2 })["Air power against the motor"]!.claimed).toBe(1.26);
    },
  );
});

// u = π 1 ft 3450/min: 14.6 in.w.g. as in the table of hands; read as 3.45 rpm it would be none.
test.each([
  "3450 U/min",
  "3.450 U/min",
  "3450 r/min",
  "3450 rev/min",
  "3450 min⁻¹",
  "3450 min^-1",
  "3450 /min",
  "3450 1/min",
  "3450 revolutions per minute",
])("a speed of %s is 3450 rpm", (speed) =>
  expect(rowsOf({ pressure: 5, "impeller diameter": 12, speed })["Pressure against the tip speed"]).toEqual(
    rowsOf({ pressure: 5, "impeller diameter": 12, speed: 3450 })["Pressure against the tip speed"],
  ),
);

test("an efficiency is the fan's, and its row says so", () =>
  expect(rowsOf({ efficiency: 82 }).Efficiency!.why).toBe(
    "The fan's own, not the motor's. Above 85 % we doubt it; nothing gives out more than it takes in.",
  ));

test.each(["1 micron", "99.9 %", "MERV 15", "H13"])("a filter's rating of %s alone cannot be judged", (rating) =>
  expect(rowsOf({ "filter rating": rating })["Filter rating"]).toMatchObject({
    verdict: "cannot tell",
    why: "A size or a share alone says nothing without the share of dust caught at each size and the test standard; a class of a standard says both, where a test report shows it for the whole filter.",
  }),
);

describe("a bare number has the unit that its row's name says", () => {
  // The same factors: 1000 m³/h is 589 cfm, 1000 cfm is 1699 m³/h, told as 1700, 1118.549808 W is 1.5 hp or 1.12 kW, 253.75 mm of water is 10 in.w.g.
  test.each<[string, unknown, number, string | null]>([
    ["Airflow (m³/h)", 1000, 589, null],
    ["airflow [m3/hr]", "1,000", 589, null],
    ["[max] airflow (m³/h)", 1000, 589, null],
    ["airflow (cfm)", 1000, 1700, "SI"],
    ["CFM", 1000, 1700, "SI"],
    ["CFM", 1000, 1000, null],
    ["airflow (m³/h)", "1000 cfm", 1000, null], // what stands behind the number counts
    ["airflow (max)", 1000, 1000, null], // no unit
    ["airflow (in)", "1000 cfm", 1000, null],
    ["airflow (in) (m³/h)", 1000, 589, null],
    ["CFM (in)", 1000, 1700, "SI"],
  ])("%s %s: %s", (name, typed, claimed, units) =>
    expect(rowsOf({ [name]: typed }, units)["Airflow on a system"]!.claimed).toBe(claimed),
  );

  test("power and pressure", () => {
    const supply = { volts: 120, amps: 15 };
    const power = (facts: object, units: string | null) =>
      rowsOf({ ...facts, ...supply }, units)["Motor power against the supply"]!.claimed;
    expect(power({ "motor power (W)": 1118.549808 }, null)).toBe(1.5);
    expect(power({ HP: 1.5 }, "SI")).toBe(1.12);
    const wheel = { "impeller diameter": 12, speed: 3450 };
    const tip = rowsOf({ ...wheel, "pressure (mm H2O)": 253.75 })["Pressure against the tip speed"]!;
    expect(tip.claimed).toBeCloseTo(10, 3);
    // Inches of a pressure are those of water: 10 of them 2488.4 Pa; 253.75 mm of water as many.
    for (const name of ["pressure (in)", "water lift (inches)", "pressure (mm WC)"]) {
      const typed = name.endsWith("(mm WC)") ? 253.75 : 10;
      const inSI = rowsOf({ "impeller diameter": 300, speed: 3450, [name]: typed }, "SI");
      expect(inSI["Pressure against the tip speed"]!.claimed).toBeCloseTo(2488.4, -1);
    }
  });

  // 1000 m³/h is 588.578 cfm, 2000 Pa 8.0373 in.w.g.: 588.578 x 8.0373 / 6349.6 = 0.745 hp. In kW 1000 cfm at 8 in.w.g. are 0.94.
  test.each<[string, string, number, string | null]>([
    ["rated point (m³/h at Pa)", "1000 at 2000", 0.745, null],
    ["rated point (m³/h @ kPa)", "1000 at 2", 0.745, null],
    ["rated point (m³/h, Pa)", "1000 cfm at 1990.72", 1.26, null],
    ["duty point (cfm at in)", "1000 at 8", 0.94, "SI"],
    ["rated point (cfm)", "1000 at 1990.72", 0.94, "SI"],
    ["rated point (claimed)", "1000 at 8", 1.26, null],
  ])("%s %s: %s", (name, typed, claimed, units) =>
    expect(rowsOf({ [name]: typed, hp: 2 }, units)["Air power against the motor"]!.claimed).toBe(claimed),
  );

  test.each([
    ["airflow (in)", 1200, 'Airflow in row 1 of the facts must be typed with its unit, for "in" in its name is none of it (cfm, m³/h, m³/s, m³/min, L/s, L/min); got 1200.'], // prettier-ignore
    ["airflow (fpm)", 4000, 'Airflow in row 1 of the facts must be typed with its unit, for "fpm" in its name'],
    ["airflow (m³)", 1200, 'Airflow in row 1 of the facts must be typed with its unit, for "m³" in its name'],
    ["pressure (mm)", 200, 'Pressure in row 1 of the facts must be typed with its unit, for "mm" in its name'],
    ["pressure (in. Hg)", 6, 'Pressure in row 1 of the facts must be typed with its unit, for "in. Hg" in its name'],
    ["motor (A)", 8, 'Motor power in row 1 of the facts must be typed with its unit, for "A" in its name'],
    ["speed (fpm)", "5000", 'Speed in row 1 of the facts must be typed with its unit, for "fpm" in its name is none of it (rpm)'], // prettier-ignore
  ])("%s %s is refused: nobody can tell what it is", (name, typed, sentence) =>
    expect(told([name, typed]).why.slice(0, sentence.length)).toBe(sentence),
  );
});

describe("digits that can be read in two ways", () => {
  const told2 = (name: string, typed: string, units: string | null = null): unknown[] => call([[name, typed]], units)[1]!; // prettier-ignore
  // In Germany 12.500 is twelve thousand five hundred, in America 12 and a half; 12,500 the other way round.
  test.each([
    ["airflow", "12.500 m³/h", "12500 or as 12.5"],
    ["airflow", "12,500 m³/h", "12500 or as 12.5"],
    ["airflow", "12.500", "12500 or as 12.5"],
    ["airflow", "100,000 cfm", "100000 or as 100"], // more than a workshop's, but nobody types 100 so
    ["airflow", "100.000 m³/h", "100000 or as 100"],
    ["pressure", "60,000 Pa", "60000 or as 60"],
    ["pressure", "25.000 Pa", "25000 or as 25"],
    ["motor power", "150,000 W", "150000 or as 150"],
    ["speed", "100,000 rpm", "100000 or as 100"],
    ["filter area", "1.500 m²", "1500 or as 1.5"],
    ["rated point", "1700 m³/h at 25.000 Pa", "25000 or as 25"],
  ])("%s %s is refused: %s", (name, typed, either) =>
    expect(told2(name, typed)[5]).toMatch(new RegExp(` must be written as ${either}; got "`)),
  );

  test.each<[string, string, number, string]>([
    ["airflow", "1.200 m³/h", 1200, "SI"], // 1.2 m³/h is no airflow of a fan
    ["airflow", "1,200 m³/h", 1200, "SI"],
    ["airflow", "1.250 m³/s", 4500, "SI"], // 1250 m³/s is none either: 1.25 x 3600
    ["airflow", "0.350 m³/s", 1260, "SI"],
    ["airflow", "0,350 m³/s", 1260, "SI"],
    ["airflow", "12.5 m³/h", 12.5, "SI"],
    ["airflow", "12.5000 m³/h", 12.5, "SI"],
  ])("%s %s is %p m³/h", (name, typed, claimed, units) => expect(told2(name, typed, units)[1]).toBe(claimed));

  test("a nought before the comma parts no thousands", () =>
    expect(told2("airflow", "0,350 m³/h", "SI")[4]).toBe("not read"));

  test("a cell's own number is never in doubt", () => {
    const facts = [["airflow", 12.345]];
    expect(call(facts, "SI")[1]![1]).toBe(12.345);
  });

  test("one outside what such a thing can be says in which unit it was read", () => {
    expect(told(["motor power (kW)", 1500]).why).toBe(
      "Motor power in row 1 of the facts must be from 0.0134 hp to 134 hp (a bare number is read in the unit of its name); got 1500.",
    );
  });
});

describe("a row that cannot be read says why, and the others are judged", () => {
  test.each<[readonly [string, unknown], string]>([
    [["airflw", 1200], 'Name in row 1 of the facts must be the name of a fact (nearest: "airflow", '],
    [["filter ratin", "5 micron"], 'Name in row 1 of the facts must be the name of a fact (nearest: "filter rating", '],
    [
      ["airflow", "1200 cubits"],
      'Airflow in row 1 of the facts must be a number, bare (cfm) or with its unit: cfm, m³/h, m³/s, m³/min, L/s, L/min; got "1200 cubits".',
    ],
    [
      ["pressure", "140 mm"],
      "Pressure in row 1 of the facts must be a number, bare (in.w.g.) or with its unit: in.w.g., in.w.g. 4 °C",
    ],
    [
      ["inlet diameter", "2 x 4 in"],
      'Inlet diameter in row 1 of the facts must be a number, bare (in) or with its unit: in, ft, yd, mm, cm, m; of two alike inlets 1.41 times the diameter of one; got "2 x 4 in".',
    ],
    [["airflow", "lots"], "Airflow in row 1 of the facts must be a number, bare (cfm) or with its unit: cfm, "],
    [
      ["airflow", -5],
      "Airflow in row 1 of the facts must be from 4.24 cfm to 42378 cfm (a bare number is read in cfm); got -5.",
    ],
    [
      ["pressure", 2500],
      "Pressure in row 1 of the facts must be from 0.1 in.w.g. to 201 in.w.g. (a bare number is read in in.w.g.); got 2500.",
    ],
    [
      ["speed", 1],
      "Speed in row 1 of the facts must be from 100 rpm to 60000 rpm (a bare number is read in rpm); got 1.",
    ],
    [
      ["efficiency", 3],
      "Efficiency in row 1 of the facts must be from 5 % to 150 % (a bare number is read in %); got 3.",
    ],
    [
      ["filter area", "1,100 ft²"],
      'Filter area in row 1 of the facts must be written as 1100 or as 1.1; got "1,100 ft²".',
    ],
    [["stages", 2.5], "Stages in row 1 of the facts must be a whole number; got 2.5."],
    [["sound", true], "Sound in row 1 of the facts must be a number or a text; got TRUE."],
    [
      ["wheel kind", "big"],
      'Wheel kind in row 1 of the facts must be one of backward, radial, forward-curved, side-channel, axial; got "big".',
    ],
    [["phases", 2], "Phases in row 1 of the facts must be one of 1, 3; got 2."],
    [
      ["rated point", 1000],
      'Rated point in row 1 of the facts must be an airflow at a pressure in one cell, such as "1000 at 8"; got 1000.',
    ],
    [
      ["rated point", "1000 at noon"],
      "Rated point in row 1 of the facts must be a number, bare (in.w.g.) or with its unit: ",
    ],
    [["airflow", { type: "Error", basicValue: "#N/A" }], "Airflow in row 1 of the facts must be "],
  ])("%j", (row, sentence) => {
    const fault = told(row);
    expect(fault).toMatchObject({ verdict: "not read", allowed: "", unit: "" });
    expect(fault.why.slice(0, sentence.length)).toBe(sentence);
    const beside = call([["filter rating", 5], [...row]]);
    expect(beside[1]![0]).toMatch(/^(Row 2|[A-Z].*, row 2)$/);
    expect(beside.map(([check, , , , verdict]) => [check, verdict])).toEqual([
      ["Check", "Verdict"],
      [beside[1]![0], "not read"],
      ["Filter rating", "cannot tell"],
      ["In short", ""],
    ]); // prettier-ignore
  });

  test.each<[unknown, string]>([
    [true, "Name in row 1 of the facts must be the name of a fact; got TRUE."],
    [7, "Name in row 1 of the facts must be the name of a fact; got 7."],
    [
      { type: "Error", basicValue: "#N/A" },
      "Name in row 1 of the facts must be the name of a fact; got the error #N/A.",
    ],
    [null, "Name in row 1 of the facts must be the name of a fact; got a blank cell."],
  ])("a name that is %p", (name, sentence) => {
    const answer = call([[name, 5], ["sound", 72]]); // prettier-ignore
    expect(answer[1]!.slice(0, 6)).toEqual(["Row 1", 5, "", "", "not read", sentence]);
    expect(answer[2]![0]).toBe("Sound");
  });

  test("a heading is one only in the first row, and with a value beside it", () => {
    for (const first of [
      ["name", 5],
      ["vacuum", "value"],
    ])
      // prettier-ignore
      expect(call([first, ["sound", 72]])[1]!.slice(4, 6)).toEqual([
        "not read",
        expect.stringMatching(/^Name in row 1 of the facts must be the name of a fact \(nearest: /),
      ]);
  });

  test("a fact given twice is judged by neither, whatever their order", () => {
    const answer = call([["airflow", 900], [null, null], ["Airflow (cfm)", 1200], ["sound", 72]]); // prettier-ignore
    expect(answer.map(([check]) => check)).toEqual(["Check", "Airflow, row 1", "Airflow, row 3", "Sound", "In short"]);
    expect(answer[2]![5]).toBe(
      "Airflow in row 3 of the facts must be given once; it stands in rows 1 and 3; got 1200.",
    );
    expect(Object.keys(allRowsOf({ airflow: 900, "air flow": null, sound: 72 }))).toContain("Airflow on a system");
  });

  test("a text that begins as a formula stays the text it was", () => {
    expect(told(["airflow", "=1+1"])).toMatchObject({ claimed: "=1+1", verdict: "not read" });
  });

  test("millimetres among inch-pound facts are caught", () => {
    expect(told(["inlet diameter", 150]).why).toMatch(/^Inlet diameter in row 1 .* read in in\); got 150\.$/);
    expect(told(["inlet diameter", 6], "SI").why).toMatch(/ read in mm\); got 6\.$/);
    expect(told(["motor power", 1500], "SI").why).toMatch(/ read in kW\); got 1500\.$/);
  });

  test.each([
    [[["airflow", null]], "facts must be at least one of airflow, free-air airflow, rated point, "],
    [[["airflow", 1200, "cfm"]], 'facts must be two columns, name and value; got "1 by 3 cells"'],
  ])("what is no list of facts is refused as a whole %#", (facts, message) => {
    const said = refusal(() => call(facts));
    expect(said.code).toBe("#VALUE!");
    expect(said.message.slice(0, message.length)).toBe(message);
  });
});
