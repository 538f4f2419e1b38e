/**
 * What no run of a workshop has: more duct or hose [m], a larger coefficient. House judgement, some thirty times what is found. A
 * spreadsheet that took 1/2 or 1.5 for a day as it was typed hands over 46,000, which would count as feet without a word.
 */
export const LONGEST_RUN = 3048; // 10,000 ft
export const LARGEST_COEFFICIENT = 10_000;
