import "../../support/customFunctions";
import { fanlaw } from "../../../src/functions/fan/fanlaw";
import { budget } from "../../../src/functions/systems/budget";
import { sizes } from "../../../src/functions/systems/sizes";
import { solve } from "../../../src/functions/systems/solve";
import { refusal } from "../../support/refusal";
import { byName, type Row, table, without } from "../../support/tables";

const NEEDED = 3937; // fpm, 20 m/s: what wood dust needs by the table "transport"
const FAN = [[0, 14], [400, 13.5], [800, 12], [1200, 9], [1600, 4], [1800, 0]]; // prettier-ignore
const saw: Row = { Run: "saw", To: "main", Diameter: 6, Length: 12, Hood: 0.5, Airflow: 350, Gate: "open", Leak: 0.1 };
const sander: Row = { ...saw, Run: "sander", Length: 20, Airflow: 300, Flex: 3 };
const main: Row = { Run: "main", To: "fan", Diameter: 8, Length: 15, Fittings: "elbow 1.5" };
const shop = [saw, sander, main];
const SETS = [["saw alone", "saw"], ["both", "saw; sander"]]; // prettier-ignore

interface Asked {
  readonly curve?: unknown[][];
  readonly sets?: unknown[][];
  readonly stock?: unknown[][];
  readonly margin?: unknown;
  readonly keep?: string;
  readonly fastest?: unknown;
}
const answer = (runs: readonly Row[], { curve = FAN, sets = SETS, stock, margin, keep, fastest }: Asked = {}) => {
  const cell = (value: unknown) => (value === undefined ? undefined : [[value]]);
  return sizes(table(runs), curve, sets, stock, cell(margin), cell(keep), undefined, undefined, cell(fastest));
};
const rowsOf = (runs: readonly Row[], asked: Asked = {}) => byName(answer(runs, asked));
const bought = (runs: readonly Row[], asked: Asked = {}): Row[] => {
  const rows = rowsOf(runs, asked);
  return runs.map((row) => ({ ...row, Diameter: Number(rows[String(row.Run)]!["Diameter to buy"]) }));
};

/** The least share of what is needed over all scenarios, by SOLVE of the table as it is typed. */
function worstShare(runs: readonly Row[], curve: unknown[][] = FAN, sets = SETS): number {
  return Math.min(
    ...sets.flatMap(([, open]) => {
      const flows = byName(solve(table(runs), curve, [[open]]));
      const names = String(open).split("; ");
      const hoods = names.map((name) => {
        const { Airflow, Leak } = flows[name]!;
        return (Number(Airflow) - Number(Leak)) / Number(runs.find(({ Run }) => Run === name)!.Airflow);
      });
      return [...hoods, ...[...names, "main"].map((name) => Number(flows[name]!.Velocity) / NEEDED)];
    }),
  );
}

