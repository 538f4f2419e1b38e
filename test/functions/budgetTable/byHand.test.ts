/** BUDGET's table, every column of it, worked by hand. */
import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { byName, type Row, table } from "../../support/tables";

const DENSITY = 1.2; // [kg/m3]
const answerOf = (rows: readonly Row[], density: number = DENSITY) =>
  byName(budget(table(rows), [[density]], [["SI"]]));

/** The wall [mm] for which Colebrook gives a Darcy factor of 0.032: e/D = 3.7 (10^(-1/(2 sqrt f)) - 2.51/(Re sqrt f)). */
const wallFor = (airflow: number, diameter: number): number => {
  const reynolds = (DENSITY * 4 * airflow) / (Math.PI * diameter * 1.819e-5);
  return 1000 * diameter * 3.7 * (10 ** (-1 / (2 * Math.sqrt(0.032))) - 2.51 / (reynolds * Math.sqrt(0.032)));
};

// All in 200 mm: A = 0.03141593 m2. 360 m3/h = 0.1 m3/s: V = 3.183099 m/s, p_v = 0.6 V^2 = 6.079271 Pa; 720 m3/h: 6.366198 m/s, 24.317084 Pa.
// a: entry K 1 and K 1 are 12.158542 Pa; friction 0.032 x 2/0.2 x 6.079271 = 1.945367 Pa: 14.103909 Pa at the junction.
// b: entry K 1 and K 2: 18.237813 Pa, the most. a would draw 360 sqrt(18.237813/14.103909) = 409.3733 m3/h, and needs 22.7 % less.
// main: friction 0.032 x 5/0.2 x 24.317084 = 19.453667 Pa, K 0.5: 12.158542 Pa, device 40 (720/1440)^1 = 20 Pa: 51.612209 Pa.
// chimney: K 1, 24.317084 Pa. The fan: 18.237813 + 51.612209 = 69.850022 Pa on the suction side, with the chimney 94.167106 Pa.
const run = { Diameter: 200 };
const a: Row = { Run: "a", To: "main", ...run, Length: 2, Material: wallFor(0.1, 0.2), Hood: 1, K: 1, Airflow: 360 };
const b: Row = { Run: "b", To: "main", ...run, Hood: 1, K: 2, Airflow: 360 };
const idle: Row = { Run: "idle", To: "main", ...run, Hood: 1 };
const shut: Row = { Run: "shut", To: "main", ...run, Gate: "shut" };
const beyond: Row = { Run: "beyond", To: "shut", ...run, Hood: 1, Airflow: 360 };
const main: Row = {
  ...{ Run: "main", To: "fan", ...run, Length: 5, Material: wallFor(0.2, 0.2), K: 0.5 },
  ...{ "Device loss": 40, "Device airflow": 1440, "Device exponent": 1 },
};
const chimney: Row = { Run: "chimney", To: null, ...run, K: 1, Side: "discharge" };

const settles = 'dust settles: "wood dust" needs 20 m/s';
const none = { Friction: "", Fittings: "", Device: "", "Run loss": "", "Path loss to fan": "", Governs: "", "Airflow when balanced": "" }; // prettier-ignore
const near = (value: number): number => expect.closeTo(value, 5) as number;

