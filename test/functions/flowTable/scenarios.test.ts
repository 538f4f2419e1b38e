import "../../support/customFunctions";
import { scenarios } from "../../../src/functions/systems/scenarios";
import { solve } from "../../../src/functions/systems/solve";
import { refusal } from "../../support/refusal";
import { byName, type Row, table, without } from "../../support/tables";
import { FAN, tightSaw } from "./shop";

const saw: Row = { ...tightSaw, Leak: 0.1 };
const sander: Row = { ...saw, Run: "sander", Length: 20, Gate: "shut" };
const lathe: Row = { ...saw, Run: "lathe", To: "limb", Length: 5, Gate: "shut" };
const limb: Row = { Run: "limb", To: "main", Diameter: 5, Length: 6 };
const main: Row = { Run: "main", To: "fan", Diameter: 7, Length: 10 };
const shop = table([saw, sander, lathe, limb, main]);

const answer = (sets: unknown[][], ...rest: any[][][]) => scenarios(shop, FAN, sets, ...rest);
const names = (sets: unknown[][]) => answer(sets).map(([name]) => name);

describe("SCENARIOS' table", () => {
  test("headers: each hood's airflow and velocity, the fan, leaks, the slowest run", () => {
    expect(answer([["saw"]])[0]).toEqual([
      "Scenario", "saw airflow (cfm)", "saw velocity (fpm)", "sander airflow (cfm)", "sander velocity (fpm)",
      "lathe airflow (cfm)", "lathe velocity (fpm)", "Fan airflow (cfm)", "Fan pressure (in.w.g.)", "Lost to leaks (%)",
      "Slowest run", "Note",
    ]); // prettier-ignore
  });

  test("a main is no hood, however the runs that join it spell its name", () => {
    const spelled = [
      { ...saw, To: "Main-Run" },
      { ...main, Run: "main run" },
    ];
    const [header] = scenarios(table(spelled), FAN, [["all"]]);
    expect(header!.slice(0, 4)).toEqual(["Scenario", "saw airflow (cfm)", "saw velocity (fpm)", "Fan airflow (cfm)"]);
  });

  test.each(["saw", "saw; lathe", "all", "none"])('a row is what SOLVE says with "%s" open', (open) => {
    const row = byName(answer([["case", open]])).case!;
    const { Fan, ...runs } = byName(solve(shop, FAN, [[open]]));
    expect([row["Fan airflow"], row["Fan pressure"]]).toEqual([Fan!.Airflow, Fan!["Static suction"]]);
    expect(Number(row["Lost to leaks"])).toBeCloseTo((Number(Fan!.Leak) / Number(Fan!.Airflow)) * 100, 9);
    for (const name of ["saw", "sander", "lathe"]) {
      const { Airflow, Leak, Velocity, Gate } = runs[name]!;
      const shut = Gate === "shut";
      expect(row[`${name} velocity`]).toBe(shut ? "" : Velocity);
      expect(row[`${name} airflow`]).toEqual(shut ? "" : expect.closeTo(Number(Airflow) - Number(Leak), 9));
    }
  });

  test("names the slowest run as a share of what its dust needs, in words", () => {
    const { one } = byName(answer([["one", "saw"]]));
    const runs = byName(solve(shop, FAN, [["saw"]]));
    const velocity = Math.round(Number(runs.main!.Velocity)); // the wide main carries one hood's air
    expect(one!["Slowest run"]).toBe(`main: ${velocity} fpm, dust settles: "wood dust" needs 3937 fpm`);
  });

  // 4 in ducts that carry far more than their dust needs; a chimney is wide and slow, but carries no dust of a hood's.
  test("says where even the slowest run is fast enough, and leaves the discharge side out", () => {
    const narrow = [
      { ...saw, Leak: null },
      { ...main, Diameter: 4 },
      { Run: "chimney", To: null, Diameter: 20, Side: "discharge" },
    ];
    const runs = byName(solve(table(narrow), FAN));
    expect(Number(runs.chimney!.Velocity)).toBeLessThan(3937);
    const { both, ...rest } = byName(scenarios(table(narrow), FAN, [["both", "saw"]]));
    const velocity = Math.round(Number(runs.saw!.Velocity));
    expect(velocity).toBeGreaterThan(3937);
    expect(both).toMatchObject({ "Slowest run": `saw: ${velocity} fpm, fast enough`, Note: "" });
    expect(rest).toEqual({});
    expect(Object.keys(both!)).not.toContain("chimney airflow");
  });

  test("with everything shut tight no air moves, and none of it is lost", () => {
    const tight = [{ ...saw, Leak: null }, main];
    const { shut } = byName(scenarios(table(tight), FAN, [["shut", "none"]]));
    expect(shut).toEqual({
      ...{ Scenario: "shut", "saw airflow": "", "saw velocity": "", "Fan airflow": 0, "Fan pressure": 11 },
      ...{ "Lost to leaks": 0, "Slowest run": "", Note: "" },
    });
  });

  test("opening more gates gives the fan more and each hood less", () => {
    const rows = answer([["saw"], ["saw; sander"], ["saw; sander; lathe"]]).slice(1);
    const [atSaw, atFan] = [1, 7].map((column) => rows.map((row) => row[column] as number));
    expect([...atSaw!].sort((a, b) => b - a)).toEqual(atSaw);
    expect([...atFan!].sort((a, b) => a - b)).toEqual(atFan);
  });
});

