import "../../support/customFunctions";
import { fanpressure } from "../../../src/functions/fan/fanpressure";
import { solve } from "../../../src/functions/systems/solve";
import { rememberingAnswers } from "../../../src/functions/remember";
import { refusal } from "../../support/refusal";
import { relative } from "../../support/printed";
import { byName, type Row, table, without } from "../../support/tables";
import { FAN, tightSaw } from "./shop";

const saw: Row = { ...tightSaw, Leak: 0.5 };
const sander: Row = { ...saw, Run: "sander", Length: 20, Flex: 3, Fittings: "elbow 1.5 x2", Leak: 1 };
const main: Row = { Run: "main", To: "fan", Diameter: 6, Length: 10, Fittings: "branch 45" };
const shop = [saw, sander, main];

const solved = (rows: readonly Row[], curve: unknown = FAN, ...rest: unknown[]) =>
  byName(solve(table(rows), curve as any[][], ...(rest.map((cell) => [[cell]]) as any[][][])));
const NO_LEAK = "no leak is counted: none before the fan is entered for the gates as they are";
const number = (cell: string | number | undefined): number => (typeof cell === "number" ? cell : NaN);

describe("SOLVE's table", () => {
  test("headers carry their unit; a row per row of the table, blank ones too, then the fan", () => {
    const answer = solve(table([saw, { Run: null }, sander, main]), FAN);
    expect(answer[0]).toEqual([
      "Run", "Airflow (cfm)", "Velocity (fpm)", "Static suction (in.w.g.)", "Leak (cfm)", "Run loss (in.w.g.)", "Gate", "Note",
    ]); // prettier-ignore
    expect(answer.map(([name]) => name)).toEqual(["Run", "saw", "", "sander", "main", "Fan"]);
    expect(new Set(answer.map((row) => row.length))).toEqual(new Set([8]));
  });

  // 200 mm (A = 0.0314159 m2) in air of 1.2 kg/m3: rho/(2 A^2) = 607.927. Hood K 1, fittings K 1: 1215.854 Q^2 against a fan
  // of 1000 - 1000 Q in that air: Q = 0.584548 m3/s = 2104.37 m3/h, V = 18.6068 m/s, p = 415.452 Pa, P = 207.726 Pa,
  // p_v = 207.726 Pa: static suction 415.452 Pa. The curve is given for 1.2013848 kg/m3, so 1001.1540 Pa there.
  test("one hood, worked by hand", () => {
    const hand = solve(table([{ Run: "saw", To: "fan", Diameter: 200, Hood: 1, K: 1 }]), [[0, 1001.154], [3600, 0]], undefined, [[1.2]], [["SI"]]); // prettier-ignore
    const { saw: run, Fan } = byName(hand);
    const expected: Record<string, number> = {
      ...{ Airflow: 2104.37, Velocity: 18.6068, "Static suction": 415.452, "Run loss": 415.452 },
    };
    for (const [column, value] of Object.entries(expected))
      expect(relative(number(run![column]), value)).toBeLessThan(1e-5);
    expect(run).toMatchObject({ Leak: 0, Gate: "", Note: 'dust settles: "wood dust" needs 20 m/s' });
    expect(relative(number(Fan!.Airflow), 2104.37)).toBeLessThan(1e-5);
    expect(relative(number(Fan!["Static suction"]), 415.452)).toBeLessThan(1e-5);
  });

  // The same hood with a chimney: K 1 and a device of 100 Pa at 1800 m3/h, 400 Q^2: 2223.781 Q^2 = 1000 - 1000 Q, Q = 0.4824332 m3/s
  // = 1736.760 m3/h, V = 15.35633 m/s, p_v = 141.4900 Pa: 282.9801 Pa before the fan, 234.5868 Pa after it, 517.5668 Pa together.
  test("a chimney carries the fan's air, and has neither suction nor leak: the one that it is said to have is named as not counted", () => {
    // rated in standard air, 1.201385 kg/m3: 100.1154 Pa there is 100 Pa in air of 1.2
    const device = { "Device loss": 100.1154, "Device airflow": 1800, "Device exponent": 2 };
    const chimney: Row = { Run: "chimney", To: null, Diameter: 200, K: 1, Side: "discharge", Leak: 100, ...device };
    const answer = solve(table([{ Run: "saw", To: "fan", Diameter: 200, Hood: 1, K: 1 }, chimney]), [[0, 1001.154], [3600, 0]], undefined, [[1.2]], [["SI"]]); // prettier-ignore
    const near = (value: number): unknown => expect.closeTo(value, 2);
    const says = 'dust settles: "wood dust" needs 20 m/s';
    expect(answer.slice(1)).toEqual([
      ["saw", near(1736.76), near(15.356), near(282.98), 0, near(282.98), "", says],
      [
        "chimney",
        near(1736.76),
        near(15.356),
        "",
        "",
        near(234.587),
        "",
        "a leak on the discharge side blows dust out and is not counted",
      ],
      ["Fan", near(1736.76), "", near(517.567), 0, "", "", NO_LEAK],
    ]);
  });

  test("a run beyond a shut gate has no suction; one whose own gate is shut has what its leak feels", () => {
    const limb: Row = { Run: "limb", To: "main", Diameter: 5, Gate: "shut", Leak: 0.1 };
    const rows = solved([{ ...saw, To: "limb" }, limb, sander, main]);
    expect(rows.saw!["Static suction"]).toBe("");
    expect(number(rows.limb!["Static suction"])).toBeGreaterThan(0);
  });

  test("the fan's row adds up the leaks, and its share is theirs of the fan's air", () => {
    const { Fan, saw: one, sander: two, main: three } = solved(shop);
    const leaks = number(one!.Leak) + number(two!.Leak);
    expect(relative(number(Fan!.Leak), leaks)).toBeLessThan(1e-12);
    expect(relative(number(three!.Airflow), number(one!.Airflow) + number(two!.Airflow))).toBeLessThan(1e-9);
    const share = Number(/^([\d.]+) % of the air is lost to leaks$/.exec(String(Fan!.Note))?.[1]);
    expect(Math.abs(share - (leaks / number(Fan!.Airflow)) * 100)).toBeLessThan(0.06);
  });

  test("ducts of which no leak is known are not told as tight; one that only a shut gate has counts with the gate", () => {
    const gated: Row = { ...saw, Leak: null, "Leak shut": 0.5 };
    expect(solved([{ ...gated, Gate: "open" }, main]).Fan!.Note).toBe(NO_LEAK);
    expect(solved([{ ...gated, Gate: "shut" }, sander, main]).Fan!.Note).toMatch(
      /^[\d.]+ % of the air is lost to leaks$/,
    );
  });

  test("sealing a leak gains its hoods less than the leak: the suction rises everywhere", () => {
    const [before, after] = [solved(shop), solved([saw, { ...sander, Leak: null }, main])];
    const atHood = (answer: typeof before, name: string) => number(answer[name]!.Airflow) - number(answer[name]!.Leak);
    const gained = ["saw", "sander"].map((name) => atHood(after, name) - atHood(before, name));
    expect(Math.min(...gained)).toBeGreaterThan(0);
    expect(gained[0]! + gained[1]!).toBeLessThan(number(before.sander!.Leak));
    expect(number(after.saw!.Leak)).toBeGreaterThan(number(before.saw!.Leak));
  });

  test("I-P and SI are the same physics", () => {
    const si: Row[] = shop.map((row) => ({
      ...row,
      Diameter: Number(row.Diameter) * 25.4,
      Length: Number(row.Length) * 0.3048,
      Flex: Number(row.Flex ?? 0) * 0.3048,
      Airflow: Number(row.Airflow ?? 0) * 1.69901079552,
      Leak: Number(row.Leak ?? 0) * 645.16,
    }));
    const curve = FAN.slice(1).map(([airflow, pressure]) => [
      Number(airflow) * 1.69901079552,
      Number(pressure) * 248.84,
    ]);
    const [inches, metric] = [solved(shop), solved(si, curve, null, null, "SI")];
    for (const [name, run] of Object.entries(inches)) {
      const other = metric[name]!;
      expect(relative(number(other.Airflow) / 1.69901079552, number(run.Airflow))).toBeLessThan(1e-12);
      expect(relative(number(other["Static suction"]) / 248.84, number(run["Static suction"]))).toBeLessThan(1e-12);
    }
  });
});

