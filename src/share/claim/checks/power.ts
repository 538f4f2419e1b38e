import { ATMOSPHERE } from "../../../core/air/constants";
import { CURVE, NO_RATING, ofFanAlone, percentOf, RATED_OUTPUT } from "../../../reference/claimWords";
import { compression, electric, euler, rating } from "../../../reference/claimLaws";
import { cite } from "../../../reference/citation";
import { type ClaimBoundRow, claimBounds } from "../../../reference/claimBounds";
import { num } from "../../translate/expressions/text";
import { literal, say, worked } from "../say";
import type { Steps } from "../steps";
import { all, byWheel, type Check, either, firstGiven, flag, gradeOf, type GivenFacts, unlessHolds } from "./checked";

const { overload, motorShare, backwardEfficiency } = claimBounds;

/** What goes by the best efficiency that the wheel's kind usually has. */
const byEfficiency = (facts: GivenFacts, then: (usual: ClaimBoundRow) => string): string =>
  byWheel(facts, (kind) => then(kind?.efficiency ?? backwardEfficiency));

/** The least power that moves an airflow against a pressure. */
const leastPower = (airflow: string, pressure: string): string =>
  `${airflow}*(${ATMOSPHERE}-${pressure})*LN(${ATMOSPHERE}/(${ATMOSPHERE}-${pressure}))`;

export const unratedPower: Check = (facts, list) => {
  const applies = list.step("MOTOR POWER: 1 no rating", flag(facts.isUnrated("motor power")));
  const claimed = list.where(applies).amount("Motor power", facts.of("motor power"), "power");
  return [
    {
      applies,
      check: literal("Motor power"),
      claimed: claimed.number,
      allowed: '""',
      unit: literal(claimed.label),
      verdict: literal("cannot tell"),
      why: literal(NO_RATING),
      source: literal(cite(rating)),
      asks: [literal(RATED_OUTPUT)],
    },
  ];
};

export const airPower: Check = (facts, list) => {
  const motor = facts.of("motor power");
  const isRated = facts.has("rated point");
  const ends = all(
    either(facts.has("airflow"), facts.has("free-air airflow")),
    either(facts.has("pressure"), facts.has("shut-off pressure")),
  );
  const applies = list.step("AIR POWER: 1 applies", flag(all(facts.has("motor power"), either(isRated, ends))));
  const steps = list.where(applies);
  const airflow = steps.step(
    "Airflow (m³/s)",
    `IF(${isRated},${facts.rated.airflow},${firstGiven(facts, "airflow", "free-air airflow")})`,
  );
  const pressure = steps.step(
    "Pressure (Pa)",
    `IF(${isRated},${facts.rated.pressure},${firstGiven(facts, "pressure", "shut-off pressure")})`,
  );
  const power = steps.step("Air power (W)", `${airflow}*${pressure}/IF(${isRated},1,4)`);
  const claimed = steps.amount("Air power", power, "power");
  const allowed = steps.amount("Motor", motor, "power");
  const doubted = steps.step("is doubted from (W)", `${byEfficiency(facts, ({ value }) => num(value))}*${motor}`);
  const least = steps.step("Least power (W)", leastPower(airflow, pressure));
  const tooMuch = `${least}>${overload.value}*${motor}`;
  const verdict = steps.step(
    "Verdict",
    `IF(AND(${isRated},${tooMuch}),"impossible",${gradeOf(power, { doubtedFrom: doubted })})`,
  );
  const q = steps.amount("Airflow", airflow, "airflow");
  const p = steps.amount("Pressure", pressure, "pressure");
  const doubt = worked(
    byEfficiency(facts, ({ value }) => literal(` Above ${percentOf(value)} of the motor's rating we doubt it.`)),
  );
  const law = `; no motor gives out more than ${overload.value} times its rating for long.`;
  const air = worked(steps.step("In words", say`${q} at ${p} is ${claimed} in the air (Q p)`));
  const ask = literal("the shaft power at the rated point");
  const ofCurve = say`A usual curve between these ends makes ${claimed} or more, which is no law.${doubt}`;
  const row = (of: string): Pick<ReturnType<Check>[number], "check" | "unit" | "allowed"> => ({
    check: literal(of),
    unit: literal(claimed.label),
    allowed: allowed.number,
  });
  const first = {
    ...row("Air power against the motor"),
    applies,
    claimed: claimed.number,
    verdict,
    why: `IF(${isRated},${say`${air}${law}${doubt}`},${ofCurve})`,
    source: `IF(${isRated},${byEfficiency(facts, (usual) => literal(cite(compression, overload, usual)))},${byEfficiency(facts, (usual) => literal(cite(euler, usual)))})`,
    asks: [unlessHolds(verdict, `IF(${isRated},${ask},${literal(CURVE)})`)],
  };
  const share = facts.of("efficiency");
  const hasShaft = list.step(
    "SHAFT POWER: 1 applies",
    flag(all(`${applies}=1`, isRated, facts.has("efficiency"), `${share}<=1`)),
  );
  const behind = list.where(hasShaft);
  const shaft = behind.step("Shaft power (W)", `${power}/${share}`);
  const shaftSaid = behind.amount("Shaft power", shaft, "power");
  const shaftVerdict = behind.step(
    "Verdict",
    `IF(${least}/${share}>${overload.value}*${motor},"impossible",${gradeOf(shaft, { doubtedFrom: motor })})`,
  );
  return [
    first,
    {
      ...row("Shaft power against the motor"),
      applies: hasShaft,
      claimed: shaftSaid.number,
      verdict: shaftVerdict,
      why: say`${air}, ${shaftSaid} at the shaft${law}`,
      source: literal(cite(compression, overload)),
      asks: [unlessHolds(shaftVerdict, ask)],
    },
  ];
};

