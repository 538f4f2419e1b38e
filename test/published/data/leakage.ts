import { velocitypressure } from "../../../src/functions/losses/velocitypressure";
import { velocity } from "../../../src/functions/duct/velocity";
import { leakat } from "../../../src/functions/leaks/leakat";
import { seamleak } from "../../../src/functions/leaks/seamleak";
import { convertunit } from "../../../src/functions/duct/convertunit";
import { cell } from "../cell";
import { EXACTLY, HALF_LAST_DIGIT, type PublishedGroup, type PublishedRow } from "../row";
import { titles } from "./titles";

const smacna1985 = "SMACNA HVAC Air Duct Leakage Test Manual, 1st ed. 1985, Table 4-1 (second-hand)";
const smacna2012 = "SMACNA HVAC Air Duct Leakage Test Manual, 2nd ed. 2012 (second-hand)";
const en16798 = "EN 16798-3 limits, quoted on a flange maker's test page (second-hand)";

/** A class is the leak of 100 ft2 at 1 in.w.g., in cfm. */
const classes: readonly PublishedRow[] = (
  [
    ["L01", "rectangular seal class c 1985", "24", smacna1985],
    ["L02", "rectangular seal class b 1985", "12", smacna1985],
    ["L03", "rectangular seal class a 1985", "6", smacna1985],
    ["L04", "round seal class c 1985", "12", smacna1985],
    ["L05", "round seal class b 1985", "6", smacna1985],
    ["L06", "round seal class a 1985", "3", smacna1985],
    ["L07", "rectangular unsealed 1985", "48", smacna1985],
    ["L08", "fibrous glass 1985", "6", smacna1985],
    ["L09", "flexible unsealed 1985", "30", smacna1985],
    ["L10", "flexible sealed 1985", "12", smacna1985],
    ["L12 A", "rectangular seal class a 2012", "4", smacna2012],
    ["L12 B", "rectangular seal class b 2012", "8", smacna2012],
    ["L12 C", "rectangular seal class c 2012", "16", smacna2012],
    ["L13 A", "round seal class a 2012", "2", smacna2012],
    ["L13 B", "round seal class b 2012", "4", smacna2012],
    ["L13 C", "round seal class c 2012", "8", smacna2012],
    ["GL33 C", "rectangular seal class c 1985", "24", titles.playbook],
    ["GL33 B", "rectangular seal class b 1985", "12", titles.playbook],
    ["GL33 A", "rectangular seal class a 1985", "6", titles.playbook],
  ] as const
).map(([id, name, printed, source]) => ({
  id,
  what: `leak of 100 ft² at 1 in.w.g., class "${name}"`,
  source,
  printed,
  unit: "cfm",
  tolerance: EXACTLY,
  compute: () => cell(seamleak, name, 100, 1),
}));

const equation: readonly PublishedRow[] = [
  {
    id: "L11",
    what: "leakage class back from the leak of 100 ft² of class 6 at 3 in.w.g., by F / P^0.65",
    source: `${smacna1985}, equation 4-5`,
    printed: "6",
    unit: "",
    tolerance: EXACTLY,
    compute: () => cell(seamleak, 6, 100, 3) / 3 ** 0.65,
  },
  {
    id: "GL32",
    what: "leak of 100 ft² of class 6 at 2 in.w.g.",
    source: titles.playbook,
    printed: "9.4",
    unit: "cfm",
    tolerance: HALF_LAST_DIGIT,
    compute: () => cell(seamleak, 6, 100, 2),
  },
  {
    id: "GL32 400",
    what: "leak of 400 ft² of class 6 at 2 in.w.g.",
    source: titles.playbook,
    printed: "37.6",
    unit: "cfm",
    tolerance: { relative: 0.0015, why: "The source multiplies the rounded 9.4 by four." },
    compute: () => cell(seamleak, 6, 400, 2),
  },
];

/** Printed in 10^-3 m3/(s m2), which is L/(s m2), at 1 Pa. */
const european: readonly PublishedRow[] = (
  [
    ["GL01", "ATC 6", "0.0675"],
    ["GL02", "A", "0.0270"],
    ["GL03", "B", "0.0090"],
    ["GL04", "C", "0.0030"],
    ["GL05", "D", "0.0010"],
    ["GL06", "ATC 1", "0.00033"],
  ] as const
).map(([id, name, printed]) => ({
  id,
  what: `leak of 1 m² at 1 Pa, EN class ${name}`,
  source: en16798,
  printed,
  unit: "L/s",
  tolerance: EXACTLY,
  compute: () => cell(convertunit, cell(seamleak, name, 1, 1, "SI"), "m³/h", "L/s"),
}));

const derivedClasses: readonly PublishedRow[] = (
  [
    ["A", "19"],
    ["B", "6.4"],
    ["C", "2.1"],
    ["D", "0.71"],
  ] as const
).map(([letter, printed]) => ({
  id: `L22 ${letter}`,
  what: `US leakage class of EN class ${letter}: its leak of 100 ft² at 1 in.w.g.`,
  source: "Derived from the two definitions, k 249.089^0.65 / 0.0508",
  printed,
  unit: "cfm",
  tolerance: HALF_LAST_DIGIT,
  compute: () => cell(seamleak, letter, 100, 1),
}));

/** Each class rises about with the square root of the pressure: from its limit at 4 in.w.g. to the others. */
const smokeDampers: readonly PublishedRow[] = (
  [
    ["GL12", 8, 4, 6, "9.5"],
    ["GL13", 8, 4, 8, "11"],
    ["GL14", 8, 4, 10, "12.5"],
    ["GL15", 8, 4, 12, "14"],
    ["GL17", 20, 4, 6, "24"],
    ["GL18", 20, 4, 8, "28"],
    ["GL19", 20, 4, 10, "31.5"],
    ["GL20", 20, 4, 12, "35"],
    ["GL22", 80, 4, 6, "96"],
    ["GL23", 80, 4, 8, "112"],
    ["GL24", 80, 4, 10, "125"],
    ["GL25", 80, 4, 12, "140"],
    ["GL26", 8, 4.5, 8.5, "11"],
  ] as const
).map(([id, leak, from, to, printed]) => ({
  id,
  what: `leak of a shut damper at ${to} in.w.g., from ${leak} cfm/ft² at ${from} in.w.g. as an opening`,
  source: titles.ul555s,
  printed,
  unit: "cfm/ft²",
  tolerance: { relative: 0.03, why: "The standard's steps are rounded figures near the square root." },
  compute: () => cell(leakat, leak, from, to),
}));

const orifice: PublishedRow = {
  id: "L25",
  what: "difference of velocity pressures between a 0.19 m orifice and its 0.25 m duct, 1 m³/s of 1.23 kg/m³",
  source: `${titles.abulencia}, Ex 19.7`,
  printed: "509.8",
  unit: "Pa",
  tolerance: HALF_LAST_DIGIT,
  compute: () => {
    const pressure = (diameter: number): number =>
      cell(velocitypressure, cell(velocity, 3600, diameter, null, "SI"), 1.23, "SI");
    return pressure(190) - pressure(250);
  },
};

export const leakageRows: PublishedGroup = {
  title: "leaks",
  rows: [...classes, ...equation, ...european, ...derivedClasses, ...smokeDampers, orifice],
};
