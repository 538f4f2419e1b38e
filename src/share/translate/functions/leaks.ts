import { DISCHARGE_COEFFICIENT } from "../../../core/leaks/openingLeak";
import { takes as gateLeak } from "../../../functions/leaks/gateleak";
import { takes as leak } from "../../../functions/leaks/leak";
import { takes as leakArea } from "../../../functions/leaks/leakarea";
import { takes as leakAt } from "../../../functions/leaks/leakat";
import { takes as seamLeak } from "../../../functions/leaks/seamleak";
import { LEAKAGE_EXPONENT } from "../../../reference/leakageClasses";
import { scalar } from "../arrayRule";
import { power } from "../expressions/text";
import type { Translator } from "../translation";

export const leaks: Readonly<Record<string, Translator>> = {
  LEAK: scalar(
    leak,
    ({ area, suction, coefficient, density }) => `${coefficient}*${area}*SQRT(2*${suction}/${density})`,
  ),
  LEAKAREA: scalar(
    leakArea,
    ({ airflow, suction, coefficient, density }) => `${airflow}/(${coefficient}*SQRT(2*${suction}/${density}))`,
  ),
  LEAKAT: scalar(
    leakAt,
    ({ airflow, suction, newsuction, exponent }) => `${airflow}*${power(`${newsuction}/${suction}`, exponent)}`,
  ),
  GATELEAK: scalar(
    gateLeak,
    ({ condition, diameter, suction, density }) =>
      `${DISCHARGE_COEFFICIENT}*${condition}*${diameter}*SQRT(2*${suction}/${density})`,
  ),
  SEAMLEAK: scalar(
    seamLeak,
    ({ class: constant, surface, pressure }) =>
      `${constant}*${surface}*IF(${pressure}=0,0,${pressure}^${LEAKAGE_EXPONENT})`,
  ),
};
