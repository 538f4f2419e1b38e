import { AIR_VISCOSITY } from "../../../src/core/air/constants";
import { frictionFactor } from "../../../src/core/friction/frictionFactor";
import { area } from "../../../src/functions/duct/area";
import { diameter } from "../../../src/functions/duct/diameter";
import { equivdiameter } from "../../../src/functions/duct/equivdiameter";
import { velocity } from "../../../src/functions/duct/velocity";
import { budget } from "../../../src/functions/systems/budget";
import { fittingloss } from "../../../src/functions/losses/fittingloss";
import { friction } from "../../../src/functions/losses/friction";
import { runloss } from "../../../src/functions/losses/runloss";
import { budgetOf, makeRun } from "../../support/runs";
import { cell } from "../cell";
import { HALF_LAST_DIGIT, type Margin, type PublishedGroup, type PublishedRow } from "../row";
import { titles } from "./titles";

/** W1: hood, damper and five elbows in 44 ft of duct; what a flow of 600 cfm needs. */
const hoodDuctFan: readonly PublishedRow[] = [
  {
    id: "W1 velocity",
    what: "velocity of 600 cfm in a 9.06 in duct",
    source: `${titles.cengel}, Ex 14-1`,
    printed: "6.81",
    unit: "m/s",
    tolerance: HALF_LAST_DIGIT,
    compute: () => cell(velocity, 600, 9.06) * 0.00508, // 1 fpm is 0.00508 m/s
  },
  {
    id: "W1 friction factor",
    what: "Darcy friction factor at 6.81 m/s in 0.230 m, roughness 0.15 mm, kinematic viscosity 1.562e-5 m²/s",
    source: `${titles.cengel}, Ex 14-1`,
    printed: "0.0209",
    unit: "",
    tolerance: HALF_LAST_DIGIT,
    compute: () => frictionFactor((6.81 * 0.23) / 1.562e-5, 0.00015 / 0.23),
  },
  {
    id: "W1 head at 600 cfm",
    what: "head that 600 cfm needs: K 1.3 + 1.8 + 5 x 0.21, 44 ft of duct, exit with kinetic factor 1.05, air of 1.184 kg/m³",
    source: `${titles.cengel}, Ex 14-1`,
    printed: "0.709",
    unit: "in H2O",
    tolerance: {
      relative: 0.003,
      why: "The book rounds the head to 15.2 m of air before it turns it into inches of water.",
    },
    compute: () => {
      const [air, airflow, mm, roughness] = [1.184, 600 * 1.69901079552, 230, 0.15]; // 1 cfm is 1.69901 m3/h
      const coefficients = cell(fittingloss, airflow, mm, 1.3 + 1.8 + 5 * 0.21 + 1.05, null, air, "SI");
      const duct = cell(runloss, airflow, mm, 13.4, roughness, air, "SI");
      return (coefficients + duct) / (998 * 9.81 * 0.0254); // water of 998 kg/m3
    },
  },
];

/**
 * W3: the book works with a given Fanning factor of 0.008, Darcy 0.032. Our friction is Colebrook's, so each run gets the
 * wall for which Colebrook yields that factor: e/D = 3.7 (10^(-1/(2 sqrt f)) - 2.51 / (Re sqrt f)).
 */
const wallFor = (factor: number, airflow: number, pipe: number, density: number): number => {
  const reynolds = (4 * density * airflow) / (Math.PI * pipe * AIR_VISCOSITY);
  return pipe * 3.7 * (10 ** (-1 / (2 * Math.sqrt(factor))) - 2.51 / (reynolds * Math.sqrt(factor)));
};

const fourBranches: PublishedRow = {
  id: "W3 and N14",
  what: "four branches of 0.2 m³/s (0.15 m, 10 m, K 4) into a main of 0.3 m, 20 + 6 m, air of 1.2 kg/m³, Fanning factor 0.008",
  source: `${titles.douglas}, Ex 14.6`,
  printed: "684.51",
  unit: "Pa",
  tolerance: HALF_LAST_DIGIT,
  compute: () => {
    const branch = {
      ...{ diameter: 0.15, length: 10, roughness: wallFor(0.032, 0.2, 0.15, 1.2) },
      ...{ coefficient: 4, hood: 0, wantedAirflow: 0.2 },
    };
    const main = { diameter: 0.3, length: 20 + 6, roughness: wallFor(0.032, 0.8, 0.3, 1.2) };
    const runs = ["1", "2", "3", "4"].map((name) => makeRun(name, "main", branch));
    return budgetOf([...runs, makeRun("main", "fan", main)]).staticPressure;
  },
};

const chart: Margin = { relative: 0.05, why: "The source reads its friction off a chart." };

const equalFriction: readonly PublishedRow[] = [
  {
    id: "GW4 area",
    what: "area for 5400 cfm at 1700 fpm",
    source: titles.lectureExample,
    printed: "3.18",
    unit: "ft²",
    tolerance: HALF_LAST_DIGIT,
    compute: () => cell(area, cell(diameter, 5400, 1700)),
  },
  {
    id: "GW4 friction",
    what: "friction of 5400 cfm in a galvanised duct of 22 x 22 in",
    source: titles.lectureExample,
    printed: "0.145",
    unit: "in.w.g. per 100 ft",
    tolerance: chart,
    compute: () => cell(friction, 5400, cell(equivdiameter, 22, 22)),
  },
  {
    id: "GW4 loss",
    what: "loss of the longest run, 229 ft of equivalent length at that size",
    source: titles.lectureExample,
    printed: "0.332",
    unit: "in.w.g.",
    tolerance: chart,
    compute: () => cell(runloss, 5400, cell(equivdiameter, 22, 22), 229),
  },
  {
    id: "GW4 fan",
    what: "pressure at the fan outlet, with 0.15 in.w.g. at the terminal",
    source: titles.lectureExample,
    printed: "0.482",
    unit: "in.w.g.",
    tolerance: chart,
    compute: () => cell(runloss, 5400, cell(equivdiameter, 22, 22), 229) + 0.15,
  },
];

const balance: PublishedRow = {
  id: "GW5 balance",
  what: "what a branch of 1500 cfm draws unthrottled that needs a quarter of the suction governing at its junction",
  source: titles.exam,
  printed: "3000",
  unit: "cfm",
  tolerance: HALF_LAST_DIGIT,
  compute: () => {
    const table = [
      ["Run", "To", "Diameter", "Hood", "Airflow"],
      ["weak", "main", 6, 1, 1500],
      ["strong", "main", 6, 4, 1500],
      ["main", "fan", 9, null, null],
    ];
    const [headers, weak] = budget(table);
    return Number(weak![headers!.findIndex((header) => String(header).startsWith("Airflow when balanced"))]);
  },
};

export const wholeSystemRows: PublishedGroup = {
  title: "whole systems and junctions",
  rows: [...hoodDuctFan, fourBranches, ...equalFriction, balance],
};
