import "../../support/customFunctions";
import { solve } from "../../../src/functions/systems/solve";
import { together } from "../../../src/functions/systems/together";
import { refusal } from "../../support/refusal";
import { byName, type Row, table, without } from "../../support/tables";
import { FAN, tightSaw } from "./shop";

const NEEDED = 3937; // fpm, 20 m/s: what wood dust needs by the table "transport"

const saw: Row = { ...tightSaw, Leak: 0.1 };
const sander: Row = { ...saw, Run: "sander", Length: 20, Gate: "shut" };
const lathe: Row = { ...saw, Run: "lathe", To: "limb", Length: 5, Gate: "shut", Airflow: 200 };
const limb: Row = { Run: "limb", To: "main", Diameter: 5, Length: 6 };
const main: Row = { Run: "main", To: "fan", Diameter: 7, Length: 10 };
const shop = [saw, sander, lathe, limb, main];

const answer = (runs: readonly Row[], most?: unknown, curve = FAN) =>
  together(table(runs), curve, most === undefined ? undefined : [[most]]);
const sets = (runs: readonly Row[], most?: unknown) => answer(runs, most).slice(1).map(([open]) => open); // prettier-ignore
const verdictOf = (runs: readonly Row[], open: string, most?: unknown) => byName(answer(runs, most))[open]!.Verdict;

// Losses only by K, on a straight curve of 8 in.w.g. at no airflow and 2000 cfm at none. K 0.5 in 4 in costs 0.6549 in.w.g. at
// 400 cfm (4583.7 fpm). One open: 8 - 0.004 Q = 4.093e-6 Q² at 992.4 cfm; both: 8 - 0.004 Q = 1.0233e-6 Q² at 1456.9 cfm.
// In the main of 8 in (0.34907 ft²) that is 2843 fpm and 4174 fpm.
const LINE = [[0, 8], [2000, 0]]; // prettier-ignore
const port: Row = { Run: "saw", To: "main", Diameter: 4, Hood: 0.5, Airflow: 400, Gate: "open" };
const twin: readonly Row[] = [port, { ...port, Run: "sander" }, { Run: "main", To: "fan", Diameter: 8 }];

