/**
 * Rows that are cut and pasted in the tables that people type. Whatever names a cell follows it to its new place, so a formula that named
 * the cells of its own row would go on reading a row that stands elsewhere, and what was cut would count twice.
 */
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { gridOfBook } from "../../support/gridOfBook";

const shows = gridOfBook(
  budgetBook({ units: "IP", sheets: [...sheetKeys], contents: "example" }, { sheets: [], names: [] }),
);

const cells = (sheet: string, list: readonly string[]): unknown[] => list.map((at) => shows.value(sheet, at));
const numbers = (sheet: string, list: readonly string[]): number[] => list.map((at) => Number(shows.value(sheet, at)));
const near = (value: number): unknown => expect.closeTo(value, 9);

/** Takes back what was done, however many steps it were. */
function thenBack(steps: readonly (() => void)[], look: () => void): void {
  steps.forEach((step) => step());
  try {
    look();
  } finally {
    steps.forEach(() => shows.undo());
  }
}

const LEAKS = ["B7", "B8", "B9", "B10", "B11", "B12", "D7", "D8", "D13"];

describe("the leak log", () => {
  test("a gate that is cut and pasted lower counts once, where it stands now", () => {
    const before = cells("Leaks", LEAKS);
    thenBack([() => shows.cut("Leaks", "A24:H24", "A30:H30")], () => {
      expect(cells("Leaks", LEAKS)).toEqual(before.map((value) => (typeof value === "number" ? near(value) : value)));
      expect(cells("Leaks", ["I24", "J24", "A44", "K44"])).toEqual(["", "", "", ""]);
      expect(cells("Leaks", ["A50", "K50", "I30", "P30"])).toEqual(["band saw", 3.1, near(1.7), "band saw"]);
    });
  });

  // By hand: 26 - 2.5 and 3.1 - 1.4 are left of the savings, 25.2; 26 + 3.1 + 17 + 9.8 less that are still there.
  test("a gate that is pasted over another leaves that one out", () =>
    thenBack([() => shows.cut("Leaks", "A24:H24", "A25:H25")], () =>
      expect(numbers("Leaks", ["B8", "B9"])).toEqual([near(25.2), near(30.7)]),
    ));

  // By hand: 23.5 - 2.5 and 26 + 13 + 17 + 9.8 - 21.
  test("a gate whose row is deleted leaves no error behind", () =>
    thenBack([() => shows.deleteRow("Leaks", 24)], () => {
      expect(numbers("Leaks", ["B8", "B9"])).toEqual([near(21), near(44.8)]);
      expect(cells("Leaks", ["J23", "J24", "J37", "A57", "P24"])).toEqual(["mended: more than the ± 4.3 cfm of chance", "after is above before by 2.5 cfm: measure again", "", "", "drum sander"]); // prettier-ignore
    }));

  test("cells that are deleted without their row put gates beside the work of others, which is told, and no sum is given", () =>
    thenBack([() => shows.deleteCells("Leaks", "A24:H24")], () => {
      expect(shows.value("Leaks", "D7")).toBe(
        "Look: cells of the log were inserted or deleted without their rows: undo that",
      );
      expect(cells("Leaks", ["B7", "B8", "B9", "B12"])).toEqual(["see Leaks D7", "see D7", "see D7", "see D7"]);
    }));
});

describe("the sheet Readings", () => {
  const swap = (sheet: string, one: string, other: string, spare: string): (() => void)[] => [
    () => shows.cut(sheet, one, spare),
    () => shows.cut(sheet, other, one),
    () => shows.cut(sheet, spare, other),
  ];

  test("two readings of a traverse that change places have the same mean", () => {
    const before = cells("Readings", ["B38", "B39", "B40"]);
    thenBack(swap("Readings", "B26", "B27", "B32"), () =>
      expect(cells("Readings", ["B38", "B39", "B40"])).toEqual(before),
    );
  });

  test("two months of the filter's log that change places make the same line", () => {
    const before = numbers("Readings", ["K49", "K50", "K51"]);
    thenBack(swap("Readings", "A56:C56", "A57:C57", "A70:C70"), () => {
      expect(numbers("Readings", ["K49", "K50", "K51"])).toEqual(before.map(near));
      expect(cells("Readings", ["D70", "E70", "K70"])).toEqual(["", "", ""]);
    });
  });

  test("a meter's area that is cut and pasted lower has its numbers there alone", () => {
    const before = cells("Readings", ["E9", "F9", "G9", "H9"]);
    thenBack([() => shows.cut("Readings", "A9:D9", "A12:D12")], () => {
      expect(cells("Readings", ["E12", "F12", "G12", "H12"])).toEqual(before);
      expect(cells("Readings", ["E9", "F9", "G9", "H9"])).toEqual(["", "", "", ""]);
    });
  });
});

test("a point of the fan's curve that is cut and pasted lower stays a point of it, and no other is doubled", () => {
  const before = numbers("Flow", ["C5", "C7", "G5"]);
  thenBack([() => shows.cut("Fan", "A9:B9", "A18:B18")], () => {
    expect(numbers("Flow", ["C5", "C7", "G5"])).toEqual(before.map(near));
    expect(cells("Fan", ["H9", "I9", "H18", "I18"])).toEqual(["", "", 0, 11.2]);
  });
});
