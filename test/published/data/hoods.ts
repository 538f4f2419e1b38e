import { pitotvelocity } from "../../../src/functions/measuring/pitotvelocity";
import { velocitypressure } from "../../../src/functions/losses/velocitypressure";
import { airflow } from "../../../src/functions/duct/airflow";
import { area } from "../../../src/functions/duct/area";
import { diameter } from "../../../src/functions/duct/diameter";
import { tradesize } from "../../../src/functions/duct/tradesize";
import { velocity } from "../../../src/functions/duct/velocity";
import { fittingloss } from "../../../src/functions/losses/fittingloss";
import { hoodairflow } from "../../../src/functions/hoods/hoodairflow";
import { hoodsuction } from "../../../src/functions/hoods/hoodsuction";
import { cell } from "../cell";
import { HALF_LAST_DIGIT, type Margin, type PublishedGroup, type PublishedRow } from "../row";
import { titles } from "./titles";

/** Airflow with this velocity pressure [in.w.g.] in a 6 in duct, cfm. */
const flowAt = (pressure: number): number => cell(airflow, cell(pitotvelocity, pressure), 6);

/** Coefficient of entry, sqrt(VP / SPh): the airflow of a suction over the frictionless one. */
const coefficientOfEntry = (suction: number, pressure: number): number =>
  cell(hoodairflow, suction, 6, suction / pressure - 1) / flowAt(suction);

const worked: readonly PublishedRow[] = [
  {
    id: "H05",
    what: "coefficient of entry where 0.8 in.w.g. of suction gives 0.4 in.w.g. of velocity pressure",
    source: titles.quiz,
    printed: "0.7",
    unit: "",
    tolerance: HALF_LAST_DIGIT,
    compute: () => coefficientOfEntry(0.8, 0.4),
  },
  {
    id: "GW5 coefficient of entry",
    what: "coefficient of entry where 0.8 in.w.g. of suction gives 0.4 in.w.g. of velocity pressure",
    source: titles.exam,
    printed: "0.7",
    unit: "",
    tolerance: HALF_LAST_DIGIT,
    compute: () => coefficientOfEntry(0.8, 0.4),
  },
  {
    id: "GW5 plain duct end",
    what: "entry loss of a plain duct end at 0.5 in.w.g. of velocity pressure",
    source: titles.exam,
    printed: "0.47",
    unit: "in.w.g.",
    tolerance: HALF_LAST_DIGIT,
    compute: () => cell(fittingloss, flowAt(0.5), 6, "plain end"),
  },
  {
    id: "GW5 hood suction",
    what: "suction behind a hood of entry loss 0.6 at 2 in.w.g. of velocity pressure (printed with a minus sign)",
    source: titles.exam,
    printed: "3.2",
    unit: "in.w.g.",
    tolerance: HALF_LAST_DIGIT,
    compute: () => cell(hoodsuction, flowAt(2), 6, 0.6),
  },
  {
    id: "GW5 hood airflow",
    what: "airflow of a hood with 4 in.w.g. behind it, coefficient of entry 0.98, 0.196 ft²",
    source: titles.exam,
    printed: "1539",
    unit: "cfm",
    tolerance: HALF_LAST_DIGIT,
    compute: () => cell(hoodairflow, 4, 12 * Math.sqrt((4 * 0.196) / Math.PI), 1 / 0.98 ** 2 - 1),
  },
  {
    id: "W5 area",
    what: "area of a 3.5 in duct",
    source: titles.slides,
    printed: "0.0668",
    unit: "ft²",
    tolerance: HALF_LAST_DIGIT,
    compute: () => cell(area, 3.5),
  },
  {
    id: "W5 velocity pressure",
    what: "velocity pressure at 4490 fpm",
    source: titles.slides,
    printed: "1.26",
    unit: "in.w.g.",
    tolerance: HALF_LAST_DIGIT,
    compute: () => cell(velocitypressure, 4490),
  },
];

