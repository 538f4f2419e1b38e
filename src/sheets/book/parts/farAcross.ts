import { DUCT_ACROSS } from "../../../reference/plausible";
import type { Frame } from "../frame";
import { runsColumn } from "../layout";
import { LOOK } from "./look";
import { bySystem, inBook, unitWord } from "./units";

/*
 * Whether the units were changed after rows were typed: nothing is converted then, and a length or an airflow counts in silence. Every run
 * has a diameter, and no duct's in one system is one in the other.
 */

const { narrowest, widest } = DUCT_ACROSS;
const limits = (frame: Frame): [least: string, most: string] => [
  inBook(frame, narrowest, "diameter"),
  inBook(frame, widest, "diameter"),
];

/** Whether a cell holds a diameter that is no duct's. A text is read with the unit that it says. */
export function isFarAcross(frame: Frame, cell: string): string {
  const [least, most] = limits(frame);
  return `IF(ISNUMBER(${cell}),AND(${cell}>0,OR(${cell}<${least},${cell}>${most})),FALSE)`;
}

/** How many of the sheet Runs are none. */
export function howManyFar(frame: Frame): string {
  const [least, most] = limits(frame);
  const column = runsColumn(frame, "Diameter");
  return `(COUNTIF(${column},">"&${most})+COUNTIF(${column},"<"&${least})-COUNTIF(${column},"<=0"))`;
}

export const farSaid = (frame: Frame): string =>
  `"${LOOK} diameters on ${frame.sheet("runs")} that fit no duct in "&${unitWord(frame, "diameter")}&": "&${howManyFar(frame)}&". Typed before the units were changed? Nothing typed is converted"`;

/** Where the book was made for the other units. */
export const madeForOthers = (frame: Frame): string =>
  `IF(${bySystem(frame, `"IP"`, `"SI"`)}="${frame.units}","","Made for ${frame.units}: what was typed is not converted, and numbers show as many decimals as in ${frame.units}. Better a new budget.")`;
