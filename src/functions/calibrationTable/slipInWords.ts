import type { Slip } from "../../core/network/calibration/slips";
import { itemAt } from "../../reference/itemAt";
import { sayNote } from "../../reference/notes";
import { fromSI, quantities, type UnitSystem, unitOf } from "../../reference/quantities";
import { stockDiameters } from "../../reference/tradeSizes";
import type { Calibration } from "./calibration";

interface Known {
  readonly factor: number;
  readonly words: string;
}

/** A factor is that of a known slip when it lies so near to it, in its own deviations. */
const NEAR = 2;

/** More than so many slips look alike: then it is none of them. */
const MOST_ALIKE = 2;

/** What kind of slip makes such a factor, as a question; nothing where none does, or too many. */
export function slipInWords(
  { factor, deviation, readings }: Slip,
  calibration: Calibration,
  system: UnitSystem,
): string[] {
  const first = itemAt(readings, 0);
  const known = readings.every(({ what }) => what === "airflow") ? ofAreas(first.run, calibration, system) : DECIMALS;
  const off = ({ factor: one }: Known): number => Math.abs(Math.log(factor / one)) / deviation;
  const found = known.filter((one) => off(one) < NEAR).sort((a, b) => off(a) - off(b));
  return found.length > MOST_ALIKE ? [] : found.map(({ words }) => words);
}

const bothWays = (factor: number, words: string): Known[] =>
  [factor, 1 / factor].map((one) => ({ factor: one, words }));

const DECIMALS = [...bothWays(10, sayNote("slipDecimal")), ...bothWays(100, sayNote("slipDecimal"))];

/** A meter that is given an area: the airflow is off by what the area is. */
function ofAreas(run: number, { sets }: Calibration, system: UnitSystem): Known[] {
  const diameter = itemAt(sets, 0).table.runs[run]?.run.diameter;
  const unit = unitOf("diameter", system);
  const sizes = stockDiameters(system);
  const beside = (diameter === undefined ? [] : [...sizes].reverse().filter((one) => one < diameter * 0.999))
    .slice(0, 1)
    .concat(diameter === undefined ? [] : sizes.filter((one) => one > diameter * 1.001).slice(0, 1));
  return [
    ...bothWays(10, sayNote("slipArea")),
    ...bothWays(100, sayNote("slipArea")),
    ...bothWays(4, sayNote("slipRadius")),
    { factor: 4 / Math.PI, words: sayNote("slipSquare") },
    ...bothWays(quantities.airflow.IP.factor / quantities.airflow.SI.factor, sayNote("slipUnits")),
    ...beside.map((size) => ({
      factor: (size / diameter!) ** 2,
      words: sayNote("slipSize", { size: `${Number(fromSI(size, unit).toPrecision(6))} ${unit.label}` }),
    })),
  ];
}
