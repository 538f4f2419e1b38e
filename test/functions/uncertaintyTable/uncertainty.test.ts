import "../../support/customFunctions";
import { fanCurve } from "../../../src/core/fan/fanCurve";
import { solveNetwork } from "../../../src/core/network/solve/solveNetwork";
import { buildNetwork } from "../../../src/core/network/tree";
import { uncertainty } from "../../../src/functions/systems/uncertainty";
import { solve } from "../../../src/functions/systems/solve";
import { lots } from "../../support/lots";
import { refusal } from "../../support/refusal";
import { makeRun } from "../../support/runs";
import { byName, type Row, table } from "../../support/tables";
import { relative } from "../../support/printed";

const call = (...args: any[]): (string | number)[][] => (uncertainty as (...all: any[]) => any[][])(...args);
const CURVE = [["m³/h", "Pa"], [0, 2600], [900, 2300], [2000, 1500], [3000, 0]]; // prettier-ignore
const RUNS: readonly Row[] = [
  { Run: "saw", To: "main", Diameter: 100, Hood: 0.9, Length: 4, Flex: 1.5, K: 0.6, Gate: "open" },
  { Run: "planer", To: "main", Diameter: 125, Hood: 1.4, Length: 6, Flex: 1, K: 0.4, Gate: "open" },
  { Run: "lathe", To: "main", Diameter: 100, Hood: 0.5, Length: 3, Gate: "shut", Leak: 60 },
  { Run: "main", To: "fan", Diameter: 160, Length: 8, K: 0.5, "Device loss": 300, "Device airflow": 1500 },
];
const rows = (open: unknown = null, errors: unknown = null) =>
  byName(call(table(RUNS), CURVE, open, errors, null, "SI"));
const number = (cell: unknown): number => (typeof cell === "number" ? cell : NaN);

/** The errors of the tests, as percentages. */
const ERRORS = { "fan pressure": 10, "fan speed": 10, hose: 40, pipe: 8, fittings: 15, entry: 20, device: 30, diameter: 1, leak: 2.5 }; // prettier-ignore

/** The same runs written by hand in SI, drawn anew with normal logarithms of the test's own making, and solved. */
function sampled(count: number, seed: number) {
  const random = lots(seed);
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const factor = (percent: number): number => Math.exp((percent / 100) * normal());
  const drawn = { flow: new Map<string, number[]>(), suction: new Map<string, number[]>(), leak: [] as number[] };
  const lists = ["saw", "planer", "lathe", "main"].map((name) => ({ name, flow: [] as number[], suction: [] as number[] })); // prettier-ignore
  const air = { density: 1.2013848, hoseRoughness: 0.003, plainEnd: 0.93 };
  for (let draw = 0; draw < count; draw++) {
    const [speed, pressure] = [factor(10), factor(10)];
    const [pipe, hose] = [factor(8), factor(40)];
    const run = (
      name: string,
      to: string,
      diameter: number,
      length: number,
      hoseLength: number,
      k: number,
      facts: object,
    ) =>
      // prettier-ignore
      makeRun(name, to, {
        diameter: diameter * factor(1),
        length: length * pipe,
        hoseLength: hoseLength * hose,
        roughness: 0.00015,
        coefficient: k * factor(15),
        ...facts,
      });
    const runs = [
      run("saw", "main", 0.1, 4, 1.5, 0.6, { hood: 0.9 * factor(20), gate: "open" }),
      run("planer", "main", 0.125, 6, 1, 0.4, { hood: 1.4 * factor(20), gate: "open" }),
      run("lathe", "main", 0.1, 3, 0, 0, { hood: 0.5, gate: "shut", leakArea: 60e-6 * Math.exp(Math.log(2.5) * normal()) }), // prettier-ignore
      run("main", "fan", 0.16, 8, 0, 0.5, {
        device: { ratedLoss: 300 * factor(30), ratedAirflow: 1500 / 3600, exponent: 2 },
      }),
    ];
    const points = (CURVE.slice(1) as number[][]).map(([flow, p]) => ({
      airflow: (flow! / 3600) * speed,
      pressure: p! * pressure * speed ** 2,
    }));
    const solution = solveNetwork(buildNetwork(runs), fanCurve(points), air);
    runs.forEach(({ diameter }, index) => {
      const velocity = solution.airflow[index]! / ((Math.PI / 4) * diameter ** 2);
      lists[index]!.flow.push(solution.airflow[index]! * 3600);
      lists[index]!.suction.push(solution.suction[index]! + 0.5 * air.density * velocity ** 2);
    });
    drawn.leak.push(solution.leak[2]! * 3600);
  }
  lists.forEach(({ name, flow, suction }) => {
    drawn.flow.set(name, flow);
    drawn.suction.set(name, suction);
  });
  return drawn;
}

