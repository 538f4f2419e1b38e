import type { Quantity } from "./quantities";

/** A column of the table of what was read at the fan with its duct throttled; a table may have them in any order. */
interface ThrottleColumnRow {
  readonly name: string; // the header that people type; text in brackets after it is ignored
  readonly quantity: Quantity | null; // of its numbers, where the header tells a unit
  readonly hint: string; // told on the sheet Fan where the header is selected
}

export const throttleColumns = [
  {
    name: "Velocity",
    quantity: "velocity",
    hint: "Mean velocity of a traverse in the duct in front of the fan. Better than an airflow: no area is typed into a meter.",
  },
  { name: "Airflow", quantity: "airflow", hint: "Airflow in that duct, as a meter showed it, in place of a velocity." },
  {
    name: "Suction",
    quantity: "pressure",
    hint: "Static suction in the same duct, in front of the fan's inlet, at the same throttle.",
  },
  {
    name: "After",
    quantity: "pressure",
    hint: "Static pressure behind the fan, where it pushes through a duct or a filter: in every row or in none. Blank: it blows freely.",
  },
  {
    name: "Times",
    quantity: null,
    hint: "How often it was read, the probe taken away in between. Blank: once.",
  },
  {
    name: "Air ±",
    quantity: null,
    hint: "How far one reading of air strays from the next, in % (standard deviation). Blank: 4.",
  },
  {
    name: "Pressure ±",
    quantity: null,
    hint: "How far one reading of pressure strays from the next, in % (standard deviation). Blank: 3.",
  },
  { name: "Use", quantity: null, hint: "no leaves a row aside." },
] as const satisfies readonly ThrottleColumnRow[];

export type ThrottleColumn = (typeof throttleColumns)[number]["name"];
