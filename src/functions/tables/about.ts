import packageJson from "../../../package.json";
import { AIR_VISCOSITY, STANDARD_DENSITY } from "../../core/air/constants";
import { INCH_OF_WATER } from "../../reference/quantities";
import { TABLES_DATE } from "../../reference";

/** ABOUT's answer: what computed this sheet, and the definitions it rests on. */
export const about = (): (string | number)[][] => [
  ["Duct Ledger", "version", packageJson.version],
  ["Tables of", "date", TABLES_DATE],
  ["Inch of water gauge (60 °F)", "Pa", INCH_OF_WATER],
  ["Standard air", "kg/m³", STANDARD_DENSITY],
  ["Viscosity of air, held constant", "Pa s", AIR_VISCOSITY],
  ["Friction", "", "Darcy-Weisbach; Colebrook-White from Re 4000, 64/Re to Re 2000, linear between"],
  [
    "Fittings and hoods",
    "",
    "K x velocity pressure of the fitting's own duct; table values, linear between printed points",
  ],
  ["Suction", "", "deficit of total pressure below the room; static suction is that plus the velocity pressure"],
  ["Leaks", "", "sharp-edged opening, discharge coefficient 0.6; seams go with pressure to the power 0.65"],
  ["BUDGET", "", "design pass: each open hood gets the airflow it asks for; the strongest path at a junction governs"],
  ["Units", "", "IP or SI by the last argument of each function; inside all is SI"],
  ["Estimates are no measurement", "", "local codes and licensed practice decide; see CAUTIONS"],
];
