import { foundIn } from "../../../support/books";

const RULE = "Fittings counted up";

/** A shop whose runs have these fittings, row below row. */
const found = (...fittings: string[]) =>
  foundIn({
    Runs: {
      rows: [
        ["Run", "To", "Airflow (cfm)", "Diameter (in)", "Fittings"],
        ...fittings.map((text, row) => [`run ${row + 1}`, "fan", 400, 4, text]),
      ],
    },
  }).filter(({ rule }) => rule === RULE);

// What a spreadsheet makes of a text that ends with a number when it is dragged down: 30, 31, 32 ...
test.each([
  [["branch 30", "branch 31"], 'run 2 has "branch 31", one more than a row above.', "E3"],
  [["branch 30", "branch 31", "branch 32"], 'run 2 has "branch 31", one more than a row above; so have run 3.', "E3"],
  [["elbow 1.5; branch 45", "", "elbow 1.5; branch 46"], 'run 3 has "elbow 1.5; branch 46", one more than a row above.', "E4"],
  [["elbow 1.5", "elbow 1.6"], 'run 2 has "elbow 1.6", one more than a row above.', "E3"],
  [["elbow 2", "elbow 3", "elbow 4"], 'run 3 has "elbow 4", one more than a row above.', "E4"],
  [["elbow 1.5 x2", "elbow 1.5 x3", "elbow 1.5 x4"], 'run 3 has "elbow 1.5 x4", one more than a row above.', "E4"],
])("fittings that a drag has counted up are told: %j", (fittings, what, at) =>
  expect(found(...fittings)).toEqual([{ rule: RULE, what, sheet: "Runs", at }]),
); // prettier-ignore

test.each([
  [["elbow 2", "elbow 3"]],
  [["elbow 1.5 x2", "elbow 1.5 x3", "elbow 1.5 x2"]],
  [["branch 30", "branch 45", "branch 60"]],
  [["branch 22", "branch 22.5", "branch 30"]],
  [["branch 44", "branch 45"]],
  [["branch 31", "branch 30"]],
  [["0.4", "0.5"]],
  [["7", "8", "9"]],
])("others are not: %j", (fittings) => expect(found(...fittings)).toEqual([]));