// From the room to the junction behind c the total pressure falls by what c costs, its entry with it, whichever way the air goes
// (physics.md, the network, 1 to 3): Run loss is the deficit there, m's static suction less its velocity pressure.
test("the run loss of a hood out of which air blows leads to the suction of the run that it joins", () => {
  const rows: Row[] = [
    { Run: "a", To: "m2", Diameter: 6, Length: 0.2, Fittings: "branch 90", Hood: 0.03 },
    { Run: "b", To: "m2", Diameter: 6, Length: 0.2, Hood: 2 },
    { Run: "c", To: "m", Diameter: 6, Length: 0.2, Fittings: "branch 30", Hood: 20 },
    { Run: "m", To: "m2", Diameter: 2, Length: 2, Fittings: "branch 30" },
    { Run: "m2", To: "fan", Diameter: 6, Length: 2 },
  ];
  const curve = [[0, 14], [400, 13.5], [800, 12], [1200, 9], [1600, 4], [1800, 0]]; // prettier-ignore
  const { a, b, c, m, m2 } = solved(rows, curve);
  expect(number(c!.Airflow)).toBeLessThan(-1);
  const velocityPressure = (fpm: number): number => (0.5 * 1.2013848 * (fpm * 0.00508) ** 2) / 248.84; // 0.075 lb/ft3, 1 fpm, 1 in.w.g.
  const deficit = (run: Record<string, string | number> | undefined): number =>
    number(run!["Static suction"]) - velocityPressure(number(run!.Velocity));
  expect(number(c!["Run loss"])).toBeCloseTo(deficit(m), 6);
  expect(deficit(m) + number(m!["Run loss"])).toBeCloseTo(deficit(m2), 6);
  for (const run of [a, b]) expect(number(run!["Run loss"])).toBeCloseTo(deficit(m2), 6);
});

