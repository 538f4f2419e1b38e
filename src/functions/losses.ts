import { velocityPressure } from "../core/air/velocityPressure";
import { deviceLoss, SEPARATOR_EXPONENT } from "../core/devices/deviceLoss";
import { requireWithin } from "../core/errors";
import { listCoefficient } from "../core/fittings/fittingList";
import { singleCoefficient } from "../core/fittings/singleCoefficient";
import { equivalentLength, frictionPerLength } from "../core/friction/frictionLoss";
import { hoodAirflow, hoodSuction } from "../core/hoods/hood";
import { meanVelocity, sectionArea } from "../core/section/section";
import { answer } from "./answer";
import {
  density as densityArgument,
  fittings,
  material as materialArgument,
  needed,
  optional,
  readUnits,
} from "./arguments";

/**
 * Friction of a straight round duct, in in.w.g. per 100 ft (SI: Pa per m), by Colebrook-White.
 * @customfunction FRICTION
 * @param airflow Airflow, cfm (SI: m³/h), at least 0
 * @param diameter Inside diameter, in (SI: mm), above 0
 * @param [material] Name from the table "materials", or roughness in (SI: mm); galvanised steel when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns loss per length
 */
export function friction(
  airflow: any[][],
  diameter: any[][],
  material?: any[][],
  density?: any[][],
  units?: any[][],
): any[][] {
  return answer(
    units,
    "lossPerLength",
    [
      needed("airflow", airflow, "airflow"),
      needed("diameter", diameter, "diameter"),
      materialArgument(material),
      densityArgument(density),
    ],
    frictionPerLength,
  );
}

/**
 * Friction of a straight run of round duct, in in.w.g. (SI: Pa).
 * @customfunction RUNLOSS
 * @param airflow Airflow, cfm (SI: m³/h), at least 0
 * @param diameter Inside diameter, in (SI: mm), above 0
 * @param length Length, ft (SI: m), at least 0
 * @param [material] Name from the table "materials", or roughness in (SI: mm); galvanised steel when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns pressure
 */
export function runloss(
  airflow: any[][],
  diameter: any[][],
  length: any[][],
  material?: any[][],
  density?: any[][],
  units?: any[][],
): any[][] {
  return answer(
    units,
    "pressure",
    [
      needed("airflow", airflow, "airflow"),
      needed("diameter", diameter, "diameter"),
      needed("length", length, "length"),
      materialArgument(material),
      densityArgument(density),
    ],
    (flow, width, run, roughness, air) => {
      requireWithin("length", run, { atLeast: 0 }, "m");
      return run * frictionPerLength(flow, width, roughness, air);
    },
  );
}

/**
 * Loss coefficient K of a fitting or hood entry, a pure number (no unit): loss = K x velocity pressure.
 * @customfunction LOSSCOEFFICIENT
 * @param fitting Name from the tables "fittings" or "hoods", or a list such as "elbow 1.5 x2; branch 30"
 * @param [shape] r/D, diameter (in; SI: mm) or area ratio, as the table says; the usual one when left out
 * @param [angle] Angle in degrees; the usual one when left out
 * @param [units] "IP" (default) or "SI": the unit of a shape that is a diameter
 * @returns coefficient
 */
export function losscoefficient(fitting: any[][], shape?: any[][], angle?: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "ratio",
    [
      fittings("fitting", fitting, "any"),
      optional("shape", shape, "ratio", null),
      optional("angle", angle, "angle", null),
    ],
    (items, form, turn) => singleCoefficient(items, form, turn, readUnits(units) === "SI" ? 0.001 : 0.0254),
  );
}

/**
 * Loss of fittings in a round duct, in in.w.g. (SI: Pa).
 * @customfunction FITTINGLOSS
 * @param airflow Airflow, cfm (SI: m³/h), at least 0
 * @param diameter Inside diameter of the fitting's own duct, in (SI: mm), above 0
 * @param fitting A name, a K, or a list such as "elbow 1.5 x2; branch 30"
 * @param [count] How many of them, at least 0; 1 when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns pressure
 */