const deviation = (values: readonly number[]): number => {
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  return Math.sqrt(values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (values.length - 1));
};
const within = (values: readonly number[], middle: number, reach: number): number =>
  values.filter((one) => Math.abs(one - middle) <= reach).length / values.length;
const quantile = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.round(share * (values.length - 1))]!;

describe("UNCERTAINTY against 10,000 draws through SOLVE", () => {
  const draws = sampled(10_000, 7);
  const told = rows(null, Object.entries(ERRORS));

  test.each(["saw", "planer", "main"])(
    "the ± of %s is two standard deviations of the draws, and holds 19 of 20",
    (name) => {
      const {
        Airflow: flow,
        "Airflow, ±": off,
        "Static suction": suction,
        "Static suction, ±": offSuction,
      } = told[name]!;
      const [flows, suctions] = [draws.flow.get(name)!, draws.suction.get(name)!];
      expect(Math.abs(number(off) / (2 * deviation(flows)) - 1)).toBeLessThan(0.05);
      expect(Math.abs(number(offSuction) / (2 * deviation(suctions)) - 1)).toBeLessThan(0.05);
      for (const share of [
        within(flows, number(flow), number(off)),
        within(suctions, number(suction), number(offSuction)),
      ]) {
        expect(share).toBeGreaterThan(0.93);
        expect(share).toBeLessThan(0.97);
      }
    },
  );

  test("a leak is told as times or over, which reaches to the ends of its draws", () => {
    const { Leak: leak, "Leak, times or over": factor } = told.lathe!;
    expect(Math.abs(Math.log(number(leak) * number(factor)) - Math.log(quantile(draws.leak, 0.975)))).toBeLessThan(0.1);
    expect(Math.abs(Math.log(number(leak) / number(factor)) - Math.log(quantile(draws.leak, 0.025)))).toBeLessThan(0.1);
  });

  test("and in words so, too, where it is all that flows", () => {
    expect(told.lathe!["Airflow in words"]).toMatch(/^\d\.\d m³\/h, times or over 6\.\d$/);
  });

  // By hand: the suction hardly minds so small leaks, so u(Q)^2 = (ln 2.5)^2 (Q1^2 + Q2^2) where Q = Q1 + Q2, the duct's own leak and
  // the gate's before it; 1 % for what the suction does mind.
  test("a run that carries its own leak and those before it is told by all of them", () => {
    const runs = RUNS.map((run) => (run.Run === "lathe" ? { ...run, To: "idle" } : run));
    const idle: Row = { Run: "idle", To: "main", Diameter: 125, Length: 2, Leak: 3 };
    const errors = Object.keys(ERRORS).map((what) => [what, what === "leak" ? 2.5 : "none"]);
    const answer = byName(call(table([...runs, idle]), CURVE, null, errors, null, "SI"));
    const [own, before] = [number(answer.idle!.Leak), number(answer.lathe!.Leak)];
    const flow = own + before;
    const spread = (2 * Math.log(2.5) * Math.hypot(own, before)) / flow;
    expect(relative(number(answer.idle!.Airflow), flow)).toBeLessThan(1e-9);
    expect(relative(number(answer.idle!["Airflow, ±"]), flow * Math.sinh(spread))).toBeLessThan(0.01);
    expect(answer.idle!["Airflow mostly unsure by"]).toBe("leak of lathe");
    const [, value, factor] = /^([\d.]+) m³\/h, times or over ([\d.]+)$/.exec(
      String(answer.idle!["Airflow in words"]),
    )!;
    expect(relative(Number(value), flow)).toBeLessThan(0.05); // two digits
    expect(relative(Number(factor), Math.exp(spread))).toBeLessThan(0.05);
  });

  test("a run that carries nothing but its leak does not go straight: half of the range of the draws", () => {
    const flows = draws.flow.get("lathe")!;
    const half = (quantile(flows, 0.975) - quantile(flows, 0.025)) / 2;
    expect(relative(number(told.lathe!["Airflow, ±"]), half)).toBeLessThan(0.15);
    expect(number(told.lathe!["Airflow, ±"])).not.toBeCloseTo(2 * deviation(flows), 0);
  });
});

