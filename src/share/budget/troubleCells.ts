import { ROUGHEST } from "../../core/friction/frictionFactor";
import { DISCHARGE_COEFFICIENT } from "../../core/leaks/openingLeak";
import { LARGEST_COEFFICIENT, LONGEST_RUN } from "../../core/largest";
import { OPEN_AIR } from "../../core/network/openAir";
import { quotedText } from "../references";
import type { BudgetColumn } from "./blockNames";
import type { NearestWords } from "./nearestWords";
import type { RunsReader, RunsSource } from "./runsReader";
import { ERROR_THERE } from "./tableCells";

const LENGTH = "from 0 to 10,000 ft (3048 m)";
const COEFFICIENT = `from 0 to ${LARGEST_COEFFICIENT}`;

/** Why a row cannot be computed, in words, or an empty text: what BUDGET refuses, as far as plain formulas can tell. */
export function faultOf({ place, source }: RunsReader, nearest: NearestWords, row: number): string {
  const cell = (column: BudgetColumn): string => place.cell(column, row);
  const notWithin = (value: string, test: string): string => `IF(ISERROR(${value}),TRUE,NOT(${test}))`;
  const atLeastZero = (column: BudgetColumn): string => notWithin(cell(column), `${cell(column)}>=0`);
  const { into, side, toKey, key, diameter } = {
    into: cell("into"),
    side: cell("side"),
    toKey: cell("toKey"),
    key: cell("key"),
    diameter: cell("diameter"),
  };
  const openAir = endsInTheOpen(toKey);
  const device = `IF(${cell("deviceLoss")}>0,OR(${notWithin(cell("deviceAirflow"), `${cell("deviceAirflow")}>0`)},${notWithin(
    cell("deviceExponent"),
    `AND(${cell("deviceExponent")}>=0.5,${cell("deviceExponent")}<=2.5)`,
  )}),${notWithin(cell("deviceAirflow"), `${cell("deviceAirflow")}=0`)})`;
  const sayings: readonly (readonly [wrong: string, words: string, near?: string])[] = [
    [`ISERROR(${cell("name")})`, "Run must be a name"],
    [`${key}="r:fan"`, `Run must be another word than "fan"`],
    [`COUNTIF(${place.above("key", row)},${key})>0`, "Run must be a name of its own: another row has it too"],
    [`ISERROR(${cell("sideSaid")})`, `Side must be "suction" or "discharge"`],
    [`${cell("inLoop")}>0`, "To must lead to the fan: these runs join each other in a loop"],
    [toIsError(source, row), TO_A_RUN],
    [`AND(${into}<0,OR(${typedLogical(source, row)},${toKey}="r:",COUNTIF(${place.all("key")},${toKey})>0))`, TO_A_RUN],
    [`AND(${into}<0,${toKey}="r:fan")`, `To must be "fan" in one row only`],
    [
      `IF(${side}=2,NOT(OR(${openAir},COUNTIFS(${place.all("key")},${toKey},${place.all("side")},2)>0)),FALSE)`,
      `To must be blank, "outside" or another discharge run`,
    ],
    [notWithin(diameter, `AND(${diameter}>0,${diameter}<=20)`), "Diameter must be a number above 0"],
    [
      notWithin(cell("length"), `AND(${cell("length")}>=0,${cell("length")}<=${LONGEST_RUN})`),
      `Length must be a number ${LENGTH}`,
    ],
    [
      notWithin(
        `${cell("hose")}+${cell("hoseTimes")}`,
        `AND(${cell("hose")}>=0,${cell("hose")}<=${LONGEST_RUN},${cell("hoseTimes")}>=1)`,
      ),
      `Flex must be a number ${LENGTH}, or one with its kind and how it lies, such as: 10 compressed 15%`,
    ],
    [
      `AND(${cell("hose")}>0,${cell("hoseWall")}>${ROUGHEST}*${diameter})`,
      "Flex must be left out: hose is too rough for so small a diameter",
    ],
    [typedZero(source, "Material", row), 'Material must be blank for the usual one, or "smooth" where 0 is meant'],
    [
      notWithin(cell("roughness"), `AND(${cell("roughness")}>=0,${cell("roughness")}<=${ROUGHEST}*${diameter})`),
      "Material must be a name in the tables of this copy, or a roughness of at most a fifth of the diameter",
      nearest.material(row),
    ],
    [
      notWithin(cell("coefficient"), `AND(${cell("coefficient")}>=0,${cell("coefficient")}<=${LARGEST_COEFFICIENT})`),
      `Fittings and K must be names in the tables of this copy, or numbers ${COEFFICIENT}`,
      nearest.fittings(row),
    ],
    [typedZero(source, "Hood", row), "Hood must be blank where no hood is, or its K above 0"],
    [
      notWithin(
        cell("hood"),
        `OR(AND(${cell("hood")}>=0,${cell("hood")}<=${LARGEST_COEFFICIENT}),${hoodIsBlank(source, row)})`,
      ),
      `Hood must be a name in the tables of this copy, or a number ${COEFFICIENT}; or blank beside a port suction and its airflow`,
      nearest.hood(row),
    ],
    [
      `AND(${cell("hood")}>=0,COUNTIF(${place.all("into")},${row})>0)`,
      "Hood must be blank: another run joins this one",
    ],
    [atLeastZero("wanted"), "Airflow must be a number from 0 on"],
    [`ISERROR(${cell("gate")})`, `Gate must be "open", "shut" or blank`],
    [
      `IF(${side}=2,OR(${cell("gate")}>0,${cell("hood")}>=0),FALSE)`,
      "Gate, Hood and Port suction must be blank after the fan, where none is counted",
    ],
    [
      notWithin(
        cell("leakArea"),
        `AND(${cell("leakArea")}>=0,${DISCHARGE_COEFFICIENT}*${cell("leakArea")}<PI()/4*${diameter}^2)`,
      ),
      "Leak must be an area smaller than the duct, or a gate's condition in the tables of this copy",
    ],
    [atLeastZero("deviceLoss"), "Device loss must be a number from 0 on"],
    [device, "Device airflow must stand beside a device loss, and its exponent be from 0.5 to 2.5"],
    [
      `ISERROR(${cell("dustLow")}+${cell("dustHigh")})`,
      "Dust must be a name in the tables of this copy",
      nearest.dust(row),
    ],
  ];
  return sayings.reduceRight(
    (rest, [wrong, words, near]) => `IF(${wrong},${quotedText(words)}${near === undefined ? "" : `&${near}`},${rest})`,
    '""',
  );
}

