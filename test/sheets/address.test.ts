import fc from "fast-check";
import { cellAddress, columnLetters, placeOf } from "../../src/sheets/address";

describe("addresses", () => {
  // The order of a spreadsheet's columns: A to Z, AA to ZZ, AAA to XFD, the 16 384th and last of Excel.
  test.each([
    [1, "A"],
    [26, "Z"],
    [27, "AA"],
    [52, "AZ"],
    [702, "ZZ"],
    [703, "AAA"],
    [16_384, "XFD"],
  ])("column %d is %s", (column, letters) => {
    expect(columnLetters(column)).toBe(letters);
    expect(placeOf(`${letters}7`)).toEqual({ column, row: 7 });
  });

  test("an address read back is the same place", () => {
    const place = fc.record({
      column: fc.integer({ min: 1, max: 16_384 }),
      row: fc.integer({ min: 1, max: 1_048_576 }),
    });
    fc.assert(
      fc.property(place, ({ column, row }) => expect(placeOf(cellAddress(column, row))).toEqual({ column, row })),
    );
  });

  test.each(["", "A", "4", "A0", "a1", "A1:B2", "$A$1", "Sheet!A1"])("%p is no address of a cell", (text) => {
    expect(() => placeOf(text)).toThrow(Error);
    expect(() => placeOf(text)).toThrow(`not the address of a cell: ${text}`);
  });
});
