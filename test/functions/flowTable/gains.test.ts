import "../../support/customFunctions";
import { gains } from "../../../src/functions/systems/gains";
import { solve } from "../../../src/functions/systems/solve";
import { refusal } from "../../support/refusal";
import { byName, type Row, table } from "../../support/tables";
import { FAN } from "./shop";

const saw: Row = {
  ...{ Run: "saw", To: "main", Diameter: 4, Length: 10, Flex: 6, Hood: "plain end", Airflow: 350, Gate: "open" },
  ...{ Leak: 0.3, Fittings: "elbow 1 x2" },
};
const sander: Row = { ...saw, Run: "sander", Flex: null, Leak: null, "Leak open": 0.4, Fittings: null };
const lathe: Row = { ...saw, Run: "lathe", Gate: "shut", Leak: null, "Leak shut": 0.2 };
const main: Row = { Run: "main", To: "fan", Diameter: 6, Length: 10, Fittings: "branch 45; elbow 1", Leak: 0.1 };
const bag: Row = {
  ...{ Run: "bag", To: null, Diameter: 6, Length: 2, Side: "discharge", "Device loss": 3, "Device airflow": 800 },
  ...{ "Device exponent": 1, "Device clean loss": 1 },
};
const shop = [saw, sander, lathe, main, bag];

const gained = (rows: readonly Row[], hood: string, open: string | null = null) =>
  gains(table(rows), FAN, [[hood]], [[open]]) as (string | number)[][];

/** Air that enters at a hood, by SOLVE. */
const atHood = (rows: readonly Row[], hood: string): number => {
  const run = byName(solve(table(rows), FAN))[hood]!;
  return Number(run.Airflow) - Number(run.Leak);
};

const withRow = (name: string, facts: Row): Row[] => shop.map((row) => (row.Run === name ? { ...row, ...facts } : row));

// A machine's inside stays as it is where the pipe behind it grows; in the same row it would grow along.
test("a pipe of another width behind a machine's port: its gain is that of a port in a row of its own, and the note says so", () => {
  const machine: Row = { ...saw, Hood: "table saw cabinet" };
  const rows = gained([machine, main], "saw");
  const larger = rows.find(([run, change]) => run === "saw" && change === "one size larger, 4.5 in")!;
  const port: Row = { ...machine, To: "pipe", Length: 0, Flex: null, Fittings: null };
  const pipe: Row = { ...machine, Run: "pipe", Diameter: 4.5, Hood: null, Airflow: null, Gate: null, Leak: null };
  expect(larger[2]).toBeCloseTo(atHood([port, pipe, main], "saw") - atHood([machine, main], "saw"), 0); // its leak sits at the port's width there
  expect(larger[4]).toMatch(
    /the port of saw stays as it is: type it as a run of its own, 0 long, before the new pipe$/,
  );
  expect(rows.filter(([, , , , note]) => String(note).includes("port"))).toEqual([larger]);
});