export const TO_A_RUN = `To must be the name of another suction run, or "fan"`;

/** Where a text of that spelling would be a name. */
const typedLogical = (source: RunsSource, row: number): string =>
  source.has("To") ? `ISLOGICAL(${source.cell("To", row)})` : "FALSE";

/** Where it stands for a blank, which a run after the fan may have. */
const toIsError = (source: RunsSource, row: number): string =>
  source.has("To") ? `${source.cell("To", row)}=${quotedText(ERROR_THERE)}` : "FALSE";

/** Whether a run after the fan goes to no other. */
export const endsInTheOpen = (toKey: string): string => isOneOf(toKey, OPEN_AIR);

/** Whether a name to look for is one of these. */
export const isOneOf = (key: string, names: readonly string[]): string =>
  `OR(${names.map((name) => `${key}="r:${name}"`).join(",")})`;

/** A hood of -1 is one that stands blank, or a K that was typed as -1. */
const hoodIsBlank = (source: RunsSource, row: number): string =>
  source.has("Hood") ? `TRIM(${source.cell("Hood", row)})=""` : "TRUE";

/** Where a 0 and a blank are two answers. */
const typedZero = (source: RunsSource, column: "Material" | "Hood", row: number): string =>
  source.has(column) ? `TRIM(${source.cell(column, row)})="0"` : "FALSE";
