import fc from "fast-check";
import {
  addressesIn,
  cellsIn,
  columnsOf,
  filledAddresses,
  fixedText,
  isOneCell,
  placesIn,
  readRectangle,
  rectangleOf,
  rectangleText,
  rowsOf,
  without,
} from "../../src/sheets/rectangle";

const at = (top: number, left: number, bottom: number, right: number) => ({ top, left, bottom, right });

describe("a rectangle of cells", () => {
  test.each([
    ["B4", at(4, 2, 4, 2)],
    ["$B$8:$S$48", at(8, 2, 48, 19)],
    ["S48:B8", at(8, 2, 48, 19)], // any two corners
    ["b8:S48", at(8, 2, 48, 19)],
    ["A1:XFD1048576", at(1, 1, 1_048_576, 16_384)],
  ])("is read from %s", (text, rectangle) => expect(readRectangle(text)).toEqual(rectangle));

  test.each(["", "A:A", "8:8", "B8:B", "B4:C5:D6", "XFE1", "A1048577", "A0", "Runs!B8", "units", "B8:", ":B8"])(
    "is not read from %p",
    (text) => {
      expect(readRectangle(text)).toBeNull();
      expect(() => rectangleOf(text)).toThrow(Error);
      expect(() => rectangleOf(text)).toThrow(`not a range of cells: ${text}`);
    },
  );

  test.each([
    [at(4, 2, 9, 3), "B4:C9", "$B$4:$C$9"],
    [at(4, 2, 4, 2), "B4", "$B$4"],
    [at(4, 2, 4, 3), "B4:C4", "$B$4:$C$4"],
  ])("%j is written %s, and %s where it must stay", (rectangle, text, fixed) => {
    expect([rectangleText(rectangle), fixedText(rectangle)]).toEqual([text, fixed]);
    expect(rectangleOf(text)).toEqual(rectangle);
  });

  test("knows its size", () => {
    const range = at(3, 2, 5, 6); // rows 3, 4, 5; columns B to F
    expect([rowsOf(range), columnsOf(range), cellsIn(range), isOneCell(range)]).toEqual([3, 5, 15, false]);
    expect([at(3, 2, 3, 2), at(3, 2, 3, 4), at(3, 2, 4, 2)].map(isOneCell)).toEqual([true, false, false]);
  });

  test("lists its cells row by row", () => {
    expect(placesIn(at(3, 2, 4, 3))).toEqual([
      [
        { column: 2, row: 3 },
        { column: 3, row: 3 },
      ],
      [
        { column: 2, row: 4 },
        { column: 3, row: 4 },
      ],
    ]);
    expect(addressesIn(at(3, 2, 4, 3))).toEqual(["B3", "C3", "B4", "C4"]);
    expect(filledAddresses("Z9", { rows: 2, columns: 2 })).toEqual(["Z9", "AA9", "Z10", "AA10"]);
  });
});

test("what is left of a rectangle without others is each of its cells that lies in none of them, once", () => {
  const side = fc.integer({ min: 1, max: 6 });
  const rectangle = fc
    .tuple(side, side, side, side)
    .map(([row, column, otherRow, otherColumn]) =>
      at(
        Math.min(row, otherRow),
        Math.min(column, otherColumn),
        Math.max(row, otherRow),
        Math.max(column, otherColumn),
      ),
    );
  fc.assert(
    fc.property(rectangle, fc.array(rectangle, { maxLength: 4 }), (whole, others) => {
      const taken = new Set(others.flatMap(addressesIn));
      const left = without(whole, others).flatMap(addressesIn);
      expect(left.sort()).toEqual(
        addressesIn(whole)
          .filter((cell) => !taken.has(cell))
          .sort(),
      );
    }),
  );
});
