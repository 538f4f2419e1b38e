import "../../support/customFunctions";
import fc from "fast-check";
import { budget } from "../../../src/functions/systems/budget";
import { byName, type Row, table } from "../../support/tables";

/** The answer by run name and header (without its unit). */
const answerOf = (rows: readonly Row[], units = "IP", density: unknown = null) =>
  byName(budget(table(rows), [[density]], [[units]]));

const saw: Row = { Run: "saw", To: "main", Diameter: 4, Length: 10, Hood: "plain end", Airflow: 350, Gate: "open" };
const sander: Row = {
  Run: "sander",
  To: "main",
  Diameter: 4,
  Length: 20,
  Hood: "plain end",
  Airflow: 350,
  Gate: "open",
};
const main: Row = { Run: "main", To: "fan", Diameter: 5, Length: 10 };

describe("BUDGET against published systems", () => {
  // W3: Douglas et al., Fluid Mechanics, Example 14.6 (companion notebook): four branches of 0.2 m3/s into a main,
  // fan total pressure 684.51 Pa with Fanning f = 0.008. Our friction is Colebrook's, so each run gets the wall for which
  // Colebrook gives Darcy f = 0.032 at its own Reynolds number: e/D = 3.7 (10^(-1/(2 sqrt f)) - 2.51/(Re sqrt f)).
  test("equals Douglas example 14.6: 684.51 Pa", () => {
    const density = 1.2;
    const wall = (airflow: number, diameter: number): number => {
      const reynolds = (density * 4 * airflow) / (Math.PI * diameter * 1.819e-5);
      return 1000 * diameter * 3.7 * (10 ** (-1 / (2 * Math.sqrt(0.032))) - 2.51 / (reynolds * Math.sqrt(0.032)));
    };
    const branch = (Run: string): Row => ({
      Run,
      To: "main",
      Diameter: 150,
      Length: 10,
      Material: wall(0.2, 0.15),
      Hood: 4,
      Airflow: 720,
    });
    const rows = [
      branch("a"),
      branch("b"),
      branch("c"),
      branch("d"),
      { Run: "main", To: "fan", Diameter: 300, Length: 20 + 6, Material: wall(0.8, 0.3) },
    ];
    const { Fan } = answerOf(rows, "SI", density);
    expect(Math.abs(Number(Fan!["Path loss to fan"]) - 684.51)).toBeLessThanOrEqual(0.005);
    expect(Fan!.Airflow).toBeCloseTo(2880, 9); // 4 x 0.2 m3/s
  });

  // GW1: filled duct sheet citing the ACGIH manual, 22nd ed. 1995. Its friction is Loeffler's, 2 to 4 % above Colebrook at
  // 0.0005 ft, so segments agree within 4 %. It books static pressures and leaves out the velocity pressure gained between
  // its first and last segment (0.68 to 0.84 in.w.g.), which total-pressure bookkeeping counts: the fan's figure within 4 %.
  describe("follows the exhaust line of the 1995 sheet", () => {
    const steel = { Material: 0.006 }; // in, 0.0005 ft
    const easy = { Diameter: 40, Length: 0, Hood: 0.01 }; // brings the rest of the air without governing
    const line = () =>
      answerOf([
        { Run: "A-B", To: "B-C", Diameter: 10, Length: 59.04, Hood: 0.5, Airflow: 1800, K: 0.28, ...steel },
        { Run: "at B", To: "B-C", Airflow: 2400, ...easy },
        { Run: "B-C", To: "C-D", Diameter: 16, Length: 52.48, K: 3 * 0.28, ...steel },
        { Run: "at C", To: "C-D", Airflow: 2300, ...easy },
        { Run: "C-D", To: "fan", Diameter: 18, Length: 52.48, K: 2 * 0.27 + 3 * 0.28, ...steel },
        { Run: "J-K", To: "", Diameter: 20, Length: 26.24, K: 0.27 + 0.28, Side: "discharge", ...steel },
      ]);
    const within = (ours: unknown, printed: number, share: number) =>
      expect(Math.abs(Number(ours) / printed - 1)).toBeLessThanOrEqual(share);

    test("segment by segment", () => {
      const { "A-B": first, "B-C": second, "C-D": third } = line();
      within(Number(first!["Run loss"]) - 0.5 * Number(first!["Velocity pressure"]), 1.13, 0.04);
      within(second!["Run loss"], 0.87, 0.04);
      within(third!["Run loss"], 1.67, 0.04);
    });

    test("velocity pressures, printed to two digits", () => {
      const { "A-B": first, "B-C": second, "C-D": third, "J-K": outlet } = line();
      expect(Math.abs(Number(first!["Velocity pressure"]) - 0.68)).toBeLessThanOrEqual(0.005);
      expect(Math.abs(Number(second!["Velocity pressure"]) - 0.56)).toBeLessThanOrEqual(0.006); // their 3010 fpm is cut from 3008
      expect(Math.abs(Number(third!["Velocity pressure"]) - 0.84)).toBeLessThanOrEqual(0.005);
      expect(Math.abs(Number(outlet!["Velocity pressure"]) - 0.55)).toBeLessThanOrEqual(0.006); // their 2981 fpm is cut
    });

    test("fan static pressure 4.30 in.w.g.", () => within(line().Fan!["Path loss to fan"], 4.3, 0.04));
  });
});

