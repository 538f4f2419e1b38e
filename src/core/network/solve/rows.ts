/*
 * One run's numbers side by side in a row, so that a sweep goes through memory once. The rows of a network stand in the order of
 * the flow, each after all that join it, those after the fan behind them, and last one for the fan itself, of which only the suction at
 * its inlet counts. Everything is SI; a reversed flow is negative.
 */
export const VELOCITY = 0; // [Pa s2/m6] p_v = this Q^2
export const FIXED = 1; // [Pa s2/m6] fittings: loss = this Q^2
export const MITRES = 2; // [Pa s2/m6] of which mitres, whose loss grows in slow air
export const REYNOLDS = 3; // [s/m3]
export const DEVICE = 4; // [Pa (s/m3)^m]
export const EXPONENT = 5;
export const END = 6; // [Pa s2/m6] of an open end: P = this q^2; of a lone leak likewise
export const LEAK_SHARE = 7; // [-] g = C_d A_leak / A_duct; 0 = no leak

// Two straight lengths, each with its own five numbers from here on.
export const PIPE = 8;
export const HOSE = 13;
export const RESISTANCE = 0; // [Pa s2/m6] loss = this f Q^2
export const WALL = 1; // [-] (e/D)/3.7/2.51
export const ROOT = 2; // [-] 1/sqrt(f), carried
export const LOG_OF = 3; // [-] an (a + b x)/2.51 whose a + b x has a known logarithm, see addFriction; 0 until there is one
export const LOG = 4; // that logarithm

// The unknowns.
export const AIRFLOW = 18; // [m3/s] Q, its own leak included
export const ARRIVING = 19; // [m3/s] S, what comes in at its upstream end, the own leak not counted
export const LEAK = 20; // [m3/s] L
export const SUCTION = 21; // [Pa] P at its upstream end

// What a sweep leaves behind for the way back; a straight line is two numbers, value = offset + rate * suction.
export const LOSS = 22; // [Pa]
export const SLOPE = 23; // [Pa s/m3] d loss / dQ
export const DOWN_OFFSET = 24; // Q = a + b P_down
export const DOWN_RATE = 25; // [m3/(s Pa)]
export const ARRIVING_OFFSET = 26; // S = a + b P
export const ARRIVING_RATE = 27;
export const LEAK_OFFSET = 28; // L = a + b P
export const LEAK_RATE = 29;
export const MISSED = 30; // [Pa] by how much the state before the sweep missed the laws at the upstream end

/** Numbers in a row. */
export const WIDTH = 31;