describe("GAINS at the saw", () => {
  let header: (string | number)[];
  let rows: (string | number)[][];
  beforeAll(() => {
    [header, ...rows] = gained(shop, "saw") as [(string | number)[], ...(string | number)[][]];
  });

  test("headers, and the best change first", () => {
    expect(header).toEqual(["Run", "Change", "Airflow gained (cfm)", "New velocity (fpm)", "Note"]);
    const airflows = rows.map((row) => Number(row[2]));
    expect([...airflows].sort((a, b) => b - a)).toEqual(airflows);
    expect(Math.min(...airflows)).toBeGreaterThan(0);
  });

  // What each change types into the table, by hand. Stock sizes: 4 -> 4.5 in, 6 -> 7 in. Printed radii of the five-piece elbow: 1 -> 1.5.
  const byHand: readonly (readonly [string, string, Row[]])[] = [
    ["saw", "hose replaced by smooth pipe", withRow("saw", { Length: 16, Flex: null })],
    ["saw", "one size larger, 4.5 in", withRow("saw", { Diameter: 4.5 })],
    ["saw", "elbows of the next longer radius", withRow("saw", { Fittings: "elbow 1.5 x2" })],
    ["saw", "entry improved to flanged end", withRow("saw", { Hood: "flanged end" })],
    ["saw", "leak sealed", withRow("saw", { Leak: null })],
    ["sander", "leak sealed", withRow("sander", { "Leak open": null })],
    ["sander", "gate there shut", withRow("sander", { Gate: "shut" })],
    ["lathe", "leak sealed", withRow("lathe", { "Leak shut": null })],
    ["main", "leak sealed", withRow("main", { Leak: null })],
    ["main", "one size larger, 7 in", withRow("main", { Diameter: 7 })],
    ["main", "elbows of the next longer radius", withRow("main", { Fittings: "branch 45; elbow 1.5" })],
    ["bag", "filter cleaned to its rated loss", withRow("bag", { "Device loss": 1 })],
  ];

  test.each(byHand)("%s: %s gains what two SOLVE calls differ by", (run, words, edited) => {
    const row = rows.find(([name, change]) => name === run && change === words);
    expect(row).toBeDefined();
    const difference = atHood(edited, "saw") - atHood(shop, "saw");
    expect(difference).toBeGreaterThan(0);
    expect(Math.abs(Number(row![2]) - difference)).toBeLessThan(1e-6 * difference + 1e-9);
    const after = byName(solve(table(edited), FAN))[run]!;
    const still = words === "gate there shut" || (run === "lathe" && words === "leak sealed");
    if (still) expect(row![3]).toBe("");
    else expect(Number(row![3]) / Number(after.Velocity)).toBeCloseTo(1, 11); // solved from the present flows, not from the start
    if (!still && run !== "bag") expect(row![4]).toBe(String(after.Note).split("; ").filter((note) => note.startsWith("dust")).join("; ")); // prettier-ignore
  });

  test("has no other rows, but for the discharge pipe's own size", () => {
    const others = rows.filter(([run, change]) => !byHand.some(([name, words]) => name === run && words === change));
    expect(others.map(([run, change]) => `${run}: ${change}`)).toEqual(["bag: one size larger, 7 in"]);
  });

  // With a weaker fan the saw's air is fast enough in 4 in and too slow in 4.5.
  test("says where a change would let dust settle", () => {
    const weak = [[0, 4.4], [1000, 0]]; // prettier-ignore
    const alone = table([{ ...saw, Flex: null, Leak: null }, main]);
    expect(byName(solve(alone, weak)).saw!.Note).not.toMatch(/dust settles/);
    const larger = gains(alone, weak, [["saw"]]).find(
      ([run, change]) => run === "saw" && String(change).startsWith("one size"),
    )!;
    expect(larger[3]).toBeLessThan(3937);
    expect(larger[4]).toBe('dust settles: "wood dust" needs 3937 fpm');
  });
});