describe("BUDGET by hand", () => {
  // Two hoods of K 1 with 0.1 m3/s each in ducts of 0.1 m2... worked without friction, so that a pocket calculator does:
  // D = 200 mm, A = 0.0314159 m2; 360 m3/h = 0.1 m3/s: V = 3.18310 m/s; p_v = 0.6 V^2 = 6.07927 Pa (density 1.2).
  // hood a: K 1 + fittings 1 -> 12.15854 Pa at its end. hood b: K 1 + fittings 2 -> 18.23781 Pa: governs.
  // main, same duct, 0.2 m3/s: V = 6.36620 m/s, p_v = 24.31708 Pa, K 0.5 -> 12.15854 Pa. Fan: 30.39635 Pa, 720 m3/h.
  const rows: Row[] = [
    { Run: "a", To: "main", Diameter: 200, Hood: 1, K: 1, Airflow: 360 },
    { Run: "b", To: "main", Diameter: 200, Hood: 1, K: 2, Airflow: 360 },
    { Run: "main", To: "fan", Diameter: 200, K: 0.5 },
  ];
  let result: ReturnType<typeof answerOf>;
  beforeAll(() => {
    result = answerOf(rows, "SI", 1.2);
  });

  test("adds losses along the path and takes the stronger one at the junction", () => {
    expect(result.a!["Suction at its end"]).toBeCloseTo(12.15854, 4);
    expect(result.b!["Suction at its end"]).toBeCloseTo(18.23781, 4);
    expect(result.main!["Suction at its end"]).toBeCloseTo(30.39635, 4);
    expect(result.Fan!["Path loss to fan"]).toBeCloseTo(30.39635, 4);
    expect(result.Fan!.Airflow).toBeCloseTo(720, 9);
    expect([result.a!.Governs, result.b!.Governs, result.main!.Governs]).toEqual(["no", "yes", "yes"]);
  });

  // A hose of 2 m compressed by 10 % in 200 mm: 1 + 5.8 exp(-0.992126) = 3.15057 times the loss of one drawn out.
  test("a hose costs as it lies, and the note says how many times as much", () => {
    const hose = (Flex: string | number) => answerOf([{ ...rows[0]!, Flex }, ...rows.slice(1)], "SI", 1.2).a!;
    const [drawn, pressed, hanging] = [hose(2), hose("2 compressed 10%"), hose("2 as it hangs")];
    expect(Number(pressed.Friction) / Number(drawn.Friction)).toBeCloseTo(3.15057, 4);
    expect(Number(hanging.Friction) / Number(drawn.Friction)).toBeCloseTo(4, 9);
    expect(pressed.Note).toContain("its hose costs 3.2 times what it would drawn out");
    expect(drawn.Note).not.toContain("its hose");
    expect(Number(hose("2 smooth-bore").Friction)).toBeLessThan(Number(drawn.Friction));
  });

  // After the fan 200 mm as before (24.31708 Pa), then 250 mm: A = 0.0490874 m2, V = 4.07437 m/s, p_v = 9.96030 Pa.
  test("an exit after the fan counts only beyond the velocity pressure at the fan's outlet, and the note says so", () => {
    const stack = { Run: "stack", To: "outside", Diameter: 200, Fittings: "exit", Side: "discharge" };
    const straight = answerOf([...rows, stack], "SI", 1.2);
    expect(straight.Fan!["Path loss to fan"]).toBeCloseTo(30.39635, 4);
    expect(straight.stack!.Note).toBe(
      "an exit against fan static pressure counts only beyond the velocity pressure at the fan's outlet",
    );
    const wider = [
      { ...stack, To: "wide", Fittings: null },
      { ...stack, Run: "wide", Diameter: 250 },
    ];
    expect(answerOf([...rows, ...wider], "SI", 1.2).Fan!["Path loss to fan"]).toBeCloseTo(
      30.39635 + 9.9603 - 24.31708,
      4,
    );
  });

  test("a weaker path would draw Q sqrt(p_governing / p_path): 360 sqrt(18.23781 / 12.15854) = 440.91 m³/h", () => {
    expect(result.a!["Airflow when balanced"]).toBeCloseTo(440.91, 2);
    expect(result.b!["Airflow when balanced"]).toBeCloseTo(360, 9);
    expect(result.a!.Note).toMatch(/resize: its path needs 33 % less suction than the junction has/);
  });

  test("a shut gate lets in only its leak, at the junction's suction", () => {
    // 100 mm2 at 12.15854 Pa: 0.6 x 1e-4 x sqrt(2 x 12.15854 / 1.2) = 2.70095e-4 m3/s = 0.972342 m3/h
    const shut = answerOf([rows[0]!, { ...rows[1]!, Gate: "shut", Leak: 100 }, rows[2]!], "SI", 1.2);
    expect(shut.b!.Airflow).toBeCloseTo(0.972342, 5);
    expect(shut.b!.Note).toBe("gate shut: only its leak flows");
    expect(shut.b!.Governs).toBe("");
    expect(shut.Fan!.Airflow).toBeCloseTo(360.972342, 5);
  });

  test("the leak columns follow the gate", () => {
    const leaky: Row = { ...rows[1]!, "Leak open": 100, "Leak shut": 400 };
    const carried = (Gate: string) => Number(answerOf([rows[0]!, { ...leaky, Gate }, rows[2]!], "SI", 1.2).b!.Airflow);
    // shut: 4 x 0.972342 m3/h; open: 100 mm2 at its own hood's suction, (1 + 1) x 6.07927 Pa (its own velocity pressure grows by 0.5 %)
    expect(carried("shut")).toBeCloseTo(3.889368, 4);
    expect(carried("open")).toBeCloseTo(360 + 0.9729, 2);
  });
});