describe("SOLVE's open runs", () => {
  const gates = (open: unknown) => Object.values(solved(shop, FAN, open)).map(({ Gate }) => Gate);

  test.each<[unknown, string[]]>([
    [null, ["open", "open", "", ""]],
    ["saw", ["open", "shut", "", ""]],
    ["SAW; Sander", ["open", "open", "", ""]],
    ["sander,saw", ["open", "open", "", ""]],
    ["all", ["open", "open", "", ""]],
    ["none", ["shut", "shut", "", ""]],
  ])("%j", (open, expected) => expect(gates(open)).toEqual(expected));

  test("one name per cell in a range is understood as well", () => {
    expect(solve(table(shop), FAN, [["saw"], ["sander"]])).toEqual(solve(table(shop), FAN, [["saw; sander"]]));
  });

  test("shutting a gate by name is typing it shut", () => {
    expect(solved(shop, FAN, "saw")).toEqual(solved([saw, { ...sander, Gate: "shut" }, main]));
  });

  test("an unknown one is refused with the nearest names", () => {
    expect(refusal(() => solve(table(shop), FAN, [["saw; sender"]]))).toEqual({
      code: "#VALUE!",
      message: 'open must be names of runs in the table (nearest: "sander", "saw", "main"); got "sender"',
    });
  });

  test("a table without a column Gate has nothing to open", () => {
    expect(refusal(() => solve(table(without("Gate", shop)), FAN, [["saw"]])).message).toBe(
      'runs must be a table with a column "Gate": there is no gate to open or shut; got a blank cell',
    );
  });
});

