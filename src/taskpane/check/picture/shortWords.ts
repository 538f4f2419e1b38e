import { type UnitSystem, unitOf } from "../../../reference/quantities";

/** Numbers as somebody says them who stands at the machine, with their units. */

/** [the budget's unit] "1,344 cfm" */
export const wholeAir = (airflow: number, system: UnitSystem): string =>
  `${grouped(airflow)} ${unitOf("airflow", system).label}`;

/** [the budget's unit] "4,031 fpm", "20.5 m/s" */
export const roundedVelocity = (velocity: number, system: UnitSystem): string =>
  `${shortVelocity(velocity, system)} ${unitOf("velocity", system).label}`;

/** The same without the unit, for a column. */
export const shortVelocity = (velocity: number, system: UnitSystem): string =>
  system === "IP" ? grouped(velocity) : (Math.round(velocity * 10) / 10).toFixed(1);

/** [the budget's unit] "1,585 Pa", "12.3 in.w.g." */
export const roundedPressure = (pressure: number, system: UnitSystem): string =>
  `${system === "SI" ? grouped(pressure) : pressure.toFixed(1)} ${unitOf("pressure", system).label}`;

export const grouped = (number: number): string => Math.round(number).toLocaleString("en-GB");