describe("SIZES", () => {
  const easy = { sets: [["both", "saw; sander"]] }; // prettier-ignore

  // The strong branch a pushes c's air out: what is told is no share below nothing.
  test("a need whose air runs the wrong way gets nothing, in words", () => {
    const weak: Row[] = [
      { Run: "a", To: "m2", Diameter: 6, Length: 0.2, Fittings: "branch 90", Hood: 0.03, Airflow: 20, Gate: "open" },
      { Run: "b", To: "m2", Diameter: 6, Length: 0.2, Hood: 2, Airflow: 20, Gate: "open" },
      { Run: "c", To: "m", Diameter: 6, Length: 0.2, Fittings: "branch 30", Hood: 20, Airflow: 20, Gate: "open" },
      { Run: "m", To: "m2", Diameter: 2, Length: 2, Fittings: "branch 30" },
      { Run: "m2", To: "fan", Diameter: 6, Length: 2 },
    ];
    const rows = rowsOf(weak, { sets: [["all", "a; b; c"]], keep: "a; b; c; m; m2" });
    const out = -Number(byName(solve(table(weak), FAN)).c!.Airflow);
    expect(out).toBeGreaterThan(20);
    expect(rows.c!["Tightest need"]).toBe("air in all, whose air runs the wrong way");
    expect(rows.a!["Tightest need"]).toBe("velocity in all");
    expect(rows["as it is"]!["Tightest need"]).toBe("a need, whose air runs the wrong way");
    expect(rows["all together"]!["Tightest need"]).toMatch(/^each need gets 0 % of what it asks for, or more; /);
    expect(rows["all together"]!["Tightest need"]).toContain(
      `air in all at c at ${out.toPrecision(3)} cfm the wrong way, where 23 cfm is asked for`,
    );
  });

  test("chooses sizes with which SOLVE gives each need its margin, and says so of the whole", () => {
    const rows = rowsOf(shop, easy);
    const share = worstShare(bought(shop, easy), FAN, easy.sets);
    expect(rows["all together"]!["Tightest need"]).toMatch(/^best of all: .* its 15 % more costs less$/);
    expect(share).toBeGreaterThanOrEqual(1.15 * (1 - 1e-4)); // 20 m/s is 3937.0 fpm
    expect(Number(rows["all together"]!["It gets"])).toBeCloseTo(100 * share, 1);
  });

  test("costs length times diameter, hose as pipe, and the price of a foot where one is told", () => {
    const rows = rowsOf(shop, easy);
    const lengths: Record<string, number> = { saw: 12, sander: 23, main: 15 };
    let sum = 0;
    for (const [run, length] of Object.entries(lengths)) {
      expect(rows[run]!.Price).toBeCloseTo(length * Number(rows[run]!["Diameter to buy"]), 9);
      sum += Number(rows[run]!.Price);
    }
    expect(rows["all together"]!.Price).toBeCloseTo(sum, 9);
    expect(rows["as it is"]!.Price).toBeCloseTo(12 * 6 + 23 * 6 + 15 * 8, 9);
    const stock = [["Size", "Price"], [4, 7], [5, 9], [6, 11], [7, 20]]; // prettier-ignore
    const priced = rowsOf(shop, { ...easy, stock });
    const priceOf = new Map<unknown, unknown>(stock.slice(1) as [number, number][]);
    for (const [run, length] of Object.entries(lengths))
      expect(priced[run]!.Price).toBeCloseTo(length * Number(priceOf.get(priced[run]!["Diameter to buy"])), 9);
  });

  test("with a greatest velocity no chosen run is faster by SOLVE, less the margin; runs that stay are let be", () => {
    const fastestIn = (asked: Asked): number[] => {
      const flows = byName(solve(table(bought(shop, asked)), FAN, [["saw; sander"]]));
      return ["saw", "sander", "main"].map((name) => Number(flows[name]!.Velocity));
    };
    const before = fastestIn(easy);
    const fastest = 1.15 * 0.97 * Math.max(...before); // just below what it chose
    const asked = { ...easy, fastest };
    expect(Math.max(...before) * 1.15).toBeGreaterThan(fastest);
    expect(Math.max(...fastestIn(asked)) * 1.15).toBeLessThanOrEqual(fastest * (1 + 1e-4));
    expect(Number(rowsOf(shop, asked)["all together"]!.Price)).toBeGreaterThanOrEqual(Number(rowsOf(shop, easy)["all together"]!.Price)); // prettier-ignore
    expect(answer(shop, { ...easy, fastest: 0 })).toEqual(answer(shop, easy)); // some hosts send a blank as 0
    const kept = { ...easy, stock: [[3], [9]], keep: "saw; sander; main", fastest: 5300 };
    expect(rowsOf(shop, kept).saw!["Diameter to buy"]).toBe(6);
    expect(String(rowsOf(shop, kept)["all together"]!["Tightest need"])).not.toMatch(/greatest velocity/);
  });

  test("without a fan says of a run where the most air is faster than that", () => {
    // main of 3.5 in (see below) carries both, 650 cfm: 650 / 0.066813 ft² = 9729 fpm; of 6000 fpm that is 61.7 %
    const rows = rowsOf(without("Leak", shop), { curve: [[null, null]], fastest: 6000 });
    expect(rows.main!["Tightest need"]).toBe("greatest velocity in both");
    expect(Math.abs(Number(rows.main!["It gets"]) - 61.7)).toBeLessThan(0.05);
  });

  test("without a margin it asks for less and never costs more", () => {
    const none = rowsOf(shop, { ...easy, margin: "none" })["all together"]!;
    expect(none["Tightest need"]).toMatch(/its 0 % more/);
    expect(Number(none.Price)).toBeLessThanOrEqual(Number(rowsOf(shop, easy)["all together"]!.Price));
  });

  test("keeps the runs it is told to keep, and those with a device", () => {
    const cyclone: Row = { Run: "cyclone", To: "fan", Diameter: 9.3, "Device loss": 0.5, "Device airflow": 1000 };
    const runs = [saw, sander, { ...main, To: "cyclone" }, cyclone];
    const rows = rowsOf(runs, { ...easy, keep: "sander" });
    expect(rows.sander!["Diameter to buy"]).toBe(6);
    expect(rows.cyclone!["Diameter to buy"]).toBeCloseTo(9.3, 9);
    expect([rows.cyclone!.Price, rows.cyclone!["Tightest need"]]).toEqual(["", ""]);
  });

  test("says where no sizes do it, what is had at most, and a speed of the fan at which they do", () => {
    const weak = FAN.map(([airflow, pressure]) => [airflow! * 0.55, pressure! * 0.55 ** 2]);
    const asked = { ...easy, curve: weak };
    const rows = rowsOf(shop, asked);
    const words = String(rows["all together"]!["Tightest need"]);
    expect(words).toMatch(/^each need gets [\d.]+ % of what it asks for, or more; impossible: no choice from this stock meets all with 15 % more; these sizes leave (air|velocity) in both at /); // prettier-ignore
    const share = worstShare(bought(shop, asked), weak, easy.sets);
    expect(Number(rows["all together"]!["It gets"])).toBeCloseTo(100 * share, 1);
    const speed = Number(/at ([\d.]+) of its speed/.exec(String(rows["a stronger fan"]!["Tightest need"]))![1]);
    const faster = fanlaw(weak, [[speed]]);
    expect(rowsOf(shop, { ...easy, curve: faster })["all together"]!["Tightest need"]).toMatch(/^best /);
  });

  test("says what a hood can get at most where no choice gives it its air: with one size to buy, what SOLVE gives in that", () => {
    const asks = shop.map((row) => (row.Run === "sander" ? { ...row, Airflow: 2000 } : row));
    const words = String(rowsOf(asks, { ...easy, stock: [[6]] })["all together"]!["Tightest need"]);
    const [, most, wanted] = /; no choice gives sander more than (\d+) cfm in both, where (\d+) cfm is asked for$/.exec(
      words,
    )!;
    const flows = byName(solve(table(shop.map((row) => ({ ...row, Diameter: 6 }))), FAN, [["saw; sander"]]));
    expect(Number(wanted)).toBe(2300); // with 15 % more
    const has = Number(flows.sander!.Airflow) - Number(flows.sander!.Leak);
    expect(Math.abs(Number(most) - has)).toBeLessThan(0.5 + 0.2); // and the law's slack, 1e-4 of the fan's air
  });

  // Every choice of these sizes was worked out by a second program, written from the definitions alone: 4.5 in throughout gives
  // the worst need 110.765 % of what is asked for, the next best, 3, 3 and 6 in, 97.021 %; from six choices on the fan leaves its curve.
  const arm = { To: "main", Diameter: 4, Gate: "open" };
  const cut: Row[] = [
    { Run: "a", ...arm, Length: 22.3, K: 0.91, Hood: 0.9, Airflow: 350 },
    { Run: "b", ...arm, Length: 14.4, K: 0.48, Hood: 1.2, Airflow: 383 },
    { Run: "main", To: "fan", Diameter: 6, Length: 14.4, K: 0.3 },
  ];
  const ends = [[0, 17.9], [235, 17.4], [470, 16.1], [706, 14], [942, 10.9], [1177, 7]]; // prettier-ignore
  const all = [["all open", "a; b"]];

  test("leads with the best of few choices, also where sizes lie far apart, and says where the curve ends", () => {
    const rows = rowsOf(cut, { curve: ends, sets: all, stock: [[3], [4.5], [6], [8]] });
    expect(["a", "b", "main"].map((name) => rows[name]!["Diameter to buy"])).toEqual([4.5, 4.5, 4.5]);
    expect(rows["all together"]!["It gets"]).toBeCloseTo(110.765, 2);
    expect(rows["all together"]!["Tightest need"]).toMatch(/^every need is met, by 10.7 % more at least; .*; with other sizes the fan works beyond its curve, which reaches from 0 cfm to 1177 cfm: of those nothing is known$/); // prettier-ignore
  });

  // At 706 cfm the main's velocity pressure is 0.81 in.w.g., an arm's 0.2: with K of 0.3 to 1.7 and this little pipe the ducts lose
  // less than 2 in.w.g., where the fan still has 14.
  test("where the curve ends before the ducts take their air there is no number, and nothing is called impossible", () => {
    const rows = rowsOf(cut, { curve: ends.slice(0, 4), sets: all, stock: [[6], [8]] });
    const { "It gets": gets, "Tightest need": words } = rows["all together"]!;
    expect([gets, rows.a!["It gets"], rows.main!["Least velocity"]]).toEqual(["", "", ""]);
    expect(words).toBe("no answer: in all open the fan works beyond its curve, which reaches from 0 cfm to 706 cfm; type its further points"); // prettier-ignore
    expect(Object.keys(rows)).toEqual(["a", "b", "main", "all together", "before you buy"]);
  });

  test("says by how much the needs are met where only the margin cannot be had", () => {
    const rows = rowsOf(shop, { ...easy, margin: 90 });
    const { "Tightest need": words, "It gets": percent } = rows["all together"]!;
    const spare = Number(/^every need is met, by ([\d.]+) % more at least/.exec(String(words))![1]);
    expect(Number(percent) - 100 - spare).toBeGreaterThanOrEqual(0);
    expect(Number(percent) - 100 - spare).toBeLessThan(0.1);
    expect(words).toMatch(/; (impossible|none found)/);
    const share = worstShare(bought(shop, { ...easy, margin: 90 }), FAN, easy.sets);
    expect(Number(percent)).toBeCloseTo(100 * share, 1);
  });

  test("without a fan: the widest stock size in which the least air moves the dust, and what BUDGET asks of the fan", () => {
    // 350 cfm, 650 cfm at 1.15 × 3937 fpm: 12 √(4 × 350 / π / 4527.6) = 3.765 in; the main's least air is the saw's alone.
    // The sander's 300 cfm: 3.486 in. No run is narrower than one that joins it.
    const rows = rowsOf(shop, { curve: [[null, null]] });
    expect(["saw", "sander", "main"].map((run) => rows[run]!["Diameter to buy"])).toEqual([3.5, 3, 3.5]);
    const typed = bought(shop, { curve: [[null, null]] });
    const words = answer(shop, { curve: [[null, null]] }).filter(([run]) => run === "fan").map((row) => String(row[7])); // prettier-ignore
    expect(words).toHaveLength(2);
    SETS.forEach(([name, open], place) => {
      const gates = typed.map((row) => (row.Gate === undefined ? row : { ...row, Gate: open!.includes(String(row.Run)) ? "open" : "shut" })); // prettier-ignore
      const { Fan } = byName(budget(table(gates)));
      const [, airflow, pressure] = /: ([\d.]+) cfm at ([\d.]+) in\.w\.g\./.exec(words[place]!)!;
      expect(words[place]).toMatch(new RegExp(`^${name!}: `));
      expect(Math.abs(Number(airflow) / Number(Fan!.Airflow) - 1)).toBeLessThan(0.005);
      expect(Math.abs(Number(pressure) / Number(Fan!["Suction at its end"]) - 1)).toBeLessThan(0.005);
    });
  });

  test("two fans of one name are told apart by their columns", () => {
    const curve = [["cfm", "A", "A", "B"], ...FAN.map(([airflow, pressure]) => [airflow, pressure, Number(pressure) / 2, pressure])]; // prettier-ignore
    const rows = rowsOf(shop, { curve });
    expect(Object.keys(rows).filter((name) => name.startsWith("fan: "))).toEqual(["fan: A (column 2)", "fan: A (column 3)", "fan: B"]); // prettier-ignore
  });

  test("of several fans says how each does as if it were asked for alone, and gives the sizes for the one that serves", () => {
    const [weak, strong] = [0.55, 1].map((speed) => FAN.slice(0, -1).map(([airflow, pressure]) => [airflow! * speed, pressure! * speed ** 2])); // prettier-ignore
    const joined = [
      ["Airflow", "little", "large"],
      ...weak!.map(([airflow, pressure]) => [airflow, pressure, null]),
      ...strong!.slice(1).map(([airflow, pressure]) => [airflow, 0, pressure]), // a host may send a blank as 0
    ];
    joined[1]![2] = strong![0]![1]!;
    const rows = rowsOf(shop, { ...easy, curve: joined });
    const alone = rowsOf(shop, { ...easy, curve: strong! });
    const [little, large] = [rows["fan: little"]!, rows["fan: large"]!];
    expect(little["Tightest need"]).toMatch(/; impossible: /);
    expect(large).toMatchObject({ Price: alone["all together"]!.Price, "It gets": alone["all together"]!["It gets"] });
    expect(rows["which fan"]!["Tightest need"]).toMatch(/^the sizes above are for large, /);
    for (const run of ["saw", "sander", "main"]) expect(rows[run]).toEqual(alone[run]);
  });

  test("without a set of gates it is for each machine alone and any two, with the gates on their way", () => {
    const gated: readonly Row[] = [saw, sander, { ...main, Gate: "shut" }];
    const sets = [["saw", "saw; main"], ["sander", "sander; main"], ["saw; sander", "saw; sander; main"]]; // prettier-ignore
    expect(answer(gated, { sets: [[null]] })).toEqual(answer(gated, { sets }));
  });

  test("the gate of a machine may stand behind its hose: the hose is none that nothing is asked of", () => {
    const hose: Row = { ...saw, Run: "hose", To: "saw", Length: 3, Gate: null };
    const drop: Row = { Run: "saw", To: "main", Diameter: 6, Length: 9, Gate: "open" };
    const runs = [hose, drop, sander, main];
    const sets = [["saw"], ["sander"], ["saw; sander"]]; // prettier-ignore
    expect(answer(runs, { sets: [[null]] })).toEqual(answer(runs, { sets }));
  });

  // Of the 25 pairs of sizes for main and saw an independent solver in Python (the definitions written anew) finds 160 mm for both the
  // best: 28 m/s is 106.87 % of the greatest velocity. Next to 80 mm for both, with 75.91 %, every pair is worse.
  test("a greatest velocity is sought from the wide side, too", () => {
    const curve = [[0, 2792.2], [847, 2651.63], [1695, 2338.16], [2542, 1408.5], [3390, 279.22]]; // prettier-ignore
    const runs: Row[] = [
      {
        Run: "main",
        To: "fan",
        Diameter: 250,
        Length: 3.9,
        Fittings: "elbow 1.5 60",
        K: 0.54,
        Dust: "fine light dust",
      },
      { Run: "kept", To: "main", Diameter: 125, Length: 2.5, Dust: "wood dust acgih" },
      { Run: "saw", To: "kept", Diameter: 125, Length: 3.8, Hood: "lathe hood", Airflow: 515, Gate: "open", Dust: "wood dust acgih" }, // prettier-ignore
    ];
    const stock = [[80], [100], [125], [160], [200]];
    const rows = byName(
      sizes(table(runs), curve, [["saw"]], stock, undefined, [["kept"]], undefined, [["SI"]], [[28]]),
    );
    expect([rows.main!["Diameter to buy"], rows.saw!["Diameter to buy"]]).toEqual([160, 160]);
    expect(rows["all together"]!["It gets"]).toBeCloseTo(106.87, 2);
  });

  // Losses only by K: 0.5 in 4 in costs 0.6549 in.w.g. at 400 cfm. On a straight curve of 8 in.w.g. at no airflow and 2000 cfm at none one
  // open draws 8 - 0.004 Q = 4.093e-6 Q² at 992.4 cfm, both 1.0233e-6 Q² at 1456.9 cfm: 2843 and 4174 fpm in 8 in, of the 3937 needed.
  test("names the gate to leave open also where it stands behind the hose of its machine", () => {
    const port: Row = { Run: "saw", To: "main", Diameter: 4, Hood: 0.5, Airflow: 400, Gate: "open" };
    const wide: Row = { Run: "main", To: "fan", Diameter: 8 };
    const hose: Row = { ...port, Run: "hose", To: "sander", Gate: null };
    const drop: Row = { Run: "sander", To: "main", Diameter: 4, Gate: "open" };
    const asked: Asked = { curve: [[0, 8], [2000, 0]], stock: [[4]], margin: "none", keep: "main" }; // prettier-ignore
    for (const machine of [[{ ...port, Run: "sander" }], [hose, drop]]) {
      const rows = rowsOf([port, ...machine, wide], { ...asked, sets: [["saw alone", "saw"], ["both", "saw; sander"]] }); // prettier-ignore
      expect(rows["all together"]!["It gets"]).toBeCloseTo(72.2, 0);
      expect(rows["left open"]).toMatchObject({
        "Tightest need": "with sander left open too in saw alone, sizes of their own leave each need 106 % or more",
        "It gets": expect.closeTo(106, 0),
      });
    }
  });

  // In the row of its pipe a port would get the pipe's width: what is told holds with the port in a row of its own.
  test.each([["table saw cabinet"], [null]])(
    "says how to type the port of a machine (%s) behind which the pipe gets wider",
    (hood) => {
      const measured = hood === null ? { "Port suction": 4, "Port airflow": 350 } : { Hood: hood };
      const machine: Row = { Run: "saw", To: "main", Diameter: 4, Length: 12, Airflow: 350, Gate: "open", ...measured };
      const asked: Asked = { sets: [["saw alone", "saw"]], stock: [[5], [6]], margin: "none" }; // prettier-ignore
      const rows = rowsOf([machine, { ...main, Diameter: 6 }], asked);
      expect(rows["a port"]!["Tightest need"]).toBe("the port of saw stays as it is: type it as a run of its own, 0 long, before the new pipe"); // prettier-ignore
      const [buy, after] = [rows.saw!["Diameter to buy"]!, { ...main, Diameter: rows.main!["Diameter to buy"]! }];
      expect(buy).toBeGreaterThan(4);
      const velocity = (...typed: Row[]): number => Number(byName(solve(table([...typed, after]), FAN)).main!.Velocity);
      const asTold = velocity({ ...machine, To: "pipe", Length: 0 }, { Run: "pipe", To: "main", Diameter: buy, Length: 12 }); // prettier-ignore
      expect(asTold).toBeCloseTo(Number(rows.main!["Least velocity"]), 3);
      expect(Math.abs(velocity({ ...machine, Diameter: buy }) / asTold - 1)).toBeGreaterThan(0.005);
      const same = rowsOf(
        [
          { ...machine, Diameter: 5 },
          { ...main, Diameter: 5 },
        ],
        { ...asked, stock: [[5]] },
      );
      expect(same["a port"]).toBeUndefined();
    },
  );

  test("asked again, the answer is equal but another object", () => {
    expect(answer(shop, easy)).toEqual(answer(shop, easy));
    expect(answer(shop, easy)).not.toBe(answer(shop, easy));
  });
});

