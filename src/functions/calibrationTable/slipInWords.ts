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

/** So many are asked about, the nearest first. */
const MOST_ASKED = 2;

/** Stock has half sizes too, so the second one on each side may be the next that anyone owns. */
const SIZES_BESIDE = 2;

/** What kind of slip makes such a factor, as a question; nothing where none does. */
export function slipInWords(
  { factor, deviation, readings }: Slip,
  calibration: Calibration,
  system: UnitSystem,
): string[] {
  const first = itemAt(readings, 0);
  const known = readings.every(({ what }) => what === "airflow") ? ofAreas(first.run, calibration, system) : decimals();
  const off = ({ factor: one }: Known): number => Math.abs(Math.log(factor / one)) / deviation;
  const found = known.filter((one) => off(one) < NEAR).sort((a, b) => off(a) - off(b));
  return found.slice(0, MOST_ASKED).map(({ words }) => words);
}

const bothWays = (factor: number, words: string): Known[] =>
  [factor, 1 / factor].map((one) => ({ factor: one, words }));

/** Said when it is asked for: the pane loads this file without the notes of later functions. */
const decimals = (): Known[] => [10, 100].flatMap((factor) => bothWays(factor, sayNote("slipDecimal")));

/** A meter that is given an area: the airflow is off by what the area is. */
function ofAreas(run: number, { sets }: Calibration, system: UnitSystem): Known[] {
  const diameter = itemAt(sets, 0).table.runs[run]?.run.diameter ?? null; // nobody told the fan's duct
  const unit = unitOf("diameter", system);
  return [
    ...bothWays(10, sayNote("slipArea")),
    ...bothWays(100, sayNote("slipArea")),
    ...bothWays(4, sayNote("slipRadius")),
    { factor: 4 / Math.PI, words: sayNote("slipSquare") },
    ...bothWays(quantities.airflow.IP.factor / quantities.airflow.SI.factor, sayNote("slipUnits")),
    ...(diameter === null ? [] : sizesBeside(diameter, system)).map((size) => ({
      factor: (size / diameter!) ** 2,
      words: sayNote("slipSize", { size: `${Number(fromSI(size, unit).toPrecision(6))} ${unit.label}` }),
    })),
  ];
}

function sizesBeside(diameter: number, system: UnitSystem): number[] {
  const sizes = stockDiameters(system);
  const smaller = sizes.filter((size) => size < diameter * 0.999).slice(-SIZES_BESIDE);
  return [...smaller, ...sizes.filter((size) => size > diameter * 1.001).slice(0, SIZES_BESIDE)];
}
