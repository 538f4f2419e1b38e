import { type ClaimedHose, hoseLoss, judgeHose, lengthThatTakes } from "../../core/claims/judgeAir";
import { cite } from "../../reference/citation";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import { running, velocityRow } from "./airChecks";
import { type ClaimRow, rowOf } from "./claimRow";
import { tidyInWords } from "../../reference/claimWords";
import type { Facts } from "./facts";
import { bareEnd, corrugated, looksOf, roundedEnd, smoothHose } from "../../core/claims/passageLooks";

/** Whether the claimed pressure draws the claimed airflow through the hose, and the rated airflow likewise. */
export function hoseFlow(facts: Facts, system: UnitSystem): ClaimRow[] {
  const { "hose diameter": diameter, airflow, pressure, "rated point": rated } = facts;
  if (diameter === undefined) return [];
  const rows: ClaimRow[] = [];
  const highest = pressure ?? facts["shut-off pressure"];
  if (airflow !== undefined && highest !== undefined)
    rows.push(
      throughHose("Airflow through the hose", airflow, highest, diameter, facts, pressure !== undefined, system),
    );
  if (rated !== undefined)
    rows.push(
      throughHose("Rated airflow through the hose", rated.airflow, rated.pressure, diameter, facts, false, system),
    );
  const any = airflow ?? facts["free-air airflow"];
  return rows.length > 0 || any === undefined
    ? rows
    : [velocityRow("Velocity in the hose", any, diameter, system, true)];
}

function throughHose(
  check: string,
  airflow: number,
  pressure: number,
  diameter: number,
  facts: Facts,
  sure: boolean,
  system: UnitSystem,
): ClaimRow {
  const { "hose kind": kind, "hose length": length = null } = facts;
  const hose: ClaimedHose = { diameter, length };
  const looks = looksOf(kind);
  const judged = judgeHose(airflow, pressure, hose, looks, sure);
  const said = (pascal: number): string => tidyInWords(pascal, "pressure", system);
  const asks = judged.verdict === "holds" || judged.verdict === "impossible" ? [] : wanting(length, kind);
  const [best, usual] = [
    hoseLoss(airflow, hose, 0, looks.roundedEnd),
    hoseLoss(airflow, hose, looks.usualWall, looks.bareEnd),
  ];
  const reach = (wall: number, entry: number): string =>
    tidyInWords(lengthThatTakes(pressure, airflow, diameter, wall, entry), "length", system);
  const of = kind === "smooth" ? "smooth" : "corrugated";
  const takes =
    length === null
      ? `The length decides: ${reach(looks.usualWall, looks.bareEnd)} of ${of} hose with a bare end, ${reach(0, looks.roundedEnd)} of the smoothest with a rounded one, take all of ${said(pressure)}.`
      : `${tidyInWords(length, "length", system)} of hose take ${said(best)} at least (smoothest, rounded end), ${said(usual)} if ${of} with a bare end, of ${said(pressure)}.`;
  return rowOf({
    check,
    ...judged,
    unit: unitOf("airflow", system),
    why: `${running(airflow, diameter, system)} ${takes}`,
    source: cite(bareEnd, roundedEnd, kind === "smooth" ? smoothHose : corrugated),
    asks,
  });
}

/** What would decide. */
function wanting(length: number | null, kind: string | undefined): string[] {
  if (length === null) return ["the hose's length"];
  return kind === undefined ? ["whether the hose is smooth or corrugated"] : ["how the hose's end is shaped"];
}
