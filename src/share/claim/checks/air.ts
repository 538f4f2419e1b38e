import { STANDARD_DENSITY } from "../../../core/air/constants";
import { CURVE, tidyInWords } from "../../../reference/claimWords";
import { bareEnd, roundedEnd } from "../../../core/claims/passageLooks";
import { cite } from "../../../reference/citation";
import { claimBounds } from "../../../reference/claimBounds";
import { type UnitSystem, unitOf } from "../../../reference/quantities";
import { num } from "../../translate/expressions/text";
import { literal, say, worked } from "../say";
import type { Steps } from "../steps";
import { all, type Check, either, firstGiven, flag, gradeOf, unlessHolds } from "./checked";

const density = num(STANDARD_DENSITY);

export const systemAirflow: Check = (facts, list) => {
  const applies = list.step(
    "AIRFLOW ON A SYSTEM: 1 applies",
    flag(`AND(NOT(${facts.has("rated point")}),OR(${facts.has("free-air airflow")},${facts.has("airflow")}))`),
  );
  const steps = list.where(applies);
  const airflow = steps.step("Airflow (m³/s)", firstGiven(facts, "free-air airflow", "airflow"));
  const { systemShareLow: low, systemShareHigh: high } = claimBounds;
  const claimed = steps.amount("Airflow", airflow, "airflow");
  const [least, most] = [low, high].map(({ value }) =>
    steps.amount("of it on a system", `${num(value)}*${airflow}`, "airflow"),
  ) as [typeof claimed, typeof claimed];
  const is = worked(`IF(${facts.has("free-air airflow")},"Measured","May be measured")`);
  return [
    {
      applies,
      check: literal("Airflow on a system"),
      claimed: claimed.number,
      allowed: most.number,
      unit: literal(claimed.label),
      verdict: literal("cannot tell"),
      why: say`${is} with nothing on the fan; by common practice a system leaves half to two thirds of it, ${least} to ${most}. Its curve decides.`,
      source: literal(cite(low, high)),
      asks: [literal(CURVE)],
    },
  ];
};

export const inlet: Check = (facts, list) => {
  const anyPressure = either(facts.has("pressure"), facts.has("shut-off pressure"));
  const applies = list.step(
    "INLET: 1 applies",
    flag(
      all(
        facts.has("inlet diameter"),
        either(facts.has("airflow"), facts.has("rated point"), facts.has("free-air airflow")),
      ),
    ),
  );
  const steps = list.where(applies);
  const diameter = facts.of("inlet diameter");
  const airflow = steps.step(
    "Airflow (m³/s)",
    `IF(${facts.has("airflow")},${facts.of("airflow")},IF(${facts.has("rated point")},${facts.rated.airflow},${facts.of("free-air airflow")}))`,
  );
  const runs = running(steps, airflow, diameter);
  const ofVelocity = velocityLine(steps, runs.velocity);
  const hasPressure = list.step(
    "1: its pressure is given",
    flag(all(`${applies}=1`, facts.has("airflow"), anyPressure)),
  );
  const judged = list.where(hasPressure);
  const pressure = judged.step("Pressure (Pa)", firstGiven(facts, "pressure", "shut-off pressure"));
  const [bare, rounded] = [bareEnd, roundedEnd].map(({ coefficient }) => ({
    most: judged.step(
      "Most through such an end (m³/s)",
      `PI()/4*${diameter}^2*SQRT(2*${pressure}/${num(coefficient * STANDARD_DENSITY)})`,
    ),
    takes: judged.amount("Such an end takes", `${num(coefficient)}*${runs.head}`, "pressure"),
  })) as [{ most: string; takes: ReturnType<Steps["amount"]> }, { most: string; takes: ReturnType<Steps["amount"]> }];
  const allowed = judged.amount("Most through a bare end", bare.most, "airflow");
  const of = judged.amount("Pressure", pressure, "pressure");
  const isFull = `${hasPressure}=1`;
  const verdict = steps.step(
    "Verdict",
    `IF(${isFull},${gradeOf(airflow, { unknownFrom: bare.most, doubtedFrom: rounded.most })},${ofVelocity.verdict})`,
  );
  const ask = `IF(${isFull},${literal("with which inlet the airflow was measured")},IF(${facts.has("rated point")},"",${literal(CURVE)}))`;
  return [
    {
      applies,
      check: `IF(${isFull},"Airflow through the inlet","Velocity in the inlet")`,
      claimed: `IF(${isFull},${runs.airflow.number},${runs.shown.number})`,
      allowed: `IF(${isFull},${allowed.number},${ofVelocity.allowed})`,
      unit: `IF(${isFull},${literal(runs.airflow.label)},${literal(runs.shown.label)})`,
      verdict,
      why: `IF(${isFull},${say`${worked(runs.words)} A bare end takes ${bare.takes}, a well rounded one ${rounded.takes}, of ${of}.`},${say`${worked(runs.words)} ${ofVelocity.why}`})`,
      source: `IF(${isFull},${literal(cite(bareEnd, roundedEnd))},${literal(ofVelocity.source)})`,
      asks: [unlessHolds(verdict, ask)],
    },
  ];
};

/** How an airflow runs through a duct: "At 1200 cfm the air runs at 6110 fpm, with 2.33 in.w.g. of velocity pressure." */
export function running(steps: Steps, airflow: string, diameter: string) {
  const said = steps.amount("Airflow", airflow, "airflow");
  const velocity = steps.step("Velocity (m/s)", `${airflow}/(PI()/4*${diameter}^2)`);
  const shown = steps.amount("Velocity", velocity, "velocity");
  const head = steps.step("Velocity pressure (Pa)", `0.5*${density}*${velocity}^2`);
  const headSaid = steps.amount("Velocity pressure", head, "pressure");
  const words = steps.step(
    "In words",
    say`At ${said} the air runs at ${shown}, with ${headSaid} of velocity pressure.`,
  );
  return { airflow: said, velocity, shown, head, words };
}

/** What is said of a velocity whose pressure is not told. */
export function velocityLine({ system }: Pick<Steps, "system">, velocity: string) {
  const { inletVelocity: low, inletVelocityHigh: high } = claimBounds;
  const [from, to] = [low, high].map(({ value }) => tidyInWords(value, "velocity", system)) as [string, string];
  return {
    verdict: gradeOf(velocity, { unknownFrom: num(low.value), doubtedFrom: num(high.value) }),
    allowed: tidied(low.value, "velocity", system),
    why: `Above ${from} its pressure decides; above ${to} we doubt it.`,
    source: cite(low, high),
  };
}

/** A number that never changes, as a cell of the answer has it. */
const tidied = (value: number, quantity: "velocity", system: UnitSystem): string =>
  tidyInWords(value, quantity, system).replace(` ${unitOf(quantity, system).label}`, "");
