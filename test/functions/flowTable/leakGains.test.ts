import "../../support/customFunctions";
import { leakgains } from "../../../src/functions/systems/leakgains";
import { solve } from "../../../src/functions/systems/solve";
import { refusal } from "../../support/refusal";
import { byName, type Row, table } from "../../support/tables";
import { FAN, tightSaw } from "./shop";

const sander: Row = { ...tightSaw, Run: "sander", Length: 20, Leak: 0.2 };
const lathe: Row = { ...tightSaw, Run: "lathe", Gate: "shut", "Leak shut": "shut packed" };
const main: Row = { Run: "main", To: "fan", Diameter: 6, Length: 10 };
const stack: Row = { Run: "stack", To: "outside", Diameter: 7, Length: 4 };
const shop = [tightSaw, sander, lathe, main, stack];

type Log = readonly (readonly [gate: unknown, before: unknown, after: unknown, suction: unknown])[];
const column = (log: Log, place: number): unknown[][] => log.map((row) => [row[place]]);
const answer = (log: Log, units = "IP", runs: unknown[][] = table(shop), curve: unknown[][] = FAN): unknown[][] =>
  leakgains(runs, curve, column(log, 0), column(log, 1), column(log, 2), column(log, 3), undefined, undefined, [[units]]); // prettier-ignore
const noteOf = (...row: Log[number]): unknown => answer([row])[1]![4];

/*
 * The opening by hand: A = Q / (0.6 sqrt(2 S / rho)), 1 cfm = 0.3048³/60 m³/s, 1 in.w.g. = 248.84 Pa (rounded: its 1e-6 is below the
 * tolerance), standard air 1.2041 kg/m³ or 0.075 lb/ft³ = 1.20139 kg/m³, 1 in = 0.0254 m.
 */
const LB_PER_FT3 = 0.45359237 / 0.3048 ** 3;
const opening = (cfm: number, inches: number): number =>
  (cfm * 0.3048 ** 3) / 60 / (0.6 * Math.sqrt((2 * inches * 248.84) / (0.075 * LB_PER_FT3))) / 0.0254 ** 2;

/** What SOLVE lets in at the hoods, with the leak of a run typed into the table. */
function typed(run: string, area: number): { readonly air: number; readonly leaks: number } {
  const runs = shop.map((row) => (row.Run === run ? { ...row, Leak: area, "Leak shut": null } : row));
  const rows = byName(solve(table(runs), FAN, undefined, [[0.075]]));
  const air = ["saw", "sander"].reduce((sum, hood) => sum + Number(rows[hood]!.Airflow) - Number(rows[hood]!.Leak), 0);
  return { air, leaks: Number(rows.Fan!.Leak) };
}

