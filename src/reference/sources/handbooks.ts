import type { Source } from "./source";

const work =
  (kind: Source["kind"]) =>
  (title: string, year: string): Source => ({ title, year, kind, terms: "facts quoted; work under copyright" });

const handbook = work("handbook");
const textbook = work("textbook");

/** Handbooks of the trade and textbooks of the science. */
export const handbooks = {
  acgihMemory: handbook(
    "ACGIH, Industrial Ventilation: A Manual of Recommended Practice, 20th to 26th editions, from memory",
    "1988 to 2007",
  ),
  acgihVelocityTable: handbook(
    "ACGIH, Industrial Ventilation, table of minimum duct design velocities, read in a copy",
    "undated",
  ),
  acgihPowerMemory: handbook(
    "ACGIH Industrial Ventilation and EPA course texts on dust collectors, from memory",
    "various",
  ),
  ashrae1977: handbook(
    "ASHRAE Handbook Fundamentals 1977, p 32.31, and Idelchik 1989, p 52, both read in a copy",
    "1977, 1989",
  ),
  ashrae1988sef: handbook(
    "ASHRAE system-effect factors of 1988, on the companion pages of a ventilation textbook",
    "1988",
  ),
  ashrae2005copy: handbook(
    "ASHRAE Handbook Fundamentals 2005 (SI), p 35.52, smooth elbows, read in a copy of the page",
    "2005",
  ),
  ashrae2009si: handbook("ASHRAE Handbook Fundamentals 2009 (SI), duct fittings", "2009"),
  ashrae2009copy: handbook(
    "ASHRAE Handbook Fundamentals 2009 (SI), duct fittings, read in a copy of the pages",
    "2009",
  ),
  ashrae2021: handbook(
    "ASHRAE Handbook Fundamentals 2021, chapter 21, one row of its fitting database read in a sample",
    "2021",
  ),
  ashraeDuctMemory: handbook("ASHRAE Handbook Fundamentals, duct design chapter, from memory", "various"),
  ashraePocket2013: handbook("ASHRAE Pocket Guide for Air Conditioning, Heating, Ventilation, Refrigeration", "2013"),
  ashraeRoughness: handbook(
    "ASHRAE Handbook Fundamentals, duct design, Table 1, duct roughness factors, read in a copy",
    "undated",
  ),
  braterKing1976: handbook(
    "Brater and King, Handbook of Hydraulics, as tabulated in an open-source package on culvert gates",
    "1976",
  ),
  coker1995: textbook(
    "Coker, Fortran Programs for Chemical Process Design, chapter 4, read in a one-page cyclone sheet",
    "1995",
  ),
  crane410: handbook(
    "Crane, Flow of Fluids Through Valves, Fittings, and Pipe, Technical Paper 410, as documented in the open-source library fluids",
    "2009",
  ),
  doebelinMeasurement: textbook(
    "Doebelin and Manik, Measurement Systems, chapter 7, read in companion notebooks",
    "undated",
  ),
  eulerMemory: textbook(
    "Euler's equation of turbomachines, as textbooks of fluid mechanics have it, from memory",
    "various",
  ),
  fanEfficiencyMemory: handbook("ASHRAE and AMCA texts, typical peak efficiencies of fans, from memory", "various"),
  idelchik2007: handbook(
    "Idelchik and Ginevskii, Handbook of Hydraulic Resistance, 4th ed., as tabulated in the open-source library fluids",
    "2007",
  ),
  idelchikGates: handbook(
    "Idelchik, Handbook of Hydraulic Resistance, diagrams 9-5 and 9-6 (gate valves), read in a copy of the pages",
    "various",
  ),
  idelchikMemory: handbook("Idelchik, Handbook of Hydraulic Resistance, entries (section 3), from memory", "various"),
  moodyList: handbook("List of pipe roughness after Moody, as tabulated in the open-source library fluids", "undated"),
  farshadList: handbook("Pipe roughness after Farshad, as tabulated in the open-source library fluids", "undated"),
  smacna1985: handbook(
    "SMACNA HVAC Air Duct Leakage Test Manual, 1st ed., Table 4-1, read in a copy (named by US rule 10 CFR 434)",
    "1985",
  ),
  smacna1990: handbook("SMACNA HVAC Systems Duct Design, 3rd ed., read in a scan", "1990"),
  smacna2012: handbook("SMACNA HVAC Air Duct Leakage Test Manual, 2nd ed., read in a copy", "2012"),
  smacna4th: handbook("SMACNA HVAC Systems Duct Design, 4th ed.", "2006"),
  smacna4thMemory: handbook("SMACNA HVAC Systems Duct Design, 4th ed., rows of Table A-7 from memory", "2006"),
  usArmyChart330: handbook(
    "US Army Corps of Engineers, Hydraulic Design Chart 330-1, read in an open-source package's tests",
    "undated",
  ),
  ventilationManual: handbook(
    "Technical manual of a ventilation unit, table 6, loss coefficients, read in a copy",
    "undated",
  ),
  witheridge1963: textbook(
    "Witheridge, chapter on local exhaust in Patty (ed.), Industrial Hygiene, Fig 19, read in a scan",
    "about 1963",
  ),
} as const satisfies Record<string, Source>;
