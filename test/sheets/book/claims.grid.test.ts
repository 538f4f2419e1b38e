import { factNames } from "../../../src/functions/claimTable/factNames";
import { fromSI, type UnitSystem, unitOf } from "../../../src/reference/quantities";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { facts, limitsOf } from "../../../src/sheets/book/claims/facts";
import { gridOfBook, type Shows } from "../../support/gridOfBook";

const shown = (units: UnitSystem, contents: "example" | "empty"): Shows =>
  gridOfBook(budgetBook({ units, sheets: ["claims"], contents }, { sheets: [], names: [] }));
const verdicts = (shows: Shows): Record<string, unknown> =>
  Object.fromEntries(
    shows
      .column("Claims", "F9:F19")
      .map((check, index) => [check, shows.value("Claims", `E${9 + index}`)])
      .filter(([check]) => check !== ""),
  );

describe("the claims of an invented data sheet", () => {
  const shows = shown("IP", "example");

  test("hold, are doubted and are refuted", () => {
    expect(shows.errors()).toEqual([]);
    expect(verdicts(shows)).toEqual({
      "Airflow on a system": "doubtful",
      "Air power against the motor": "holds", // 1650 cfm x 9 in.w.g. / 4 = 0.585 hp of 1.5
      "Pressure against the tip speed": "holds", // u = π 1 ft 3450/60 s = 55.06 m/s, ρu² = 14.6 in.w.g.; 9 is 61 %
      "Filter face velocity": "doubtful", // 1650 / 30 = 55 fpm
      "Filter rating": "cannot tell",
      "Velocity in the hose": "doubtful", // 1650 / 0.08727 = 18 900 fpm
      "Airflow through the hose": "impossible",
    });
    expect(shows.value("Claims", "F7")).toBe("1 impossible, 3 doubtful, 2 hold, 1 cannot tell");
  });

  test("an absurd pressure turns to impossible: against the motor and against the tip speed", () => {
    shows.type("Claims", "B10", "60");
    expect(verdicts(shows)).toMatchObject({
      "Air power against the motor": "impossible", // 1650 x 60 / 4 is 3.9 hp
      "Pressure against the tip speed": "impossible", // more than 14.6 in.w.g.
    });
    shows.type("Claims", "B10", "9");
  });

  test.each([
    ["B10", "5000", 10, "pressure must be a number from 0.101 to 200 in.w.g.: typed in another unit?"],
    ["B10", "strong", 10, "pressure must be a number from 0.101 to 200 in.w.g."],
    ["B14", "1", 14, "speed must be a number from 100 to 60000 rpm: typed in another unit?"],
  ])("%s = %s is named in one sentence, and nothing is judged until it is right", (at, typed, row, sentence) => {
    const before = String(shows.value("Claims", at));
    shows.type("Claims", at, typed);
    expect(verdicts(shows)).toEqual({ [sentence]: "check it" });
    expect(shows.value("Claims", `F${row}`)).toBe(sentence);
    expect(shows.value("Claims", "F7")).toBe("No verdicts until the number that is named below is put right.");
    expect(shows.errors()).toEqual([]);
    shows.type("Claims", at, before);
  });
});

describe("a data sheet of one's own", () => {
  test("is blank at first, and shows no error", () => {
    const shows = shown("IP", "empty");
    expect(shows.errors()).toEqual([]);
    expect(verdicts(shows)).toEqual({});
    expect(shows.value("Claims", "F7")).toBe("Type what the data sheet says; leave blank what it does not say.");
  });

  // By hand: u = π 0.3 m 2850/60 s = 44.77 m/s, ρu² = 1.2 x 2004 = 2405 Pa; 2200 Pa is 91 % of it.
  test("computes alike in SI, with the units beside the numbers", () => {
    const shows = shown("SI", "example");
    expect(shows.errors()).toEqual([]);
    expect(shows.column("Claims", "C9:C19")).toEqual([
      "m³/h",
      "Pa",
      "kW",
      "mm",
      "mm",
      "rpm",
      "m²",
      "as printed",
      "mm",
      "m",
      "as printed",
    ]);
    expect(verdicts(shows)).toMatchObject({ "Pressure against the tip speed": "doubtful" });
  });
});

describe("the facts of the sheet", () => {
  test("are those of CLAIM, within its limits and close to them in both unit systems", () => {
    expect(facts.map(({ key }) => key)).toEqual(factNames.map(({ key }) => key));
    for (const fact of facts) {
      const kind = factNames.find(({ key }) => key === fact.key)!.kind;
      for (const system of ["IP", "SI"] as const) {
        const limits = limitsOf(fact, system);
        if (kind === null) {
          expect(limits).toBeNull();
          continue;
        }
        const inUnit = (value: number): number => fromSI(value, unitOf(kind.quantity, system));
        const [low, high] = limits!;
        expect(low).toBeGreaterThanOrEqual(inUnit(kind.low) * (1 - 1e-12));
        expect(low).toBeLessThan(inUnit(kind.low) * 1.01);
        expect(high).toBeLessThanOrEqual(inUnit(kind.high) * (1 + 1e-12));
        expect(high).toBeGreaterThan(inUnit(kind.high) * 0.99);
      }
    }
  });
});
