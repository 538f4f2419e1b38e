import type { PublishedGroup } from "../row";
import { coefficientRow, type PrintedCoefficient } from "./coefficientRow";
import { titles } from "./titles";

const manual = "Technical manual of a ventilation unit, table 6 (second-hand)";
const fanInlet = "ASHRAE system-effect factors of 1988, companion pages of a ventilation textbook";
const smacna1990 = "SMACNA HVAC Systems Duct Design 1990, Table 14-12 A, p 14.27";
const braterKing =
  "Brater and King, Handbook of Hydraulics (1976), as tabulated in an open-source package on culvert gates";

/** Id, the text as a person types it, the coefficient as printed, the source. */
const printed: readonly PrintedCoefficient[] = [
  ["K056", "contraction manual 30", "0.02", manual],
  ["K058", "contraction manual 60", "0.07", manual],
  ["K059", "contraction abrupt 0", "0.5", manual],
  ["K061", "contraction abrupt 0.5", "0.32", manual],
  ["K062", "contraction abrupt 0.75", "0.18", manual],
  ["K064", "expansion abrupt 0.2", "0.64", manual],
  ["K065", "expansion abrupt 0.4", "0.36", manual],
  ["K067", "expansion abrupt 0.8", "0.04", manual],
  ["K068", "re-entrant inlet", "0.85", manual],
  ["K070", "bell mouth manual", "0.03", manual],
  ["K071", "exit", "1.0", manual],
  ["K107 at r/H 0.5", "fan inlet elbow direct 0.5", "2.50", fanInlet],
  ["K107 at r/H 0.75", "fan inlet elbow direct 0.75", "2.00", fanInlet],
  ["K107 at r/H 1.0", "fan inlet elbow direct 1.0", "1.20", fanInlet],
  ["K107 at r/H 2.0", "fan inlet elbow direct 2.0", "0.80", fanInlet],
  ["K109 at r/H 0.5", "fan inlet elbow at two diameters 0.5", "1.60", fanInlet],
  ["K109 at r/H 0.75", "fan inlet elbow at two diameters 0.75", "1.20", fanInlet],
  ["K109 at r/H 1.0", "fan inlet elbow at two diameters 1.0", "0.66", fanInlet],
  ["K109 at r/H 2.0", "fan inlet elbow at two diameters 2.0", "0.47", fanInlet],
  ["K110 at r/H 0.5", "fan inlet elbow at five diameters 0.5", "0.80", fanInlet],
  ["K110 at r/H 0.75", "fan inlet elbow at five diameters 0.75", "0.66", fanInlet],
  ["K110 at r/H 1.0", "fan inlet elbow at five diameters 1.0", "0.33", fanInlet],
  ["K110 at r/H 2.0", "fan inlet elbow at five diameters 2.0", "0.26", fanInlet],
  ["GK076", "contraction 2 10", "0.05", smacna1990],
  ["GK077 at 15", "contraction 2 15", "0.05", smacna1990],
  ["GK077 at 40", "contraction 2 40", "0.05", smacna1990],
  ["GK078 at 50", "contraction 2 50", "0.06", smacna1990],
  ["GK078 at 60", "contraction 2 60", "0.06", smacna1990],
  ["GK079", "contraction 2 90", "0.12", smacna1990],
  ["GK080", "contraction 2 120", "0.18", smacna1990],
  ["GK081", "contraction 2 150", "0.24", smacna1990],
  ["GK082", "contraction 2 180", "0.26", smacna1990],
  ["GK083", "contraction 4 10", "0.05", smacna1990],
  ["GK084 at 15", "contraction 4 15", "0.04", smacna1990],
  ["GK084 at 40", "contraction 4 40", "0.04", smacna1990],
  ["GK085 at 50", "contraction 4 50", "0.07", smacna1990],
  ["GK085 at 60", "contraction 4 60", "0.07", smacna1990],
  ["GK086", "contraction 4 90", "0.17", smacna1990],
  ["GK087", "contraction 4 120", "0.27", smacna1990],
  ["GK088", "contraction 4 150", "0.35", smacna1990],
  ["GK089", "contraction 4 180", "0.41", smacna1990],
  ["GK090", "contraction 6 10", "0.05", smacna1990],
  ["GK091 at 15", "contraction 6 15", "0.04", smacna1990],
  ["GK091 at 40", "contraction 6 40", "0.04", smacna1990],
  ["GK092 at 50", "contraction 6 50", "0.07", smacna1990],
  ["GK092 at 60", "contraction 6 60", "0.07", smacna1990],
  ["GK093", "contraction 6 90", "0.18", smacna1990],
  ["GK094", "contraction 6 120", "0.28", smacna1990],
  ["GK095", "contraction 6 150", "0.36", smacna1990],
  ["GK096", "contraction 6 180", "0.42", smacna1990],
  ["GK097", "contraction 10 10", "0.05", smacna1990],
  ["GK098 at 15", "contraction 10 15", "0.05", smacna1990],
  ["GK098 at 40", "contraction 10 40", "0.05", smacna1990],
  ["GK099 at 50", "contraction 10 50", "0.08", smacna1990],
  ["GK099 at 60", "contraction 10 60", "0.08", smacna1990],
  ["GK100", "contraction 10 90", "0.19", smacna1990],
  ["GK101", "contraction 10 120", "0.29", smacna1990],
  ["GK102", "contraction 10 150", "0.37", smacna1990],
  ["GK103", "contraction 10 180", "0.43", smacna1990],
  ["GK104", "branch 45", "0.28", titles.sheet1995],
  ["GK107", "gate part open 0.125", "30", braterKing],
  ["GK108", "gate part open 0.25", "10", braterKing],
  ["GK109", "gate part open 0.375", "4.5", braterKing],
  ["GK110", "gate part open 0.5", "2", braterKing],
  ["GK111", "gate part open 0.75", "1.5", braterKing],
  ["GK112", "gate part open 1.0", "0.9", braterKing],
];

export const otherFittingRows: PublishedGroup = {
  title: "coefficients of contractions, expansions, gates and ends",
  rows: printed.map(coefficientRow),
};
