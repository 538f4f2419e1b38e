import { findNamed } from "../../../core/naming/findNamed";
import { RATING_ALONE, tidyInWords } from "../../../reference/claimWords";
import { practice } from "../../../reference/claimLaws";
import { cite } from "../../../reference/citation";
import { filterMedia } from "../../../reference/filterMedia";
import { filters } from "../../../reference/filters";
import type { FilterRow } from "../../../reference/schema";
import { num } from "../../translate/expressions/text";
import { literal, oneOf } from "../say";
import { all, type Check, either, firstGiven, flag, type GivenFacts, gradeOf, unlessHolds } from "./checked";

interface Yardstick {
  readonly key: string;
  readonly row: FilterRow;
}
const yardsticks: readonly Yardstick[] = filterMedia.map(({ key, row }) => ({ key, row: findNamed(filters, row)! }));
const most = ({ row }: Yardstick): number => row.high!;

/** What goes by the medium; all of them where it is not told. */
const byMedium = (facts: GivenFacts, then: (of: readonly Yardstick[]) => string): string =>
  oneOf(
    yardsticks.map((one) => [`${facts.of("filter medium")}="${one.key}"`, then([one])] as const),
    then(yardsticks),
  );

export const faceVelocity: Check = (facts, list) => {
  const applies = list.step(
    "FILTER: 1 applies",
    flag(
      all(
        facts.has("filter area"),
        either(facts.has("rated point"), facts.has("airflow"), facts.has("free-air airflow")),
      ),
    ),
  );
  const steps = list.where(applies);
  const airflow = `IF(${facts.has("rated point")},${facts.rated.airflow},${firstGiven(facts, "airflow", "free-air airflow")})`;
  const velocity = steps.step("Face velocity (m/s)", `${airflow}/${facts.of("filter area")}`);
  const claimed = steps.amount("Face velocity", velocity, "velocity");
  const high = steps.step(
    "Most of any medium (m/s)",
    byMedium(facts, (of) => num(Math.max(...of.map(most)))),
  );
  const allowed = steps.amount("Most", high, "velocity");
  const low = byMedium(facts, (of) => num(Math.min(...of.map(most))));
  const verdict = steps.step("Verdict", gradeOf(velocity, { unknownFrom: low, doubtedFrom: high }));
  const said = (one: Yardstick): string => `${one.key} ${tidyInWords(most(one), "velocity", steps.system)}`;
  const medium = `IF(${facts.of("filter medium")}="",${literal("the filter's medium")},${literal("the filter's loss at this airflow, clean and dirty")})`;
  return [
    {
      applies,
      check: literal("Filter face velocity"),
      claimed: claimed.number,
      allowed: allowed.number,
      unit: literal(claimed.label),
      verdict,
      why: byMedium(facts, (of) =>
        literal(`Air over area of medium. At most: ${of.map(said).join(", ")}. Faster air drives fine dust through.`),
      ),
      source: byMedium(facts, (of) => literal(cite(...of.map(({ row }) => row)))),
      asks: [unlessHolds(verdict, medium)],
    },
  ];
};

export const filterRating: Check = (facts, list) => [
  {
    applies: list.step("FILTER RATING: 1 applies", flag(facts.has("filter rating"))),
    check: literal("Filter rating"),
    claimed: facts.of("filter rating"),
    allowed: '""',
    unit: '""',
    verdict: literal("cannot tell"),
    why: literal(RATING_ALONE),
    source: literal(cite(practice)),
    asks: [literal("the filter's test report")],
  },
];
