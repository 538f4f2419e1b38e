import { judgeFaceVelocity } from "../../core/claims/judgeAir";
import { findNamed } from "../../core/naming/findNamed";
import { cite } from "../../reference/citation";
import { filterMedia } from "../../reference/filterMedia";
import { filters } from "../../reference/filters";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import type { FilterRow } from "../../reference/schema";
import { type ClaimRow, rowOf } from "./claimRow";
import { RATING_ALONE, tidyInWords } from "../../reference/claimWords";
import type { Facts } from "./facts";
import { practice } from "../../reference/claimLaws";

const yardsticks = filterMedia.map(({ key, row }) => ({ key, row: findNamed(filters, row)! }));
const most = ({ row }: { row: FilterRow }): number => row.high!;

/** Air through each area of filter, against what filters of its medium are laid out for. */
export function faceVelocity(facts: Facts, system: UnitSystem): ClaimRow[] {
  const { "filter area": area, "filter medium": medium } = facts;
  const airflow = facts["rated point"]?.airflow ?? facts.airflow ?? facts["free-air airflow"];
  if (airflow === undefined || area === undefined) return [];
  const of = yardsticks.filter(({ key }) => medium === undefined || key === medium);
  const judged = judgeFaceVelocity(airflow, area, { low: Math.min(...of.map(most)), high: Math.max(...of.map(most)) });
  const list = of.map((one) => `${one.key} ${tidyInWords(most(one), "velocity", system)}`).join(", ");
  return [
    rowOf({
      check: "Filter face velocity",
      ...judged,
      unit: unitOf("velocity", system),
      why: `Air over area of medium. At most: ${list}. Faster air drives fine dust through.`,
      source: cite(...of.map(({ row }) => row)),
      asks:
        judged.verdict === "holds"
          ? []
          : [medium === undefined ? "the filter's medium" : "the filter's loss at this airflow, clean and dirty"],
    }),
  ];
}

/** A pore size alone is no efficiency. */
export function filterRating({ "filter rating": rating }: Facts): ClaimRow[] {
  if (rating === undefined) return [];
  const asks = ["the filter's test report"];
  return [
    rowOf({
      check: "Filter rating",
      claimed: rating,
      verdict: "cannot tell",
      why: RATING_ALONE,
      source: cite(practice),
      asks,
    }),
  ];
}