describe("scenarios may be written", () => {
  let straight: unknown[][];
  beforeAll(() => {
    straight = answer([["saw", "saw"], ["both", "saw; sander"]]); // prettier-ignore
  });

  test("as one column, a scenario called by its runs", () => {
    expect(names([["saw"], ["saw, sander"]])).toEqual(["Scenario", "saw", "saw, sander"]);
  });

  test("with names before them and with a heading", () => {
    expect(names([["Scenario", "Open runs"], ["ripping", "saw"], ["both", "saw; sander"]])).toEqual(["Scenario", "ripping", "both"]); // prettier-ignore
    expect(answer([["Scenario", "Open"], ["saw", "saw"], ["both", "sander,SAW"]])).toEqual(straight); // prettier-ignore
  });

  test("with a scenario called like a run, alone or first of several", () => {
    expect(straight.map(([name]) => name)).toEqual(["Scenario", "saw", "both"]);
    expect(answer([["saw", "saw"]])).toEqual(answer([["saw"]]));
  });

  test("as a column of marks per run, with or without names", () => {
    expect(answer([["Name", "saw", "sander"], ["saw", "x", ""], ["both", 1, true]])).toEqual(straight); // prettier-ignore
    expect(names([["sander", "saw"], ["x", "no"], [null, "x"]])).toEqual(["Scenario", "sander", "saw"]); // prettier-ignore
    expect(answer([["Name", "saw", "sander"], ["saw", "yes", "shut"], ["both", "on", "open"]])).toEqual(straight); // prettier-ignore
  });

  test.each(["no", "Shut", "closed", "FALSE", "-", 0, false, null, ""])(
    "with %p as the mark of a shut gate",
    (mark) => {
      expect(answer([["Name", "saw", "sander"], ["saw", "x", mark], ["both", "x", "x"]])).toEqual(straight); // prettier-ignore
    },
  );

  test("as marks without names, a scenario called by the runs that it opens", () => {
    expect(names([["sander", "saw"], ["x", "x"], ["x", 0]])).toEqual(["Scenario", "sander; saw", "sander"]); // prettier-ignore
  });

  test.each(["Scenario", "scenarios", "Name", "set"])(
    'with "%s" over the names, whatever stands over the runs',
    (word) => {
      expect(answer([[word, "gates"], ["saw", "saw"], ["both", "saw; sander"]])).toEqual(straight); // prettier-ignore
    },
  );

  test("with rows of marks that are blank or 0, which stay blank", () => {
    expect(names([["sander", "saw"], ["x", 0], [0, 0], [null, 0], [0, "x"]])).toEqual(["Scenario", "sander", "", "", "saw"]); // prettier-ignore
  });

  test("with blank rows, which stay blank", () => {
    const rows = answer([["saw"], [null], ["sander"]]);
    expect(rows[2]).toEqual(new Array(12).fill(""));
    expect(names([["saw"], [null], ["sander"]])).toEqual(["Scenario", "saw", "", "sander"]);
  });

  test("with nothing open", () => {
    const { none } = byName(answer([["none"]]));
    expect(none!["saw airflow"]).toBe("");
    expect(none!["Lost to leaks"]).toBeCloseTo(100, 9);
    expect(none!["Slowest run"]).toBe("");
  });
});

