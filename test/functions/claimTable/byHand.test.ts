import { type Facts, type Row, allRowsOf, call, inShortOf, rowsOf, sheet, verdicts } from "./claimCalls";

describe("CLAIM against numbers worked by hand", () => {
  let rows: Record<string, Row>;
  beforeAll(() => {
    rows = rowsOf(sheet);
  });

  test("has a header and a row for each check, in order, and a closing one", () => {
    expect(call([["airflow", 1200]])[0]).toEqual([
      "Check",
      "Their number",
      "Law or rule of thumb allows",
      "Unit",
      "Verdict",
      "Why",
      "Source",
    ]);
    expect(Object.keys(allRowsOf(sheet))).toEqual([
      "Airflow on a system",
      "Airflow through the inlet",
      "Air power against the motor",
      "Pressure against the tip speed",
      "Airflow of its wheel",
      "Filter face velocity",
      "Filter rating",
      "Airflow through the hose",
      "Sound",
      "In short",
    ]);
  });

  test("a number stays as it was typed, and a computed one has three figures", () => {
    expect(rowsOf({ airflow: 1234.5 })["Airflow on a system"]).toMatchObject({ claimed: 1234.5, allowed: 823 });
    expect(rowsOf({ airflow: 12345 }, "SI")["Airflow on a system"]).toMatchObject({ claimed: 12345, allowed: 8230 });
  });

  test("an airflow without a pressure at it is no airflow on a system: two thirds of 1200 cfm is 800", () => {
    expect(rows["Airflow on a system"]).toMatchObject({
      claimed: 1200,
      allowed: 800,
      unit: "cfm",
      verdict: "cannot tell",
    });
    expect(rows["Airflow on a system"]!.why).toMatch(
      /^May be measured with nothing on the fan; .* half to two thirds of it, 600 cfm to 800 cfm\./,
    );
    expect(rows["Airflow on a system"]!.source).toMatch(/no source/);
    const free = rowsOf({ "free-air airflow": 1200, airflow: 1000 })["Airflow on a system"]!;
    expect(free).toMatchObject({ claimed: 1200, allowed: 800, verdict: "cannot tell" });
    expect(free.why).toMatch(/^Measured with nothing on the fan/);
  });

  // By hand: 1200 / (pi/4 x 0.5^2) = 6111.55 fpm = 31.0467 m/s; half of 1.201385 x 31.0467^2 = 579.01 Pa = 2.33 in.w.g.
  // 28 m/s is 5511.8 fpm, 64 m/s is 12 598 fpm or 2473.7 cfm in 6 in.
  test.each([
    [1000, "holds"],
    [1082, "holds"],
    [1083, "cannot tell"],
    [1200, "cannot tell"],
    [2473, "cannot tell"],
    [2474, "doubtful"],
  ])("%p cfm in a 6 in inlet, whose pressure is not told: %s", (airflow, verdict) =>
    expect(verdicts({ airflow, "inlet diameter": 6 })["Velocity in the inlet"]).toBe(verdict),
  );

  test("1200 cfm in a 6 in inlet are 6110 fpm and 2.33 in.w.g.", () => {
    const row = rowsOf({ airflow: 1200, "inlet diameter": 6 })["Velocity in the inlet"]!;
    expect(row).toMatchObject({ claimed: 6110, allowed: 5510, unit: "fpm" });
    expect(row.why).toMatch(/^At 1200 cfm the air runs at 6110 fpm, with 2\.33 in\.w\.g\. of velocity pressure\./);
    expect(row.source).toMatch(/DGUV/);
  });

  // By hand: 0.93 x 2.3268 = 2.1639 in.w.g. at 1200 cfm; the loss goes with the square: 1200 x sqrt(11 / 2.1639) = 2705.6 cfm,
  // and at 2.1 in.w.g. 1200 x sqrt(2.1 / 2.1639) = 1182.1 cfm. A rounded end takes 0.03 x 2.3268 = 0.0698, all of 0.06 not.
  test("a bare 6 in end takes 2.16 in.w.g.: less than 11, more than 2.1, and a rounded one 0.07", () => {
    const row = rows["Airflow through the inlet"]!;
    expect(row).toMatchObject({ allowed: 2710, verdict: "holds" });
    expect(row.why).toMatch(
      /A bare end takes 2\.16 in\.w\.g\., a well rounded one 0\.0698 in\.w\.g\., of 11 in\.w\.g\.$/,
    );
    const weak = rowsOf({ ...sheet, pressure: 2.1 })["Airflow through the inlet"]!;
    expect(weak).toMatchObject({ allowed: 1180, verdict: "cannot tell" });
    const none = rowsOf({ airflow: 1200, pressure: 0.101, "inlet diameter": 5 })["Airflow through the inlet"]!;
    expect(none.verdict).toBe("doubtful"); // 0.03 x 4.82 = 0.145
  });

  // By hand: 1200 cfm x 11 in.w.g. / 4 = 3300; times 0.1174394 W is 387.55 W, 0.51971 hp. Radial wheels are 65 % at best: 0.79955 hp.
  test.each([
    [0.3, "doubtful"],
    [0.79, "doubtful"],
    [0.8, "holds"],
  ])("two ends of a curve, 0.52 hp between them, with a motor of %p hp: %s", (motor, verdict) => {
    const row = rowsOf({ ...sheet, "motor power": motor })["Air power against the motor"]!;
    expect(row).toMatchObject({ claimed: 0.52, allowed: motor, verdict });
  });

  // By hand: 1000 x 8 x 0.1174394 W = 939.52 W = 1.2599 hp, squeezed 1.2475 hp at least; 1.2475 / 1.4 = 0.8911, 1.2599 / 0.85 = 1.4822,
  // 1.2599 / 0.65 = 1.9383.
  test.each([
    [0.891, undefined, "impossible"],
    [0.892, undefined, "doubtful"],
    [1.48, undefined, "doubtful"],
    [1.49, undefined, "holds"],
    [1.93, "radial", "doubtful"],
    [1.94, "radial", "holds"],
    [1.94, "forward", "holds"],
    [1.49, "axial", "holds"],
  ])("1000 cfm at 8 in.w.g. from %p hp with a wheel %s: %s", (motor, kind, verdict) =>
    expect(verdicts({ "rated point": "1000 at 8", hp: motor, "wheel kind": kind ?? null })).toEqual({
      "Air power against the motor": verdict,
    }),
  );

  // By hand: 1.2599 / 0.6 = 2.0998 hp; 1.2475 / 0.6 / 1.4 = 1.4851.
  test.each([
    [1.48, "impossible"],
    [1.49, "doubtful"],
    [2.09, "doubtful"],
    [2.1, "holds"],
  ])("at 60 %% it takes 2.1 hp at the shaft; of %p: %s", (motor, verdict) => {
    const row = rowsOf({ "rated point": "1000 at 8", hp: motor, efficiency: 60 })["Shaft power against the motor"]!;
    expect(row).toMatchObject({ claimed: 2.1, verdict });
  });

  // By hand: 120 x 15 = 1800 W = 2.4138 hp: 0.85 of it 2.0518, 1.4 times it 3.3794. Three phases: 4.1809 hp, 3.5537, 5.8532.
  test.each([
    [2.05, "1", "holds"],
    [2.06, "1", "doubtful"],
    [3.37, "1", "doubtful"],
    [3.38, "1", "impossible"],
    [3.55, "3", "holds"],
    [3.56, "3", "doubtful"],
    [5.85, "3", "doubtful"],
    [5.86, "3", "impossible"],
    [2.05, null, "holds"],
    [2.06, null, "cannot tell"],
    [3.56, null, "doubtful"],
    [5.86, null, "impossible"],
  ])("%p hp on 15 A at 120 V, phases %p: %s", (motor, phases, verdict) =>
    expect(verdicts({ hp: motor, volts: 120, amps: 15, phases })).toEqual({
      "Motor power against the supply": verdict,
    }),
  );

  // By hand: u = pi x 0.3048 x 57.5 = 55.0597 m/s; 1.201385 x 55.0597^2 = 3642.1 Pa = 14.636 in.w.g., 0.75 of it 10.977; squeezed
  // 101325 x (exp(3642.1 / 101325) - 1) = 3708.3 Pa = 14.902, 1.2 times that 17.883.
  test.each([
    [10.9, "radial", 1, "holds"],
    [11, "radial", 1, "doubtful"],
    [17.8, "radial", 1, "doubtful"],
    [17.9, "radial", 1, "impossible"],
    [17.9, "radial", null, "cannot tell"],
    [17.9, null, 1, "cannot tell"],
    [17.9, "axial", 1, "cannot tell"],
    [10.9, null, null, "holds"],
    [11, null, null, "cannot tell"],
    [21.9, "backward", 2, "holds"], // 0.75 x 29.27 = 21.95
  ])("12 in at 3450 rpm: %p in.w.g., %p, %p stages: %s", (pressure, kind, stages, verdict) => {
    const row = rowsOf({ ...sheet, pressure, "wheel kind": kind, stages })["Pressure against the tip speed"]!;
    expect(row.verdict).toBe(verdict);
    expect(row.allowed).toBe(stages === 2 ? 29.3 : 14.6);
  });

  test("the highest of the pressures counts against the tip speed", () => {
    const wheel: Facts = { "impeller diameter": 12, speed: 3450 };
    const claimed = (facts: Facts) => rowsOf({ ...wheel, ...facts })["Pressure against the tip speed"]!.claimed;
    expect(claimed({ pressure: 5, "shut-off pressure": 7, "rated point": "800 at 6" })).toBe(7);
    expect(claimed({ pressure: 5, "rated point": "800 at 6" })).toBe(6);
  });

  // By hand: 10 in at 3450 rpm: u = 45.883 m/s through 0.050671 m2 is 2.32494 m3/s = 4926.2 cfm: 0.3, 0.5 and 1.3 of it 1477.9, 2463.1, 6404.1;
  // a rim of 1 in: 0.6 x 45.883 x pi x 0.254 x 0.0254 = 0.55798 m3/s = 1182.3 cfm.
  test.each([
    [1477, "radial", null, "holds", 1480],
    [1478, "radial", null, "doubtful", 1480],
    [2463, "backward", null, "holds", 2460],
    [2464, "backward", null, "doubtful", 2460],
    [6404, "forward", null, "holds", 6400],
    [6405, "forward", null, "doubtful", 6400],
    [1477, null, null, "holds", 6400],
    [1478, null, null, "cannot tell", 6400],
    [6405, null, null, "doubtful", 6400],
    [1182, "radial", 1, "holds", 1180],
    [1183, "radial", 1, "doubtful", 1180],
    [1183, "radial", 3, "holds", 1480],
    [1183, "forward", 1, "holds", 6400],
  ])("%p cfm of a 10 in wheel, %p, %p in wide: %s", (airflow, kind, width, verdict, allowed) => {
    const facts = { airflow, "impeller diameter": 10, speed: 3450, "wheel kind": kind, "wheel width": width };
    expect(rowsOf(facts)["Airflow of its wheel"]).toMatchObject({ claimed: airflow, allowed, verdict });
  });

  // By hand: 150 m³/(m² h) is 0.0416667 m/s = 8.2021 fpm.
  test.each([
    [3.5, null, "holds"],
    [3.6, null, "cannot tell"],
    [12, null, "cannot tell"],
    [12.1, null, "doubtful"],
    [3.6, "woven", "doubtful"],
    [8.2, "felt bag", "holds"],
    [8.3, "felt bag", "doubtful"],
    [12, "pulse jet", "holds"],
    [4, "cartridge", "holds"],
    [4.1, "pleated", "doubtful"],
    [5, "HEPA", "holds"],
    [5.1, "HEPA", "doubtful"],
  ])("%p fpm through a filter of %p: %s", (velocity, medium, verdict) =>
    expect(
      verdicts({ airflow: 100 * velocity, "filter area": 100, "filter medium": medium })["Filter face velocity"],
    ).toBe(verdict),
  );

  test("1200 cfm through 30 ft² are 40 fpm, with the yardstick of the medium and what it is worth", () => {
    const row = rows["Filter face velocity"]!;
    expect(row).toMatchObject({ claimed: 40, allowed: 4, verdict: "doubtful" });
    expect(row.source).toMatch(/no source/);
    const unknown = rowsOf({ ...sheet, "filter medium": null })["Filter face velocity"]!;
    expect(unknown.why).toMatch(
      /At most: woven cloth 3\.5 fpm, felt bag 8\.2 fpm, pulse-jet felt 12 fpm, pleated cartridge 4 fpm, hepa 5 fpm\. /,
    );
    expect(unknown.source).toMatch(/from memory.*DGUV.*from memory/);
  });

  // By hand: 4 in, V = 1200 / 0.0872665 fpm = 69.857 m/s, p_v = 2931.4 Pa = 11.780 in.w.g. Smooth: Colebrook's f is 0.01330 at
  // Re 468 770: (0.03 + 0.0133 x 30) x 11.78 = 5.05. Corrugated: f 0.05687, (0.93 + 0.05687 x 30) x 11.78 = 31.05.
  // Smooth at 1831 cfm: f 0.01236, p_v 27.42 in.w.g., (0.03 + 0.01236 x 30) x 27.42 = 10.99: all of 11.
  test("10 ft of 4 in hose take 5.05 to 31.1 in.w.g. of 11", () => {
    const row = rows["Airflow through the hose"]!;
    expect(row.why).toMatch(
      /10 ft of hose take 5\.0[4-6] in\.w\.g\. at least .*, 31(\.[01])? in\.w\.g\. if corrugated/,
    );
    expect(Number(row.allowed)).toBeGreaterThanOrEqual(1830);
    expect(Number(row.allowed)).toBeLessThanOrEqual(1840);
  });

  // By hand at 11 in.w.g.: corrugated as usual with a bare end: V goes with the root: 1200 x sqrt(11 / 31.05) = 714 cfm; least corrugated, rounded:
  // f 0.0379, (0.03 + 0.0379 x 30) x 11.78 = 13.75: 1073; smooth and rounded with 1.2 x 11: f 0.01214, 2020 cfm.
  test.each([
    [700, "corrugated", 10, "holds"],
    [730, "corrugated", 10, "cannot tell"],
    [1060, "corrugated", 10, "cannot tell"],
    [1090, "corrugated", 10, "doubtful"],
    [2010, "corrugated", 10, "doubtful"],
    [2040, "corrugated", 10, "impossible"],
    [2040, null, 10, "impossible"],
    [2040, "smooth", 10, "impossible"],
    [1090, null, 10, "cannot tell"],
    [1090, "smooth", 10, "cannot tell"],
    [900, "smooth", 10, "cannot tell"], // wall of 0.3 mm and a bare end: f 0.02644, (0.93 + 0.02644 x 30) x 6.626 = 11.4
    [870, "smooth", 10, "holds"], // the same: x 6.192 = 10.7
    [2000, "corrugated", null, "cannot tell"],
  ])("%p cfm through 4 in hose, %p, %p ft: %s", (airflow, kind, length, verdict) =>
    expect(
      verdicts({ airflow, pressure: 11, "hose diameter": 4, "hose length": length, "hose kind": kind })[
        "Airflow through the hose"
      ],
    ).toBe(verdict),
  );

  test("a shut-off pressure may be passed by a hump, so nothing is impossible by it", () => {
    const facts = { airflow: 2040, "hose diameter": 4, "hose length": 10 };
    expect(verdicts({ ...facts, "shut-off pressure": 11 })["Airflow through the hose"]).toBe("doubtful");
    expect(verdicts({ ...facts, pressure: 11 })["Airflow through the hose"]).toBe("impossible");
  });

  // By hand: 640 cfm in 4 in: 37.26 m/s, p_v 3.351 in.w.g. Corrugated f 0.05692: 0.05692 x 3.351 / (1/3 ft) = 0.5722 in.w.g. per ft;
  // (9 - 0.93 x 3.351) / 0.5722 = 10.3 ft. Smooth f 0.01497: 0.1505 per ft, (9 - 0.03 x 3.351) / 0.1505 = 59.1 ft.
  test("without its length a hose is told how long it may be", () => {
    const row = rowsOf({ airflow: 640, pressure: 9, "hose diameter": 4 })["Airflow through the hose"]!;
    expect(row).toMatchObject({ verdict: "cannot tell", allowed: "" });
    expect(row.why).toMatch(
      /The length decides: 10\.3 ft of corrugated hose with a bare end, 59\.[01] ft of the smoothest with a rounded one, take all of 9 in\.w\.g\.$/,
    );
  });

  // 20 log10(10 / 3) = 10.46 dB; 20 log10(3) = 9.54 dB.
  test("a sound level is told at the usual distance, and says little all the same", () => {
    expect(rows.Sound).toMatchObject({ claimed: 72, verdict: "cannot tell" });
    expect(rows.Sound!.why).toMatch(/without the distance/);
    const row = (units: string | null, distance: number) =>
      rowsOf({ sound: "72 dB(A)", "noise distance": distance }, units).Sound!;
    expect(row(null, 10)).toMatchObject({ claimed: "72 dB(A)", verdict: "cannot tell" });
    expect(row(null, 10).why).toMatch(/^In the open 72 dB at 10 ft are 82 dB at 3 ft, /);
    expect(row("SI", 3).why).toMatch(/72 dB at 3 m are 82 dB at 1 m/);
    for (const sound of ["quiet", "72 dB at 10 ft"])
      // a distance in the same cell is none that is read: it says where to type it
      expect(rowsOf({ sound }).Sound!.why).toMatch(/^It says little without the distance, typed as noise distance; /);
    // 20 log(10/3) = 10.46: 80.5 dB at 10 ft are 91 dB at 3 ft
    for (const level of ["80,5 dB", "80.5 dB(A)", "80.5dBA", 80.5])
      expect(rowsOf({ sound: level, "noise distance": 10 }).Sound!.why).toMatch(/^In the open 80.5 dB at 10 ft are 91 dB at 3 ft/); // prettier-ignore
    for (const other of ["quiet", "8.0 B", "75-80 dB", "3 ft: 80 dB", "95 dB LwA", "80 dB(A) at 3 ft", "80 sone"])
      expect(rowsOf({ sound: other, "noise distance": 10 }).Sound!.why).toMatch(/^Only a level in dB, such as 72 dB\(A\), can be told at another distance;/); // prettier-ignore
  });

  test("a micron rating cannot be told, and stands as it was typed", () => {
    expect(rows["Filter rating"]).toMatchObject({ claimed: "5 micron", allowed: "", unit: "", verdict: "cannot tell" });
    expect(rows["Filter rating"]!.why).toMatch(/share of dust caught at each size and the test standard/);
  });

  test.each([
    [84, "backward", "holds"],
    [86, "backward", "doubtful"],
    [66, "radial", "doubtful"],
    [66, "forward", "doubtful"],
    [84, null, "holds"],
    [100, null, "doubtful"],
    [101, null, "impossible"],
  ])("an efficiency of %p %%, %p: %s", (efficiency, kind, verdict) =>
    expect(rowsOf({ efficiency, "wheel kind": kind }).Efficiency).toMatchObject({
      claimed: efficiency,
      allowed: 100,
      unit: "%",
      verdict,
    }),
  );

  test("every row is a sentence with its source, and says nothing about a product", () => {
    for (const { why, source } of Object.values(rows)) {
      expect(why).toMatch(/^[A-Z].*[a-z0-9%][.?]$/);
      expect(source.length).toBeGreaterThan(10);
    }
    expect(rows["Pressure against the tip speed"]!.source).toMatch(/^.*memory.*, p = ρ u² without pre-rotation; /);
  });
});