describe("SIZES refuses", () => {
  test.each<[string, Asked, string | RegExp]>([
    ["a margin of 0, which may be a blank cell", { margin: 0 }, /^margin must be a number other than 0, "none" for 0, or left out for 15; got 0/], // prettier-ignore
    ["a margin beyond its limits", { margin: 120 }, "margin must be from 1 to 100 %; got 120"],
    ["a margin typed with its sign", { margin: 0.15 }, "margin must be from 1 to 100 %; got 0.15"],
    ["a pressure that is no number, with its fan's column", { curve: [[0, 9, 14], [800, 6, "x"]] }, 'pressure in row 2 of the curve, column 3, must be a number (in.w.g.); got "x"'], // prettier-ignore
    ["more fans than it compares", { curve: [[0, 1, 1, 1, 1, 1, 1, 1, 1, 1]] }, "curve must be airflows and at most 8 columns of pressures; got 9"], // prettier-ignore
    // 3937.0 fpm × 1.15² = 5206.7 fpm
    ["a greatest velocity that leaves the dust no room", { fastest: 5000 }, "fastest must be at least 5206.7 fpm, since the dust in saw needs 3937 fpm and the margin is kept from both; got 5000"], // prettier-ignore
    ["a greatest velocity below 0", { fastest: -1 }, /^fastest must be above 0 fpm; got -1/],
    ["a greatest velocity in words", { fastest: "quiet" }, 'fastest must be a number (fpm); got "quiet"'],
    ["a size twice", { stock: [[4], [4]] }, "stock must be diameters that stand once; got 4"],
    ["a stock of three columns", { stock: [[4, 5, 6]] }, "stock must be one column of diameters, or two with a price; got \"1 by 3 cells\""], // prettier-ignore
    ["a first size that cannot be read, which is no heading", { stock: [['4"'], [5]] }, 'diameter in row 1 of the stock must be a number (in); got "4""'], // prettier-ignore
    ["a size that is no number", { stock: [[4], ["wide"]] }, 'diameter in row 2 of the stock must be a number (in); got "wide"'], // prettier-ignore
    ["an unknown run to keep", { keep: "sawer" }, /^keep must be names of runs in the table \(nearest: "saw"/],
  ])("%s", (_, asked, words) => {
    const { message } = refusal(() => answer(shop, asked));
    if (typeof words === "string") expect(message).toBe(words);
    else expect(message).toMatch(words);
  });

  test("scenarios in which no open hood asks for air", () => {
    const words = "scenarios must be sets of open gates in which a hood asks for air in the column Airflow; got a blank cell"; // prettier-ignore
    expect(refusal(() => answer(shop, { sets: [["shut", "none"]] })).message).toBe(words);
    expect(refusal(() => answer(without("Airflow", shop))).message).toBe(words);
    expect(refusal(() => answer(without("Airflow", shop), { curve: [[null, null]] })).message).toBe(words);
  });

  test("a table without gates", () => {
    expect(refusal(() => answer(without("Gate", shop))).message).toMatch(/^runs must be a table with a column "Gate"/);
  });
});
