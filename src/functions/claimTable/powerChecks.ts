import type { Judged } from "../../core/claims/grade";
import { leastPower } from "../../core/claims/fanBounds";
import { judgeCurvePower, judgeEfficiency, judgeRatedPower, judgeSupply } from "../../core/claims/judgePower";
import { cite } from "../../reference/citation";
import { claimBounds } from "../../reference/claimBounds";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import { type ClaimRow, rowOf } from "./claimRow";
import { CURVE, NO_RATING, ofFanAlone, percentOf, RATED_OUTPUT, tidyInWords } from "../../reference/claimWords";
import type { Facts } from "./facts";
import { compression, electric, euler, rating } from "../../reference/claimLaws";
import { usualEfficiency } from "./wheelOf";

const { overload, motorShare } = claimBounds;
const AIR_POWER = "Air power against the motor";

type Row = (check: string, judged: Judged, why: string, source: string, ask: string) => ClaimRow;
const rowIn =
  (system: UnitSystem): Row =>
  (check, judged, why, source, ask) =>
    rowOf({
      check,
      ...judged,
      unit: unitOf("power", system),
      why,
      source,
      asks: judged.verdict === "holds" ? [] : [ask],
    });

/** A motor's power that is no rating is said to be none. */
export function unratedPower({ "unrated power": claimed }: Facts, system: UnitSystem): ClaimRow[] {
  if (claimed === undefined) return [];
  const judged = { claimed, allowed: null, verdict: "cannot tell" } as const;
  return [rowIn(system)("Motor power", judged, NO_RATING, cite(rating), RATED_OUTPUT)];
}

/** No fan puts more into the air than its motor gives out. */
export function airPower(facts: Facts, system: UnitSystem): ClaimRow[] {
  const { "rated point": rated, "motor power": motor, efficiency } = facts;
  if (motor === undefined) return [];
  const usual = usualEfficiency(facts);
  const doubt = ` Above ${percentOf(usual.value)} of the motor's rating we doubt it.`;
  const [row, said] = [rowIn(system), (watts: number): string => tidyInWords(watts, "power", system)];
  if (rated === undefined) {
    const airflow = facts.airflow ?? facts["free-air airflow"];
    const pressure = facts.pressure ?? facts["shut-off pressure"];
    if (airflow === undefined || pressure === undefined) return [];
    const judged = judgeCurvePower(airflow, pressure, motor, usual.value);
    const why = `A usual curve between these ends makes ${said(judged.claimed)} or more, which is no law.${doubt}`;
    return [row(AIR_POWER, judged, why, cite(euler, usual), CURVE)];
  }
  const ask = "the shaft power at the rated point";
  const law = `; no motor gives out more than ${overload.value} times its rating for long.`;
  const air = `${tidyInWords(rated.airflow, "airflow", system)} at ${tidyInWords(rated.pressure, "pressure", system)} is ${said(rated.airflow * rated.pressure)} in the air (Q p)`;
  const judged = judgeRatedPower(rated, null, motor, usual.value);
  const rows = [row(AIR_POWER, judged, air + law + doubt, cite(compression, overload, usual), ask)];
  if (efficiency !== undefined && efficiency <= 1) {
    const shaft = judgeRatedPower(rated, efficiency, motor, usual.value);
    const why = `${air}, ${said(shaft.claimed)} at the shaft${law}`;
    rows.push(row("Shaft power against the motor", shaft, why, cite(compression, overload), ask));
  }
  return rows;
}

/** No motor gives out more than it takes in. */
export function supply(facts: Facts, system: UnitSystem): ClaimRow[] {
  const { volts, amps, phases, "motor power": motor, "rated point": rated } = facts;
  if (volts === undefined || amps === undefined) return [];
  const known = phases === undefined ? null : phases === "3" ? 3 : 1;
  const claims = [
    ["Motor", motor, RATED_OUTPUT],
    ["Air", rated && leastPower(rated.airflow, rated.pressure), CURVE],
  ] as const;
  return claims.flatMap(([of, power, ask]) => {
    if (power === undefined) return [];
    const judged = judgeSupply(power, { volts, amps, phases: known });
    const why = `${volts} V and ${amps} A on ${phases ?? "up to 3"} phase${phases === "1" ? "" : "s"} are ${tidyInWords(judged.allowed!, "power", system)} at most, and ${overload.value} times the current is allowed for. Above ${percentOf(motorShare.value)} of it we doubt it. A "peak" power lasts for a moment, if at all.`;
    const source = cite(electric, motorShare, overload, compression);
    return [
      rowIn(system)(
        `${of} power against the supply`,
        judged,
        why,
        source,
        known === null ? "the phases of the supply" : ask,
      ),
    ];
  });
}

/** Nothing gives back more than it takes. */
export function efficiency(facts: Facts): ClaimRow[] {
  const claimed = facts.efficiency;
  if (claimed === undefined) return [];
  const usual = usualEfficiency(facts);
  const judged = judgeEfficiency(claimed, usual.value);
  return [
    rowOf({
      check: "Efficiency",
      ...judged,
      unit: { label: "%", factor: 0.01 },
      why: ofFanAlone(percentOf(usual.value)),
      source: cite(usual),
      asks: judged.verdict === "holds" ? [] : ["the efficiency at the rated point, and by which test"],
    }),
  ];
}
