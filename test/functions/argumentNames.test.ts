/** A refusal begins with the name of the argument that it means, as the function's own description gives it: people look for that word. */
import "../support/customFunctions";
import * as duct from "../../src/functions/duct";
import * as fan from "../../src/functions/fan";
import * as leaks from "../../src/functions/leaks";
import * as losses from "../../src/functions/losses";
import * as measuring from "../../src/functions/measuring";
import { refusal } from "../support/refusal";

type CellFunction = (...args: any[]) => any[][];

/** Names as described, each with a value that the function takes. */
const functions: [CellFunction, Record<string, unknown>][] = [
  [duct.area, { diameter: 4, height: 3 }],
  [duct.velocity, { airflow: 400, diameter: 4, height: 3 }],
  [duct.airflow, { velocity: 4000, diameter: 4, height: 3 }],
  [duct.diameter, { airflow: 400, velocity: 4000 }],
  [duct.tradesize, { diameter: 4.2, rounding: "up" }],
  [duct.equivdiameter, { width: 4, height: 3 }],
  [fan.airpower, { airflow: 400, pressure: 3, efficiency: 0.5 }],
  [losses.friction, { airflow: 400, diameter: 4, material: 0.004, density: 0.075 }],
  [losses.runloss, { airflow: 400, diameter: 4, length: 10, material: 0.004, density: 0.075 }],
  [losses.losscoefficient, { fitting: "elbow", shape: 1.5, angle: 90 }],
  [losses.fittingloss, { airflow: 400, diameter: 4, fitting: 0.5, count: 2, density: 0.075 }],
  [losses.equivlength, { fitting: 0.5, airflow: 400, diameter: 4, material: 0.004, density: 0.075 }],
  [losses.hoodsuction, { airflow: 400, diameter: 4, entry: 0.5, density: 0.075 }],
  [losses.hoodairflow, { suction: 3, diameter: 4, entry: 0.5, density: 0.075 }],
  [losses.deviceloss, { airflow: 400, ratedloss: 1, ratedairflow: 500, exponent: 2 }],
  [leaks.leak, { area: 1, suction: 3, coefficient: 0.6, density: 0.075 }],
  [leaks.leakarea, { airflow: 20, suction: 3, coefficient: 0.6, density: 0.075 }],
  [leaks.leakat, { airflow: 20, suction: 3, newsuction: 4, exponent: 0.5 }],
  [leaks.gateleak, { condition: "shut packed", diameter: 5, suction: 3, density: 0.075 }],
  [leaks.seamleak, { class: 6, surface: 100, pressure: 2 }],
  [measuring.traverse, { readings: 4000, kind: "velocity", density: 0.075 }],
  [measuring.airflowerror, { velocity: 4000, diameter: 4, percent: 3, floor: 40, diametererror: 0.1 }],
  [measuring.correctedreading, { reading: 400, areaentered: 1, areatrue: 2 }],
];

const each = functions.flatMap(([called, good]) =>
  Object.keys(good).map((name) => ({ called, good, name, title: called.name })),
);

test.each(each)("$title names $name when it is TRUE", ({ called, good, name }) => {
  const given = Object.entries(good).map(([key, value]) => [[key === name ? true : value]]);
  const { code, message } = refusal(() => called(...given));
  expect(code).toBe("#VALUE!");
  expect(message).toMatch(new RegExp(`^(row 1, column 1 of )?${name} must be .+; got TRUE$`));
});

test.each(functions.map(([called, good]) => ({ called, good, title: called.name })))(
  "$title takes the other values of that list",
  ({ called, good }) => {
    for (const [value] of called(...Object.values(good).map((given) => [[given]]))) {
      expect(Number.isFinite(value)).toBe(true);
    }
  },
);
