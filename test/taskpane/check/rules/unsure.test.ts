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
    reading(
      "airflow at planer",
      5.1,
      "left out: 1.4 times what all others say; the area of 5 in?; a square typed for the round duct?",
    ),
    reading("drop at filter", -4, "left out: 0.4 times what all others say"),
    reading("suction at fan", null, "Suction in row 4 must be above 0"),
  ];
  expect(foundIn({ Flow: { rows: flow("the fan's speed") }, Measured: { rows, at: { column: 3, row: 5 } } })).toEqual([
    {
      rule: "A reading that fits nothing",
      what: "airflow at planer, left out: 1.4 times what all others say; the area of 5 in? Or a square typed for the round duct?",
      ...{ sheet: "Measured", at: "N8" },
    },
    {
      rule: "A reading that fits nothing",
      what: "drop at filter, left out: 0.4 times what all others say.",
      ...{ sheet: "Measured", at: "N9" },
    },
  ]);
});

test("its button goes to where the reading was typed, in the column of what was read", () => {
  const rows = [
    CALIBRATE,
    ["reading", "airflow at planer", "all", 1, 1, 1, 1, 1, "cfm", 5.1, 3, "left out: 1.4 times what all others say"],
    ["reading", "drop at filter", "all", 1, 1, 1, 1, 1, "in.w.g.", -4, 2, "left out: 0.4 times what all others say"],
  ];
  const typed = { rows: [["At", "Drop (in.w.g.)", "Airflow (cfm)"], ["filter", 1.8, null], ["planer", null, 900]], at: { column: 2, row: 10 } }; // prettier-ignore
  const call = "=IF(1=1,DUCT.CALIBRATE(Runs!B8:V48,Fan!D8:E23,$B$10:$D$20),0)";
  const places = (formula: string) =>
    foundIn({ Read: typed, Said: { rows, formulas: { A1: formula } } }).map(({ sheet, at }) => `${sheet}!${at}`);
  expect(places(call.replace("$B$10", "Read!$B$10"))).toEqual(["Read!D12", "Read!C11"]);
  expect(places(call.replace("$B$10:$D$20", "{1,2}"))).toEqual(["Said!L2", "Said!L3"]);
});

test.each([
  ["the fan's speed", "Your largest unknown is the fan's curve: measure suction at the fan with one gate open."],
  ["the fan's pressure", "Your largest unknown is the fan's curve: measure suction at the fan with one gate open."],
  ["device of filter", "Your largest unknown is this: device of filter. Measure there first."],
])("where nothing is read and %s makes most, Check says what to measure first", (from, what) => {
  const found = foundIn({ Flow: { rows: flow(from) }, Measured: { rows: [CALIBRATE, ["in short", "fan"]] } });
  expect(found).toEqual([{ rule: "Measure first", what, sheet: "Flow", at: "D3" }]);
});

test("where something is read, Check says what to read next, in CALIBRATE's words; where nothing is left to say, nothing", () => {
  const next = (words: string | null) => [CALIBRATE, ["in short", "next", ...Array.from({ length: 9 }, () => null), words], reading("airflow at saw", -1.2, "agrees")]; // prettier-ignore
  const said = "read next: suction at fan, all open; takes the ± at the hoods from 8.4 to 5.1 %";
  expect(foundIn({ Flow: { rows: flow("the fan's speed") }, Measured: { rows: next(said) } })).toEqual([
    { rule: "Measure next", what: `R${said.slice(1)}.`, sheet: "Measured", at: "L2" },
  ]);
  expect(foundIn({ Flow: { rows: flow("the fan's speed") }, Measured: { rows: next(null) } })).toEqual([]);
});

test("without an answer there is nothing to say", () => {
  expect(foundIn({ Flow: { rows: [UNCERTAINTY, ["saw", "", "", "", ""]] } })).toEqual([]);
  expect(foundIn({ Flow: { rows: [UNCERTAINTY, ["Fan", "", "", "", ""]] } })).toEqual([]);
});