describe("SOLVE's notes say", () => {
  const noteOf = (name: string, rows: readonly Row[], ...rest: unknown[]) => solved(rows, FAN, ...rest)[name]!.Note;

  test("what an owner needs at a gate", () => {
    expect(noteOf("sander", shop, "saw")).toBe("gate shut: only its leak flows");
    expect(noteOf("main", shop, "none")).toBe("no open hood: only leaks flow");
    const limb: Row = { Run: "limb", To: "main", Diameter: 5, Gate: "shut" };
    expect(noteOf("saw", [{ ...saw, To: "limb" }, limb, sander, main])).toBe("a shut gate cuts it off");
    const tight = shop.map((row) => ({ ...row, Leak: null }));
    expect(noteOf("main", tight, "none")).toBe("no open hood: nothing flows");
    expect(noteOf("Fan", tight, "none")).toBe("everything is shut: no air moves");
  });

  // "wood dust" needs 20 m/s (3937 fpm) and wears over 28 m/s (5512 fpm), DGUV Information 209-044.
  test("whether dust settles, the air is too fast, and what share of the wanted airflow arrives", () => {
    const wide = solved([{ ...saw, Diameter: 6, Airflow: 2000 }, main], [[0, 2], [800, 0]]); // prettier-ignore
    expect(number(wide.main!.Velocity)).toBeLessThan(3937);
    expect(wide.main!.Note).toBe('dust settles: "wood dust" needs 3937 fpm');
    const gets = Math.round(((number(wide.saw!.Airflow) - number(wide.saw!.Leak)) / 2000) * 100);
    expect(wide.saw!.Note).toBe(
      `dust settles: "wood dust" needs 3937 fpm; the hood gets ${gets} % of the 2000 cfm wanted`,
    );
    const fast = solved([
      { ...saw, Airflow: null },
      { ...main, Diameter: 4 },
    ]);
    expect(number(fast.saw!.Velocity)).toBeGreaterThan(5512);
    expect(fast.saw!.Note).toBe("too fast: over 5512 fpm only costs pressure and wears the duct");
  });

  test("that a leak carries more than a tenth of a run's air", () => {
    const { saw: run } = solved([{ ...saw, Leak: 2, Airflow: null }, main]);
    const share = Math.round((number(run!.Leak) / number(run!.Airflow)) * 100);
    expect(share).toBeGreaterThan(10);
    expect(String(run!.Note)).toMatch(new RegExp(`its leak carries ${share} % of its air$`));
  });

  // 10, 1.5, 9, 0 in.w.g. at 0, 100, 200, 400 cfm; with 4 in and K 0.93 + K so that 7.2 in.w.g. goes with 200 cfm: p_v at 200 cfm in
  // 4 in (2291.8 fpm) is (2291.8/4006.5)^2 = 0.32721 in.w.g.; K = 22.004 - 0.93.
  test("that a curve has a hump and which point is stable", () => {
    const hump = [[0, 10], [100, 1.5], [200, 9], [400, 0]]; // prettier-ignore
    const { Fan } = solved([{ Run: "saw", To: "fan", Diameter: 4, Hood: 0.93, K: 21.07 }], hump);
    const at = Math.round(number(Fan!.Airflow));
    expect(at).toBeGreaterThan(200);
    const words = `${NO_LEAK}; the curve has a hump: fan and system meet at 3 points, and two are stable: ${at} cfm, which is given here, and `;
    expect(Fan!.Note).toContain(words);
    const less = Number(/([\d.]+) cfm, at which a fan that starts from rest stays$/.exec(String(Fan!.Note))?.[1]);
    // there the system, 7.2 (Q/200)^2 in.w.g., has the fan's pressure again, given to three figures
    expect(less).toBeLessThan(100);
    expect(Math.abs(Number(fanpressure(hump, [[less]])[0]![0]) - 7.2 * (less / 200) ** 2)).toBeLessThan(0.05);
  });
});

describe("SOLVE has no answer, and says why", () => {
  // A duct of 20 m behind a hood that costs next to nothing: the airflow hangs on the last digits of the pressures.
  test("a system in which the sweeps end without balance, with the run that is worst off", () => {
    const rows = [{ Run: "wide", To: "fan", Diameter: 20000 }, { Run: "hood", To: "wide", Diameter: 2000, Hood: 1e-15 }]; // prettier-ignore
    const { code, message } = refusal(() => solve(table(rows), [[0, 2500], [720, 2400], [1800, 1700], [2880, 0]], undefined, [[1.2]], [["SI"]])); // prettier-ignore
    expect(code).toBe("#N/A");
    expect(message).toMatch(/^no convergence: after \d+ sweeps the worst is run "wide" \(row 2\)$/);
  });

  test("a fan whose curve ends too soon, or starts too late", () => {
    expect(refusal(() => solve(table(shop), [[0, 9], [100, 8.5]]))).toEqual({
      code: "#N/A",
      message: "the fan curve ends at 100 cfm, and this system would take more air",
    }); // prettier-ignore
    expect(refusal(() => solve(table(shop), [[900, 0.2], [1000, 0.1]]))).toEqual({
      code: "#N/A",
      message: "the fan curve starts at 900 cfm, and this system would take less air",
    }); // prettier-ignore
  });
});

