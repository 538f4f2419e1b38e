import { claimBounds } from "../../reference/claimBounds";
import type { UnitSystem } from "../../reference/quantities";
import { type ClaimRow, rowOf } from "./claimRow";
import { tidyInWords } from "../../reference/claimWords";
import type { Facts } from "./facts";

const MOST_ASKED = 4;

/** What to expect, and what to ask the seller for: the closing row. */
export function inShort(facts: Facts, rows: readonly ClaimRow[], system: UnitSystem): ClaimRow {
  const named = (verdict: string): string =>
    inList(rows.filter((row) => row.verdict === verdict).map(({ check }) => String(check).toLowerCase()));
  const [cannot, doubted] = [named("impossible"), named("doubtful")];
  const asks = [...new Set(rows.flatMap((row) => row.asks))].slice(0, MOST_ASKED);
  const sentences = [
    cannot === "" ? "" : `Cannot be as given: ${cannot}.`,
    doubted === "" ? "" : `Doubtful: ${doubted}.`,
    expect(facts, cannot !== "", system),
    `Ask the seller for ${inList(asks.length === 0 ? ["the fan's curve and the standard it was tested by"] : asks)}.`,
  ];
  return rowOf({
    check: "In short",
    claimed: "",
    verdict: "",
    why: sentences.filter((one) => one !== "").join(" "),
    source: "",
  });
}

function expect(facts: Facts, impossible: boolean, system: UnitSystem): string {
  const rated = facts["rated point"];
  const said = (airflow: number): string => tidyInWords(airflow, "airflow", system);
  if (rated !== undefined) {
    const at = tidyInWords(rated.pressure, "pressure", system);
    return `Expect ${impossible ? "less than " : ""}${said(rated.airflow)} where your ducts, hoods and filter take ${at}.`;
  }
  const airflow = facts["free-air airflow"] ?? facts.airflow;
  if (airflow === undefined) return "";
  const { systemShareLow: low, systemShareHigh: high } = claimBounds;
  return `Expect ${said(low.value * airflow)} to ${said(high.value * airflow)} on ducts, by common practice, not ${said(airflow)}.`;
}

const inList = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join("; ")}; and ${words.at(-1)!}`;