describe("UNCERTAINTY's table", () => {
  test("has the rows and the numbers of SOLVE, blank rows too, and the fan", () => {
    const given = table([RUNS[0]!, { Run: null }, ...RUNS.slice(1)]);
    const answer = call(given, CURVE, null, null, null, "SI");
    expect(answer.map(([name]) => name)).toEqual(["Run", "saw", "", "planer", "lathe", "main", "Fan"]);
    const solved = byName((solve as (...all: any[]) => any[][])(given, CURVE, null, null, "SI"));
    for (const [name, row] of Object.entries(byName(answer)))
      for (const column of ["Airflow", "Static suction", "Leak"]) expect(row[column]).toBe(solved[name]![column]);
    expect(answer.at(-1)!.at(-1)).toBe("each ± is two standard deviations: 19 of 20, if the errors are as told");
  });

  test("says in words what has digits, and what to measure first", () => {
    const { saw } = rows();
    const [value, off] = [number(saw!.Airflow), number(saw!["Airflow, ±"])];
    const [, shown, error] = /^(\d+) ± (\d+) m³\/h$/.exec(String(saw!["Airflow in words"]))!;
    expect(Math.abs(Number(shown) - value)).toBeLessThanOrEqual(5);
    expect(Math.abs(Number(error) - off)).toBeLessThanOrEqual(5);
    expect(saw!["Airflow mostly unsure by"]).toBe("the fan's speed");
    expect(number(saw!["Its share in %"])).toBeGreaterThan(30);
  });

  test("is certain where no error is", () => {
    const none = Object.keys(ERRORS).map((what) => [what, "none"]);
    for (const [name, row] of Object.entries(rows(null, none))) {
      expect([name, row["Airflow, ±"], row["Airflow mostly unsure by"]]).toEqual([name, 0, ""]);
      if (row["Leak, times or over"] !== "") expect(row["Leak, times or over"]).toBe(1);
    }
  });

  // with one input alone the ± goes with its error
  test("of the fan's pressure alone: twice the error is twice the ±", () => {
    const alone = (percent: number) => {
      const others = Object.keys(ERRORS).filter((what) => what !== "fan pressure");
      return rows(null, [["what", "±"], ["Fan-Pressure", percent], ...others.map((what) => [what, "none"])]);
    };
    const [one, two] = [alone(3), alone(6)];
    for (const name of ["saw", "main", "Fan"]) {
      expect(relative(number(two[name]!["Airflow, ±"]), 2 * number(one[name]!["Airflow, ±"]))).toBeLessThan(1e-9);
      expect(one[name]!["Airflow mostly unsure by"]).toBe("the fan's pressure");
      expect(one[name]!["Its share in %"]).toBe(100);
    }
  });

  test("what the table of errors does not name is as usual, and no larger error makes a smaller ±", () => {
    expect(rows(null, [["hose", 40]])).toEqual(rows());
    expect(rows(null, null)).toEqual(rows());
    const wider = rows(null, [["hose", 90], [null, null], ["entry", 60]]); // prettier-ignore
    for (const name of ["saw", "planer"])
      expect(number(wider[name]!["Airflow, ±"])).toBeGreaterThan(number(rows()[name]!["Airflow, ±"]));
  });

  test("opens the gates that are named, and tells the same in I-P", () => {
    const inches = call(table(RUNS.map((row) => inIP(row))), CURVE.map((row, index) => (index === 0 ? ["cfm", "in.w.g."] : [Number(row[0]) / 1.69901082, Number(row[1]) / 248.84])), "saw"); // prettier-ignore
    const [one, other] = [byName(inches), rows("saw")];
    expect(relative(1.69901082 * number(one.saw!["Airflow, ±"]), number(other.saw!["Airflow, ±"]))).toBeLessThan(1e-6);
    expect(other.planer!.Airflow).toBe(0);
    expect(other.planer!["Airflow in words"]).toBe("0 m³/h");
  });

  test.each<[string, unknown]>([
    ['what in row 1 of errors must be a name in the table "input errors" (nearest: "hose", "model", "pipe"); got "hoes"', [["hoes", 3]]], // prettier-ignore
    ['hose in errors must be a number above 0, "none" for 0, or its row left out for 40; got 0', [["hose", 0]]],
    ['leak in errors must be a number above 0, "none" for 0, or its row left out for 2.5; got a blank cell', [["leak", null]]], // prettier-ignore
    ["leak in errors must be above 1; got 1", [["leak", 1]]],
    ["pipe in errors must be from 0.1 to 200; got -3", [["pipe", -3]]],
    ["pipe in errors must be from 0.1 to 200; got 0.08", [["pipe", 0.08]]], // 8 % typed with its sign
    ["pipe in errors must be from 0.1 to 200; got 201", [["pipe", 201]]],
    ['pipe in errors must be a number; got "much"', [["x", "%"], ["pipe", "much"]]], // prettier-ignore
    ['hose in errors must be a number; got "60%"', [["hose", "60%"]]], // no heading: it names an input
    ['what in row 2 of errors must be named once; got "Pipe"', [["pipe", 3], ["Pipe", 4]]], // prettier-ignore
    ['errors must be two columns: what, and its ± in %; got "3 columns"', [["pipe", 3, 4]]],
    ['what in row 1 of errors must be a name in the table "input errors"; got 3', [[3, 4]]],
  ])("refuses: %s", (message, errors) => {
    expect(refusal(() => call(table(RUNS), CURVE, null, errors, null, "SI"))).toEqual({ code: "#VALUE!", message });
  });

  // One run after the fan with no loss, as wide as the fan's outlet, costs nothing, whatever its diameter. So that diameter moves no
  // airflow, and of v = Q / (pi/4 D^2): u(v)^2 / v^2 = u(Q)^2 / Q^2 + (2 u(D) / D)^2, u(D) / D being 5 %.
  test("a velocity after the fan is as unsure as its duct's diameter, too", () => {
    const runs: Row[] = [...RUNS, { Run: "out", To: "outside", Diameter: 200, Side: "discharge" }];
    const errors = [["diameter", 5], ["leak", "none"]]; // prettier-ignore
    const { out } = byName(call(table(runs), CURVE, null, errors, null, "SI"));
    const by = (what: string): number => number(out![`${what}, ±`]) / number(out![what]);
    expect(relative(by("Velocity"), Math.hypot(by("Airflow"), 2 * 2 * 0.05))).toBeLessThan(1e-9);
  });

  // The same where a large leak has its range from draws: 400 of them tell a range to within a tenth.
  test("also where draws tell its range", () => {
    const leaky: Row = { Run: "slot", To: "main", Diameter: 100, Hood: 0.5, Gate: "shut", Leak: 3000 };
    const runs: Row[] = [leaky, ...RUNS, { Run: "out", To: "outside", Diameter: 200, Side: "discharge" }];
    const { out } = byName(call(table(runs), CURVE, null, [["diameter", 15]], null, "SI"));
    const by = (what: string): number => number(out![`${what}, ±`]) / number(out![what]);
    expect(relative(by("Velocity"), Math.hypot(by("Airflow"), 2 * 2 * 0.15))).toBeLessThan(0.15);
  });

  test("takes at most 200 rows", () => {
    const many = Array.from({ length: 201 }, (_, index): Row => ({ Run: `r${index}`, To: index === 0 ? "fan" : "r0", Diameter: 100 })); // prettier-ignore
    const { message } = refusal(() => call(table(many), CURVE, null, null, null, "SI"));
    expect(message).toBe("runs must be at most 200 rows; got 201");
  });
});

/** The same row in inches, feet and square inches. */
function inIP(row: Row): Row {
  const by = (key: string, factor: number): Row => (typeof row[key] === "number" ? { [key]: Number(row[key]) / factor } : {}); // prettier-ignore
  return {
    ...row,
    ...by("Diameter", 25.4),
    ...by("Length", 0.3048),
    ...by("Flex", 0.3048),
    ...by("Leak", 645.16),
    ...by("Device loss", 248.84),
    ...by("Device airflow", 1.69901082),
  };
}
