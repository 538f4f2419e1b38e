import type { Source } from "./source";

const source = (kind: Source["kind"], title: string, year: string): Source => ({
  title,
  year,
  kind,
  terms: "facts and formulas quoted; work under copyright",
});

/** What the formulas and definitions come from. */
export const science = {
  amca210: source(
    "standard",
    "ANSI/AMCA 210, laboratory methods of testing fans (standard air, fan static pressure)",
    "various",
  ),
  colebrook1939: source(
    "paper",
    "Colebrook, Turbulent flow in pipes, Journal of the Institution of Civil Engineers 11",
    "1939",
  ),
  fritschCarlson1980: source(
    "paper",
    "Fritsch and Carlson, Monotone piecewise cubic interpolation, SIAM Journal on Numerical Analysis 17",
    "1980",
  ),
  huebscher1948: source(
    "paper",
    "Huebscher, Friction equivalents for round, square and rectangular ducts, ASHVE Transactions 54",
    "1948",
  ),
  iso3966: source(
    "standard",
    "ISO 3966, flow in closed conduits, velocity area method with Pitot static tubes, from memory",
    "undated",
  ),
  iso5167: source("standard", "ISO 5167-2, orifice plates, as computed by the open-source library fluids", "2003"),
  abramowitzStegun: source(
    "textbook",
    "Abramowitz and Stegun, Handbook of Mathematical Functions, from memory",
    "1964",
  ),
  guenther1981: source(
    "paper",
    "Guenther, Sample size formulas for normal theory t tests, The American Statistician 35, from memory",
    "1981",
  ),
  jcgm100: source(
    "standard",
    "JCGM 100:2008, Guide to the expression of uncertainty in measurement, from memory",
    "2008",
  ),
  jcgm101: source(
    "standard",
    "JCGM 101:2008, Propagation of distributions using a Monte Carlo method, from memory",
    "2008",
  ),
  nistHandbook: source(
    "government",
    "NIST/SEMATECH e-Handbook of Statistical Methods, two-sample t test, from memory",
    "2012",
  ),
  wilsonHilferty1931: source("paper", "Wilson and Hilferty, The distribution of chi-square, from memory", "1931"),
  nistSp811: source(
    "government",
    "NIST Special Publication 811, Guide for the Use of the International System of Units",
    "2008",
  ),
  psychrolib: source(
    "software",
    "psychrolib, open-source library of the formulas of ASHRAE Handbook Fundamentals, chapter 1",
    "2018",
  ),
  todiniPilati1988: source(
    "paper",
    "Todini and Pilati, A gradient algorithm for the analysis of pipe networks",
    "1988",
  ),
  abulencia2009: source(
    "textbook",
    "Abulencia and Theodore, Fluid Flow for the Practicing Chemical Engineer, read in companion notebooks",
    "2009",
  ),
  cengel2006: source(
    "textbook",
    "Cengel and Cimbala, Fluid Mechanics: Fundamentals and Applications, read in companion notebooks",
    "2006",
  ),
  haaland1983: source(
    "paper",
    "Haaland, Simple and explicit formulas for the friction factor, Journal of Fluids Engineering 105",
    "1983",
  ),
  ridders1979: source(
    "paper",
    "Ridders, A new algorithm for computing a single root, IEEE Transactions on Circuits and Systems 26",
    "1979",
  ),
  solbergHeatPower: source(
    "textbook",
    "Solberg and others, Elementary Heat Power, read in companion notebooks",
    "undated",
  ),
} as const satisfies Record<string, Source>;
