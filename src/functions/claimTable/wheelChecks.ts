import { STANDARD_DENSITY } from "../../core/air/constants";
import { tipSpeed } from "../../core/claims/fanBounds";
import { judgeTipPressure, judgeWheelFlow } from "../../core/claims/judgeFan";
import { cite } from "../../reference/citation";
import { claimBounds } from "../../reference/claimBounds";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import { type ClaimRow, rowOf } from "./claimRow";
import { CURVE, tidyInWords, percentOf } from "../../reference/claimWords";
import type { Facts } from "./facts";
import { euler } from "../../reference/claimLaws";
import { kindOf, wheelOf } from "./wheelOf";

const { tipPressure, allowance, radialFlow, forwardFlow, rimFlow } = claimBounds;
const KIND = "the kind of wheel";

/** The largest of those that are given; undefined where none is. */
function largest(...values: readonly (number | undefined)[]): number | undefined {
  const most = Math.max(...values.map((value) => value ?? 0));
  return most > 0 ? most : undefined;
}

/** No wheel makes more pressure than its tip speed allows. */
export function tip(facts: Facts, system: UnitSystem): ClaimRow[] {
  const pressure = largest(facts.pressure, facts["shut-off pressure"], facts["rated point"]?.pressure);
  const wheel = wheelOf(facts);
  if (pressure === undefined || wheel === null) return [];
  const judged = judgeTipPressure(pressure, wheel, STANDARD_DENSITY);
  const fast = tidyInWords(tipSpeed(wheel.diameter, wheel.speed), "velocity", system);
  const unknown = [
    ...(wheel.bounded === null ? [KIND] : []),
    ...(wheel.stages === null ? ["the number of stages"] : []),
  ];
  const so = {
    holds: "",
    "cannot tell": ` Other kinds and more stages can pass it${wheel.bounded === false ? "" : `: ${unknown.join(" and ")} would decide`}.`,
    doubtful: ` Above ${percentOf(tipPressure.value)} of it we doubt it.`,
    impossible: ` More than ${allowance.value} times that cannot be.`,
  }[judged.verdict];
  return [
    rowOf({
      check: "Pressure against the tip speed",
      ...judged,
      unit: unitOf("pressure", system),
      why: `If the wheel itself turns so fast, its tip runs at ${fast} (u = π D N); blades that are radial or lean back make at most ρu² a stage, ${tidyInWords(judged.allowed!, "pressure", system)} in standard air.${so}`,
      source: cite(euler, tipPressure, allowance),
      asks: judged.verdict === "cannot tell" ? unknown : [],
    }),
  ];
}

/** What such a wheel usually moves with nothing on it. */
export function wheelFlow(facts: Facts, system: UnitSystem): ClaimRow[] {
  const airflow = largest(facts.airflow, facts["free-air airflow"], facts["rated point"]?.airflow);
  const told = wheelOf(facts);
  const kind = kindOf(facts);
  if (airflow === undefined || told === null || kind?.flow === null) return [];
  const [low, high] = kind === undefined ? [radialFlow, forwardFlow] : [kind.flow, kind.flow];
  const wheel = { ...told, width: facts["wheel width"] ?? null };
  const judged = judgeWheelFlow(airflow, wheel, { low: low.value, high: high.value });
  return [
    rowOf({
      check: "Airflow of its wheel",
      ...judged,
      unit: unitOf("airflow", system),
      why: `Above ${tidyInWords(judged.allowed!, "airflow", system)} we doubt ${kind === undefined ? "any wheel" : "such a wheel"} of this size and speed (Q = ${high.value} u π D²/4${kind === undefined ? `; a radial one above ${low.value}` : `, or ${rimFlow.value} u through its rim`}); no law forbids more.`,
      source: cite(low, rimFlow),
      asks: judged.verdict === "holds" ? [] : [judged.verdict === "doubtful" ? CURVE : KIND],
    }),
  ];
}
