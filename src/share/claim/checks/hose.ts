import { CURVE } from "../../../reference/claimWords";
import { bareEnd, corrugated, looksOf, roundedEnd, smoothHose } from "../../../core/claims/passageLooks";
import { cite } from "../../../reference/citation";
import { claimBounds } from "../../../reference/claimBounds";
import { num } from "../../translate/expressions/text";
import { literal, say, worked } from "../say";
import type { Steps } from "../steps";
import { running, velocityLine } from "./air";
import { all, type Check, either, firstGiven, flag, type GivenFacts, type Line, unlessHolds } from "./checked";
import { frictionPerLength, velocityThatTakes } from "./friction";

const KINDS = ["corrugated", "smooth"] as const;

const byKind = (facts: GivenFacts, then: (kind: string | undefined) => string): string =>
  KINDS.reduceRight((rest, kind) => `IF(${facts.of("hose kind")}="${kind}",${then(kind)},${rest})`, then(undefined));

const SAME = "1.000000002"; // the same touch of a bound that a claimed airflow may have, as a pressure

interface Claimed {
  readonly airflow: string;
  readonly pressure: string;
  readonly isSure: string; // a condition: the fan makes no more at any airflow
}

/** What follows from an airflow and a pressure for the hose. */
function throughHose(facts: GivenFacts, list: Steps, applies: string, { airflow, pressure, isSure }: Claimed) {
  const steps = list.where(applies);
  const diameter = facts.of("hose diameter");
  const length = facts.of("hose length");
  const hasLength = facts.has("hose length");
  const runs = running(steps, airflow, diameter);
  const usualWall = steps.step(
    "Usual wall (m)",
    byKind(facts, (kind) => num(looksOf(kind).usualWall)),
  );
  const usual = frictionPerLength(steps, runs.velocity, diameter, usualWall);
  const smooth = frictionPerLength(steps, runs.velocity, diameter, null);
  const isCorrugated = steps.step("1: corrugated", flag(`${facts.of("hose kind")}="corrugated"`));
  const least = frictionPerLength(
    list.where(isCorrugated),
    runs.velocity,
    diameter,
    num(looksOf("corrugated").leastWall),
  );
  const { roundedEnd: rounded, bareEnd: bare } = looksOf(undefined);
  const loss = (entry: number, friction: string): string => `${num(entry)}*${runs.head}+${length}*${friction}`;
  const told = list.where(steps.step("1: its length is given", flag(hasLength)));
  const open = list.where(steps.step("1: it is not", flag(`NOT(${hasLength})`)));
  const best = told.step("It takes at least (Pa)", loss(rounded, smooth));
  const doubted = told.step("of its kind at least (Pa)", `IF(${isCorrugated}=1,${loss(rounded, least)},${best})`);
  const mostly = told.step("usually (Pa)", loss(bare, usual));
  const velocity = velocityThatTakes(told, pressure, { entry: num(rounded), length, diameter });
  const allowed = told.amount("Most of it", `${velocity}*PI()/4*${diameter}^2`, "airflow");
  const passes = (taken: string, of: string): string => `${taken}>${of}*${SAME}`;
  const verdict = steps.step(
    "Verdict",
    `IF(NOT(${hasLength}),"cannot tell",IF(AND(${isSure},${passes(best, `${claimBounds.allowance.value}*${pressure}`)}),"impossible",IF(${passes(doubted, pressure)},"doubtful",IF(${passes(mostly, pressure)},"cannot tell","holds"))))`,
  );
  const said = steps.amount("Pressure", pressure, "pressure");
  const [bestSaid, usualSaid] = [best, mostly].map((taken) => told.amount("It takes", taken, "pressure")) as [
    typeof said,
    typeof said,
  ];
  const lengthSaid = told.amount("Length", length, "length");
  const reach = (entry: number, friction: string) =>
    open.amount("A length takes it all", `MAX(0,(${pressure}-${num(entry)}*${runs.head})/${friction})`, "length");
  const [reachUsual, reachBest] = [reach(bare, usual), reach(rounded, smooth)];
  const of = worked(`IF(${facts.of("hose kind")}="smooth","smooth","corrugated")`);
  const decides = say`${worked(runs.words)} The length decides: ${reachUsual} of ${of} hose with a bare end, ${reachBest} of the smoothest with a rounded one, take all of ${said}.`;
  const takes = say`${worked(runs.words)} ${lengthSaid} of hose take ${bestSaid} at least (smoothest, rounded end), ${usualSaid} if ${of} with a bare end, of ${said}.`;
  const wanting = `IF(NOT(${hasLength}),${literal("the hose's length")},IF(${facts.of("hose kind")}="",${literal("whether the hose is smooth or corrugated")},${literal("how the hose's end is shaped")}))`;
  return {
    claimed: runs.airflow.number,
    allowed: allowed.number,
    unit: literal(runs.airflow.label),
    verdict,
    why: `IF(${hasLength},${takes},${decides})`,
    source: byKind(facts, (kind) => literal(cite(bareEnd, roundedEnd, kind === "smooth" ? smoothHose : corrugated))),
    asks: [`IF(OR(${verdict}="holds",${verdict}="impossible"),"",${wanting})`],
  };
}

export const hoseFlow: Check = (facts, list): Line[] => {
  const hose = facts.has("hose diameter");
  const isRated = facts.has("rated point");
  const isFull = all(facts.has("airflow"), either(facts.has("pressure"), facts.has("shut-off pressure")));
  const full = list.step("HOSE: 1 airflow and pressure given", flag(all(hose, isFull)));
  const airflow = list.step("Airflow (m³/s)", firstGiven(facts, "airflow", "free-air airflow"));
  const bare = list.step("1: an airflow alone", flag(all(hose, `${full}=0`, `NOT(${isRated})`, `${airflow}>0`)));
  const claimed = throughHose(facts, list, full, {
    airflow,
    pressure: list.step("Pressure (Pa)", firstGiven(facts, "pressure", "shut-off pressure")),
    isSure: facts.has("pressure"),
  });
  const alone = list.where(bare);
  const runs = running(alone, airflow, facts.of("hose diameter"));
  const ofVelocity = velocityLine(list, runs.velocity);
  const velocityVerdict = alone.step("Verdict", ofVelocity.verdict);
  const rated = list.step("RATED POINT THROUGH THE HOSE: 1 applies", flag(all(hose, isRated)));
  const isBare = `${bare}=1`;
  return [
    {
      applies: list.step("1: a line for the hose", `${full}+${bare}`),
      check: `IF(${isBare},"Velocity in the hose","Airflow through the hose")`,
      claimed: `IF(${isBare},${runs.shown.number},${claimed.claimed})`,
      allowed: `IF(${isBare},${ofVelocity.allowed},${claimed.allowed})`,
      unit: `IF(${isBare},${literal(runs.shown.label)},${claimed.unit})`,
      verdict: `IF(${isBare},${velocityVerdict},${claimed.verdict})`,
      why: `IF(${isBare},${say`${worked(runs.words)} ${ofVelocity.why}`},${claimed.why})`,
      source: `IF(${isBare},${literal(ofVelocity.source)},${claimed.source})`,
      asks: [`IF(${isBare},${unlessHolds(velocityVerdict, literal(CURVE))},${claimed.asks[0]!})`],
    },
    {
      ...throughHose(facts, list, rated, { ...facts.rated, isSure: "FALSE" }),
      applies: rated,
      check: literal("Rated airflow through the hose"),
    },
  ];
};
