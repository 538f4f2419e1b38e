import fc from "fast-check";
import { type Facts, verdicts } from "./claimCalls";
import { lawRuns } from "../../support/lawRuns";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Facts in I-P as numbers; the rated point as its two. */
const anySheet = fc
  .record(
    {
      airflow: number(20, 5000),
      "free-air airflow": number(20, 5000),
      rated: fc.tuple(number(20, 4000), number(0.2, 60)),
      pressure: number(0.2, 60),
      "shut-off pressure": number(0.2, 60),
      "motor power": number(0.1, 10),
      volts: fc.constantFrom(120, 230, 400),
      amps: number(1, 30),
      phases: fc.constantFrom("1", "3"),
      efficiency: number(0.2, 1.2),
      "inlet diameter": number(2, 12),
      "impeller diameter": number(4, 20),
      "wheel width": number(0.5, 6),
      "wheel kind": fc.constantFrom("backward", "radial", "forward-curved", "side-channel", "axial"),
      stages: fc.integer({ min: 1, max: 4 }),
      speed: number(1000, 6000),
      "filter area": number(2, 2000),
      "filter medium": fc.constantFrom("woven cloth", "felt bag", "pleated cartridge", "hepa"),
      "hose diameter": number(2, 8),
      "hose length": number(1, 40),
      "hose kind": fc.constantFrom("smooth", "corrugated"),
    },
    { requiredKeys: [] },
  )
  .filter((sheet) => Object.keys(sheet).length > 0);
type Sheet = Record<string, unknown> & { readonly rated?: [number, number] };

const FACTOR: Record<string, number> = {
  airflow: 1.69901079552,
  "free-air airflow": 1.69901079552,
  pressure: 248.84,
  "shut-off pressure": 248.84,
  "motor power": 0.745699872,
  "inlet diameter": 25.4,
  "impeller diameter": 25.4,
  "wheel width": 25.4,
  "filter area": 0.09290304,
  "hose diameter": 25.4,
  "hose length": 0.3048,
};

/** With more than three digits behind the point, so that it parts no thousands. */
const inDigits = (value: unknown): string => Number(value).toFixed(9);

const factsOf = ({ rated, ...rest }: Sheet, inSI = false): Facts => {
  const scale = (key: string, value: unknown): unknown =>
    typeof value === "number" ? value * (inSI ? (FACTOR[key] ?? 1) : 1) : value;
  const facts = Object.fromEntries(Object.entries(rest).map(([key, value]) => [key, scale(key, value)]));
  if (rated === undefined) return facts;
  const [airflow, pressure] = [scale("airflow", rated[0]), scale("pressure", rated[1])];
  return { ...facts, "rated point": `${inDigits(airflow)} at ${inDigits(pressure)}` };
};
const judged = (sheet: Sheet): Record<string, string> => verdicts(factsOf(sheet));
const impossibles = (sheet: Sheet): string[] =>
  Object.entries(judged(sheet)).flatMap(([check, verdict]) => (verdict === "impossible" ? [check] : []));

const ORDER = ["holds", "cannot tell", "doubtful", "impossible"];
const rank = (verdict: string | undefined): number => {
  expect(ORDER).toContain(verdict);
  return ORDER.indexOf(verdict!);
};

describe("CLAIM's laws", () => {
  test("a larger claimed airflow never gets a better verdict in any row", () => {
    fc.assert(
      fc.property(
        anySheet,
        number(1, 3),
        fc.constantFrom("airflow", "free-air airflow", "rated"),
        (sheet: Sheet, factor, key) => {
          fc.pre(sheet[key] !== undefined);
          const more = key === "rated" ? [factor * sheet.rated![0], sheet.rated![1]] : factor * (sheet[key] as number);
          const [here, then] = [judged(sheet), judged({ ...sheet, [key]: more })];
          expect(Object.keys(then)).toEqual(Object.keys(here));
          for (const check of Object.keys(here)) expect(rank(then[check])).toBeGreaterThanOrEqual(rank(here[check]));
        },
      ),
      lawRuns(300),
    );
  });

  test("a larger claimed pressure never betters a row about a pressure or a power", () => {
    fc.assert(
      fc.property(anySheet, number(1, 3), (sheet: Sheet, factor) => {
        fc.pre(sheet.pressure !== undefined);
        const [here, then] = [judged(sheet), judged({ ...sheet, pressure: factor * (sheet.pressure as number) })];
        for (const check of Object.keys(here))
          if (/pressure|power/i.test(check)) expect(rank(then[check])).toBeGreaterThanOrEqual(rank(here[check]));
      }),
      lawRuns(200),
    );
  });

  test("leaving a fact out never makes an impossible appear", () => {
    fc.assert(
      fc.property(anySheet, fc.nat(), (sheet: Sheet, place) => {
        const keys = Object.keys(sheet);
        fc.pre(keys.length > 1);
        const fewer = Object.fromEntries(Object.entries(sheet).filter((_, index) => index !== place % keys.length));
        const before = impossibles(sheet);
        for (const check of impossibles(fewer)) expect(before).toContain(check);
      }),
      lawRuns(500),
    );
  });

  test("the order of the facts says nothing", () => {
    fc.assert(
      fc.property(
        anySheet.chain((sheet: Sheet) => {
          const rows = Object.entries(factsOf(sheet));
          return fc.tuple(fc.constant(rows), fc.shuffledSubarray(rows, { minLength: rows.length }));
        }),
        ([rows, others]) => expect(verdicts(Object.fromEntries(others))).toEqual(verdicts(Object.fromEntries(rows))),
      ),
      lawRuns(100),
    );
  });

  test("the same facts in SI get the same verdicts", () => {
    fc.assert(
      fc.property(anySheet, (sheet: Sheet) =>
        expect(verdicts(factsOf(sheet, true), "SI")).toEqual(verdicts(factsOf(sheet))),
      ),
      lawRuns(200),
    );
  });
});
