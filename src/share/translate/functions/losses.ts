import { takes as deviceLoss } from "../../../functions/losses/deviceloss";
import { takes as equivalentLength } from "../../../functions/losses/equivlength";
import { takes as fittingLoss } from "../../../functions/losses/fittingloss";
import { takes as friction } from "../../../functions/losses/friction";
import { takes as junctionLoss } from "../../../functions/losses/junctionloss";
import { takes as reynolds } from "../../../functions/losses/reynolds";
import { takes as runLoss } from "../../../functions/losses/runloss";
import { takes as velocityPressureOf } from "../../../functions/losses/velocitypressure";
import { ROUGHEST } from "../../../core/friction/frictionFactor";
import { scalar } from "../arrayRule";
import { frictionFactor, lossPerLength, reynoldsNumber, velocityPressure } from "../expressions/flow";
import { power } from "../expressions/text";
import type { Translator } from "../translation";
import { junctionLossOf } from "./junctionLoss";
import { listKInAir } from "./listK";
import { lossCoefficientOf } from "./lossCoefficient";

/** A wall rougher than a fifth of its diameter is an obstacle. */
const smoothEnough = (material: string, diameter: string): string[] => [
  `${material}>=0`,
  `${material}<=${ROUGHEST}*${diameter}`,
];

export const losses: Readonly<Record<string, Translator>> = {
  VELOCITYPRESSURE: scalar(velocityPressureOf, ({ velocity, density }) => `0.5*${density}*${velocity}^2`),
  FRICTION: scalar(friction, ({ airflow, diameter, material, density }) => ({
    value: lossPerLength(airflow, diameter, material, density),
    checks: smoothEnough(material, diameter),
  })),
  RUNLOSS: scalar(runLoss, ({ airflow, diameter, length, material, density }) => ({
    value: `${length}*${lossPerLength(airflow, diameter, material, density)}`,
    checks: smoothEnough(material, diameter),
  })),
  REYNOLDS: scalar(reynolds, ({ airflow, diameter, density }) => reynoldsNumber(airflow, diameter, density)),
  LOSSCOEFFICIENT: lossCoefficientOf,
  FITTINGLOSS: scalar(fittingLoss, ({ airflow, diameter, count, density }, call) => {
    const { fitting, diameter: duct } = call.elements;
    const k = listKInAir(fitting, duct, reynoldsNumber(airflow, diameter, density), call);
    return `${count}*${k}*${velocityPressure(airflow, diameter, density)}`;
  }),
  JUNCTIONLOSS: scalar(junctionLoss, junctionLossOf),
  EQUIVLENGTH: scalar(equivalentLength, ({ airflow, diameter, material, density }, call) => {
    const reynoldsOfAir = reynoldsNumber(airflow, diameter, density);
    const k = listKInAir(call.elements.fitting, call.elements.diameter, reynoldsOfAir, call);
    const factor = frictionFactor(reynoldsOfAir, `${material}/${diameter}`);
    return { value: `${k}*${diameter}/${factor}`, checks: smoothEnough(material, diameter) };
  }),
  DEVICELOSS: scalar(
    deviceLoss,
    ({ airflow, ratedloss, ratedairflow, exponent }) => `${ratedloss}*${power(`${airflow}/${ratedairflow}`, exponent)}`,
  ),
};
