/** Tables that somebody copies to a new sheet without all that stands around them: no number there may pass for the copy's own. */
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { gridOfBook } from "../../support/gridOfBook";

const shows = gridOfBook(
  budgetBook({ units: "IP", sheets: [...sheetKeys], contents: "example" }, { sheets: [], names: [] }),
);
const NEW = "Other";

/** Takes the pasting, the sheet and what else was done back. */
const back = (steps: number): void => {
  for (let step = 0; step < steps; step++) shows.undo();
};

describe("the table of Runs on a new sheet", () => {
  test("at the same place says nothing of Runs beside another pipe", () => {
    const before = shows.value("Runs", "A11");
    expect(before).toMatch(/^(ok|settles)/);
    shows.copyAcross("Runs", "A5:V17", NEW, "A5");
    shows.type(NEW, "E11", "9");
    expect(shows.column(NEW, "A9:A17")).toEqual(Array.from({ length: 9 }, () => "no check: A2 is blank"));
    expect(shows.column(NEW, "F5:F7")).toEqual(["see C3", "see C3", "see C3"]);
    expect(shows.value("Runs", "A11")).toBe(before);
    back(3);
  });

  test.each([
    ["A8:V17", "C12", "C13:C21"],
    ["A1:V17", "A3", "A11:A19"],
  ])("%s pasted at %s has no other run's check", (range, to, checks) => {
    shows.copyAcross("Runs", range, NEW, to);
    expect(shows.column(NEW, checks).filter((said) => String(said).includes("fpm"))).toEqual([]);
    back(2);
  });

  // without a word a blank counts as wood dust
  const error = expect.stringMatching(/^#/) as unknown;
  test.each([
    ["B8:V48", "D8", "R9:R49", "planer chips"],
    ["B8:V48", "B12", "P13:P48", "planer chips"],
    ["B8:V48", "D12", "R13:R48", "planer chips"],
    ["P8:P48", "D8", "D9:D48", error], // without the names
    ["N8:V48", "B8", "D9:D48", error],
  ])("%s pasted at %s has the dust of its own runs, or an error, in %s", (range, to, dusts, dust) => {
    shows.type("Start", "B10", "planer chips");
    const runs = shows.column("Runs", "B9:B48").filter((name) => name !== "").length;
    expect(runs).toBeGreaterThan(5);
    shows.copyAcross("Runs", range, NEW, to);
    expect(shows.column(NEW, dusts).slice(0, runs)).toEqual(Array.from({ length: runs }, () => dust));
    back(3);
  });

  test("the totals alone go on saying what Runs says", () => {
    shows.copyAcross("Runs", "C5:G7", NEW, "C5");
    expect(shows.column(NEW, "F5:F7")).toEqual(shows.column("Runs", "F5:F7"));
    back(2);
  });
});

test("a cell A2 of Runs that was cleared is told above its table", () => {
  shows.clear("Runs", "A2");
  expect(shows.value("Runs", "C3")).toBe(
    "Look: A2 is blank, which tells a copy from the table that is read: no check here. Undo that.",
  );
  back(1);
  expect(shows.value("Runs", "A2")).toBe("");
});

test("what is seen of Budget on a new sheet has no sum of columns that were left behind", () => {
  shows.copyAcross("Budget", "A1:N48", NEW, "A1");
  expect(shows.value(NEW, "C3")).toBe("Look: copied without the columns up to X: copy them, too");
  expect(["F4", "F5", "K5", "K6"].map((at) => shows.value(NEW, at))).toEqual(Array.from({ length: 4 }, () => "see C3"));
  expect(shows.value(NEW, "F6")).toBe(shows.value("Budget", "F6")); // the table itself has it
  back(2);
});

test("what is seen of Flow on a new sheet does not pass over its gates", () => {
  shows.copyAcross("Flow", "A1:I52", NEW, "A1");
  expect(["C3", "C9"].map((at) => shows.value(NEW, at))).toEqual(
    Array.from({ length: 2 }, () => "Look: copied without the columns up to AG: copy them, too"),
  );
  expect(shows.column(NEW, "C5:C8")).toEqual(Array.from({ length: 4 }, () => "see C3"));
  back(2);
});

test("the whole of Flow on a new sheet solves for its own gates", () => {
  shows.copyAcross("Flow", "A1:AY120", NEW, "A1");
  expect(shows.column(NEW, "C5:C9")).toEqual(shows.column("Flow", "C5:C9"));
  shows.type(NEW, "A12", "shut planer");
  expect(shows.value(NEW, "C9")).not.toMatch(/planer/);
  expect(shows.value("Flow", "C9")).toMatch(/planer/);
  back(3);
});

test.each(["A1:I110", "A1:J110", "A1:O110"])(
  "%s of Leaks on a new sheet, without its columns at the right, has no sum, and nothing saved",
  (range) => {
    expect(shows.value("Leaks", "I23")).toEqual(expect.any(Number));
    shows.copyAcross("Leaks", range, NEW, "A1");
    expect(shows.value(NEW, "D7")).toBe("Look: copied without the columns up to AE: copy them, too");
    expect(["B7", "B8", "B9", "B12"].map((at) => shows.value(NEW, at))).toEqual(["see Leaks D7", "see D7", "see D7", "see D7"]); // prettier-ignore
    expect(shows.column(NEW, "I23:I38")).toEqual(Array.from({ length: 16 }, () => ""));
    if (range !== "A1:I110") expect(shows.column(NEW, "J23:J27")).toEqual(Array.from({ length: 5 }, () => "no verdict: copied without the columns up to AE")); // prettier-ignore
    back(2);
  },
);

test("the upper part of Leaks on a new sheet says nothing of hoods and repeats that were left behind", () => {
  expect(shows.value("Leaks", "D10")).toMatch(/^With all of them mended the open hoods get \d+ cfm more\.$/);
  expect(shows.value("Leaks", "J19")).toMatch(/^One reading strays/);
  shows.copyAcross("Leaks", "A1:J40", NEW, "A1");
  expect(shows.column(NEW, "D10:D11")).toEqual(["", ""]);
  expect(shows.value(NEW, "J19")).toBe("no difference gets a verdict: see T19");
  back(2);
});

test("the whole of Leaks on a new sheet says what Leaks says", () => {
  shows.copyAcross("Leaks", "A1:AE110", NEW, "A1");
  expect(shows.column(NEW, "B7:B12")).toEqual(shows.column("Leaks", "B7:B12"));
  expect(shows.column(NEW, "I23:J38")).toEqual(shows.column("Leaks", "I23:J38"));
  back(2);
});
