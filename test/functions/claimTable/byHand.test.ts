import { relative } from "../../support/printed";
import { type Row, call, rowsOf, sheet, verdicts } from "./claimCalls";

describe("CLAIM against numbers worked by hand", () => {
  let rows: Record<string, Row>;
  beforeAll(() => {
    rows = rowsOf(sheet);
  });

  test("has a header and a row for each check, in order", () => {
    expect(call([["airflow", 1200]])[0]).toEqual([
      "Check",
      "Their number",
      "What physics allows",
      "Unit",
      "Verdict",
      "Why",
      "Source",
    ]);
    expect(Object.keys(rows)).toEqual([
      "Airflow on a system",
      "Velocity in the inlet",
      "Airflow through the inlet",
      "Air power against the motor",
      "Pressure against the tip speed",
      "Filter face velocity",
      "Filter rating",
      "Velocity in the hose",
      "Airflow through the hose",
      "Sound",
    ]);
  });

  test("a free-air airflow is doubted on a system: two thirds of 1200 cfm is 800", () => {
    expect(rows["Airflow on a system"]).toMatchObject({
      claimed: expect.closeTo(1200, 8),
      unit: "cfm",
      verdict: "doubtful",
    });
    expect(rows["Airflow on a system"]!.allowed).toBeCloseTo(800, 8);
    expect(rows["Airflow on a system"]!.why).toMatch(/600 cfm to 800 cfm/);
    expect(rows["Airflow on a system"]!.source).toMatch(/no source/);
  });

  // By hand: 1200 / (pi/4 x 0.5^2) = 6111.55 fpm = 31.0467 m/s; half of 1.201385 x 31.0467^2 = 579.01 Pa = 2.33 in.w.g.
  // 28 m/s is 5511.8 fpm.
  test("1200 cfm in a 6 in inlet are 6111.55 fpm and 2.33 in.w.g., above 28 m/s: doubtful", () => {
    const row = rows["Velocity in the inlet"]!;
    expect(row.claimed).toBeCloseTo(6111.55, 2);
    expect(row.allowed).toBeCloseTo(5511.8, 1);
    expect(row.verdict).toBe("doubtful");
    expect(row.why).toMatch(/2\.33 in\.w\.g\./);
    expect(row.source).toMatch(/DGUV/);
  });

  // By hand: 0.93 x 2.3268 = 2.1639 in.w.g. at 1200 cfm; the loss goes with the square: 1200 x sqrt(11 / 2.1639) = 2705.6 cfm,
  // and at 2.1 in.w.g. 1200 x sqrt(2.1 / 2.1639) = 1182.1 cfm.
  test("a bare 6 in end takes 2.16 in.w.g. of 11: holds; of a highest pressure of 2.1 in.w.g.: impossible", () => {
    const row = rows["Airflow through the inlet"]!;
    expect(relative(Number(row.allowed), 2705.6)).toBeLessThan(2e-5);
    expect(row.verdict).toBe("holds");
    expect(row.why).toMatch(/loses 2\.16 in\.w\.g\./);
    const weak = rowsOf({ ...sheet, pressure: 2.1 })["Airflow through the inlet"]!;
    expect(relative(Number(weak.allowed), 1182.1)).toBeLessThan(5e-5);
    expect(weak.verdict).toBe("impossible");
    expect(weak.why).toMatch(/free-air test/);
  });

  // By hand: 1200 x 11 / 4 = 3300 cfm in.w.g.; times 0.1174394 W is 387.55 W, 0.51971 hp. At 0.65 of 0.8 hp it is 0.52.
  test.each([
    [0.5, "impossible"],
    [0.6, "doubtful"],
    [0.79, "doubtful"],
    [0.8, "holds"],
    [2, "holds"],
  ])("1200 cfm and 11 in.w.g. are at least 0.51971 hp in the air; with a motor of %p hp: %s", (motor, verdict) => {
    const row = rowsOf({ ...sheet, "motor power": motor })["Air power against the motor"]!;
    expect(row.claimed).toBeCloseTo(0.51971, 5);
    expect(row.allowed).toBeCloseTo(motor, 12);
    expect(row.verdict).toBe(verdict);
  });

  // By hand: u = pi x 0.3048 x 57.5 = 55.0597 m/s; 1.201385 x 55.0597^2 = 3642.1 Pa = 14.636 in.w.g., 0.75 of it 10.977.
  test.each([
    [10.9, "holds"],
    [11, "doubtful"],
    [14.6, "doubtful"],
    [14.7, "impossible"],
  ])("12 in at 3450 rpm make at most 14.636 in.w.g.; %p in.w.g.: %s", (pressure, verdict) => {
    const row = rowsOf({ ...sheet, pressure })["Pressure against the tip speed"]!;
    expect(row.allowed).toBeCloseTo(14.636, 3);
    expect(row.verdict).toBe(verdict);
    expect(row.why).toMatch(/forward-curved/);
  });

  test("1200 cfm through 30 ft² are 40 fpm, against 3.5 fpm for sawdust on a shaken cloth, from memory: doubtful", () => {
    const row = rows["Filter face velocity"]!;
    expect(row.claimed).toBeCloseTo(40, 9);
    expect(row.allowed).toBeCloseTo(3.5, 9);
    expect(row.verdict).toBe("doubtful");
    expect(row.source).toMatch(/from memory/);
    expect(verdicts({ airflow: 1200, "filter area": 350 })["Filter face velocity"]).toBe("holds"); // 3.43 fpm
  });

  // By hand, fully rough hose of 1 mm in 101.6 mm: f = (2 log10(3.7 x 101.6))^-2 = 0.037701; K + f L/D = 0.93 + 0.037701 x 30 =
  // 2.06103. 11 in.w.g. = 2737.2 Pa: V = sqrt(2 x 2737.2 / (1.201385 x 2.06103)) = 47.021 m/s, Q = 0.38121 m3/s = 807.7 cfm;
  // Colebrook at its Reynolds number has f about 0.8 % higher, the airflow about 0.2 % lower.
  test("10 ft of 4 in hose pass about 807 cfm at 11 in.w.g., so 1200 is impossible and 800 is not", () => {
    const row = rows["Airflow through the hose"]!;
    expect(Number(row.allowed)).toBeLessThan(807.7);
    expect(Number(row.allowed)).toBeGreaterThan(807.7 * 0.995);
    expect(row.verdict).toBe("impossible");
    const less = verdicts({ ...sheet, airflow: 800 });
    expect(less["Airflow through the hose"]).toBe("holds");
    expect(less["Velocity in the hose"]).toBe("doubtful"); // 9167 fpm
  });

  test("a hose without a length counts as 10 ft, and says so", () => {
    const row = rowsOf({ ...sheet, "hose length": null })["Airflow through the hose"]!;
    expect(row.allowed).toBe(rows["Airflow through the hose"]!.allowed);
    expect(row.why).toMatch(/10 ft of hose \(a length assumed\)/);
    expect(rows["Airflow through the hose"]!.why).not.toMatch(/assumed/);
  });

  test("a micron rating and a sound level cannot be told, and stand as they were typed", () => {
    expect(rows["Filter rating"]).toMatchObject({ claimed: "5 micron", allowed: "", verdict: "cannot tell" });
    expect(rows["Filter rating"]!.why).toMatch(/share of dust caught at that size and the test standard/);
    expect(rowsOf({ "filter rating": "99 % at 1 micron" })["Filter rating"]).toMatchObject({
      verdict: "cannot tell",
      why: expect.stringMatching(/test report/) as string,
    });
    expect(rows.Sound).toMatchObject({ claimed: 72, verdict: "cannot tell" });
    expect(rows.Sound!.why).toMatch(/distance/);
  });

  // By hand: 0.93 x 2.3268 = 2.16 in.w.g.; u = pi x 1 ft x 3450/min = 10838 fpm. 10 ft of the smoothest hose cost 0.93 + 0.0377 x 30 = 2.06
  // velocity pressures of 11.78 in.w.g. or a little more (see above), 24.3 and some hundredths.
  test.each<[string, string | RegExp]>([
    [
      "Airflow on a system",
      "A highest airflow is that of a fan with nothing on it; by common practice ducts, hoods and filter leave half to two thirds of it, 600 cfm to 800 cfm.",
    ],
    [
      "Velocity in the inlet",
      "V = Q/A at the claimed airflow, with 2.33 in.w.g. of velocity pressure in standard air; above 5512 fpm we doubt it, a judgement.",
    ],
    [
      "Airflow through the inlet",
      "A bare pipe end of that diameter alone loses 2.16 in.w.g. (K p_v, K 0.93) of the highest pressure of 11 in.w.g.; what is left must do for ducts, hoods and filter.",
    ],
    [
      "Air power against the motor",
      "Airflow x pressure / 4 is the best point of the straight line between the curve's two ends, and an ordinary fan's curve bulges above it; no motor gives out more than its 2 hp, and above 65 % of that we doubt it, a judgement.",
    ],
    [
      "Pressure against the tip speed",
      "Its tip runs at 10838 fpm (u = π D N), and blades that are radial or lean back make at most ρu² in standard air, from 75 % of which we doubt it, a judgement; forward-curved ones, which clog with dust, can pass it.",
    ],
    [
      "Filter face velocity",
      "Q/A; filters are laid out for 3.5 fpm of sawdust on a shaken cloth (any dust 2 to 6) and 12 with pulse-jet cleaning (5 to 15), all from memory; faster air blinds the cloth and drives fine dust through.",
    ],
    [
      "Airflow through the hose",
      /^At the claimed airflow a bare end and 10 ft of hose, drawn out, lose at least 24\.[34] in\.w\.g\. \(K p_v and friction\), (2[5-9]|3\d)(\.\d)? in\.w\.g\. with ordinary hose; the highest pressure of 11 in\.w\.g\. draws no more than the bound through them\.$/,
    ],
  ])("%s, in words", (check, why) => {
    if (typeof why === "string") expect(rows[check]!.why).toBe(why);
    else expect(rows[check]!.why).toMatch(why);
  });

  test("an inlet that the pressure cannot serve is told to be a test without anything on the fan", () => {
    const { why } = rowsOf({ ...sheet, pressure: 2.1 })["Airflow through the inlet"]!;
    expect(why).toMatch(/ of 2\.1 in\.w\.g\.; only a free-air test with a rounded inlet can show such an airflow\.$/);
  });

  test("sources stand one after the other, each with its place and what it is worth", () => {
    expect(rows["Air power against the motor"]!.source).toMatch(/^.*, p = ρ u² without pre-rotation; .*, .*/);
    expect(rows["Pressure against the tip speed"]!.source).toMatch(/^.*memory.*, p = ρ u² without pre-rotation; /);
    expect(rows["Filter rating"]!.source).toMatch(/no source, what a data sheet must say$/);
    expect(rows["Filter rating"]).toMatchObject({ allowed: "", unit: "" });
  });

  test("every row is a sentence with its source, and says nothing about a product", () => {
    for (const { why, source } of Object.values(rows)) {
      expect(why).toMatch(/^[A-Z].*[a-z0-9%]\.$/);
      expect(source.length).toBeGreaterThan(10);
    }
  });
});
