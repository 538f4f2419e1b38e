import fc from "fast-check";
import { relative } from "../../support/printed";
import { type Row, rowsOf, verdicts } from "./claimCalls";

describe("CLAIM's laws", () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const anyFacts = fc.record(
    {
      airflow: number(20, 5000),
      pressure: number(0.2, 40),
      "motor power": number(0.1, 10),
      "inlet diameter": number(2, 12),
      "impeller diameter": number(4, 20),
      speed: number(1000, 6000),
      "filter area": number(2, 2000),
      "hose diameter": number(2, 8),
      "hose length": number(1, 40),
    },
    { requiredKeys: ["airflow", "pressure", "inlet diameter", "hose diameter"] },
  );
  const order = ["holds", "doubtful", "impossible"];

  test("a larger claimed airflow never gets a better verdict in any row", () => {
    fc.assert(
      fc.property(anyFacts, number(1, 3), (facts, factor) => {
        const [here, more] = [verdicts(facts), verdicts({ ...facts, airflow: factor * facts.airflow })];
        for (const check of Object.keys(here))
          expect(order.indexOf(more[check]!)).toBeGreaterThanOrEqual(order.indexOf(here[check]!));
      }),
    );
  });

  test("a larger claimed pressure never turns a row from doubtful to holds, nor betters a row about the pressure", () => {
    fc.assert(
      fc.property(anyFacts, number(1, 4), (facts, factor) => {
        const [here, more] = [verdicts(facts), verdicts({ ...facts, pressure: factor * facts.pressure })];
        for (const check of Object.keys(here)) {
          if (here[check] === "doubtful") expect(more[check]).not.toBe("holds");
          if (/pressure|power/i.test(check))
            expect(order.indexOf(more[check]!)).toBeGreaterThanOrEqual(order.indexOf(here[check]!));
        }
      }),
    );
  });

  test("the same facts in SI get the same verdicts and the same numbers", () => {
    const factor: Record<string, number> = {
      airflow: 1.69901079552,
      pressure: 248.84,
      "motor power": 0.745699872,
      "inlet diameter": 25.4,
      "impeller diameter": 25.4,
      speed: 1,
      "filter area": 0.09290304,
      "hose diameter": 25.4,
      "hose length": 0.3048,
    };
    fc.assert(
      fc.property(anyFacts, (facts) => {
        const metric = Object.fromEntries(Object.entries(facts).map(([name, value]) => [name, value * factor[name]!]));
        const [inch, si] = [rowsOf(facts), rowsOf(metric, "SI")];
        expect(Object.keys(si)).toEqual(Object.keys(inch));
        for (const [check, row] of Object.entries(inch)) {
          expect(si[check]!.verdict).toBe(row.verdict);
          const share = (of: Row): number => Number(of.claimed) / Number(of.allowed);
          expect(relative(share(si[check]!), share(row))).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 50 },
    );
  });
});
