import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { solve } from "../../../src/functions/systems/solve";
import { markOf } from "../../../src/reference/notes";
import { byName, type Row, table } from "../../support/tables";

const [BUDGET, SOLVE] = [budget, solve] as unknown as ((...args: unknown[]) => (string | number)[][])[];
const MAIN = (Math.PI / 4) * 0.1 ** 2 * 20 * 3600; // m³/h: 20 m/s in 100 mm, 240 Pa at 1.2 kg/m³

/** A tee of equal ducts without walls, a quarter of whose air comes from aside. */
const tee = (branch: string, last = ""): Row[] => [
  { Run: "aside", To: "main", Diameter: 100, Hood: 0.5, Airflow: MAIN / 4, Fittings: branch },
  { Run: "on", To: "main", Diameter: 100, Hood: 0.5, Airflow: (3 * MAIN) / 4, Fittings: "" },
  { Run: "main", To: "fan", Diameter: 100, Hood: "", Airflow: "", Fittings: last },
];
const asked = (runs: readonly Row[]) => byName(BUDGET!(table(runs), [[1.2]], [["SI"]]));
const number = (cell: unknown): number => (typeof cell === "number" ? cell : NaN);

describe("a branch in the column Fittings", () => {
  // By hand: velocity pressures 240, 15 and 135 Pa, entries 7.5 and 67.5; C = 0.675, so the branch has 0.675 (1 + 1/16 - 2 x 9/16)
  // = -0.0421875 of 240 and the straight run 1.55 / 4 - 1 / 16 = 0.325 of it.
  test("costs by the airflows where its run joins another, and the run beside it pays its part", () => {
    const { aside, on, main } = asked(tee("branch 90"));
    expect(number(aside!.Fittings)).toBeCloseTo(7.5 - 10.125, 9);
    expect(number(on!.Fittings)).toBeCloseTo(67.5 + 78, 9);
    expect(number(on!["Suction at its end"])).toBeCloseTo(145.5, 9);
    expect([aside!.Governs, on!.Governs]).toEqual(["no", "yes"]);
    expect(number(main!["Suction at its end"])).toBeCloseTo(145.5, 9);
    expect(on!.Note).toContain(markOf("straightOn"));
    expect(aside!.Note).not.toContain(markOf("straightOn"));
  });

  // K 1 at 90 degrees, from memory: 15 Pa.
  test("costs by its angle alone where it is plain, in any spelling, and the other run nothing", () => {
    for (const said of ["branch 90 plain", "Wye 90° plain", "lateral plain 90"]) {
      const { aside, on } = asked(tee(said));
      expect(number(aside!.Fittings)).toBeCloseTo(7.5 + 15, 9);
      expect(number(on!.Fittings)).toBeCloseTo(67.5, 9);
      expect(on!.Note).not.toContain(markOf("straightOn"));
    }
  });

  test("is taken once: a second one, and one of a run that joins none, cost by their angle", () => {
    const { aside, main } = asked(tee("branch 90 x2; 0.2", "branch 90"));
    expect(number(aside!.Fittings)).toBeCloseTo(7.5 - 10.125 + 1.2 * 15, 9);
    expect(number(main!.Fittings)).toBeCloseTo(240, 9);
    expect(main!.Note).toContain(markOf("branchAlone"));
    expect(aside!.Note).not.toContain(markOf("branchAlone"));
  });

  test("is counted in what SOLVE says a run loses", () => {
    const curve = [[0, 2000], [2000, 0]]; // prettier-ignore
    const solved = byName(SOLVE!(table(tee("branch 90")), curve, undefined, [[1.2]], [["SI"]]));
    const [aside, on] = [solved.aside!, solved.on!].map((row) => number(row["Run loss"])) as [number, number];
    expect(Math.abs(aside - on)).toBeLessThan(1e-6 * on); // both lead from the room to the same junction
  });
});
