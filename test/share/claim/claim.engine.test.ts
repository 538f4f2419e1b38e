/** CLAIM as plain formulas against CLAIM itself, in two independent engines. The function is held against worked examples elsewhere. */
import { hardRecalculation } from "../../support/hardRecalculation";
import { ironCalc } from "../../support/ironCalc";
import { hasLibreOffice } from "../../support/libreOffice";
import { copyOf, wrongIn } from "./claimCopies";
import { drawnFacts } from "./drawnFacts";

/** More are asked by hand: CLAIM_COPIES=100 */
const TABLES = Number(process.env.CLAIM_COPIES ?? 8);
const drawn = (units: "IP" | "SI", seeds: number) =>
  Array.from({ length: TABLES }, (_, seed) => drawnFacts(seeds + seed, units));

test.each(["IP", "SI"] as const)("in the independent engine drawn facts in %s get CLAIM's answers", (units) => {
  const tables = drawn(units, 5000).slice(0, 1); // it computes one in five seconds
  expect(wrongIn(tables, units, ironCalc(copyOf(tables, units)))).toEqual([]);
});

(hasLibreOffice ? test : test.skip).each(["IP", "SI"] as const)(
  "in LibreOffice, recalculated, drawn facts in %s get CLAIM's answers",
  async (units) => {
    const tables = drawn(units, 6000);
    expect(wrongIn(tables, units, await hardRecalculation(copyOf(tables, units)))).toEqual([]);
  },
);
