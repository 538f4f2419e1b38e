import { foundIn } from "../../../support/books";

const CALIBRATE = ["Part", "What", "Open", "Read", "Before", "After", "Before, ±", "After, ±", "Unit", "Off, in its own deviations", "Row", "In words"]; // prettier-ignore
const reading = (what: string, misfit: number | null, words: string): (string | number | null)[] =>
  ["reading", what, "all", 1, 1, 1, 1, 1, "cfm", misfit, 2, words]; // prettier-ignore
const UNCERTAINTY = ["Run", "Airflow (cfm)", "Airflow, ± (cfm)", "Airflow mostly unsure by", "Its share in %"];
const flow = (from: string): (string | number)[][] => [UNCERTAINTY, ["saw", 300, 80, "entry of saw", 40], ["Fan", 900, 200, from, 47.2]]; // prettier-ignore

test("a reading that CALIBRATE leaves out is told with its words, where they stand; one that agrees is not", () => {
  const rows = [
    CALIBRATE,
    ["in short", "fan", ...Array.from({ length: 9 }, () => null), "the fan gives less"],
    reading("airflow at saw", -1.2, "agrees"),
    reading("airflow at planer", 5.1, "left out: 1.4 times what all others say; the area of 5 in?"),
    reading("drop at filter", -4, "left out: 0.4 times what all others say"),
    reading("suction at fan", null, "Suction in row 4 must be above 0"),
  ];
  expect(foundIn({ Flow: { rows: flow("the fan's speed") }, Measured: { rows, at: { column: 3, row: 5 } } })).toEqual([
    {
      rule: "A reading that fits nothing",
      what: "airflow at planer: left out: 1.4 times what all others say; the area of 5 in?",
      ...{ sheet: "Measured", at: "N8" },
    },
    {
      rule: "A reading that fits nothing",
      what: "drop at filter: left out: 0.4 times what all others say.",
      ...{ sheet: "Measured", at: "N9" },
    },
  ]);
});

test.each([
  ["the fan's speed", "Your largest unknown is the fan's curve: measure suction at the fan with one gate open."],
  ["the fan's pressure", "Your largest unknown is the fan's curve: measure suction at the fan with one gate open."],
  ["device of filter", "Your largest unknown is this: device of filter. Measure there first."],
])("where nothing is read and %s makes most, Check says what to measure first", (from, what) => {
  const found = foundIn({ Flow: { rows: flow(from) }, Measured: { rows: [CALIBRATE, ["in short", "fan"]] } });
  expect(found).toEqual([{ rule: "Measure first", what, sheet: "Flow", at: "D3" }]);
});

test("without an answer there is nothing to say", () => {
  expect(foundIn({ Flow: { rows: [UNCERTAINTY, ["saw", "", "", "", ""]] } })).toEqual([]);
  expect(foundIn({ Flow: { rows: [UNCERTAINTY, ["Fan", "", "", "", ""]] } })).toEqual([]);
});