describe("what a change costs elsewhere", () => {
  const FAST = 3937; // fpm, 20 m/s: what wood dust needs
  const pair: Row[] = [
    { Run: "saw", To: "main", Diameter: 4, Length: 10, Hood: "bell mouth", Gate: "open" },
    { Run: "sander", To: "main", Diameter: 4, Length: 10, Hood: "bell mouth", Gate: "open" },
    { Run: "main", To: "trunk", Diameter: 6, Length: 5 },
    { Run: "trunk", To: "fan", Diameter: 6, Length: 5 },
  ];
  const noteOf = (run: string, change: RegExp, fan: number[][]) =>
    gains(table(pair), fan, [["saw"]]).find(
      ([name, words]) => name === run && change.test(String(words)),
    )![4] as string;
  const velocities = (rows: readonly Row[], fan: number[][]) =>
    Object.values(byName(solve(table(rows), fan))).map(({ Velocity }) => Number(Velocity));
  const changed = (name: string, facts: Row) => pair.map((row) => (row.Run === name ? { ...row, ...facts } : row));

  test("the runs in which dust settles then and did not before, by name", () => {
    const fan = [[0, 6], [700, 5], [850, 0]]; // prettier-ignore
    expect(Math.min(...velocities(pair, fan).slice(0, 4))).toBeGreaterThan(FAST);
    const [atSaw, , atMain, atTrunk] = velocities(changed("sander", { Gate: "shut" }), fan);
    expect(atSaw).toBeGreaterThan(FAST);
    expect(Math.max(atMain!, atTrunk!)).toBeLessThan(FAST);
    expect(noteOf("sander", /gate/, fan)).toBe("dust would settle in: main, trunk");
  });

  // A fan that gives hardly more than 700 cfm: the saw in 4.5 in takes more of it, and is too slow itself.
  test("both, where it settles in the changed run as well", () => {
    const fan = [[0, 20], [695, 15], [700, 0]]; // prettier-ignore
    expect(Math.min(...velocities(pair, fan).slice(0, 2))).toBeGreaterThan(FAST);
    const [atSaw, atSander] = velocities(changed("saw", { Diameter: 4.5 }), fan);
    expect(Math.max(atSaw!, atSander!)).toBeLessThan(FAST);
    expect(noteOf("saw", /size/, fan)).toBe('dust settles: "wood dust" needs 3937 fpm; dust would settle in: sander');
  });

  test("nothing is said of a chimney: it carries no dust of a hood's", () => {
    const rows = gained(shop, "saw").filter(([run, change]) => run === "bag" && String(change).includes("size"));
    expect(rows).toHaveLength(1);
    expect(Number(rows[0]![3])).toBeLessThan(FAST);
    expect(rows[0]![4]).toBe("");
  });

  // 0.0001 in2 let in about 0.003 cfm of several hundred: little, but more than a millionth of them.
  test("a gain of a hundred-thousandth is one as well", () => {
    const rows = gained([{ ...saw, Leak: 1e-4 }, main], "saw");
    const [row] = rows.filter(([run, change]) => run === "saw" && change === "leak sealed");
    expect(Number(row![2])).toBeGreaterThan(0);
    expect(Number(row![2])).toBeLessThan(0.01);
  });
});

// Two machines that are each other's mirror image, on both sides of the saw: whatever is done at one gains the saw what it gains
// at the other, but for the last digits, which hang on the order in which the solver adds.
describe("equal gains stay in the order of the table", () => {
  const left: Row = { ...sander, Run: "left", Length: 13.7, "Leak open": 0.37 };
  const right: Row = { ...left, Run: "right" };
  const asked: Row = { ...saw, Leak: null };
  const changesAt = (rows: readonly Row[]) =>
    gained(rows, "saw").flatMap(([run, change]) => (run === "left" || run === "right" ? [`${run}: ${change}`] : []));
  const pairs = (first: string, second: string) => [
    `${first}: gate there shut`,
    `${second}: gate there shut`,
    `${first}: leak sealed`,
    `${second}: leak sealed`,
  ];

  test.each([
    ["the mirror images side by side", [asked, left, right, main]],
    ["the saw between them", [left, asked, right, main]],
    ["the main before them", [main, left, right, asked]],
  ])("%s, and the other way round", (_, rows) => {
    const turned = rows.map((row) => (row === left ? right : row === right ? left : row));
    expect(changesAt(rows)).toEqual(pairs("left", "right"));
    expect(changesAt(turned)).toEqual(pairs("right", "left"));
  });

  test.each(["left", "right"])("also where one of them, %s, is longer or shorter by the last digits", (name) => {
    for (const share of [-1e-12, 1e-12, 1e-11, -1e-11]) {
      const rows = [asked, left, right, main].map((row) =>
        row.Run === name ? { ...row, Length: 13.7 * (1 + share) } : row,
      );
      expect(changesAt(rows)).toEqual(pairs("left", "right"));
    }
  });
});

