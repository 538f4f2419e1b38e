import fc from "fast-check";
import { cellAddress, columnLetters, fixedAddress, placeOf, readPlace } from "../../src/sheets/address";

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

  test("is read with or without dollar signs, and in small letters", () => {
    expect(["B4", "$B$4", "b$4"].map(readPlace)).toEqual(Array(3).fill({ column: 2, row: 4 }));
    expect(fixedAddress(27, 10)).toBe("$AA$10");
  });

  test.each(["", "B", "4", "B0", "XFE1", "A1048577", "B4:C5", "ABCD1", "Runs"])("%p is no place", (text) =>
    expect(readPlace(text)).toBeNull(),
  );

  test.each(["", "A", "4", "A0", "a1", "A1:B2", "$A$1", "Sheet!A1"])("%p is no address of a cell", (text) => {
    expect(() => placeOf(text)).toThrow(Error);
    expect(() => placeOf(text)).toThrow(`not the address of a cell: ${text}`);
  });
});
