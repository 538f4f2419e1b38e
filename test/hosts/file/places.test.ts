import {
  absoluteArea,
  areaText,
  quotedSheet,
  readArea,
  readPlace,
  readReference,
} from "../../../src/hosts/file/places";

describe("places as the file format writes them", () => {
  test("a cell's place is read with or without dollar signs, and in small letters", () => {
    expect(readPlace("B4")).toEqual({ column: 2, row: 4 });
    expect(readPlace("$AA$10")).toEqual({ column: 27, row: 10 });
    expect(readPlace("xfd1048576")).toEqual({ column: 16384, row: 1048576 });
  });

  test.each(["", "B", "4", "B0", "XFE1", "A1048577", "B4:C5", "ABCD1", "Runs"])("%p is no place", (text) => {
    expect(readPlace(text)).toBeNull();
  });

  test("a range's corners are put in order", () => {
    expect(areaText(readArea("C9:B4")!)).toBe("B4:C9");
    expect(areaText(readArea("B4")!)).toBe("B4");
    expect([readArea("A:A"), readArea("B4:C5:D6"), readArea("")]).toEqual([null, null, null]);
  });

  test("a sheet's name is quoted, and comes back", () => {
    expect(quotedSheet("Fan's curve")).toBe("'Fan''s curve'");
    expect(absoluteArea("Fan's curve", readArea("B4:C9")!)).toBe("'Fan''s curve'!$B$4:$C$9");
    expect(readReference("'Fan''s curve'!$B$4")).toEqual({ sheet: "Fan's curve", area: readArea("B4") });
    expect(readReference("Runs!$B$4:$C$9")).toEqual({ sheet: "Runs", area: readArea("B4:C9") });
    expect([readReference("B4"), readReference("#REF!"), readReference("Runs!A:A")]).toEqual([null, null, null]);
  });
});
