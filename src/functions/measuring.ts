import { airflowError } from "../core/measuring/airflowError";
import { correctedReading } from "../core/measuring/correctedReading";
import { traversePoints } from "../core/measuring/traversePoints";
import { traverseVelocity } from "../core/measuring/traverseVelocity";
import { usualErrors } from "../reference/meterErrors";
import { fromSI, unitOf } from "../reference/quantities";
import type { TraverseRule } from "../reference/traverseFractions";
import { answer } from "./answer";
import { needed, optional, readChoice, readDensity, readNumber, readWithin, singleCell } from "./arguments";
import { inHost } from "./inHost";
import { readReadings } from "./measuringTable/readReadings";

const RULES: readonly TraverseRule[] = ["log-linear", "log-Tchebycheff"];
const KINDS = ["velocity", "velocity pressure", "pressure"] as const;

/**
 * Points of a duct traverse: a column of depths from the wall at which to hold the probe, in inches (SI: mm).
 * @customfunction TRAVERSEPOINTS
 * @param diameter Inside diameter, or the side that the line follows, in (SI: mm), above 0; one cell
 * @param [points] How many: 4, 6, 8 or 10 (rectangle: 5, 6 or 7); by the duct's size when left out
 * @param [rule] "log-linear" (default, round duct) or "log-Tchebycheff" (along a side of a rectangular duct)
 * @param [units] "IP" (default) or "SI"
 * @returns column of depths
 */
export function traversepoints(diameter: any[][], points?: any[][], rule?: any[][], units?: any[][]): any[][] {
  return inHost(units, (system) => {
    const limits = { above: 0, atMost: 20 };
    const width = readWithin("diameter", singleCell("diameter", diameter), "diameter", limits, system);
    const count = singleCell("points", points);
    const number = count === null || count === 0 ? null : readNumber("points", count, "ratio", system);
    const depths = traversePoints(width, number, readChoice("rule", singleCell("rule", rule), RULES));
    return depths.map((depth) => [fromSI(depth, unitOf("diameter", system))]);
  });
}

/**
 * Mean velocity of a duct traverse, in fpm (SI: m/s). Velocity pressures are averaged as roots. Blanks and zeros are left out.
 * @customfunction TRAVERSE
 * @param readings Readings in any shape: fpm (SI: m/s) or in.w.g. (SI: Pa); blank cells and 0 count as not read
 * @param [kind] What was read: "velocity" (default) or "velocity pressure"
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out; for velocity pressures only
 * @param [units] "IP" (default) or "SI"
 * @returns velocity
 */
export function traverse(readings: any[][], kind?: any[][], density?: any[][], units?: any[][]): any[][] {
  return inHost(units, (system) => {
    const read = readChoice("kind", singleCell("kind", kind), KINDS) === "velocity" ? "velocity" : "velocity pressure";
    const air = readDensity(density, system);
    const mean = traverseVelocity(readReadings(readings, read, air, system), read, air);
    return [[fromSI(mean, unitOf("velocity", system))]];
  });
}

/**
 * Plus or minus of an airflow from a velocity reading, in cfm (SI: m³/h): root sum of squares of its three errors.
 * @customfunction AIRFLOWERROR
 * @param velocity Velocity as read, fpm (SI: m/s), 0 to 11811 fpm
 * @param diameter Inside diameter as measured, in (SI: mm), above 0
 * @param [percent] Meter's ± percent of its reading, 3 for 3 %; 3 when left out (vane, from memory), 0 for none
 * @param [floor] Meter's ± whatever it reads, fpm (SI: m/s); 0.2 m/s when left out (vane, from memory), 0 for none
 * @param [diametererror] ± of the diameter, in (SI: mm); 1 mm when left out (tape, common practice), 0 for none
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function airflowerror(
  velocity: any[][],
  diameter: any[][],
  percent?: any[][],
  floor?: any[][],
  diametererror?: any[][],
  units?: any[][],
): any[][] {
  return answer(
    units,
    "airflow",
    [
      needed("velocity", velocity, "velocity"),
      needed("diameter", diameter, "diameter"),
      optional("percent", percent, "ratio", 100 * usualErrors.percent, "is 0"),
      optional("floor", floor, "velocity", usualErrors.floor, "is 0"),
      optional("diametererror", diametererror, "diameter", usualErrors.diameter, "is 0"),
    ],
    airflowError,
  );
}

/**
 * What a meter should have shown, had the right area been entered, in the reading's own unit (cfm or m³/h).
 * @customfunction CORRECTEDREADING
 * @param reading Airflow as the meter showed it, any unit, at least 0
 * @param areaentered Area that was entered in the meter, any unit, above 0
 * @param areatrue Area where the probe stood, in the same unit, above 0 (a vane over a slot: its own face)
 * @returns airflow
 */
export function correctedreading(reading: any[][], areaentered: any[][], areatrue: any[][]): any[][] {
  return answer(
    null,
    "ratio",
    [
      needed("reading", reading, "ratio"),
      needed("areaentered", areaentered, "ratio"),
      needed("areatrue", areatrue, "ratio"),
    ],
    correctedReading,
  );
}
