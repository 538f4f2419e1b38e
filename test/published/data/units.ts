import { convertunit } from "../../../src/functions/duct/convertunit";
import { cell } from "../cell";
import { EXACTLY, HALF_LAST_DIGIT, type PublishedGroup, type PublishedRow, type Tolerance } from "../row";
import { titles } from "./titles";

const row = (
  id: string,
  value: number,
  from: string,
  printed: string,
  to: string,
  source: string,
  tolerance: Tolerance,
): PublishedRow => ({
  id,
  what: `${value} ${from} in ${to}`,
  source,
  printed,
  unit: to,
  tolerance,
  compute: () => cell(convertunit, value, from, to),
});

export const unitRows: PublishedGroup = {
  title: "units",
  rows: [
    row("U01", 1, "in", "0.0254", "m", titles.fluids, EXACTLY),
    row("U02", 1, "ft", "0.3048", "m", titles.fluids, EXACTLY),
    row("U03", 1, "atm", "101325.0", "Pa", titles.fluids, EXACTLY),
    row("U05", 1, "hp", "745.6998716", "W", titles.fluids, {
      relative: 1e-9,
      why: "We take the horsepower as NIST SP 811 prints it, 745.699872 W.",
    }),
    row("U06", 1, "psi", "6894.757", "Pa", titles.fluids, HALF_LAST_DIGIT),
    row("U10", 2500, "fpm", "12.7", "m/s", `${titles.ufc}, 4-3.2.6`, EXACTLY),
    row("U11 at 0.02", 0.02, "in.w.g.", "5.0", "Pa", `${titles.ufc}, 4-3.5`, HALF_LAST_DIGIT),
    row("U11 at 0.06", 0.06, "in.w.g.", "14.9", "Pa", `${titles.ufc}, 4-3.5`, HALF_LAST_DIGIT),
  ],
};