describe("SOLVE refuses", () => {
  const message = (...args: unknown[]): string => refusal(() => solve(...(args as [any[][], any[][]]))).message;

  test("a curve of one point, a table that is none, a density that is not air, other units", () => {
    expect(message(table(shop), [[0, 9]])).toBe("curve must be at least two points of airflow and pressure; got 1");
    expect(message([[5]], FAN)).toMatch(/^runs must be a table whose first row has the headers Run, To and Diameter/);
    expect(message(table(shop), FAN, null, [[62.4]])).toMatch(/^density must be from .* lb\/ft³; got 62\.4$/);
    expect(message(table(shop), FAN, null, null, [["imperial"]])).toBe('units must be "IP" or "SI"; got "imperial"');
  });

  test("what BUDGET refuses, with the row named", () => {
    expect(message(table([{ ...saw, To: "man" }, main]), FAN)).toMatch(/^To of run "saw" \(row 2\) must be/);
    expect(message(table([{ ...saw, Length: -3 }, main]), FAN)).toBe(
      'Length of run "saw" (row 2) must be from 0 to 10000 ft; got -3',
    );
  });

  test("more runs than a workshop has", () => {
    const rows = Array.from({ length: 20_001 }, (_, index) => [`r${index}`, index === 0 ? "fan" : "r0", 4]);
    expect(message([["Run", "To", "Diameter"], ...rows], FAN)).toBe("runs must be at most 20000 rows; got 20001");
  });
});

describe("answers are remembered", () => {
  test("the same inputs give the same content, but not the same object: a host may change what it gets", () => {
    const [first, second] = [solve(table(shop), FAN), solve(table(shop), FAN)];
    expect(second).toEqual(first);
    expect(second).not.toBe(first);
    first[1]![1] = "spoilt";
    second[0]!.length = 0;
    expect(solve(table(shop), FAN)[1]![1]).not.toBe("spoilt");
    expect(solve(table(shop), FAN)[0]).toHaveLength(8);
  });

  test("a changed cell, curve, gate, density or unit is another question", () => {
    const airflow = (...args: unknown[]) => solve(...(args as [any[][], any[][]])).at(-1)![1] as number;
    const usual = airflow(table(shop), FAN);
    const others = [
      airflow(table([saw, { ...sander, Leak: 1.01 }, main]), FAN),
      airflow(table(shop), [...FAN.slice(0, -1), [1401, 0]]),
      airflow(table(shop), FAN, [["saw"]]),
      airflow(table(shop), FAN, null, [[0.07]]),
    ];
    for (const other of others) expect(Math.abs(other / usual - 1)).toBeGreaterThan(1e-9);
    expect(airflow(table(shop), FAN)).toBe(usual);
  });

  test("each question is computed once, until sixteen others came after it; a failure is never kept", () => {
    const remember = rememberingAnswers();
    const asked: number[] = [];
    const ask = (question: number) => remember([question], () => (asked.push(question), [[question]]));
    ask(0);
    ask(0);
    expect(asked).toEqual([0]);
    for (let question = 1; question <= 15; question++) ask(question);
    ask(0); // still known, and now the youngest
    expect(asked).toHaveLength(16);
    ask(16); // pushes 1 out
    ask(0);
    expect(asked).toHaveLength(17);
    ask(1);
    expect(asked).toHaveLength(18);
    const fail = () => remember(["bad"], () => { throw new Error("no answer"); }); // prettier-ignore
    expect(fail).toThrow("no answer");
    expect(remember(["bad"], () => [["better"]])).toEqual([["better"]]);
  });

  test("a blank, a 0 and numbers that are not finite are different inputs", () => {
    const remember = rememberingAnswers();
    const answers = [null, NaN, Infinity, "NaN-", 0].map((input, index) => remember([input], () => [[index]])[0]![0]);
    expect(answers).toEqual([0, 1, 2, 3, 4]);
  });
});
