import { unitOf } from "../../../reference/quantities";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { cautionLine } from "../parts/cautionLine";
import { isWithin, settingsTold } from "../parts/soundCell";
import { bySystem, headingIn } from "../parts/units";
import { HEAT, POINT_AIRFLOW, POINT_PRESSURE } from "./fanLayout";

const AIR = `$B$${HEAT + 2}`; // blank: what the fan moves
const WARMER = `$B$${HEAT + 3}`;
const EFFICIENCY = `$B$${HEAT + 4}`;
const HEAT_CELL = `$B$${HEAT + 5}`;
const POWER_CELL = `$B$${HEAT + 6}`;

/** J/(kg K), of dry air: from memory of the ASHRAE Handbook Fundamentals, chapter 1, where it stands in the enthalpy of moist air. */
const HEAT_CAPACITY = "1006";
const USUAL_EFFICIENCY = 45;
const LEAST_EFFICIENCY = 5; // 45 % that is typed with its sign is 0.45
const WARMEST = 150; // °F or K; a day of the calendar is a number of some 46,000

const airIsSound = `OR(${AIR}="",${isWithin(AIR, `${AIR}>0`)})`;
const warmerIsSound = isWithin(WARMER, `AND(${WARMER}>=0,${WARMER}<=${WARMEST})`);
const efficiencyIsSound = isWithin(EFFICIENCY, `AND(${EFFICIENCY}>=${LEAST_EFFICIENCY},${EFFICIENCY}<=100)`);
const trouble = settingsTold([
  { cell: AIR, isSound: airIsSound, must: "a number above 0, or blank" },
  { cell: WARMER, isSound: `OR(${WARMER}="",${warmerIsSound})`, must: `a number from 0 to ${WARMEST}` },
  {
    cell: EFFICIENCY,
    isSound: `OR(${EFFICIENCY}="",${efficiencyIsSound})`,
    must: `a number from ${LEAST_EFFICIENCY} to 100, in %`,
  },
]);

const si = (frame: Frame, quantity: "airflow" | "pressure" | "density"): string =>
  bySystem(frame, String(Number(unitOf(quantity, "IP").factor.toPrecision(12))), String(Number(unitOf(quantity, "SI").factor.toPrecision(12)))); // prettier-ignore

/** Vent or filter: the heat that air blown outdoors takes with it, beside what the fan itself takes. Plain formulas, so a copy has it. */
export function ventedHeat(frame: Frame): SheetCell[] {
  const air = `IF(${AIR}="",${POINT_AIRFLOW},${AIR})*${si(frame, "airflow")}`;
  const kelvin = `${WARMER}*${bySystem(frame, "5/9", "1")}`;
  const heat = `${frame.name("density")}*${si(frame, "density")}*${HEAT_CAPACITY}*${air}*${kelvin}/1000`;
  const power = `${POINT_AIRFLOW}*${si(frame, "airflow")}*${POINT_PRESSURE}*${si(frame, "pressure")}/(${EFFICIENCY}/100)/1000`;
  const moves = `ISNUMBER(${POINT_AIRFLOW})`; // in the grid an empty text times a number is 0, not an error
  const shown = (cell: string): string => `ROUND(${cell},IF(${cell}<10,1,0))&" kW"`;
  const words = `"Blown outdoors, this air takes "&${shown(HEAT_CELL)}&" of heat with it; the fan itself takes "&${shown(POWER_CELL)}&"."`;
  return [
    text(`A${HEAT}`, "Blow it outdoors, or filter it?", "section"),
    text(
      `A${HEAT + 1}`,
      "While the fan runs: density times 1006 J/(kg K) (from memory: ASHRAE Fundamentals, ch. 1) times airflow times kelvins.",
      "note",
    ),
    formula(`A${HEAT + 2}`, headingIn(frame, "Air blown out", "airflow"), "label"),
    input(AIR.replaceAll("$", ""), null, { note: "Blank: all that the fan moves, with the gates of the sheet Flow." }),
    formula(`A${HEAT + 3}`, `="Indoors warmer by ("&${bySystem(frame, '"°F"', '"K"')}&")"`, "label"),
    input(WARMER.replaceAll("$", ""), frame.units === "SI" ? 20 : 36, { note: "Than outdoors, on a day that counts." }),
    text(`A${HEAT + 4}`, "Fan with its motor, %", "label"),
    input(EFFICIENCY.replaceAll("$", ""), USUAL_EFFICIENCY, {
      note: "Air power over what the motor takes from the socket.",
    }),
    text(`C${HEAT + 4}`, `${USUAL_EFFICIENCY} % is an estimate: common practice, no source.`, "note"),
    text(`A${HEAT + 5}`, "Heat that goes with it", "label"),
    formula(
      HEAT_CELL.replaceAll("$", ""),
      `=IFERROR(IF(AND(${airIsSound},${warmerIsSound},OR(${AIR}<>"",${moves})),${heat},""),"")`,
      "total",
      {
        format: "0.0",
      },
    ),
    text(`C${HEAT + 5}`, "kW", "unit"),
    text(`A${HEAT + 6}`, "Power of the fan", "label"),
    formula(
      POWER_CELL.replaceAll("$", ""),
      `=IFERROR(IF(AND(${efficiencyIsSound},${moves}),${power},""),"")`,
      "total",
      {
        format: "0.0",
      },
    ),
    text(`C${HEAT + 6}`, "kW", "unit"),
    formula(`A${HEAT + 7}`, `=TRIM(${trouble}&IF(COUNT(${HEAT_CELL},${POWER_CELL})=2,${words},""))`, "total"),
    cautionLine(
      frame,
      `A${HEAT + 8}`,
      "Air blown out must come in again: it can draw a flue's fumes back into the room. Give it an inlet of its own, and have burners checked.",
    ),
  ];
}
