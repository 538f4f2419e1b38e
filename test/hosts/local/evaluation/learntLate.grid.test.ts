/** What a formula rests on, learnt only while it is computed: a name and INDIRECT may stand for a cell that is to be computed again. */
import { gridOf, setUpGrid, shownOn } from "../gridOfOurs";
import type { WithFinishing } from "../../../../src/hosts/local/evaluation/evaluateShownFirst";
import { sheetOf } from "../../../support/sheetOf";

beforeAll(setUpGrid);

const BLOCKED = [{ at: "G1", formula: "=SEQUENCE(3)" }, { at: "G2", value: 1 }]; // prettier-ignore

// A blocked answer leaves the whole book to the library, which comes to One before Two has filled the cell that One reads.
test.each([
  ["=SUM(Some)", 2, 4],
  ["=Some+1", 3, 6],
  ['=SUM(INDIRECT("One!E1:E9"))', 2, 4],
  ['=INDIRECT("One!E1")', 2, 4],
])("%s reads what stands there in the end, though an answer elsewhere is blocked", (formula, shows, twice) => {
  const model = gridOf({
    name: "Toy",
    names: [{ name: "Some", sheet: "One", at: "E1" }],
    sheets: [
      sheetOf("One", [{ at: "E1", formula: "=Two!C2" }]),
      sheetOf("Two", [{ at: "C1", formula: "=SEQUENCE(2)" }, ...BLOCKED]),
      sheetOf("Three", [
        { at: "K1", formula },
        { at: "L1", formula: "=K1*2" },
      ]),
    ],
  });
  (model.getters as unknown as WithFinishing).getFinishing().finish();
  const three = model.getters.getSheetIdByName("Three")!;
  expect(shownOn(model, three)).toEqual([`K1 ${shows} `, `L1 ${twice} `]);
});
