/** Printed figures into SI, so that a row can be held against its page digit by digit. */
import { quantities, toSI } from "./quantities";

export const feet = (value: number): number => toSI(value, quantities.length.IP); // [m]
export const inches = (value: number): number => toSI(value, quantities.diameter.IP); // [m]
export const millimetres = (value: number): number => toSI(value, quantities.diameter.SI); // [m]
export const fpm = (value: number): number => toSI(value, quantities.velocity.IP); // [m/s]
export const cfm = (value: number): number => toSI(value, quantities.airflow.IP); // [m3/s]
export const cubicMetresPerHour = (value: number): number => toSI(value, quantities.airflow.SI); // [m3/s]
export const inchesOfWater = (value: number): number => toSI(value, quantities.pressure.IP); // [Pa]
export const milligramsPerCubicMetre = (value: number): number => value * 1e-6; // [kg/m3]