describe("LEAKGAINS", () => {
  test.each([
    ["saw", 30, 5, 3],
    ["sander", 24, "still", 2.5],
    ["lathe", 41, 12, 4.2],
    ["main", 18, 3, 6],
  ])("of %s is the difference of SOLVE with the leak typed as found, and as mended", (gate, before, after, suction) => {
    const [, row] = leakgains(table(shop), FAN, [[gate]], [[before]], [[after]], [[suction]], undefined, [[0.075]]);
    const [had, has] = [typed(gate, opening(before, suction)), typed(gate, opening(Number(after) || 0, suction))];
    expect(row![0]).toBe(gate);
    expect(Math.abs(Number(row![1]) - had.air)).toBeLessThan(1e-3);
    expect(Math.abs(Number(row![2]) - has.air)).toBeLessThan(1e-3);
    expect(Number(row![3])).toBeCloseTo(Number(row![2]) - Number(row![1]), 9);
    expect(Number(row![3])).toBeGreaterThan(0);
    expect(Number(row![3])).toBeLessThan(had.leaks - has.leaks); // a tighter system resists the fan more
    expect(row![4]).toBe("");
  });

  // The row puts its own readings in the leak's place, so what the table has there changes nothing.
  test("stands where the table as it is has no answer, its leak being more than the curve reaches", () => {
    const short = FAN.slice(0, -1);
    const leaking = (area: number) => table(shop.map((row) => (row.Run === "main" ? { ...row, Leak: area } : row)));
    expect(refusal(() => solve(leaking(40), short)).message).toContain("the fan curve ends at 1200 cfm");
    const [with40, with1] = [40, 1].map((area) => answer([["main", 18, 3, 6]], "IP", leaking(area), short)[1]!);
    [1, 2, 3].forEach((place) => expect(Number(with40![place])).toBeCloseTo(Number(with1![place]), 8));
    expect(Number(with40![3])).toBeGreaterThan(0);
  });

  // The suction of SOLVE's answer, typed: the same row but for the note that says which was taken.
  test.each(["saw", "sander", "lathe", "main"])(
    "as solved is what SOLVE has as the suction of %s, and it says so",
    (gate) => {
      const suction = Number(byName(solve(table(shop), FAN))[gate]!["Static suction"]);
      expect(suction).toBeGreaterThan(0);
      const [solvedRow, typedRow] = [" As Solved", suction].map((there) => answer([[gate, 12, 5, there]])[1]!);
      [1, 2, 3].forEach((place) => expect(Number(solvedRow![place])).toBeCloseTo(Number(typedRow![place]), 8));
      expect(typedRow![4]).toBe("");
      expect(solvedRow![4]).toMatch(/^taken at the suction that is solved there, [\d.]+ in\.w\.g\.$/);
      expect(Number(/[\d.]+(?= in)/.exec(String(solvedRow![4]))![0])).toBeCloseTo(suction, 1);
    },
  );

  test("as solved is no suction behind a shut gate, nor where the table has no answer", () => {
    const none = 'suction must be typed here: SOLVE has none above 0 for this run; got "as solved"';
    const beyond = shop.map((row) => (row.Run === "main" ? { ...row, Gate: "shut" } : row));
    expect(answer([["saw", 12, 5, "as solved"]], "IP", table(beyond))[1]!.slice(1)).toEqual(["", "", "", none]);
    const leaking = shop.map((row) => (row.Run === "main" ? { ...row, Leak: 40 } : row));
    const [row, typedBeside] = answer([["saw", 12, 5, "as solved"], ["main", 18, 3, 6]], "IP", table(leaking), FAN.slice(0, -1)).slice(1); // prettier-ignore
    expect(row!.slice(1)).toEqual(["", "", "", none]);
    expect(Number(typedBeside![3])).toBeGreaterThan(0);
  });

  test("of a leak that reads the same again is nothing", () => {
    expect(answer([["saw", 20, 20, 3]])[1]![3]).toBe(0);
  });

  test("says in SI what it says in I-P", () => {
    const [air, pressure] = [1.69901082, 248.84]; // m³/h of a cfm, Pa of an in.w.g.
    const metric = (row: Row): Row => ({
      ...row,
      Diameter: Number(row.Diameter) * 25.4,
      Length: Number(row.Length) * 0.3048,
      ...(typeof row.Airflow === "number" ? { Airflow: row.Airflow * air } : {}),
      ...(typeof row.Leak === "number" ? { Leak: row.Leak * 645.16 } : {}),
    });
    const curve = FAN.map(([q, p]) => (typeof q === "number" ? [q * air, Number(p) * pressure] : ["m³/h", "Pa"]));
    const [, inch] = answer([["saw", 30, 5, 3]]);
    const [header, si] = answer([["saw", 30 * air, 5 * air, 3 * pressure]], "SI", table(shop.map(metric)), curve);
    expect(header).toEqual(["Run", "Hoods get, as found (m³/h)", "Hoods get, mended (m³/h)", "They gain (m³/h)", "Note"]); // prettier-ignore
    [1, 2, 3].forEach((place) => expect(Number(si![place]) / air / Number(inch![place])).toBeCloseTo(1, 3));
  });

  test.each<[string, Log[number], string]>([
    ["a gate that is no run", ["sandr", 20, 5, 3], 'gate must be the name of a run in the table (nearest: "sander", "saw", "lathe"); got "sandr"'], // prettier-ignore
    ["a reading without a name", [null, 20, 5, 3], "gate must be the name of a run in the table; got a blank cell"],
    ["no reading before", ["saw", null, 5, 3], 'leak before must be a reading (cfm), or "still" for no leak; got a blank cell'], // prettier-ignore
    ["no reading after", ["saw", 20, null, 3], 'leak after must be a reading (cfm), or "still" for no leak; got a blank cell'], // prettier-ignore
    ["a 0, which may be a blank", ["saw", 20, 0, 3], 'leak after must be a reading (cfm), or "still" for no leak; got 0'], // prettier-ignore
    ["no suction", ["saw", 20, 5, null], "suction must be a number (in.w.g.); got a blank cell"],
    ["a suction of 0", ["saw", 20, 5, 0], "suction must be above 0 in.w.g.; got 0"],
    ["a leak below 0", ["saw", -2, 5, 3], "leak before must be at least 0 cfm; got -2"],
    ["a word", ["saw", 20, "little", 3], 'leak after must be a number (cfm); got "little"'],
    ["more than the duct", ["saw", 2000, 5, 3], "leak before must be less than what the open duct itself would draw at that suction; got 2000"], // prettier-ignore
    ["a run after the fan", ["stack", 20, 5, 3], 'gate must be a run before the fan: after it air leaks out, not in; got "stack"'], // prettier-ignore
  ])("says of %s why there is no gain", (_, row, sentence) => {
    expect(noteOf(...row)).toBe(sentence);
  });

  test("keeps the rows of the log: a blank one stays blank, a wrong one takes no other with it", () => {
    const [, ...rows] = answer([["saw", 20, 5, 3], [null, null, null, null], ["nobody", 20, 5, 3], ["main", 20, 5, 3]]); // prettier-ignore
    expect(rows.map(([gate, , , gained]) => [gate, typeof gained])).toEqual([
      ["saw", "number"],
      ["", "string"],
      ["nobody", "string"],
      ["main", "number"],
    ]);
  });

  test("refuses columns that do not belong together", () => {
    const call = (after: unknown[][], suction: unknown[][]) => () =>
      leakgains(table(shop), FAN, [["saw"], ["main"]], [[20], [20]], after, suction);
    expect(call([[5]], [[3]])()).toHaveLength(3); // one cell goes with every row
    expect(refusal(call([[5], [5], [5]], [[3]]))).toEqual({
      code: "#VALUE!",
      message: 'gates must be as many rows as the others, 3, or one cell; got "2 rows"',
    });
    expect(refusal(call([[5, 5]], [[3]]))).toEqual({
      code: "#VALUE!",
      message: 'after must be one column of the log; got "2 columns"',
    });
  });
});
