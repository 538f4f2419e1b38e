/** What the letters of several formulas stand for. Inside, all is SI. */
export const FLOW = "airflow [m³/s]";
export const WIDTH = "inside diameter [m]";
export const SPEED = "mean velocity [m/s]";
export const AIR = "density of the air [kg/m³]";
export const VELOCITY_PRESSURE = "velocity pressure [Pa]";
export const LOSS_COEFFICIENT = "loss coefficient [-]";
export const JUNCTION_LOSS =
  "loss where a branch or the run straight on meets others, as JUNCTIONLOSS has it [Pa]; 0 elsewhere";
export const ENTRY_COEFFICIENT = "entry loss coefficient [-]";
export const SUCTION = "static suction [Pa]";
export const OPENING = "open area [m²]";
export const DISCHARGE = "discharge coefficient [-]";
export const SECTION = "cross-section [m²]";
export const FRICTION_FACTOR = "Darcy friction factor [-]";
export const FAN_CURVE = "the fan's curve: fan static pressure [Pa] at an airflow";

/** Of a straight duct's friction. */
export const FRICTION_LETTERS = {
  f: "Darcy friction factor [-]; between Re 2000 and 4000 it goes linearly from one value to the other",
  D: WIDTH,
  V: SPEED,
  "\\rho": AIR,
  "\\mu": "viscosity of air, 1.819e-5 Pa s",
  e: "roughness of the wall [m]",
  L: "length [m]",
};

/** Of a whole system. */
export const NETWORK_LETTERS = {
  P: "total pressure below the room's [Pa], at the run's upstream and downstream end",
  Q: FLOW,
  p_v: VELOCITY_PRESSURE,
  K: LOSS_COEFFICIENT,
  "\\Delta p_\\text{junction}": JUNCTION_LOSS,
  K_h: "entry loss coefficient of the hood [-]",
  A: OPENING,
  C_d: DISCHARGE,
  "\\rho": AIR,
};
