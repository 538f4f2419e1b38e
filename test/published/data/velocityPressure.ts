import { pitotvelocity } from "../../../src/functions/measuring/pitotvelocity";
import { velocitypressure } from "../../../src/functions/losses/velocitypressure";
import { airflow } from "../../../src/functions/duct/airflow";
import { velocity } from "../../../src/functions/duct/velocity";
import { hoodairflow } from "../../../src/functions/hoods/hoodairflow";
import { convertunit } from "../../../src/functions/duct/convertunit";
import { cell } from "../cell";
import { HALF_LAST_DIGIT, type PublishedGroup } from "../row";
import { inchOfWater } from "./margins";
import { titles } from "./titles";

const STANDARD = 0.075; // lb/ft3

export const velocityPressureRows: PublishedGroup = {
  title: "velocity, velocity pressure and their measurement",
  rows: [
    {
      id: "V02",
      what: "velocity pressure at 4490 fpm",
      source: titles.slides,
      printed: "1.26",
      unit: "in.w.g.",
      tolerance: HALF_LAST_DIGIT,
      compute: () => cell(velocitypressure, 4490),
    },
    {
      id: "V04",
      what: "velocity pressure at 1 m/s in air of 1.204 kg/m³",
      source: titles.ashraeSlides,
      printed: "0.602",
      unit: "Pa",
      tolerance: HALF_LAST_DIGIT,
      compute: () => cell(velocitypressure, 1, 1.204, "SI"),
    },
    {
      id: "V08 at 8 m/s",
      what: "velocity pressure at 8 m/s in air of 1.2 kg/m³ (answer worked from the book's inputs)",
      source: `${titles.hundy}, Ex 24.3`,
      printed: "38.4",
      unit: "Pa",
      tolerance: HALF_LAST_DIGIT,
      compute: () => cell(velocitypressure, 8, 1.2, "SI"),
    },
    {
      id: "V08 at 5.5 m/s",
      what: "velocity pressure at 5.5 m/s in air of 1.2 kg/m³ (answer worked from the book's inputs)",
      source: `${titles.hundy}, Ex 24.3`,
      printed: "18.15",
      unit: "Pa",
      tolerance: HALF_LAST_DIGIT,
      compute: () => cell(velocitypressure, 5.5, 1.2, "SI"),
    },
    {
      id: "V09",
      what: "velocity pressure at 7 m/s in air of 0.8419 m³/kg (answer worked from the book's inputs)",
      source: `${titles.hundy}, Ex 24.2`,
      printed: "29.1",
      unit: "Pa",
      tolerance: HALF_LAST_DIGIT,
      compute: () => cell(velocitypressure, 7, 1 / 0.8419, "SI"),
    },
    {
      id: "GM01",
      what: "velocity of standard air with 0.2 in.w.g. of velocity pressure",
      source: `${titles.abulencia}, Ex 19.2`,
      printed: "29.87",
      unit: "ft/s",
      tolerance: inchOfWater,
      compute: () => cell(convertunit, cell(pitotvelocity, 0.2), "fpm", "ft/s"),
    },
    {
      id: "GM02 at the centre",
      what: "velocity with 10.7 mm of water in air of 1.043 kg/m³, Pitot coefficient 0.98",
      source: titles.geankoplis,
      printed: "13.894",
      unit: "m/s",
      tolerance: {
        relative: 0.001,
        why: "The book's column of water weighs 0.1 % less than the 9.80665 Pa we take for 1 mm.",
      },
      compute: () => 0.98 * cell(pitotvelocity, cell(convertunit, 10.7, "mm w.g.", "Pa"), 1.043, "SI"),
    },
    {
      id: "GM02 airflow",
      what: "airflow of 11.81 m/s in a 600 mm duct",
      source: titles.geankoplis,
      printed: "3.3375",
      unit: "m³/s",
      tolerance: { relative: 0.0006, why: "The worksheet takes 3.14 for pi." },
      compute: () => cell(convertunit, cell(airflow, 11.81, 600, null, "SI"), "m³/h", "m³/s"),
    },
    {
      id: "GM11 at 900 Pa",
      what: "velocity of standard air with 900 Pa of velocity pressure",
      source: titles.exam,
      printed: "38.7",
      unit: "m/s",
      tolerance: HALF_LAST_DIGIT,
      compute: () => cell(pitotvelocity, 900, null, "SI"),
    },
    {
      id: "GM11 at 12.9 m/s",
      what: "velocity pressure of standard air at 12.9 m/s",
      source: titles.exam,
      printed: "100",
      unit: "Pa",
      tolerance: HALF_LAST_DIGIT,
      compute: () => cell(velocitypressure, 12.9, null, "SI"),
    },
    {
      id: "M14",
      what: "velocity of 2300 cfm through a door of 3 x 7 ft (answer computed from the inputs; 110 among the choices)",
      source: titles.cih,
      printed: "109.5",
      unit: "fpm",
      tolerance: HALF_LAST_DIGIT,
      compute: () => cell(velocity, 2300, 36, 84),
    },
    {
      id: "M15",
      what: "airflow of a grinder hood: 1.69 in.w.g. behind it, 6 in duct, coefficient of entry 0.78, density factor 0.95",
      source: titles.cih,
      printed: "820",
      unit: "cfm",
      tolerance: { absolute: 4.5, why: "A multiple choice to the nearest ten; the keyed formula gives 818." },
      compute: () => cell(hoodairflow, 1.69, 6, 1 / 0.78 ** 2 - 1, 0.95 * STANDARD),
    },
  ],
};
