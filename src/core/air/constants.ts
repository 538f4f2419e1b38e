// Adopted constants of the model.

/** Standard air, 0.075 lb/ft3 in [kg/m3]. Source: ASHRAE, AMCA 210. */
export const STANDARD_DENSITY = (0.075 * 0.45359237) / 0.3048 ** 3;

/**
 * Viscosity of air at 70 °F [Pa s]. Source: ASHRAE. A constant: from -10 to 50 °C its change moves friction by less than 2 %.
 */
export const AIR_VISCOSITY = 1.819e-5;

/** Air denser or thinner than this is not workshop air. [kg/m3] */
export const DENSITY_LIMITS = { atLeast: 0.2, atMost: 5 };

/** Of the sea's level [Pa]: no fan draws more. */
export const ATMOSPHERE = 101_325;

/** 70 °F, the temperature of standard air [K]. */
export const USUAL_TEMPERATURE = ((70 + 459.67) * 5) / 9;

// Where the formulas of moist air hold.
export const TEMPERATURE_LIMITS = { atLeast: 223.15, atMost: 373.15 }; // K
export const ALTITUDE_LIMITS = { atLeast: -500, atMost: 11_000 }; // m
export const HUMIDITY_LIMITS = { atLeast: 0, atMost: 1 }; // relative
