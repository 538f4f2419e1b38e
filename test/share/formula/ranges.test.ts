import { cellOf, onAnySheet } from "../../../src/share/formula/ranges";

const at = (sheet: string, top: number, left: number, bottom: number, right: number) => ({
  sheet,
  top,
  left,
  bottom,
  right,
});

test("a cell of a range, counted from its corner; of one row or column that one", () => {
  expect(cellOf(at("Here", 3, 2, 5, 6), 2, 4, "Here")).toBe("F5");
  expect(cellOf(at("Here", 3, 2, 5, 2), 2, 4, "Here")).toBe("B5");
  expect(cellOf(at("Here", 3, 2, 3, 6), 2, 4, "Here")).toBe("F3");
  expect(cellOf(at("Runs", 3, 2, 3, 2), 0, 0, "There here")).toBe("Runs!B3");
});

test("a formula for another sheet names the sheet of each bare address, and only of those", () => {
  expect(onAnySheet('=A1+SUM($B$2:C3)+Runs!D4+units&"E5"', "Budget")).toBe(
    '=Budget!A1+SUM(Budget!$B$2:C3)+Runs!D4+units&"E5"',
  );
  expect(onAnySheet("=SUM(B:B)+SUM(B2:B)", "Budget")).toBe("=SUM(Budget!B:B)+SUM(Budget!B2:B)");
});
