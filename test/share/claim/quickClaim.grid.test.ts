import { inGrid } from "../../support/grid";
import { copyOf, wrongIn } from "./claimCopies";
import { drawnFacts } from "./drawnFacts";

const FROM = Number(process.env.CLAIM_FROM ?? 1);
const COUNT = Number(process.env.CLAIM_COUNT ?? 12);

test.each(["IP", "SI"] as const)("drawn tables of facts in %s", (units) => {
  const tables = Array.from({ length: COUNT }, (_, seed) => drawnFacts(FROM + seed, units));
  const wrong: string[] = [];
  for (let at = 0; at < COUNT; at += 60) {
    const some = tables.slice(at, at + 60);
    wrong.push(...wrongIn(some, units, inGrid(copyOf(some, units))));
  }
  expect(wrong).toEqual([]);
});
