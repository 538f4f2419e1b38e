import { copyFileName, differsWords } from "../../src/hosts/copyOutcome";
import type { CellValue } from "../../src/sheets/workbook";
import { sampleBook } from "../share/sampleBooks";

const named = (workshop: CellValue): string => {
  const top: CellValue[] = [null, null, null, null, "Workshop", workshop];
  return copyFileName(sampleBook({ "In short": { rows: [top], with: { key: "summary" } } }), "formulas", "2026-11-28");
};

describe("the file of a copy", () => {
  test("is named after the workshop and the day", () => {
    expect(named("Ann's shed")).toBe("Ann's shed 2026-11-28 club copy.xlsx");
    expect(named("Tischlerei Müller")).toBe("Tischlerei Müller 2026-11-28 club copy.xlsx");
  });

  test("has in its name only what every system takes there", () => {
    expect(named("  ../wood: \\ <turners>? \n")).toBe("wood turners 2026-11-28 club copy.xlsx");
    expect(named("x".repeat(300))).toBe(`${"x".repeat(60)} 2026-11-28 club copy.xlsx`);
  });

  test.each([[""], ["..."], [null], [7]])("is the air budget's where Summary says %p", (workshop) => {
    expect(named(workshop)).toBe("air budget 2026-11-28 club copy.xlsx");
  });

  test("with values only says so, and needs no Summary", () => {
    expect(copyFileName(sampleBook({ Runs: {} }), "values", "2026-11-28")).toBe("air budget 2026-11-28 values.xlsx");
  });
});

const sound = sampleBook({ Runs: { rows: [[1]] } });

test("cells in which a copy differs are named with what it and the budget show, the first six of many", () => {
  const cell = (row: number) => ({ sheet: "My flow", at: `C${row}`, inCopy: 480.25, inBook: 481 });
  expect(
    differsWords(
      [cell(2), { ...cell(3), inCopy: null }, { ...cell(4), inCopy: { error: "#N/A" }, inBook: "settles" }],
      sound,
    ),
  ).toBe(
    "no copy was made, since it would show something else than the budget: 'My flow'!C2 480.25 for 481; 'My flow'!C3 nothing for 481; 'My flow'!C4 #N/A for \"settles\". A copy of values shows what the budget shows",
  );
  const many = differsWords(
    Array.from({ length: 9 }, (_, index) => cell(index + 1)),
    sound,
  );
  expect(many).toMatch(/C6 480.25 for 481; and 3 more cells\. A copy/);
  expect(many).not.toContain("C7");
});

test("where the budget refuses something, that is to be mended before a copy can be made", () => {
  const says = { error: "#VALUE!", message: "row 9, saw: Hood must be a name" } as const;
  const book = sampleBook({ Budget: { formulas: { B8: { code: "=DUCT.BUDGET(A1:C3)", shows: [[says]] } } } });
  expect(differsWords([{ sheet: "Budget", at: "B9", inCopy: "", inBook: 481 }], book)).toBe(
    'no copy was made while something is refused, since a copy tells that in other words: Budget!B8 says "row 9, saw: Hood must be a name". Mend that first, or make a copy of values',
  );
});
