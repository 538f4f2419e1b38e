/**
 * Units, as data: what each quantity is called and measured in, in both systems, and the exact definitions behind them.
 * Inside the program everything is SI; conversion happens once, at the edge, with these factors.
 * Source: NIST SP 811 (exact: ft, in, lb; in.w.g. is the inch of water at 60 °F; hp is the mechanical horsepower).
 */
export type UnitSystem = "IP" | "SI";

export interface Unit {
  readonly label: string; // as printed behind a number
  readonly factor: number; // SI units in one of this unit
  readonly offset?: number; // SI value at 0 of this unit (temperature only)
}

const FOOT = 0.3048; // m, exact
const INCH = 0.0254; // m, exact
const POUND = 0.45359237; // kg, exact
const MINUTE = 60; // s
const HOUR = 3600; // s
export const INCH_OF_WATER = 248.84; // Pa, inch of water at 60 °F
const INCH_OF_WATER_4C = 249.08891; // Pa, conventional inch of water (4 °C)
const INCH_OF_WATER_68F = 248.64; // Pa, inch of water at 68 °F
const HORSEPOWER = 745.699872; // W, mechanical
const POUND_FORCE = POUND * 9.80665; // N

const unit = (label: string, factor: number): Unit => ({ label, factor });

const inch = unit("in", INCH);
const millimetre = unit("mm", 1e-3);
const one = unit("", 1);

/** Quantity by quantity: the unit a cell shows in each system. The names are the arguments' kinds. */
export const quantities = {
  diameter: { IP: inch, SI: millimetre },
  length: { IP: unit("ft", FOOT), SI: unit("m", 1) },
  area: { IP: unit("ft²", FOOT ** 2), SI: unit("m²", 1) },
  openArea: { IP: unit("in²", INCH ** 2), SI: unit("mm²", 1e-6) },
  airflow: { IP: unit("cfm", FOOT ** 3 / MINUTE), SI: unit("m³/h", 1 / HOUR) },
  velocity: { IP: unit("fpm", FOOT / MINUTE), SI: unit("m/s", 1) },
  pressure: { IP: unit("in.w.g.", INCH_OF_WATER), SI: unit("Pa", 1) },
  lossPerLength: { IP: unit("in.w.g. per 100 ft", INCH_OF_WATER / (100 * FOOT)), SI: unit("Pa per m", 1) },
  density: { IP: unit("lb/ft³", POUND / FOOT ** 3), SI: unit("kg/m³", 1) },
  temperature: {
    IP: { label: "°F", factor: 5 / 9, offset: 459.67 * (5 / 9) },
    SI: { label: "°C", factor: 1, offset: 273.15 },
  },
  power: { IP: unit("hp", HORSEPOWER), SI: unit("kW", 1000) },
  ratio: { IP: one, SI: one },
  angle: { IP: unit("degrees", 1), SI: unit("degrees", 1) },
} as const satisfies Record<string, Record<UnitSystem, Unit>>;

export type Quantity = keyof typeof quantities;

export const unitOf = (quantity: Quantity, system: UnitSystem): Unit => quantities[quantity][system];

/** From a unit into SI. */
export const toSI = (value: number, { factor, offset }: Unit): number => value * factor + (offset ?? 0);

/** From SI into a unit. */
export const fromSI = (value: number, { factor, offset }: Unit): number => (value - (offset ?? 0)) / factor;

/** Every unit that CONVERTUNIT knows, by kind of quantity; the first spelling is the one we print. */
export const convertibleUnits: Readonly<Record<string, readonly { names: readonly string[]; factor: number }[]>> = {
  airflow: [
    { names: ["cfm", "ft³/min", "ft3/min"], factor: FOOT ** 3 / MINUTE },
    { names: ["m³/h", "m3/h", "cmh"], factor: 1 / HOUR },
    { names: ["m³/s", "m3/s"], factor: 1 },
    { names: ["m³/min", "m3/min"], factor: 1 / MINUTE },
    { names: ["L/s"], factor: 1e-3 },
    { names: ["L/min"], factor: 1e-3 / MINUTE },
  ],
  velocity: [
    { names: ["fpm", "ft/min"], factor: FOOT / MINUTE },
    { names: ["m/s"], factor: 1 },
    { names: ["ft/s", "fps"], factor: FOOT },
    { names: ["km/h"], factor: 1000 / HOUR },
    { names: ["mph"], factor: (5280 * FOOT) / HOUR },
  ],
  pressure: [
    { names: ["in.w.g.", "in.w.g", "inwg", "in wg", "in.w.c.", "inwc", "in h2o", "inh2o"], factor: INCH_OF_WATER },
    { names: ["in.w.g. 4 °C", "in.w.g. 4C", "inwg 4C"], factor: INCH_OF_WATER_4C },
    { names: ["in.w.g. 68 °F", "in.w.g. 68F", "inwg 68F"], factor: INCH_OF_WATER_68F },
    { names: ["Pa"], factor: 1 },
    { names: ["hPa", "mbar"], factor: 100 },
    { names: ["kPa"], factor: 1000 },
    { names: ["bar"], factor: 1e5 },
    { names: ["mm w.g.", "mmwg", "mm wg", "mm h2o", "mmh2o"], factor: 9.80665 },
    { names: ["psi", "lbf/in²", "lbf/in2"], factor: POUND_FORCE / INCH ** 2 },
    { names: ["lbf/ft²", "lbf/ft2", "psf"], factor: POUND_FORCE / FOOT ** 2 },
    { names: ["atm"], factor: 101_325 },
  ],
  length: [
    { names: ["in"], factor: INCH },
    { names: ["ft"], factor: FOOT },
    { names: ["yd"], factor: 3 * FOOT },
    { names: ["mm"], factor: 1e-3 },
    { names: ["cm"], factor: 1e-2 },
    { names: ["m"], factor: 1 },
  ],
  area: [
    { names: ["in²", "in2", "sq in"], factor: INCH ** 2 },
    { names: ["ft²", "ft2", "sq ft"], factor: FOOT ** 2 },
    { names: ["mm²", "mm2"], factor: 1e-6 },
    { names: ["cm²", "cm2"], factor: 1e-4 },
    { names: ["m²", "m2"], factor: 1 },
  ],
  density: [
    { names: ["lb/ft³", "lb/ft3"], factor: POUND / FOOT ** 3 },
    { names: ["kg/m³", "kg/m3"], factor: 1 },
    { names: ["g/L"], factor: 1 },
  ],
  power: [
    { names: ["hp"], factor: HORSEPOWER },
    { names: ["kW"], factor: 1000 },
    { names: ["W"], factor: 1 },
    { names: ["hp metric", "PS"], factor: 75 * 9.80665 },
  ],
};
