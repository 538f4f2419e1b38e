/** On Leaks a number that is typed or pasted over a formula looks like its result: the sheet says where, and no sum goes by it. */
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { gridOfBook } from "../../support/gridOfBook";

const shows = gridOfBook(
  budgetBook({ units: "IP", sheets: ["leaks", "summary"], contents: "example" }, { sheets: [], names: [] }),
);
const typedOver = (where: string): string => `Look: something was typed or pasted over a formula ${where}: undo that`;
const SUMS = ["B7", "B8", "B9", "B12"];
const sums = (): unknown[] => SUMS.map((at) => shows.value("Leaks", at));
const says = (): unknown[] => ["D6", "D7"].map((at) => shows.value("Leaks", at));

test.each([
  ["Saved", "I24", "9", "of row 24 or 44"],
  ["Saved, as a text", "I24", "nine", "of row 24 or 44"],
  ["what the readings say", "J25", "mended", "of row 25 or 45"],
  ["Saved where it is worked out", "AA43", "9", "of row 23 or 43"],
  ["a suction where it is worked out", "D46", "3", "of row 26 or 46"],
  ["the meter's errors, which a function fills", "R43", "1", "of row 23 or 43"],
  ["what a hood gains", "G70", "5", "of row 70"],
  ["the largest reading of the meter", "B18", "900", "of the meter, or in P22"],
  ["what chance does", "T19", "0.1", "of the meter, or in P22"],
  ["what the hoods gain of each gate", "P22", "1", "of the meter, or in P22"],
])("%s typed over is told, and the sums point there", (_, at, typed, where) => {
  const before = [...says(), ...sums(), shows.value("Summary", "B49")];
  expect(before.filter((said) => /^(see|Look)/.test(String(said)))).toEqual([]);
  shows.type("Leaks", at, typed);
  expect(says()).toEqual([before[0], typedOver(where)]);
  expect(sums()).toEqual(["see Leaks D7", "see D7", "see D7", "see D7"]);
  expect(shows.value("Summary", "B49")).toBe("see Leaks D7");
  shows.undo();
  expect([...says(), ...sums(), shows.value("Summary", "B49")]).toEqual(before);
});

test.each(["B7", "B8", "B9", "B11", "B12", "D9", "D13"])(
  "a sum or sentence in short, %s, typed over is told above it",
  (at) => {
    const before = says();
    shows.type("Leaks", at, "5");
    expect(says()).toEqual([typedOver("of rows 7 to 13"), before[1]]);
    expect(shows.value("Summary", "B49")).toBe("see Leaks D6");
    shows.undo();
    expect(says()).toEqual(before);
  },
);

test("what is for you to type is no formula", () => {
  const before = says();
  for (const [at, typed] of [
    ["A30", "lathe"],
    ["E30", "12"],
    ["F30", "3"],
    ["B15", "4"],
    ["B19", "5"],
  ] as const) {
    shows.type("Leaks", at, typed);
    expect(String(shows.value("Leaks", "D7"))).not.toMatch(/^Look/);
    shows.undo();
  }
  expect(says()).toEqual(before);
});
