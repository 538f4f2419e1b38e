import { takes as airflow } from "../../../functions/duct/airflow";
import { takes as area } from "../../../functions/duct/area";
import { takes as convertUnit } from "../../../functions/duct/convertunit";
import { takes as density } from "../../../functions/duct/density";
import { takes as diameter } from "../../../functions/duct/diameter";
import { takes as equivalentDiameter } from "../../../functions/duct/equivdiameter";
import { takes as velocity } from "../../../functions/duct/velocity";
import { scalar } from "../arrayRule";
import { sectionArea } from "../expressions/flow";
import { moistAirDensity } from "../expressions/moistAir";
import type { Translator } from "../translation";
import { tradeSize } from "./tradeSize";

export const duct: Readonly<Record<string, Translator>> = {
  AREA: scalar(area, ({ diameter, height }, { system }) => sectionArea(diameter, height, system)),
  VELOCITY: scalar(
    velocity,
    ({ airflow, diameter, height }, { system }) => `${airflow}/${sectionArea(diameter, height, system)}`,
  ),
  AIRFLOW: scalar(
    airflow,
    ({ velocity, diameter, height }, { system }) => `${velocity}*${sectionArea(diameter, height, system)}`,
  ),
  DIAMETER: scalar(diameter, ({ airflow, velocity }) => `SQRT(4*${airflow}/(PI()*${velocity}))`),
  EQUIVDIAMETER: scalar(
    equivalentDiameter,
    ({ width, height }) => `1.3*(${width}*${height})^0.625/(${width}+${height})^0.25`,
  ),
  TRADESIZE: tradeSize,
  DENSITY: scalar(density, ({ temperature, altitude, humidity }) => moistAirDensity(temperature, altitude, humidity)),
  CONVERTUNIT: scalar(convertUnit, ({ value, from, to }, { context }) => {
    const block = context.tables.block("units");
    const of = (column: string, row: string): string => `INDEX(${block.range(column)},${row})`;
    return {
      value: `${value}*${of("factor", from)}/${of("factor", to)}`,
      checks: [`${of("quantity", from)}=${of("quantity", to)}`],
    };
  }),
};
