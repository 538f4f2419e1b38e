import { takes as hoodAirflow } from "../../../functions/hoods/hoodairflow";
import { takes as hoodSuction } from "../../../functions/hoods/hoodsuction";
import { scalar } from "../arrayRule";
import { roundArea, velocityPressure } from "../expressions/flow";
import type { Translator } from "../translation";

export const hoods: Readonly<Record<string, Translator>> = {
  HOODSUCTION: scalar(
    hoodSuction,
    ({ airflow, diameter, entry, density }) => `(1+${entry})*${velocityPressure(airflow, diameter, density)}`,
  ),
  HOODAIRFLOW: scalar(
    hoodAirflow,
    ({ suction, diameter, entry, density }) => `${roundArea(diameter)}*SQRT(2*${suction}/${density}/(1+${entry}))`,
  ),
};
