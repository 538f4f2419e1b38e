import { verdicts } from "./claimCalls";

/**
 * Invented data sheets: twenty that can be, of which none may be called impossible, and twenty that cannot be, all of which must be. Air of 1.201385
 * kg/m3, 1 in.w.g. 248.84 Pa, 1 hp 745.7 W; cfm x in.w.g. / 6349.6 is hp. Friction factors are Colebrook's, worked apart from this program.
 */
type Sheet = readonly [what: string, facts: Record<string, unknown>, check: string, verdict: string, units?: "SI"];

const all = (sheets: readonly Sheet[]) =>
  sheets.map(([what, facts, check, verdict, units = null]) => [what, facts, check, verdict, units] as const);

const possible: readonly Sheet[] = [
  // u = π 5.7 in 20000/min = 151.6 m/s, ρu² = 110.98 in.w.g. for one wheel, 332.9 for three: 140 is 42 % of it.
  [
    "a three-stage vacuum motor",
    { "sealed suction": 140, "impeller diameter": 5.7, speed: 20000, stages: 3 },
    "Pressure against the tip speed",
    "holds",
  ],
  // The same without its stages: 140 passes the bound of one wheel, so the stages decide.
  [
    "a vacuum motor whose stages are not told",
    { "shut-off pressure": "140 in.w.g.", "impeller diameter": 5.7, speed: 20000 },
    "Pressure against the tip speed",
    "cannot tell",
  ],
  // u = π 10 in 3450/min = 45.88 m/s, ρu² = 10.16 in.w.g.; a side channel takes the air up many times.
  [
    "a side-channel blower that does not say that it is one",
    { pressure: 60, "impeller diameter": 10, speed: 3450 },
    "Pressure against the tip speed",
    "cannot tell",
  ],
  [
    "a side-channel blower",
    { pressure: 60, "impeller diameter": 10, speed: 3450, "wheel kind": "side-channel", stages: 1 },
    "Pressure against the tip speed",
    "cannot tell",
  ],
  // u = π 9.5 in 1725/min = 21.79 m/s, ρu² = 2.29 in.w.g.; a wheel that leans forward throws air faster than its tip.
  [
    "a forward-curved wheel of 2.6 in.w.g.",
    { pressure: 2.6, "impeller diameter": 9.5, speed: 1725, "wheel kind": "forward-curved", stages: 1 },
    "Pressure against the tip speed",
    "cannot tell",
  ],
  // 37.3 m/s, 3.35 in.w.g. of velocity pressure: 10 ft of it take 1.6 to 8.8 in.w.g.; nobody said how long it is.
  [
    "640 cfm through a 4 in hose",
    { airflow: 640, pressure: 9, "hose diameter": 4 },
    "Airflow through the hose",
    "cannot tell",
  ],
  // 40.67 m/s, 993.7 Pa: a bare end takes 0.93 of it, 924 Pa, a rounded one 30 Pa, of 900.
  [
    "1150 m³/h through 100 mm",
    { airflow: 1150, pressure: 900, "inlet diameter": 100 },
    "Airflow through the inlet",
    "cannot tell",
    "SI",
  ],
  // 43.08 m/s, 4.479 in.w.g.; smooth hose (0.3 mm, f 0.02653) with a bare end: (0.93 + 0.02653 x 30) x 4.479 = 7.73 of 8.
  [
    "740 cfm through smooth hose",
    { airflow: 740, pressure: 8, "hose diameter": 4, "hose length": 10, "hose kind": "smooth-bore" },
    "Airflow through the hose",
    "holds",
  ],
  // The same of 5 in.w.g.: with a rounded end and a perfectly smooth wall (0.03 + 0.0146 x 30) x 4.479 = 2.09.
  [
    "740 cfm through smooth hose at less pressure",
    { airflow: 740, pressure: 5, "hose diameter": 4, "hose length": 10, "hose kind": "smooth" },
    "Airflow through the hose",
    "cannot tell",
  ],
  // 1.26 hp in the air of 2: 63 % is below the 85 % of the best wheels.
  ["a fan that is 63 % efficient", { "rated point": "1000 at 8", hp: 2 }, "Air power against the motor", "holds"],
  // 0.945 hp of 1: a motor that carries a quarter more than its rating and a wheel of 76 % do it.
  ["a fan on an overloaded motor", { "rated point": "1000 at 6", hp: 1 }, "Air power against the motor", "doubtful"],
  // 1118.5 W of 1800 W.
  ["1.5 hp on 15 A at 120 V", { hp: 1.5, volts: 120, amps: 15, phases: 1 }, "Motor power against the supply", "holds"],
  // 3728 W of √3 x 230 x 13 = 5179 W.
  ["5 hp on three phases", { hp: 5, volts: 230, amps: 13, phases: "three" }, "Motor power against the supply", "holds"],
  // The same without its phases: more than one gives (2990 W), less than three.
  ["5 hp, phases not told", { hp: 5, volts: 230, amps: 13 }, "Motor power against the supply", "cannot tell"],
  // φ = 1.4158 / (45.88 x 0.05067) = 0.609: too much for a radial wheel, not for one that leans forward.
  [
    "3000 cfm from a 10 in wheel of no kind",
    { airflow: 3000, "impeller diameter": 10, speed: 3450 },
    "Airflow of its wheel",
    "cannot tell",
  ],
  // A radial wheel gives each kilogram u², however much passes; nothing in Euler's equation or in the balance of energy limits φ.
  [
    "3000 cfm from a 10 in radial wheel",
    { airflow: 3000, "impeller diameter": 10, speed: 3450, "wheel kind": "radial" },
    "Airflow of its wheel",
    "doubtful",
  ],
  // 4000 x 12 / 4 / 6349.6 = 1.89 hp of 1.5, if the curve bulges; a curve that sags is odd, and no law forbids it.
  [
    "both ends of a curve",
    { "free-air airflow": 4000, "shut-off pressure": 12, hp: 1.5 },
    "Air power against the motor",
    "doubtful",
  ],
  ["a free-air airflow alone", { "free-air airflow": "1,700 CFM" }, "Airflow on a system", "cannot tell"],
  ["a good backward wheel", { efficiency: "82 %", "wheel kind": "airfoil" }, "Efficiency", "holds"],
  // The fan was rated without that hose: 3.35 in.w.g. of velocity pressure, (0.03 + 0.0379 x 30) x 3.35 = 3.9 to 8.8, of 2.
  [
    "a rated point beside a hose",
    { "rated point": "640 at 2", "hose diameter": 4, "hose length": 10, "hose kind": "corrugated" },
    "Rated airflow through the hose",
    "doubtful",
  ],
];