describe("BUDGET's table", () => {
  test("headers carry their unit, and there is one row per row of the table, then the fan", () => {
    const answer = budget(table([saw, { Run: null }, sander, main, { Run: null }]));
    expect(answer[0]).toEqual([
      "Run", "Airflow (cfm)", "Velocity (fpm)", "Velocity pressure (in.w.g.)", "Friction (in.w.g.)", "Fittings (in.w.g.)",
      "Device (in.w.g.)", "Run loss (in.w.g.)", "Suction at its end (in.w.g.)", "Path loss to fan (in.w.g.)", "Governs",
      "Airflow when balanced (cfm)", "Note",
    ]); // prettier-ignore
    expect(answer.map(([name]) => name)).toEqual(["Run", "saw", "", "sander", "main", "Fan"]);
    expect(new Set(answer.map((row) => row.length))).toEqual(new Set([13]));
  });

  test("columns are found in any order and case, brackets after a header are ignored, and other columns are the user's own", () => {
    const upside = table([saw, sander, main]).map((row) => [...row].reverse());
    upside[0] = upside[0]!.map((header) => ` ${String(header).toUpperCase()} (whatever)`);
    const withOwn = upside.map((row, index) => [...row, index === 0 ? "My remark" : "=1+1"]);
    expect(budget(withOwn)).toEqual(budget(table([saw, sander, main])));
  });

  test("0 counts as blank in every column where both mean the same", () => {
    const zeros = { Flex: 0, K: 0, Leak: 0, "Device loss": 0, Side: 0, Fittings: 0 };
    expect(budget(table([{ ...saw, ...zeros }, sander, main]))).toEqual(budget(table([saw, sander, main])));
  });

  test("where they do not, a 0 that somebody typed is refused; from a host that sends every blank as 0 it is a blank", () => {
    const refused = (zero: Row): unknown => budget(table([{ ...saw, ...zero }, sander, main]))[1]!.at(-1);
    expect(refused({ Material: 0 })).toBe(
      'Material of run "saw" (row 2) must be a name, a roughness above 0, "smooth" for 0, or blank for galvanised steel; got 0',
    );
    expect(refused({ Hood: 0 })).toBe(
      `Hood of run "saw" (row 2) must be a hood entry's name, its K above 0, or blank where no hood is; got 0`,
    );
    const sent = table([saw, sander, main]).map((row) => row.map((cell) => cell ?? 0));
    expect(budget(sent)).toEqual(budget(table([saw, sander, main])));
  });

  // A wall without roughness costs less than the usual one, and a number near 0 nearly as little.
  test("a smooth wall is a material by that word", () => {
    const friction = (material: string | number): number =>
      Number(answerOf([{ ...saw, Material: material }, main]).saw!.Friction);
    expect(friction("Smooth")).toBeLessThan(friction("galvanised steel"));
    expect(Math.abs(friction("smooth") / friction(1e-9) - 1)).toBeLessThan(1e-5);
  });

  test("reordering the runs changes no run's answer", () => {
    const rows = [saw, sander, main, { ...saw, Run: "lathe", Airflow: 420, Leak: 0.5 }];
    fc.assert(
      fc.property(fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 }), (places) => {
        const shuffled = answerOf(places.map((place) => rows[place]!));
        const straight = answerOf(rows);
        for (const name of Object.keys(straight)) {
          for (const column of ["Airflow", "Suction at its end", "Path loss to fan"]) {
            const [a, b] = [Number(shuffled[name]![column]), Number(straight[name]![column])];
            expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.abs(b)); // sums in another order
          }
        }
      }),
      { numRuns: 24 },
    );
  });

  test("SI and I-P give the same physics", () => {
    const si: Row[] = [
      { ...saw, Diameter: 4 * 25.4, Length: 10 * 0.3048, Airflow: 350 * 1.69901079552 },
      { ...main, Diameter: 5 * 25.4, Length: 10 * 0.3048 },
    ];
    const metric = Number(answerOf(si, "SI").Fan!["Path loss to fan"]) / 248.84;
    const inches = Number(answerOf([saw, main]).Fan!["Path loss to fan"]);
    expect(Math.abs(metric / inches - 1)).toBeLessThanOrEqual(1e-12);
  });

  test("a hood that asks for nothing, a typed sum at a main and a quiet shop are said in notes", () => {
    const { sander: idle, main: middle } = answerOf([saw, { ...sander, Airflow: null }, { ...main, Airflow: 700 }]);
    expect(idle!.Note).toBe("no airflow is asked for here");
    expect(middle!.Note).toMatch(/^the airflow typed here is not used/);
    expect(answerOf([{ ...saw, Gate: "shut" }, main]).Fan!.Note).toBe("no open hood asks for air");
  });

  test("a typed sum is said also where the To is spelled otherwise, as the join allows", () => {
    const rows = [
      { ...saw, To: "main-run" },
      { ...main, Run: "Main  Run", Airflow: 700 },
    ];
    expect(answerOf(rows)["Main  Run"]!.Note).toMatch(/^the airflow typed here is not used/);
  });

  test("slow dust settles and fast air is waste: 20 and 28 m/s, DGUV Information 209-044", () => {
    // 4 in: 0.0872665 ft2; 3937 fpm needs 343.6 cfm, 5512 fpm 480.996 cfm
    const noteAt = (Airflow: number): unknown =>
      answerOf([
        { ...saw, Airflow },
        { ...main, Diameter: 4 },
      ]).saw!.Note;
    expect(noteAt(343)).toBe('dust settles: "wood dust" needs 3937 fpm');
    expect(noteAt(344)).toBe("");
    expect(noteAt(480)).toBe("");
    expect(noteAt(482)).toBe("too fast: over 5512 fpm only costs pressure and wears the duct");
  });

  test("the fan's note names what to look for on a curve for standard air", () => {
    const { Fan } = answerOf([saw, main], "IP", 0.06);
    expect(Fan!.Note).toMatch(/in this air; on a curve for standard air look for [\d.]+ in\.w\.g\.$/);
  });
});

describe("BUDGET of a run whose Side is blank", () => {
  const out: Row = { Run: "out", To: "outside", Diameter: 6, Length: 20 };
  const stays: Row = { ...out, Run: "longer", Diameter: 7 };

  test.each(["outside", "Outdoors", "open air", "room"])("stands after the fan where To is %s", (To) => {
    const blank = answerOf([saw, main, { ...out, To }]);
    expect(blank).toEqual(answerOf([saw, main, { ...out, To, Side: "discharge" }]));
    expect(blank.out!.Airflow).toBe(350);
    expect(blank.out!["Suction at its end"]).toBe("");
  });

  test("stands before the fan where a run of that name is joined, or where it says so", () => {
    const room: Row = { Run: "room", To: "main", Diameter: 4, Length: 2 };
    expect(answerOf([{ ...saw, To: "room" }, room, main]).saw!["Suction at its end"]).toBeGreaterThan(0);
    expect(answerOf([saw, main, { ...stays, Side: "suction" }]).longer!.Note).toMatch(
      /waits for run "outside", which no row has/,
    );
  });
});