test.each<[string, Record<string, number | string>]>([
  [
    "a",
    {
      Airflow: near(360),
      Velocity: near(3.183099),
      "Velocity pressure": near(6.079271),
      Friction: near(1.945367),
      Fittings: near(12.158542),
      Device: 0,
      "Run loss": near(14.103909),
      "Suction at its end": near(14.103909),
      "Path loss to fan": near(65.716118),
      Governs: "no",
      "Airflow when balanced": expect.closeTo(409.3733, 3) as number,
      Note: `${settles}; resize: its path needs 23 % less suction than the junction has`,
    },
  ],
  [
    "b",
    {
      Airflow: near(360),
      Friction: 0,
      Fittings: near(18.237813),
      Device: 0,
      "Run loss": near(18.237813),
      "Suction at its end": near(18.237813),
      "Path loss to fan": near(69.850022),
      Governs: "yes",
      "Airflow when balanced": near(360),
      Note: settles,
    },
  ],
  [
    "idle",
    {
      Airflow: 0,
      Velocity: 0,
      "Velocity pressure": 0,
      ...none,
      "Suction at its end": near(18.237813),
      Note: "no airflow is asked for here",
    },
  ],
  [
    "shut",
    {
      Airflow: 0,
      Velocity: 0,
      "Velocity pressure": 0,
      ...none,
      "Suction at its end": near(18.237813),
      Note: "gate shut: only its leak flows",
    },
  ],
  ["beyond", { Airflow: 0, Velocity: 0, "Velocity pressure": 0, ...none, Note: "a shut gate cuts it off" }],
  [
    "main",
    {
      Airflow: near(720),
      Velocity: near(6.366198),
      "Velocity pressure": near(24.317084),
      Friction: near(19.453667),
      Fittings: near(12.158542),
      Device: near(20),
      "Run loss": near(51.612209),
      "Suction at its end": near(69.850022),
      "Path loss to fan": near(51.612209),
      Governs: "yes",
      "Airflow when balanced": near(720),
      Note: settles,
    },
  ],
  [
    "chimney",
    {
      Airflow: near(720),
      Velocity: near(6.366198),
      "Velocity pressure": near(24.317084),
      Friction: 0,
      Fittings: near(24.317084),
      Device: 0,
      "Run loss": near(24.317084),
      "Suction at its end": "",
      "Path loss to fan": "",
      Governs: "",
      "Airflow when balanced": "",
      Note: "",
    },
  ],
  [
    "Fan",
    {
      Airflow: near(720),
      Velocity: "",
      "Velocity pressure": "",
      Friction: "",
      Fittings: "",
      Device: "",
      "Run loss": near(24.317084),
      "Suction at its end": near(69.850022),
      "Path loss to fan": near(94.167106),
      Governs: "",
      "Airflow when balanced": "",
      Note: "fan asked for: 720 m³/h at 94.2 Pa fan static pressure",
    },
  ],
])("%s", (name, expected) => expect(answerOf([a, b, idle, shut, beyond, main, chimney])[name]).toMatchObject(expected));

// b alone: K 3 at 0.9 kg/m3 are 3 x 0.45 V^2 = 13.678360 Pa; a curve is given for 1.201385 kg/m3, so there 18.258867 Pa.
test("in thin air the fan's note says what to look for on a curve for standard air", () => {
  expect(answerOf([{ ...b, To: "fan" }], 0.9).Fan!.Note).toBe(
    "fan asked for: 360 m³/h at 13.7 Pa fan static pressure in this air; on a curve for standard air look for 18.3 Pa",
  );
});

describe("notes", () => {
  const noteOf = (facts: Row, name = "c") =>
    answerOf([b, { Run: "c", To: "main", ...run, ...facts }, main])[name]!.Note;

  test("of a run without air tell a hood that asks for none from a run that no hood asks through", () => {
    expect(noteOf({ Hood: 1 })).toBe("no airflow is asked for here");
    expect(noteOf({ Gate: "open" })).toBe("no airflow is asked for here");
    expect(noteOf({})).toBe("no open hood asks for air through it");
  });

  test("of a chimney with a leak say that dust comes out of it", () => {
    const noteAt = (facts: Row) => answerOf([b, main, { ...chimney, ...facts }]).chimney!.Note;
    expect(noteAt({ Leak: 100 })).toBe("a leak on the discharge side blows dust out and is not counted");
    expect(noteAt({})).toBe("");
  });

  test("stand one after the other", () => {
    const typed = answerOf([b, { ...main, Airflow: 500 }]).main!.Note;
    expect(typed).toBe(`the airflow typed here is not used: what joins it adds up; ${settles}`);
  });
});