export const supply: Check = (facts, list) => {
  const [volts, amps, phases] = [facts.of("volts"), facts.of("amps"), facts.of("phases")];
  const hasSupply = all(facts.has("volts"), facts.has("amps"));
  const given = list.step("SUPPLY: 1 given", flag(hasSupply));
  const steps = list.where(given);
  const low = steps.step("at least (W)", `${volts}*${amps}*SQRT(IF(${phases}="3",3,1))`);
  const high = steps.step("at most (W)", `${volts}*${amps}*SQRT(IF(${phases}="1",1,3))`);
  const most = steps.amount("At most", high, "power");
  const of = worked(`IF(${phases}="","up to 3",${phases})`);
  const s = worked(`IF(${phases}="1","","s")`);
  const why = steps.step(
    "In words",
    say`${worked(volts)} V and ${worked(amps)} A on ${of} phase${s} are ${most} at most, and ${String(overload.value)} times the current is allowed for. Above ${percentOf(motorShare.value)} of it we doubt it. A "peak" power lasts for a moment, if at all.`,
  );
  const one = (what: string, has: string, power: string, ask: string) => {
    const applies = list.step(`${what.toUpperCase()} POWER: 1 applies`, flag(all(`${given}=1`, has)));
    const there: Steps = list.where(applies);
    const claim = there.step(`${what} power (W)`, power);
    const claimed = there.amount(`${what} power`, claim, "power");
    const share = num(motorShare.value);
    const verdict = there.step(
      "Verdict",
      gradeOf(claim, {
        unknownFrom: `${share}*${low}`,
        doubtedFrom: `${share}*${high}`,
        impossibleFrom: `${overload.value}*${high}`,
      }),
    );
    return {
      applies,
      check: literal(`${what} power against the supply`),
      claimed: claimed.number,
      allowed: most.number,
      unit: literal(claimed.label),
      verdict,
      why,
      source: literal(cite(electric, motorShare, overload, compression)),
      asks: [unlessHolds(verdict, `IF(${phases}="",${literal("the phases of the supply")},${literal(ask)})`)],
    };
  };
  return [
    one("Motor", facts.has("motor power"), facts.of("motor power"), RATED_OUTPUT),
    one("Air", facts.has("rated point"), leastPower(facts.rated.airflow, facts.rated.pressure), CURVE),
  ];
};

export const efficiency: Check = (facts, list) => {
  const applies = list.step("EFFICIENCY: 1 applies", flag(facts.has("efficiency")));
  const steps = list.where(applies);
  const share = facts.of("efficiency");
  const claimed = steps.inUnit("Efficiency", share, { label: "%", factor: 0.01 });
  const verdict = steps.step(
    "Verdict",
    gradeOf(share, { doubtedFrom: byEfficiency(facts, ({ value }) => num(value)), impossibleFrom: "1" }),
  );
  return [
    {
      applies,
      check: literal("Efficiency"),
      claimed: claimed.number,
      allowed: "100",
      unit: literal("%"),
      verdict,
      why: byEfficiency(facts, ({ value }) => literal(ofFanAlone(percentOf(value)))),
      source: byEfficiency(facts, (usual) => literal(cite(usual))),
      asks: [unlessHolds(verdict, literal("the efficiency at the rated point, and by which test"))],
    },
  ];
};