const impossible: readonly Sheet[] = [
  // 1.575 hp in the air, 1.555 at least: more than 1.4 times 1 hp.
  [
    "1000 cfm at 10 in.w.g. from 1 hp",
    { "rated point": "1000 at 10", hp: 1 },
    "Air power against the motor",
    "impossible",
  ],
  [
    "the same as it is printed",
    { "Rated point": "1,000 CFM at 10 in.w.g.", "Motor power": "1 HP" },
    "Air power against the motor",
    "impossible",
  ],
  // 1700/3600 x 2500 = 1181 W, 1166 at least, of 750: 1.554.
  [
    "the same in SI",
    { "rated point": "1700 m³/h @ 2.5 kPa", "motor power": "750 W" },
    "Air power against the motor",
    "impossible",
    "SI",
  ],
  // 3.78 hp, 3.72 at least, of 2: 1.86.
  ["2000 cfm at 12 from 2 hp", { "rated point": "2000 at 12", hp: 2 }, "Air power against the motor", "impossible"],
  // 4.41 hp; squeezed air takes 3.94 of them: 1.97 times 2.
  ["350 cfm at 80 from 2 hp", { "rated point": "350 at 80", hp: 2 }, "Air power against the motor", "impossible"],
  // 1.2475 / 0.6 = 2.08 hp at the shaft: 1.73 times 1.2. Without the efficiency it is 1.05 times, doubtful.
  [
    "a maker's own efficiency that asks for more than the motor",
    { "rated point": "1000 at 8", hp: 1.2, efficiency: 60 },
    "Shaft power against the motor",
    "impossible",
  ],
  // 2983 W of 1800: 1.66.
  [
    "4 hp on 15 A at 120 V",
    { "motor power": "4 HP", volts: "120 V", amps: "15 A", phases: 1 },
    "Motor power against the supply",
    "impossible",
  ],
  // 4474 W of 1440: 3.1.
  ["6 hp on 12 A", { hp: 6, volts: 120, amps: 12, phases: "single" }, "Motor power against the supply", "impossible"],
  // 14914 W; even three phases give √3 x 230 x 20 = 7967: 1.87.
  ["20 hp on 20 A, phases not told", { hp: 20, volts: 230, amps: 20 }, "Motor power against the supply", "impossible"],
  // 7500 W of √3 x 400 x 5 = 3464: 2.17.
  [
    "7.5 kW on 5 A",
    { "motor power": 7.5, volts: 400, amps: 5, phases: 3 },
    "Motor power against the supply",
    "impossible",
    "SI",
  ],
  // 2.52 hp, 1842 W at least, of 960: 1.92.
  [
    "more air than the plug gives",
    { "rated point": "1000 at 16", volts: 120, amps: 8, phases: 1 },
    "Air power against the supply",
    "impossible",
  ],
  // 3250 W at least of 1440: 2.26.
  [
    "a vacuum of 500 cfm at 60 in.w.g. on 12 A",
    { "rated point": "500 at 60", volts: 120, amps: 12, phases: 1 },
    "Air power against the supply",
    "impossible",
  ],
  // ρu² = 14.64 in.w.g., squeezed 14.90; 1.2 times that is 17.88.
  [
    "20 in.w.g. from a 12 in radial wheel",
    { pressure: 20, "impeller diameter": 12, speed: 3450, "wheel kind": "radial", stages: 1 },
    "Pressure against the tip speed",
    "impossible",
  ],
  // ρu² = 2.54 in.w.g., 1.2 times 2.549 is 3.06.
  [
    "3.5 in.w.g. from a slow backward wheel",
    { pressure: 3.5, impeller: "10 in", rpm: "1,725 RPM", blades: "backward-inclined", stages: 1 },
    "Pressure against the tip speed",
    "impossible",
  ],
  // ρu² = 2408 Pa, 1.2 times 2437 is 2924. The rated point's pressure counts too.
  [
    "3200 Pa rated from a 300 mm wheel",
    { "rated point": "1000 at 3200", "impeller diameter": 300, speed: 2850, "wheel kind": "paddle", stages: 1 },
    "Pressure against the tip speed",
    "impossible",
    "SI",
  ],
  // 2ρu² = 2216 Pa, 1.2 times 2240 is 2688.
  [
    "3000 Pa from two stages of 200 mm",
    { "shut-off pressure": 3000, "impeller diameter": 200, speed: 2900, "wheel kind": "backward", stages: 2 },
    "Pressure against the tip speed",
    "impossible",
    "SI",
  ],
  // 96.05 m/s, 22.27 in.w.g.; perfectly smooth and rounded (0.03 + 0.01257 x 75) x 22.27 = 21.7, of 1.2 x 9.
  [
    "1650 cfm through 25 ft of 4 in hose",
    { airflow: 1650, pressure: 9, "hose diameter": 4, "hose length": 25, "hose kind": "corrugated" },
    "Airflow through the hose",
    "impossible",
  ],
  // 124.2 m/s, 37.23 in.w.g.; (0.03 + 0.01264 x 80) x 37.23 = 38.8, of 1.2 x 8: whichever hose it is.
  [
    "1200 cfm through 20 ft of 3 in hose",
    { airflow: 1200, pressure: 8, "hose diameter": 3, "hose length": 20 },
    "Airflow through the hose",
    "impossible",
  ],
  // 63.66 m/s, 2434.5 Pa; (0.03 + 0.01358 x 100) x 2434.5 = 3379, of 1.2 x 2000.
  [
    "1800 m³/h through 10 m of smooth 100 mm hose",
    { airflow: 1800, pressure: 2000, "hose diameter": 100, "hose length": 10, "hose kind": "smooth" },
    "Airflow through the hose",
    "impossible",
    "SI",
  ],
  ["a fan of 110 %", { efficiency: 110 }, "Efficiency", "impossible"],
];

describe("CLAIM over forty invented sheets", () => {
  test("twenty of each kind", () => expect([possible.length, impossible.length]).toEqual([20, 20]));

  test.each(all(possible))("%s: can be", (_what, facts, check, verdict, units) => {
    const found = verdicts(facts, units);
    expect(found).toMatchObject({ [check]: verdict });
    expect(Object.values(found)).not.toContain("impossible");
    expect(Object.values(found)).not.toContain("not read");
  });

  test.each(all(impossible))("%s: cannot be", (_what, facts, check, verdict, units) => {
    const found = verdicts(facts, units);
    expect(found).toMatchObject({ [check]: verdict });
    expect(Object.values(found)).not.toContain("not read");
  });

  // One phase forbids it; three, which the sheet does not rule out, give 3118 W.
  test("4 hp on 15 A at 120 V is doubted as long as the phases are not told", () => {
    expect(verdicts({ hp: 4, volts: 120, amps: 15 })).toEqual({ "Motor power against the supply": "doubtful" });
  });
});
