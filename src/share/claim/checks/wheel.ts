import { ATMOSPHERE, STANDARD_DENSITY } from "../../../core/air/constants";
import { CURVE, percentOf } from "../../../reference/claimWords";
import { euler } from "../../../reference/claimLaws";
import { cite } from "../../../reference/citation";
import { claimBounds } from "../../../reference/claimBounds";
import type { WheelKind } from "../../../reference/wheelKinds";
import { num } from "../../translate/expressions/text";
import { literal, say, worked } from "../say";
import { all, byWheel, type Check, flag, gradeOf, type GivenFacts, unlessHolds } from "./checked";

const { tipPressure, allowance, radialFlow, forwardFlow, rimFlow } = claimBounds;
const KIND = "the kind of wheel";
const STAGES = "the number of stages";
const LARGEST_POWER = 600; // of e: a spreadsheet holds no more than 709
const NO_BOUND = "1E+99";

const tipSpeed = (facts: GivenFacts): string => `PI()*${facts.of("impeller diameter")}*${facts.of("speed")}/60`;
const hasWheel = (facts: GivenFacts): string => all(facts.has("impeller diameter"), facts.has("speed"));
const isBounded = (facts: GivenFacts): string =>
  byWheel(facts, (kind) => (kind === undefined ? '""' : kind.bounded ? "1" : "0"));

export const tip: Check = (facts, list) => {
  const highest = `MAX(${facts.of("pressure")},${facts.of("shut-off pressure")},${facts.rated.pressure})`;
  const applies = list.step("TIP SPEED: 1 applies", flag(all(hasWheel(facts), `${highest}>0`)));
  const steps = list.where(applies);
  const pressure = steps.step("Pressure (Pa)", highest);
  const claimed = steps.amount("Pressure", pressure, "pressure");
  const speed = steps.step("Tip speed (m/s)", tipSpeed(facts));
  const fast = steps.amount("Tip speed", speed, "velocity");
  const hasStages = facts.has("stages");
  const stages = steps.step("Stages", `IF(${hasStages},${facts.of("stages")},1)`);
  const allowed = steps.step("Pressure of the tips (Pa)", `${stages}*${num(STANDARD_DENSITY)}*${speed}^2`);
  const most = steps.amount("Pressure of the tips", allowed, "pressure");
  const squeezed = steps.step(
    "in air that is squeezed (Pa)",
    `${ATMOSPHERE}*(EXP(MIN(${LARGEST_POWER},${allowed}/${ATMOSPHERE}))-1)`,
  );
  const bounded = steps.step("1: its kind makes no more", isBounded(facts));
  const doubtedFrom = `${num(tipPressure.value)}*${allowed}`;
  const verdict = steps.step(
    "Verdict",
    `IF(AND(${bounded}=1,${hasStages}),${gradeOf(pressure, { doubtedFrom, impossibleFrom: `${num(allowance.value)}*${squeezed}` })},${gradeOf(pressure, { unknownFrom: doubtedFrom })})`,
  );
  const unknown = `IF(${bounded}="",IF(${hasStages},${literal(KIND)},${literal(`${KIND} and ${STAGES}`)}),${literal(STAGES)})`;
  const open = `IF(${bounded}=0,".",": "&${unknown}&" would decide.")`;
  const so = steps.step(
    "What that says",
    [
      ["cannot tell", `${literal(" Other kinds and more stages can pass it")}&${open}`],
      ["doubtful", literal(` Above ${percentOf(tipPressure.value)} of it we doubt it.`)],
      ["impossible", literal(` More than ${allowance.value} times that cannot be.`)],
    ].reduceRight((rest, [is, words]) => `IF(${verdict}="${is!}",${words!},${rest})`, '""'),
  );
  const ask = (when: string, what: string): string => `IF(AND(${verdict}="cannot tell",${when}),${literal(what)},"")`;
  return [
    {
      applies,
      check: literal("Pressure against the tip speed"),
      claimed: claimed.number,
      allowed: most.number,
      unit: literal(claimed.label),
      verdict,
      why: say`If the wheel itself turns so fast, its tip runs at ${fast} (u = π D N); blades that are radial or lean back make at most ρu² a stage, ${most} in standard air.${worked(so)}`,
      source: literal(cite(euler, tipPressure, allowance)),
      asks: [ask(`${bounded}=""`, KIND), ask(`NOT(${hasStages})`, STAGES)],
    },
  ];
};

export const wheelFlow: Check = (facts, list) => {
  const largest = `MAX(${facts.of("airflow")},${facts.of("free-air airflow")},${facts.rated.airflow})`;
  const hasFigures = byWheel(facts, (kind) => (kind?.flow === null ? "FALSE" : "TRUE"));
  const applies = list.step("FLOW OF THE WHEEL: 1 applies", flag(all(hasWheel(facts), `${largest}>0`, hasFigures)));
  const steps = list.where(applies);
  const airflow = steps.step("Airflow (m³/s)", largest);
  const claimed = steps.amount("Airflow", airflow, "airflow");
  const speed = steps.step("Tip speed (m/s)", tipSpeed(facts));
  const diameter = facts.of("impeller diameter");
  const figures = (kind: WheelKind | undefined) => ({
    low: kind?.flow ?? radialFlow,
    high: kind?.flow ?? forwardFlow,
  });
  const rim = steps.step(
    "Through its rim (m³/s)",
    `IF(AND(${facts.has("wheel width")},${isBounded(facts)}=1),${num(rimFlow.value)}*${speed}*PI()*${diameter}*${facts.of("wheel width")},${NO_BOUND})`,
  );
  const through = (end: "low" | "high"): string =>
    `MIN(${rim},${byWheel(facts, (kind) => num(figures(kind)[end].value))}*${speed}*PI()/4*${diameter}^2)`;
  const least = steps.step("Least of any kind (m³/s)", through("low"));
  const most = steps.step("Most (m³/s)", through("high"));
  const allowed = steps.amount("Most", most, "airflow");
  const verdict = steps.step("Verdict", gradeOf(airflow, { unknownFrom: least, doubtedFrom: most }));
  const of = worked(byWheel(facts, (kind) => literal(kind === undefined ? "any wheel" : "such a wheel")));
  const rule = worked(
    byWheel(facts, (kind) => {
      const { low, high } = figures(kind);
      const other =
        kind === undefined ? `; a radial one above ${low.value}` : `, or ${rimFlow.value} u through its rim`;
      return literal(`${high.value} u π D²/4${other}`);
    }),
  );
  return [
    {
      applies,
      check: literal("Airflow of its wheel"),
      claimed: claimed.number,
      allowed: allowed.number,
      unit: literal(claimed.label),
      verdict,
      why: say`Above ${allowed} we doubt ${of} of this size and speed (Q = ${rule}); no law forbids more.`,
      source: byWheel(facts, (kind) => literal(cite(figures(kind).low, rimFlow))),
      asks: [unlessHolds(verdict, `IF(${verdict}="doubtful",${literal(CURVE)},${literal(KIND)})`)],
    },
  ];
};
