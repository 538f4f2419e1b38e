import {
  addedWords,
  copiedWords,
  listWords,
  repairedWords,
  revivedWords,
} from "../../../src/taskpane/build/outcomeWords";

test("a list is said with commas and an and", () => {
  expect([[], ["Runs"], ["Runs", "Fan"], ["Runs", "Fan", "Budget"]].map(listWords)).toEqual([
    "",
    "Runs",
    "Runs and Fan",
    "Runs, Fan and Budget",
  ]);
});

test("sheets that were added are named; a reason becomes a sentence", () => {
  expect(addedWords({ added: true, sheets: ["Runs 2"] })).toEqual([
    "Added 1 sheet: Runs 2.",
    "Nothing that was there has changed.",
  ]);
  expect(addedWords({ added: false, why: "cancelled: nothing was added" })).toEqual(["Cancelled: nothing was added."]);
});

test("one cell that could not be translated is told as one", () => {
  const outcome = {
    made: true,
    name: "a.xlsx",
    live: 2,
    fixed: 1,
    untranslated: ["Runs!B2: why"],
    unchecked: [],
  } as const;
  expect(copiedWords(outcome).slice(2)).toEqual([
    "1 cell could not be translated and stays at its last value:",
    "Runs!B2: why.",
  ]);
});

test("a copy says what lives, what stays, and what could not be translated, the first twelve by name", () => {
  const untranslated = Array.from({ length: 14 }, (_, i) => `Flow!B${i}: no formula for it`);
  const words = copiedWords({ made: true, name: "Copy.xlsx", live: 1412, fixed: 1, untranslated, unchecked: [] });
  expect(words.slice(0, 3)).toEqual([
    "Made Copy.xlsx. It lies among your browser's downloads.",
    "1,412 cells recalculate there; 1 keeps its present number.",
    "14 cells could not be translated and stay at their last value:",
  ]);
  expect(words).toHaveLength(3 + 12 + 1);
  expect(words.at(-1)).toMatch(/^And 2 more/);
  expect(copiedWords({ made: true, name: "Copy", live: 1, fixed: 2, untranslated: [], unchecked: [] })[1]).toBe(
    "1 cell recalculates there; 2 keep their present numbers.",
  );
  expect(copiedWords({ made: false, why: "Nothing to copy." })).toEqual(["Nothing to copy."]);
});

test("a copy that the host was asked to open is never said to be open, and the file is pointed to", () => {
  const file = { name: "club-copy.xlsx", bytes: new Uint8Array() };
  const copy = { made: true, name: "Copy", live: 1, fixed: 2, untranslated: [], unchecked: [] } as const;
  expect(copiedWords({ ...copy, opening: { refused: null, file } })[0]).toBe(
    "Made Copy. Excel was asked to open it as a new workbook. If none appeared (a browser may stop the new tab), save the copy as a file here.",
  );
  expect(copiedWords({ ...copy, opening: { refused: "Excel refused: not now.", file } })[0]).toBe(
    "Made Copy. It did not open as a new workbook. Excel refused: not now. Save the copy as a file here, then open that.",
  );
});

test("sheets that Excel took without their chart say so", () => {
  const refused = ['The chart "Fan" on Fan is missing. Excel refused: no.'];
  expect(addedWords({ added: true, sheets: ["Fan"], refused }).at(-1)).toBe(refused[0]);
  expect(revivedWords({ added: true, sheets: ["Fan"], refused })[1]).toBe(refused[0]);
});

test("a copy that lives again names its sheets; one that can't says why", () => {
  expect(revivedWords({ added: true, sheets: ["Runs", "Fan"] })).toEqual(["Live again: Runs and Fan."]);
  expect(revivedWords({ added: true, sheets: ["Runs"], moved: "" })).toEqual(["Live again: Runs."]);
  expect(revivedWords({ added: true, sheets: ["Runs"], moved: "1 number differs." })).toEqual([
    "Live again: Runs.",
    "1 number differs.",
  ]);
  const left = Array.from({ length: 14 }, (_, index) => `Runs!B${index}: it reads another workbook`);
  expect(revivedWords({ added: true, sheets: ["Runs"], left: left.slice(0, 1) })).toEqual([
    "Live again: Runs.",
    "1 cell was not made live and stays as in the copy:",
    "Runs!B0: it reads another workbook.",
  ]);
  const words = revivedWords({ added: true, sheets: ["Runs"], left });
  expect(words[1]).toBe("14 cells were not made live and stay as in the copy:");
  expect(words).toHaveLength(2 + 12 + 1);
  expect(words.at(-1)).toBe("And 2 more.");
  expect(revivedWords({ added: false, why: "you kept the copy as it is" })).toEqual(["You kept the copy as it is."]);
});

test("a repair says what it did, what it could not and what it left alone", () => {
  expect(repairedWords({ repaired: 0, stillWrong: [], protectedSheets: [], textCells: [] })).toEqual([
    "No formula of ours stands at #NAME? or #BUSY!, so nothing was changed.",
  ]);
  const words = repairedWords({ repaired: 2, stillWrong: ["Flow!B3"], protectedSheets: ["Locked"], textCells: [] });
  expect(words[0]).toBe("Entered 2 formulas again.");
  expect(words[1]).toContain("Still at #NAME? or #BUSY!: Flow!B3.");
  expect(words[2]).toBe("Left alone because protected: Locked.");
  expect(repairedWords({ repaired: 0, stillWrong: [], protectedSheets: [], textCells: ["Flow!B3"] })).toEqual([
    "Entered 0 formulas again.",
    "Left alone because formatted as text, where a formula becomes its own letters: Flow!B3. Give each the number format General, then repair again.",
  ]);
});