describe("TOGETHER", () => {
  test("says what was worked by hand: one gate leaves the main too slow, and the other left open mends it", () => {
    const rows = byName(answer(twin, undefined, LINE));
    expect(Object.keys(rows)).toEqual(["saw", "sander", "saw; sander"]);
    expect(rows.saw).toEqual({
      ...{ Open: "saw", "Worst served hood": "saw", "Slowest run": "main" },
      "Its airflow": expect.closeTo(992.4, 0),
      "Of what it wants": expect.closeTo(248.1, 0),
      "Its velocity": expect.closeTo(2843, -0.5),
      "Of what its dust needs": expect.closeTo(72.2, 0),
      Verdict: "too slow for the dust: main; works with one more gate open: sander",
    });
    expect(rows["saw; sander"]).toMatchObject({
      "Its airflow": expect.closeTo(728.4, 0),
      "Its velocity": expect.closeTo(4174, -0.5),
      Verdict: "works together: each hood has its air, and dust keeps moving",
    });
  });

  // A hose and the pipe behind it, without length or K, cost nothing more: the same numbers by hand.
  test("tries the gate that stands a run further down than its hood", () => {
    const hose: Row = { ...port, Run: "hose", To: "saw", Gate: null };
    const drop: Row = { Run: "saw", To: "main", Diameter: 4, Gate: "open" };
    const rows = byName(answer([hose, drop, ...twin.slice(1)], undefined, LINE));
    expect(Object.keys(rows)).toEqual(["saw", "sander", "saw; sander"]);
    expect(rows.saw).toMatchObject({
      "Worst served hood": "hose",
      "Its airflow": expect.closeTo(992.4, 0),
      "Of what its dust needs": expect.closeTo(72.2, 0),
    });
    expect(rows["saw; sander"]).toMatchObject({ "Its airflow": expect.closeTo(728.4, 0) });
  });

  test("a hood without a gate of its own beside one with: two sets, and none twice", () => {
    const drill: Row = { ...lathe, Run: "drill", Gate: null };
    expect(sets([lathe, drill, { ...limb, Gate: "open" }, main])).toEqual(["lathe; limb", "limb"]);
  });

  // the limb of 8 in without length or K costs nothing: with both hoods open 728.4 cfm each and 4174 fpm, by hand as above
  const limbOf8: Row = { Run: "limb", To: "main", Diameter: 8, Gate: "open" };
  const [first, second, wide] = twin as [Row, Row, Row];

  test("works alone only where a single hood has its air: not of two behind one gate, nor beside one that is always open", () => {
    const both = "works together: each hood has its air, and dust keeps moving";
    const behind = [first, second].map((row): Row => ({ ...row, To: "limb", Gate: null }));
    expect(byName(answer([...behind, limbOf8, wide], undefined, LINE)).limb).toMatchObject({
      "Its airflow": expect.closeTo(728.4, 0),
      Verdict: both,
    });
    const beside = byName(answer([first, { ...second, Gate: null }, wide], undefined, LINE));
    expect(beside.saw).toMatchObject({ "Its airflow": expect.closeTo(728.4, 0), Verdict: both });
  });

  test("names one more gate also where opening it opens what another set opens", () => {
    const runs = [{ ...first, To: "limb" }, { ...second, To: "limb", Gate: null }, limbOf8, wide];
    const rows = byName(answer(runs, undefined, LINE));
    expect(Object.keys(rows)).toEqual(["saw; limb", "limb"]);
    expect(rows.limb!.Verdict).toBe("too slow for the dust: limb, main; works with one more gate open: saw");
    expect(rows["saw; limb"]!.Verdict).toMatch(/^works together/);
  });

  test("says in SI what it says in I-P", () => {
    const metric = (row: Row): Row => ({
      ...row,
      Diameter: Number(row.Diameter) * 25.4,
      ...(row.Airflow === undefined ? {} : { Airflow: Number(row.Airflow) * 1.69901082 }),
    });
    const line = [[0, 8 * 248.84], [2000 * 1.69901082, 0]]; // prettier-ignore
    const [inch, si] = [answer(twin, 2, LINE), together(table(twin.map(metric)), line, [[2]], undefined, [["SI"]])];
    expect(si[0]).toEqual([
      "Open", "Worst served hood", "Its airflow (m³/h)", "Of what it wants (%)", "Slowest run", "Its velocity (m/s)",
      "Of what its dust needs (%)", "Verdict",
    ]); // prettier-ignore
    si.slice(1).forEach((row, index) => {
      expect(row[7]).toBe(inch[index + 1]![7]);
      for (const share of [3, 6]) expect(row[share]).toBeCloseTo(Number(inch[index + 1]![share]), 4);
    });
  });

  test("each row is what SOLVE says with those gates open", () => {
    const rows = answer(shop, 3).slice(1);
    expect(rows).toHaveLength(7);
    for (const [open, hood, airflow, share, slowest, velocity, ofNeed] of rows) {
      const flows = byName(solve(table(shop), FAN, [[open]]));
      const names = String(open).split("; ");
      const shares = names.map((name) => {
        const got = Number(flows[name]!.Airflow) - Number(flows[name]!.Leak);
        return { name, got, share: (100 * got) / Number(shop.find(({ Run }) => Run === name)!.Airflow) };
      });
      const worst = shares.sort((a, b) => a.share - b.share)[0]!;
      expect([hood, airflow, share]).toEqual([
        worst.name,
        expect.closeTo(worst.got, 8),
        expect.closeTo(worst.share, 8),
      ]);
      const ways = [...names, "main", ...(names.includes("lathe") ? ["limb"] : [])];
      const slow = ways.sort((a, b) => Number(flows[a]!.Velocity) - Number(flows[b]!.Velocity))[0]!;
      const expected = Number(flows[slow]!.Velocity);
      expect([slowest, velocity]).toEqual([slow, expect.closeTo(expected, 8)]);
      expect(ofNeed).toBeCloseTo((100 * expected) / NEEDED, 1);
    }
  });

  test("lists one gate, then two, and more if asked, in the order of the table", () => {
    expect(sets(shop)).toEqual(["saw", "sander", "lathe", "saw; sander", "saw; lathe", "sander; lathe"]);
    for (const usual of [null, 0, ""]) expect(sets(shop, usual)).toEqual(sets(shop));
    expect(sets(shop, 1)).toEqual(["saw", "sander", "lathe"]);
    expect(sets(shop, 9).at(-1)).toBe("saw; sander; lathe");
  });

  test("opens a gate further down with the hoods whose air passes it, so that SOLVE takes the words as they stand", () => {
    const gated = shop.map((row) => (row === limb ? { ...limb, Gate: "shut" } : row));
    expect(sets(gated, 1)).toEqual(["saw", "sander", "lathe; limb"]);
    const flows = byName(solve(table(gated), FAN, [["lathe; limb"]]));
    expect(byName(answer(gated, 1))["lathe; limb"]!["Its airflow"]).toBeCloseTo(Number(flows.lathe!.Airflow) - Number(flows.lathe!.Leak), 8); // prettier-ignore
  });

  // the second of the twins stands behind a gate of its own limb, which costs nothing: the numbers by hand are those of the first test
  test("names with one more gate those on its way that must be opened, too", () => {
    const gate: Row = { Run: "wing", To: "main", Diameter: 4, Gate: "shut" };
    const rows = byName(answer([port, { ...port, Run: "sander", To: "wing" }, gate, twin[2]!], undefined, LINE));
    expect(Object.keys(rows)).toEqual(["saw", "sander; wing", "saw; sander; wing"]);
    expect(rows.saw!.Verdict).toBe("too slow for the dust: main; works with one more gate open: sander (with wing)");
    expect(rows["sander; wing"]!.Verdict).toBe("too slow for the dust: main; works with one more gate open: saw");
    expect(rows["saw; sander; wing"]).toMatchObject({ "Its airflow": expect.closeTo(728.4, 0) });
  });

  // the lathe asks for 10 cfm of a fan of 2000, the others for 5000
  test("names no gate as one more to open where that set leaves another one shut", () => {
    const greedy = ["saw", "sander"].map((Run): Row => ({ ...port, Run, Airflow: 5000 }));
    const runs: Row[] = [...greedy, { ...port, Run: "lathe", Airflow: 10 }, { Run: "main", To: "fan", Diameter: 6 }];
    const { lathe, ...others } = byName(answer(runs, 3, LINE));
    expect(lathe!.Verdict).toMatch(/^works alone/);
    const verdicts = Object.values(others).map(({ Verdict }) => Verdict);
    expect(verdicts).toEqual(["saw", "sander", "saw, sander", "saw", "sander", "saw, sander"].map((hoods) => `too little air at: ${hoods}`)); // prettier-ignore
  });

  test("counts a hood without a gate wherever its air flows", () => {
    const always = { ...port, Run: "sink", Gate: null, Airflow: 3000 };
    const rows = byName(answer([...twin, always], 1, LINE));
    expect(rows.saw).toMatchObject({ "Worst served hood": "sink" });
    expect(rows.saw!.Verdict).toBe("too little air at: sink");
  });

  test("holds a run with a device, and what lies behind it, to no velocity", () => {
    const wide = (device: Row): Row[] => [port, { ...twin[1]! }, { ...twin[2]!, ...device }];
    const separator = { "Device loss": 0.001, "Device airflow": 1000 };
    expect(byName(answer(wide(separator), 1, LINE)).saw!["Slowest run"]).toBe("saw");
    const before: Row[] = [...wide({ To: "cyclone" }), { Run: "cyclone", To: "stub", Diameter: 9, ...separator }, { Run: "stub", To: "fan", Diameter: 12 }]; // prettier-ignore
    expect(byName(answer(before, 1, LINE)).saw!["Slowest run"]).toBe("main");
  });

  test("judges nothing where no airflow is asked for, and says so", () => {
    expect(verdictOf(without("Airflow", twin), "saw", 1)).toMatch(
      /^no airflow is asked for at an open hood, so none is judged; too slow for the dust: /,
    );
  });

  test("says of a set without an answer why, and the others compute", () => {
    const weak = [[0, 9], [400, 8]]; // prettier-ignore
    const rows = byName(answer(shop, 3, weak));
    expect(rows["saw; sander; lathe"]!.Verdict).toMatch(/^the fan curve ends at 400 cfm/);
    expect(rows["saw; sander; lathe"]!["Worst served hood"]).toBe("");
    expect(rows.saw!.Open).toBe("saw");
  });

  test("asked again, the answer is equal but another object", () => {
    expect(answer(shop)).toEqual(answer(shop));
    expect(answer(shop)).not.toBe(answer(shop));
  });
});

describe("TOGETHER refuses", () => {
  const message = (runs: readonly Row[], most?: unknown): string => refusal(() => answer(runs, most)).message;

  test.each<[unknown, string]>([
    [2.5, "most must be a whole number of gates from 1; got 2.5"],
    [-1, "most must be a whole number of gates from 1; got -1"],
    ["two", 'most must be a number; got "two"'],
  ])("%p gates at once", (most, words) => {
    expect(message(shop, most)).toBe(words);
  });

  // 32 + 32 × 31 / 2 = 528
  test("more sets than it tries, with their count", () => {
    const many = Array.from({ length: 32 }, (_, place): Row => ({ ...port, Run: `hood ${place}` }));
    expect(message([...many, main])).toBe(
      "most must be small enough for at most 500 sets of open gates, and 32 gates make 528; got 2",
    );
  });

  test("a table without gates, and one whose gates are all blank", () => {
    expect(message(without("Gate", shop))).toBe(
      'runs must be a table with a column "Gate": there is no gate to open or shut; got a blank cell',
    );
    const blank = shop.map((run): Row => ({ ...run, Gate: null }));
    expect(message(blank)).toBe("runs must be a table in which a run has a gate; got a blank cell");
  });
});
