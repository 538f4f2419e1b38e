import { copyFileName } from "../../src/hosts/copyOutcome";
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
