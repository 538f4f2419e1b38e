import "../../support/customFunctions";
import { calibratedcurve } from "../../../src/functions/systems/calibratedcurve";
import { calibratedruns } from "../../../src/functions/systems/calibratedruns";
import { calibrateduncertainty } from "../../../src/functions/systems/calibrateduncertainty";
import { solve } from "../../../src/functions/systems/solve";
import { uncertainty } from "../../../src/functions/systems/uncertainty";
import { relative } from "../../support/printed";
import { refusal } from "../../support/refusal";
import { byName, type Row, table } from "../../support/tables";

type Call = (...args: any[]) => (string | number)[][];
const [AFTER, BEFORE, SOLVE, RUNS_OF, CURVE_OF] = [calibrateduncertainty, uncertainty, solve, calibratedruns, calibratedcurve] as unknown as Call[] as [Call, Call, Call, Call, Call]; // prettier-ignore

const CURVE = [["m³/h", "Pa"], [0, 2600], [900, 2300], [2000, 1500], [3000, 0]]; // prettier-ignore
const RUNS: readonly Row[] = [
  { Run: "saw", To: "main", Diameter: 100, Hood: 0.9, Length: 4, Flex: 1.5, K: 0.6, Gate: "open" },
  { Run: "planer", To: "main", Diameter: 125, Hood: 1.4, Length: 6, Flex: 1, K: 0.4, Gate: "open" },
  { Run: "lathe", To: "main", Diameter: 100, Hood: 0.5, Length: 3, Gate: "shut", Leak: 60 },
  { Run: "main", To: "fan", Diameter: 160, Length: 8, K: 0.5, "Device loss": 300, "Device airflow": 1500 },
];
const READINGS: readonly Row[] = [
  { Open: "saw", At: "saw", Velocity: 24 },
  { Open: "all", At: "fan", Suction: 1900 },
  { Open: "planer", At: "planer", Airflow: 1150 },
];
const rows = (readings: readonly Row[], open: unknown, errors: unknown = null): ReturnType<typeof byName> =>
  byName(AFTER(table(RUNS), CURVE, table(readings), open, errors, null, "SI"));

describe("CALIBRATEDUNCERTAINTY", () => {
  // Nothing that is read: what is left is what UNCERTAINTY says by its own sums, without diameters and without the model's own error.
  test.each([null, "saw", "saw; planer; lathe"])("with nothing read is UNCERTAINTY, gates %p", (open) => {
    const errors = [["diameter", "none"], ["model", "none"]]; // prettier-ignore
    const none = rows([{ Open: null, At: null, Velocity: null }], open, errors);
    const plain = byName(BEFORE(table(RUNS), CURVE, open, errors.slice(0, 1), null, "SI"));
    expect(Object.keys(none)).toEqual(Object.keys(plain));
    for (const [name, row] of Object.entries(plain)) {
      const cells = ["Airflow", "Velocity", "Static suction", "Leak", "Leak, times or over", ...(name === "lathe" ? [] : ["Airflow, ±", "Velocity, ±", "Static suction, ±", "Its share in %"])]; // prettier-ignore
      for (const column of cells)
        if (typeof row[column] === "number") expect([name, column, Math.abs(Number(none[name]![column]) - row[column]) <= 1e-6 * Math.abs(row[column])]).toEqual([name, column, true]); // prettier-ignore
      if (name !== "lathe") expect(none[name]!["Airflow mostly unsure by"]).toBe(row["Airflow mostly unsure by"]);
    }
  });

  // By hand, with nothing read: 2 ln 2.5 of each leak, the duct's own and the gate's before it, added as squares.
  test("a run that carries its own leak and those before it is told by all of them", () => {
    const runs = [...RUNS.map((run) => (run.Run === "lathe" ? { ...run, To: "idle" } : run)), { Run: "idle", To: "main", Diameter: 125, Length: 2, Leak: 3 }]; // prettier-ignore
    const errors = ["fan pressure", "fan speed", "hose", "pipe", "fittings", "entry", "device", "diameter", "model"].map((what) => [what, "none"]); // prettier-ignore
    const nothing = table([{ Open: null, At: null, Velocity: null }]);
    const { idle, lathe } = byName(AFTER(table(runs), CURVE, nothing, "saw", errors, null, "SI"));
    const [own, before] = [Number(idle!.Leak), Number(lathe!.Leak)];
    const spread = (2 * Math.log(2.5) * Math.hypot(own, before)) / (own + before);
    const [, value, factor] = /^([\d.]+) m³\/h, times or over ([\d.]+)$/.exec(String(idle!["Airflow in words"]))!;
    expect(relative(Number(value), own + before)).toBeLessThan(0.05); // two digits
    expect(relative(Number(factor), Math.exp(spread))).toBeLessThan(0.06); // two digits, and the suction minds the leaks a little
  });

  test("has what SOLVE says of the calibrated ducts and fan, and each reading narrows it", () => {
    const given = [table(RUNS), CURVE, table(READINGS), null, null, "SI"];
    const solved = byName(SOLVE(RUNS_OF(...given), CURVE_OF(...given), "saw; planer", null, "SI"));
    const all = rows(READINGS, "saw; planer");
    const fewer = rows(READINGS.slice(0, 1), "saw; planer");
    const none = rows([{ Open: null, At: null, Velocity: null }], "saw; planer");
    for (const name of ["saw", "planer", "main"]) {
      expect(relative(Number(all[name]!.Airflow), Number(solved[name]!.Airflow))).toBeLessThan(1e-6);
      const share = (one: typeof all): number => Number(one[name]!["Airflow, ±"]) / Number(one[name]!.Airflow);
      expect(share(all)).toBeLessThan(share(fewer));
      expect(share(fewer)).toBeLessThan(share(none));
      expect(share(all)).toBeGreaterThan(2 * 0.75 * 0.04); // the model strays by itself
    }
    expect(String(all.Fan!["In words"] ?? Object.values(all.Fan!).at(-1))).toMatch(/after 3 readings/);
  });

  test("says in words which row of readings is wrong", () => {
    const wrong = [...READINGS, { Open: "all", At: "nowhere", Suction: 5 }];
    const { code, message } = refusal(() => AFTER(table(RUNS), CURVE, table(wrong), null, null, null, "SI"));
    expect([code, message]).toEqual(["#N/A", expect.stringMatching(/^At in row 5 of readings must be the name of a run/)]); // prettier-ignore
  });
});