describe("SCENARIOS refuses", () => {
  const message = (sets: unknown[][], runs = shop): string => refusal(() => scenarios(runs, FAN, sets)).message;

  test("a run that the table does not have, with the nearest names", () => {
    expect(message([["saw; sandr"]])).toBe(
      'scenarios must be names of runs in the table (nearest: "sander", "saw", "lathe"); got "sandr"',
    );
    expect(message([["Name", "saw", "drill"], ["x", 1, 1]])).toBe(
      'scenarios must be headed by names of runs in the table (nearest: "limb", "main", "saw"); got "drill"',
    ); // prettier-ignore
  });

  test("no scenario, too many columns, a cell that is an error", () => {
    expect(message([[null]])).toBe("scenarios must be at least one row with the names of open runs; got a blank cell");
    expect(message([["one", "saw; lathe", "saw"], ["two", "sander; lathe", "why"]])).toMatch(/^scenarios must be /); // prettier-ignore
    const error = new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable);
    expect(message([[error]])).toBe("scenarios must be names of runs; got the error #N/A");
    expect(message([[true]])).toBe("scenarios must be names of runs; got TRUE");
  });

  test("a table that has no gates", () => {
    const [, row] = scenarios(table(without("Gate", [saw, main])), FAN, [["saw"]]);
    expect(row!.at(-1)).toBe(
      'runs must be a table with a column "Gate": there is no gate to open or shut; got a blank cell',
    );
  });
});

test("a scenario without an answer says why in its note, and the others compute", () => {
  const weak = [[0, 9], [400, 8]]; // prettier-ignore
  const [, one, all, none] = scenarios(shop, weak, [["case one", "saw"], ["everything", "all"], ["nothing", "none"]]); // prettier-ignore
  expect(all).toEqual([
    "everything",
    ...new Array<string>(10).fill(""),
    expect.stringMatching(/^the fan curve ends at 400 cfm/),
  ]);
  expect(none![0]).toBe("nothing");
  expect(Number(none![7])).toBeGreaterThan(0);
  expect(one![0]).toBe("case one");
});

test("a hump in the fan's curve is said in the note", () => {
  // 10, 1.5, 9, 0 in.w.g. at 0, 100, 200, 400 cfm; K 22.0 in 4 in asks for 7.2 in.w.g. at 200 cfm (see solve.test.ts)
  const hump = [[0, 10], [100, 1.5], [200, 9], [400, 0]]; // prettier-ignore
  const runs = table([{ Run: "saw", To: "fan", Diameter: 4, Hood: 0.93, K: 21.07, Gate: "open" }]);
  expect(scenarios(runs, hump, [["saw"]])[1]!.at(-1)).toMatch(
    /^the curve has a hump: 3 points meet, two are stable; from rest the fan stays at [\d.]+ cfm$/,
  );
});

test("asked again, the answer is equal but another object", () => {
  const [first, second] = [answer([["saw"]]), answer([["saw"]])];
  expect(second).toEqual(first);
  expect(second).not.toBe(first);
});
