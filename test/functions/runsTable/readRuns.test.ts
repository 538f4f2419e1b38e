import { askedInVain } from "../../../src/functions/budgetTable/budgetNotes";
import type { UnitSystem } from "../../../src/reference/quantities";
import { relative } from "../../support/printed";
import { runsOf } from "../../support/runsOf";
import type { Row } from "../../support/tables";

const read = (facts: Row, system: UnitSystem = "IP") =>
  runsOf([{ Run: "saw", To: "fan", Diameter: 4, ...facts }], system).runs[0]!;
const run = (facts: Row, system: UnitSystem = "IP") => read(facts, system).run;

const FOOT = 0.3048; // [m]
const INCH = 0.0254; // [m]
const SQUARE_INCH = INCH ** 2;
const CFM = FOOT ** 3 / 60; // [m3/s]
const INCH_OF_WATER = 248.84; // [Pa] at 60 F

describe("a run of which nothing else is said", () => {
  test("has neither length nor fittings, gate, leak, hood nor device, and stands on the suction side", () => {
    expect(run({})).toMatchObject({
      ...{ name: "saw", label: 'run "saw" (row 2)', to: "fan", side: "suction", gate: "none" },
      ...{ length: 0, hoseLength: 0, coefficient: 0, hood: null, wantedAirflow: 0, leakArea: 0, device: null },
    });
  });

  // ASHRAE's table of roughness (second-hand): galvanised steel with many seams 0.0005 ft. DGUV Information 209-044: 20 m/s.
  test("is galvanised steel that carries wood dust", () => {
    expect(relative(run({}).roughness, 0.0005 * FOOT)).toBeLessThan(1e-12);
    expect(read({}).dust).toMatchObject({ key: "wood dust", low: 20 });
  });
});

describe("each column in SI, whatever the table is in", () => {
  test.each<[Row, "length" | "hoseLength" | "diameter" | "wantedAirflow" | "leakArea" | "coefficient" | "roughness", number]>([
    [{ Diameter: 5 }, "diameter", 5 * INCH],
    [{ Length: 10 }, "length", 10 * FOOT],
    [{ Flex: 6 }, "hoseLength", 6 * FOOT],
    [{ Airflow: 350 }, "wantedAirflow", 350 * CFM],
    [{ Leak: 0.5 }, "leakArea", 0.5 * SQUARE_INCH],
    [{ Leak: "0.5" }, "leakArea", 0.5 * SQUARE_INCH],
    [{ K: 0.3 }, "coefficient", 0.3],
    [{ Fittings: "tee", K: 0.3 }, "coefficient", 0.96 + 0.3],
    [{ Fittings: 0.4 }, "coefficient", 0.4],
    [{ Material: 0.01 }, "roughness", 0.01 * INCH],
    [{ Material: 0.8 }, "roughness", 0.8 * INCH],
  ])("I-P: %j", (facts, key, expected) => expect(relative(run(facts)[key], expected)).toBeLessThan(1e-12)); // prettier-ignore

  test.each<[Row, "length" | "hoseLength" | "diameter" | "wantedAirflow" | "leakArea", number]>([
    [{ Diameter: 125 }, "diameter", 0.125],
    [{ Diameter: 125, Length: 10 }, "length", 10],
    [{ Diameter: 125, Flex: 2 }, "hoseLength", 2],
    [{ Diameter: 125, Airflow: 720 }, "wantedAirflow", 0.2],
    [{ Diameter: 125, Leak: 300 }, "leakArea", 3e-4],
  ])("SI: %j", (facts, key, expected) => expect(relative(run(facts, "SI")[key], expected)).toBeLessThan(1e-12)); // prettier-ignore

  test("a device's loss and airflow, with the exponent of a separator where none is given", () => {
    const device = run({ "Device loss": 3, "Device airflow": 800 }).device!;
    expect(relative(device.ratedLoss, 3 * INCH_OF_WATER)).toBeLessThan(1e-12);
    expect(relative(device.ratedAirflow, 800 * CFM)).toBeLessThan(1e-12);
    expect(device.exponent).toBe(2);
    expect(run({ "Device loss": 3, "Device airflow": 800, "Device exponent": 1 }).device!.exponent).toBe(1);
    expect(run({ "Device exponent": 1 }).device).toBeNull();
  });

  // 4 in: a flapped slot is 0.1 mm wide and as long as the diameter (our own estimate, which the table of gates says).
  test("a leak by the name of the gate's condition", () => {
    expect(relative(run({ Leak: "open flapped slot" }).leakArea, 1e-4 * 4 * INCH)).toBeLessThan(1e-12);
  });

  test("a leak counts always; those of the gate's two places only with the gate there", () => {
    const leaks = { Leak: 1, "Leak open": 0.25, "Leak shut": 0.5 };
    expect(run({ ...leaks, Gate: "open" }).leakArea / SQUARE_INCH).toBeCloseTo(1.25, 12);
    expect(run({ ...leaks, Gate: "shut" }).leakArea / SQUARE_INCH).toBeCloseTo(1.5, 12);
    expect(run(leaks).leakArea / SQUARE_INCH).toBeCloseTo(1, 12);
  });

  test("names without outer blanks, a number as a name, words in any case", () => {
    expect(run({ Run: " saw ", To: " fan " })).toMatchObject({ name: "saw", to: "fan" });
    expect(run({ Run: 7 })).toMatchObject({ name: "7", label: 'run "7" (row 2)' });
    expect(run({ Gate: "OPEN" }).gate).toBe("open");
    expect(run({ Side: "Discharge", To: null })).toMatchObject({ side: "discharge", to: "" });
    expect(read({ Dust: "heavy dust" }).dust.key).toBe("heavy dust");
  });
});

describe("rows", () => {
  test("keep their places; blank ones between and below are no runs", () => {
    const rows = [{}, { Run: "saw", To: "main", Diameter: 4 }, {}, { Run: "main", To: "fan", Diameter: 5 }, {}, {}];
    const answer = runsOf(rows);
    expect(answer.runs.map(({ row, run: { name, label } }) => [row, name, label])).toEqual([
      [1, "saw", 'run "saw" (row 3)'],
      [3, "main", 'run "main" (row 5)'],
    ]);
    expect(answer.rows).toBe(4);
  });

  test("an airflow asks in vain where other runs join, however they spell it, and at no hood", () => {
    const rows = [
      { Run: "saw", To: "Main-Run", Diameter: 4, Airflow: 350 },
      { Run: "main run", To: "fan", Diameter: 5, Airflow: 350 },
    ];
    const asked = (some: readonly Row[]) => {
      const answer = runsOf(some);
      return answer.runs.map((entry) => askedInVain(entry, answer).length > 0);
    };
    expect(asked(rows)).toEqual([false, true]);
    expect(asked(rows.map((row) => ({ ...row, Airflow: null })))).toEqual([false, false]);
  });
});
