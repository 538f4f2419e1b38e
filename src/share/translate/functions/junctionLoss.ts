import { FACTOR, LEAST_FACTOR, TURNED, TURNS_ALL, TURNS_FROM, WIDE } from "../../../core/fittings/junction";
import type { takes } from "../../../functions/losses/junctionloss";
import type { BuildCall } from "../arrayRule";
import { inSI, isBlankOrZero, num } from "../expressions/text";

type Names = keyof (typeof takes)["takes"];

/** JUNCTIONLOSS: the balance of momentum with p_v = 8 rho Q^2 / (pi^2 D^4), all of it over that constant. */
export function junctionLossOf(
  {
    angle,
    branchairflow: branch,
    mainairflow: all,
    branchdiameter,
    maindiameter: wide,
    straightdiameter,
    leg,
    density,
  }: Readonly<Record<Names, string>>,
  { elements, system }: BuildCall<(typeof takes)["takes"]>,
): { value: string; checks: string[] } {
  // a duct wider than the main counts as wide as it
  const narrow = `MIN(${branchdiameter},${wide})`;
  const straight = `MIN(${straightAs(straightdiameter, wide, system)},${wide})`;
  const on = `(${all}-${branch})`;
  const cosine = `SIN((90-${angle})*PI()/180)`;
  const push = `2/${wide}^2*(${cosine}*(${branch}/${narrow})^2+(${on}/${straight})^2)`;
  const main = `(${all}/${wide}^2)^2`;
  const balance = (airflow: string, diameter: string): string => `(${main}+(${airflow}/${diameter}^2)^2-${push})`;
  const lessened = `IF(${narrow}^2<=${WIDE}*${wide}^2,0,MIN(1,MAX(0,1-(${wide}^2-${straight}^2)/${narrow}^2)))`;
  const factor = `(1+${lessened}*(MAX(${FACTOR}*(1-${branch}/${all}),${LEAST_FACTOR})-1))`;
  const turned = `${TURNED}*MIN(1,MAX(0,(${angle}-${TURNS_FROM})/${TURNS_ALL - TURNS_FROM}))`;
  const ofBranch = `${factor}*${balance(branch, narrow)}`;
  const ofStraight = `(${balance(on, straight)}-${turned}*${branch}/${all}*${main})`;
  const literal = elements.leg === null ? leg : elements.leg.literal;
  const either =
    typeof literal === "string"
      ? leg === "straight"
        ? ofStraight
        : ofBranch
      : `IF(${leg}="straight",${ofStraight},${ofBranch})`;
  return {
    value: `IF(${all}=0,0,${num(8 / Math.PI ** 2)}*${density}*${either})`,
    checks: [`${all}>=${branch}`],
  };
}

/** As wide as the main where it is left out. */
function straightAs(cell: string, wide: string, system: BuildCall["system"]): string {
  if (cell === "") return wide;
  return `IF(${isBlankOrZero(cell)},${wide},${inSI(cell, "diameter", system)})`;
}