export function fittingloss(
  airflow: any[][],
  diameter: any[][],
  fitting: any[][],
  count?: any[][],
  density?: any[][],
  units?: any[][],
): any[][] {
  return answer(
    units,
    "pressure",
    [
      needed("airflow", airflow, "airflow"),
      needed("diameter", diameter, "diameter"),
      fittings("fitting", fitting, "any"),
      optional("count", count, "ratio", 1),
      densityArgument(density),
    ],
    (flow, width, items, times, air) => {
      requireWithin("count", times, { atLeast: 0 }, "");
      const pressure = velocityPressure(meanVelocity(flow, sectionArea(width, null)), air);
      return times * listCoefficient(items, width) * pressure;
    },
  );
}

/**
 * Length of straight duct with the same loss as a fitting, in ft (SI: m).
 * @customfunction EQUIVLENGTH
 * @param fitting A name, a K, or a list such as "elbow 1.5 x2; branch 30"
 * @param airflow Airflow, cfm (SI: m³/h), above 0
 * @param diameter Inside diameter, in (SI: mm), above 0
 * @param [material] Name from the table "materials", or roughness in (SI: mm); galvanised steel when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns length
 */
export function equivlength(
  fitting: any[][],
  airflow: any[][],
  diameter: any[][],
  material?: any[][],
  density?: any[][],
  units?: any[][],
): any[][] {
  return answer(
    units,
    "length",
    [
      fittings("fitting", fitting, "any"),
      needed("airflow", airflow, "airflow"),
      needed("diameter", diameter, "diameter"),
      materialArgument(material),
      densityArgument(density),
    ],
    (items, flow, width, roughness, air) =>
      equivalentLength(listCoefficient(items, width), flow, width, roughness, air),
  );
}

/**
 * Static suction in the duct behind a hood or an open end, in in.w.g. (SI: Pa).
 * @customfunction HOODSUCTION
 * @param airflow Airflow into the hood, cfm (SI: m³/h), at least 0
 * @param diameter Inside diameter of the duct behind it, in (SI: mm), above 0
 * @param entry Hood entry: a name from the table "hoods", or its K
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns pressure
 */
export function hoodsuction(
  airflow: any[][],
  diameter: any[][],
  entry: any[][],
  density?: any[][],
  units?: any[][],
): any[][] {
  return answer(
    units,
    "pressure",
    [
      needed("airflow", airflow, "airflow"),
      needed("diameter", diameter, "diameter"),
      fittings("entry", entry, "hood"),
      densityArgument(density),
    ],
    (flow, width, items, air) => hoodSuction(flow, width, listCoefficient(items, width), air),
  );
}

/**
 * Airflow into a hood from the static suction measured behind it, in cfm (SI: m³/h).
 * @customfunction HOODAIRFLOW
 * @param suction Static suction about three diameters behind the hood, in.w.g. (SI: Pa), at least 0
 * @param diameter Inside diameter of the duct there, in (SI: mm), above 0
 * @param entry Hood entry: a name from the table "hoods", or its K
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function hoodairflow(
  suction: any[][],
  diameter: any[][],
  entry: any[][],
  density?: any[][],
  units?: any[][],
): any[][] {
  return answer(
    units,
    "airflow",
    [
      needed("suction", suction, "pressure"),
      needed("diameter", diameter, "diameter"),
      fittings("entry", entry, "hood"),
      densityArgument(density),
    ],
    (draught, width, items, air) => hoodAirflow(draught, width, listCoefficient(items, width), air),
  );
}

/**
 * Loss of a separator or filter at another airflow than rated, in the rated loss's unit (in.w.g. or Pa).
 * @customfunction DEVICELOSS
 * @param airflow Airflow, any unit, at least 0
 * @param ratedloss Its loss at the rated airflow, in.w.g. or Pa, at least 0
 * @param ratedairflow The rated airflow, in the airflow's unit, above 0
 * @param [exponent] 2 for a separator (default), 1 for a filter medium; 0.5 to 2.5
 * @returns loss
 */
export function deviceloss(airflow: any[][], ratedloss: any[][], ratedairflow: any[][], exponent?: any[][]): any[][] {
  return answer(
    null,
    "ratio",
    [
      needed("airflow", airflow, "ratio"),
      needed("ratedloss", ratedloss, "ratio"),
      needed("ratedairflow", ratedairflow, "ratio"),
      optional("exponent", exponent, "ratio", SEPARATOR_EXPONENT),
    ],
    deviceLoss,
  );
}