describe("the closing sentence", () => {
  test("sums up what to expect and what to ask for", () => {
    expect(inShortOf({ airflow: 1700, "filter rating": "5 micron" })).toBe(
      "Expect 850 cfm to 1130 cfm on ducts, by common practice, not 1700 cfm. Ask the seller for the airflow at a pressure, or the curve; and the filter's test report.",
    );
    expect(inShortOf({ "rated point": "1000 at 10", hp: 1 })).toBe(
      "Cannot be as given: air power against the motor. Expect less than 1000 cfm where your ducts, hoods and filter take 10 in.w.g. Ask the seller for the shaft power at the rated point.",
    );
    expect(inShortOf({ "rated point": "1000 at 8", hp: 2 })).toBe(
      "Expect 1000 cfm where your ducts, hoods and filter take 8 in.w.g. Ask the seller for the fan's curve and the standard it was tested by.",
    );
    expect(inShortOf({ efficiency: 90 })).toBe(
      "Doubtful: efficiency. Ask the seller for the efficiency at the rated point, and by which test.",
    );
  });

  test("asks for four things at most, and for none twice", () => {
    const asked = inShortOf({ ...sheet, stages: null, "wheel kind": null, "hose length": null, pressure: 30 });
    expect(asked.match(/the airflow at a pressure/g)).toHaveLength(1);
    expect(asked.split("; ")).toHaveLength(4);
  });
});
