import type { Quantity } from "./quantities";

/** A column that a table of readings may have; a table may have them in any order. */
export interface ReadingColumnRow {
  readonly name: string; // the header that people type; text in brackets after it is ignored
  readonly quantity: Quantity | null; // of its numbers, where the header tells a unit
  readonly width: number; // on the sheet Measured
  readonly hint: string; // told there where the header is selected
}

/** What stands in the column At for the fan's inlet. */
export const FAN = "fan";

/** What stands in the column Use of a row that is left aside. */
export const NOT_USED: readonly string[] = ["no", "false"];

/** And of one that counts, where it is not blank. */
export const USED: readonly string[] = ["yes", "true", "x"];

/** The columns of a table of readings. */
export const readingColumns = [
  {
    name: "Open",
    quantity: null,
    width: 20,
    hint: "The runs whose gates were open, between ; as in: band saw; planer. All, or none. Blank: as on Runs.",
  },
  {
    name: "At",
    quantity: null,
    width: 14,
    hint: "The run in whose duct it was read, or fan: at the fan's inlet.",
  },
  {
    name: "Velocity",
    quantity: "velocity",
    width: 10,
    hint: "Mean velocity of a traverse in that duct. Better than an airflow: no area is typed into a meter.",
  },
  {
    name: "Airflow",
    quantity: "airflow",
    width: 10,
    hint: "Airflow in that duct, as a meter showed it.",
  },
  {
    name: "Suction",
    quantity: "pressure",
    width: 10,
    hint: "Static suction at the duct's upstream end: behind the hood, behind the junction. Of the fan: in front of its inlet.",
  },
  {
    name: "Drop",
    quantity: "pressure",
    width: 10,
    hint: "Pressure across the separator or filter in that run.",
  },
  {
    name: "±",
    quantity: null,
    width: 7,
    hint: "How far one reading strays from the next, in % (standard deviation). Blank: 4 for air, 3 for pressure.",
  },
  {
    name: "Times",
    quantity: null,
    width: 8.5,
    hint: "How often it was read, the probe taken away in between. Blank: once.",
  },
  {
    name: "Area",
    quantity: "area",
    width: 9,
    hint: "The area that was typed into the meter, where it is not that of the duct: the airflow is then corrected.",
  },
  {
    name: "Meter",
    quantity: null,
    width: 12,
    hint: "Which meter, where there are several: the readings of one share its error. Its air and its pressures count as two meters.",
  },
  { name: "Use", quantity: null, width: 7, hint: "no leaves a reading aside." },
] as const satisfies readonly ReadingColumnRow[];

export type ReadingColumn = (typeof readingColumns)[number]["name"];
