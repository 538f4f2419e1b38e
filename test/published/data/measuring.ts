import { pitotvelocity } from "../../../src/functions/measuring/pitotvelocity";
import { velocitypressure } from "../../../src/functions/losses/velocitypressure";
import { airflow } from "../../../src/functions/duct/airflow";
import { airflowerror } from "../../../src/functions/measuring/airflowerror";
import { traversepoints } from "../../../src/functions/measuring/traversepoints";
import { cell } from "../cell";
import { EXACTLY, HALF_LAST_DIGIT, type PublishedGroup, type PublishedRow, type Tolerance } from "../row";
import { titles } from "./titles";

type Rule = "log-linear" | "log-Tchebycheff";

const depths = (diameter: number, points: number | null, rule: Rule, units: "IP" | "SI"): number[] =>
  (traversepoints([[diameter]], [[points]], [[rule]], [[units]]) as number[][]).map(([depth]) => depth!);

const SLIP: Tolerance = {
  absolute: 0.0015,
  why: "A slip of the manual: a second manual prints 0.979 (GM04), and so has symmetry.",
};

/** A printed line of fractions: each is the depth in a duct of 1 m, in metres. */
const line = (id: string, rule: Rule, printed: string, slips: readonly string[] = []): PublishedRow[] => {
  const values = printed.split(" ");
  return values.map((value, index) => ({
    id: `${id} point ${index + 1}`,
    what: `point ${index + 1} of ${values.length} by ${rule}, as a fraction of the ${rule === "log-linear" ? "diameter" : "side"}`,
    source: titles.instrumentManuals,
    printed: value,
    unit: "",
    tolerance: slips.includes(value) ? SLIP : EXACTLY,
    compute: () => depths(1000, values.length, rule, "SI")[index]! / 1000,
  }));
};

const count = (id: string, rule: Rule, inches: number, printed: string): PublishedRow => ({
  id,
  what: `points by ${rule} for ${inches} in, where no number is asked for`,
  source: titles.instrumentManuals,
  printed,
  unit: "",
  tolerance: EXACTLY,
  compute: () => depths(inches, null, rule, "IP").length,
});

const SIX = "0.032 0.135 0.321 0.679 0.865 0.968";
const TEN = "0.019 0.077 0.153 0.217 0.361 0.639 0.783 0.847 0.923 0.981";
const SIDE_OF_5 = "0.074 0.288 0.500 0.712 0.926";
const SIDE_OF_6 = "0.061 0.235 0.437 0.563 0.765 0.939";
const SIDE_OF_7 = "0.053 0.203 0.366 0.500 0.634 0.797 0.947";

/** Air at 293 K and 0.1 MPa, by the gas law with 287.05 J/(kg K) [kg/m3]. */
const DENSITY = 1e5 / (287.05 * 293);

export const measuringRows: PublishedGroup = {
  title: "traverses and the error of a reading",
  rows: [
    ...line("M01", "log-linear", SIX),
    ...line("M02", "log-linear", "0.021 0.117 0.184 0.345 0.655 0.816 0.883 0.981", ["0.981"]),
    ...line("GM04", "log-linear", "0.021 0.117 0.184 0.345 0.655 0.816 0.883 0.979"),
    ...line("M03", "log-linear", TEN),
    ...line("GM05 of six,", "log-linear", SIX),
    ...line("GM05 of ten,", "log-linear", TEN),
    ...line("M05", "log-Tchebycheff", SIDE_OF_5),
    ...line("M06", "log-Tchebycheff", SIDE_OF_6),
    ...line("M07", "log-Tchebycheff", SIDE_OF_7),
    ...line("GM06 of five,", "log-Tchebycheff", SIDE_OF_5),
    ...line("GM06 of six,", "log-Tchebycheff", SIDE_OF_6),
    ...line("GM06 of seven,", "log-Tchebycheff", SIDE_OF_7),
    count("M04 at 10 in", "log-linear", 10, "6"),
    count("M04 above 10 in", "log-linear", 11, "8"),
    count("M05 size", "log-Tchebycheff", 29, "5"),
    count("M06 size at 30 in", "log-Tchebycheff", 30, "6"),
    count("M06 size at 36 in", "log-Tchebycheff", 36, "6"),
    count("M07 size", "log-Tchebycheff", 37, "7"),
    {
      id: "GM03",
      what: "error of an airflow, in percent, where ±1 Pa of velocity pressure is the only one: 10 m/s, 293 K, 0.1 MPa",
      source: `${titles.doebelin}, Ex 1, p 406`,
      printed: "0.841",
      unit: "%",
      tolerance: HALF_LAST_DIGIT,
      compute: () => {
        const pressure = cell(velocitypressure, 10, DENSITY, "SI");
        const [above, below] = [1, -1].map((step) => cell(pitotvelocity, pressure + step, DENSITY, "SI"));
        const floor = (above! - below!) / 2;
        return (100 * cell(airflowerror, 10, 200, "none", floor, "none", "SI")) / cell(airflow, 10, 200, null, "SI");
      },
    },
  ],
};
