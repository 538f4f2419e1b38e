import packageJson from "../../../package.json";
import { AIR_VISCOSITY, STANDARD_DENSITY } from "../../core/air/constants";
import { modelWords } from "../../core/modelWords";
import { aboutVersion } from "../../reference/aboutVersion";
import { INCH_OF_WATER } from "../../reference/quantities";
import { TABLES_DATE } from "../../reference";

/** ABOUT's answer: what computed this sheet, and the definitions it rests on. */
export const aboutTable = (): (string | number)[][] => [
  [...aboutVersion, packageJson.version],
  ["Tables of", "date", TABLES_DATE],
  ["Inch of water gauge (60 °F)", "Pa", INCH_OF_WATER],
  ["Standard air", "kg/m³", STANDARD_DENSITY],
  ["Viscosity of air, held constant", "Pa s", AIR_VISCOSITY],
  ["Friction", "", modelWords.friction],
  ["Fittings and hoods", "", `${modelWords.fittings}; table values linear between printed points`],
  ["Suction", "", modelWords.suction],
  ["Leaks", "", modelWords.leaks],
  ["BUDGET", "", `design pass: ${modelWords.budget}`],
  ["Units", "", "IP or SI by the last argument of each function; inside all is SI"],
  ["Estimates are no measurement", "", "local codes and licensed practice decide; see CAUTIONS"],
];