const form: readonly PublishedRow[] = [
  {
    id: "GW3 largest diameter",
    what: "diameter for 390 cfm at 4000 fpm",
    source: titles.filledForm,
    printed: "4.22",
    unit: "in",
    tolerance: { absolute: 0.005, why: "The form cuts 4.228 instead of rounding it, on the fast side." },
    compute: () => cell(diameter, 390, 4000),
  },
  {
    id: "GW3 chosen diameter",
    what: "stock size below it",
    source: titles.filledForm,
    printed: "4.00",
    unit: "in",
    tolerance: HALF_LAST_DIGIT,
    compute: () => cell(tradesize, cell(diameter, 390, 4000)),
  },
  {
    id: "GW3 area",
    what: "area of a 4 in duct",
    source: titles.filledForm,
    printed: "0.0870",
    unit: "ft²",
    tolerance: { absolute: 0.0003, why: "The form's own velocity comes from 0.0873; 0.0870 is a slip of writing." },
    compute: () => cell(area, 4),
  },
  {
    id: "GW3 velocity",
    what: "velocity of 390 cfm in a 4 in duct",
    source: titles.filledForm,
    printed: "4467",
    unit: "fpm",
    tolerance: { relative: 0.0005, why: "The form divides by the area rounded to 0.0873 ft²." },
    compute: () => cell(velocity, 390, 4),
  },
  {
    id: "GW3 velocity pressure",
    what: "velocity pressure of 390 cfm in a 4 in duct",
    source: titles.filledForm,
    printed: "1.24",
    unit: "in.w.g.",
    tolerance: HALF_LAST_DIGIT,
    compute: () => cell(velocitypressure, cell(velocity, 390, 4)),
  },
  {
    id: "GW3 hood suction",
    what: "suction behind a grinder hood, 390 cfm in a 4 in duct",
    source: titles.filledForm,
    printed: "2.046",
    unit: "in.w.g.",
    tolerance: { relative: 0.004, why: "The form multiplies the velocity pressure rounded to 1.24." },
    compute: () => cell(hoodsuction, 390, 4, "grinder hood"),
  },
];

const tens: Margin = {
  absolute: 5.5,
  why: "The rule prints whole tens, some of them rounded up or down by more than half.",
};

/** The rule's airflow is 20 m/s in the port it names. */
const ports: readonly PublishedRow[] = (
  [
    ["GH001", "thickness planer under 410 mm", 120, "820", titles.trgs553],
    ["GH002", "thickness planer under 520 mm", 140, "1110", titles.trgs553],
    ["GH003", "thickness planer, largest", 160, "1450", titles.trgs553],
    ["GH004", "spindle moulder", 160, "1450", titles.trgs553],
    ["GH005", "spindle moulder under 2.5 kW", 120, "820", titles.trgs553],
    ["GH006", "small table saw", 100, "560", titles.trgs553],
    ["GH007", "table saw to 315 mm", 120, "820", titles.trgs553],
    ["GH008", "table saw over 315 mm", 140, "1110", titles.trgs553],
    ["GH009", "pendulum saw", 120, "820", titles.trgs553],
    ["GH010", "thickness planer under 63 cm", 140, "1110", titles.trgs553of2008],
    ["GH011", "thickness planer over 63 cm", 160, "1450", titles.trgs553of2008],
    ["GH012", "spindle moulder", 160, "1450", titles.trgs553of2008],
    ["GH013", "table saw, 80 and 80 mm", 120, "820", titles.trgs553of2008],
    ["GH014", "table saw, 80 and 100 mm", 120, "820", titles.trgs553of2008],
    ["GH015", "table saw, 80 and 120 mm", 140, "1110", titles.trgs553of2008],
    ["GH016", "table saw, 80 and 140 mm", 160, "1450", titles.trgs553of2008],
    ["GH017", "pendulum saw", 120, "820", titles.trgs553of2008],
  ] as const
).map(([id, machine, port, printed, source]) => ({
  id,
  what: `airflow of a ${machine}: 20 m/s in ${port} mm`,
  source,
  printed,
  unit: "m³/h",
  tolerance: tens,
  compute: () => cell(airflow, 20, port, null, "SI"),
}));

export const hoodRows: PublishedGroup = { title: "hoods and ports", rows: [...worked, ...form, ...ports] };
