import { velocity } from "../../../src/functions/duct/velocity";
import { junctionloss } from "../../../src/functions/losses/junctionloss";
import { velocitypressure } from "../../../src/functions/losses/velocitypressure";
import { cell } from "../cell";
import type { PublishedGroup } from "../row";

const PER_HOUR = 60 / 1000; // m3/h in one L/min
const [branch, main, size] = [380 * PER_HOUR, (1135 + 380) * PER_HOUR, 102.3];

/** The source prints K on the velocity pressure of all the flow together. */
export const junctionRows: PublishedGroup = {
  title: "the loss at a junction",
  rows: [
    {
      id: "Crane 7-35, branch",
      what: "380 L/min from aside at 90° into 1135 L/min, all in DN 100 schedule 40 (102.3 mm)",
      source: "Crane TP-410, example 7-35, as documented in the open-source library fluids",
      printed: "-0.04026",
      unit: "K of the combined flow",
      tolerance: {
        absolute: 2e-4,
        why: "The book rounds the airflows on its way: in m³/s to five digits they give -0.04044, as they stand -0.04019.",
      },
      compute: () =>
        cell(junctionloss, 90, branch, main, size, size, null, null, null, "SI") /
        cell(velocitypressure, cell(velocity, main, size, null, "SI"), null, "SI"),
    },
  ],
};