describe("GAINS", () => {
  test("tries the changes at another hood with the gates that are named", () => {
    const rows = gained(shop, "Lathe", "lathe");
    const along = rows.slice(1).map(([run]) => run);
    expect(along).toContain("lathe");
    expect(along).toContain("main");
    expect(rows.some(([run, change]) => run === "saw" && change !== "leak sealed")).toBe(false);
  });

  // Each of these can only ease the hood's way or spare the fan air, so where it is tried at all it is never a loss.
  test.each([
    ["a leak sealed anywhere", { Leak: null, "Leak open": null, "Leak shut": null }],
    ["a run on its way enlarged", { Diameter: 7 }],
    ["its hose shortened", { Flex: 1 }],
  ])("%s never costs the saw air", (_, facts: Row) => {
    const places = "Leak" in facts ? ["saw", "sander", "lathe", "main"] : "Flex" in facts ? ["saw"] : ["saw", "main"];
    for (const run of places) {
      expect(atHood(withRow(run, facts), "saw")).toBeGreaterThanOrEqual(atHood(shop, "saw") * (1 - 1e-9));
    }
  });

  test("gives the same in SI", () => {
    const si: Row[] = shop.map((row) => ({
      ...row,
      Diameter: Number(row.Diameter) * 25.4,
      Length: Number(row.Length ?? 0) * 0.3048,
      Flex: Number(row.Flex ?? 0) * 0.3048,
      Leak: Number(row.Leak ?? 0) * 645.16,
      "Leak open": Number(row["Leak open"] ?? 0) * 645.16,
      "Leak shut": Number(row["Leak shut"] ?? 0) * 645.16,
      "Device loss": Number(row["Device loss"] ?? 0) * 248.84,
      "Device clean loss": Number(row["Device clean loss"] ?? 0) * 248.84,
      "Device airflow": Number(row["Device airflow"] ?? 0) * 1.69901079552,
    }));
    const curve = FAN.slice(1).map(([airflow, pressure]) => [
      Number(airflow) * 1.69901079552,
      Number(pressure) * 248.84,
    ]);
    const metric = gains(table(si), curve, [["saw"]], undefined, undefined, [["SI"]]);
    const sealed = (rows: any[][]) =>
      Number(rows.find(([run, change]) => run === "saw" && change === "leak sealed")![2]);
    expect(Math.abs(sealed(metric) / 1.69901079552 / sealed(gained(shop, "saw")) - 1)).toBeLessThan(1e-9);
  });

  test("says so where nothing helps", () => {
    const best: Row = { Run: "saw", To: "fan", Diameter: 79, Hood: "bell mouth" };
    const none = [[0, 11], [1e6, 0]]; // prettier-ignore
    expect(gains(table([{ ...best, Diameter: 400 }]), none, [["saw"]])).toEqual([
      ["Run", "Change", "Airflow gained (cfm)", "New velocity (fpm)", "Note"],
      ["", "no single change gains anything here", "", "", ""],
    ]);
  });

  test("asked again, the answer is equal but another object", () => {
    expect(gained(shop, "saw")).toEqual(gained(shop, "saw"));
    expect(gained(shop, "saw")).not.toBe(gained(shop, "saw"));
  });
});

describe("GAINS refuses", () => {
  const message = (hood: unknown, open: unknown = null): string =>
    refusal(() => gains(table(shop), FAN, [[hood]] as any[][], [[open]] as any[][])).message;

  test.each<[unknown, string]>([
    ["sow", 'hood must be the name of a hood\'s run (nearest: "saw", "sander", "lathe"); got "sow"'],
    ["main", 'hood must be the name of a hood\'s run (nearest: "saw", "lathe", "sander"); got "main"'],
    ["bag", 'hood must be the name of a hood\'s run (nearest: "saw", "lathe", "sander"); got "bag"'],
    [null, "hood must be the name of a hood's run; got a blank cell"],
    [true, "hood must be the name of a hood's run; got TRUE"],
  ])("%j for a hood", (hood, expected) => expect(message(hood)).toBe(expected));

  test("a hood whose gate is shut", () => {
    expect(message("lathe")).toBe('hood must be an open hood: no air reaches this one; got "lathe"');
    expect(message("saw", "lathe")).toBe('hood must be an open hood: no air reaches this one; got "saw"');
  });

  test("several cells for a hood, and a system that has no answer now", () => {
    expect(refusal(() => gains(table(shop), FAN, [["saw"], ["sander"]])).message).toBe(
      'hood must be one cell; got "2 by 1 cells"',
    );
    expect(refusal(() => gains(table(shop), [[0, 9], [10, 8]], [["saw"]]))).toEqual({
      code: "#N/A",
      message: "the fan curve ends at 10 cfm, and this system would take more air",
    }); // prettier-ignore
  });
});
