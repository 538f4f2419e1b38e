import fc from "fast-check";
import { base64 } from "../../../src/hosts/excel/base64";
import { blocksOf } from "../../../src/hosts/excel/blocks";
import { asLiteral } from "../../../src/hosts/excel/literal";
import { linesOfPoints, pointsOfLines, pointsOfWidth, widthOfPoints } from "../../../src/hosts/excel/measures";
import { rectangleAt } from "../../../src/hosts/excel/rangeAt";
import { placesIn } from "../../../src/sheets/rectangle";

describe("blocksOf", () => {
  const cells = fc.uniqueArray(
    fc.record({
      column: fc.integer({ min: 1, max: 6 }),
      row: fc.integer({ min: 1, max: 6 }),
      key: fc.constantFrom("a", "b"),
    }),
    { selector: ({ column, row }) => `${column} ${row}` },
  );

  test("covers each cell once with a block of its key, and no other cell", () => {
    fc.assert(
      fc.property(cells, (all) => {
        const covered = blocksOf(all).flatMap(({ key, ...block }) =>
          placesIn(block)
            .flat()
            .map((place) => ({ ...place, key })),
        );
        const inOrder = (list: typeof covered) => list.map(({ column, row, key }) => `${row} ${column} ${key}`).sort();
        expect(inOrder(covered)).toEqual(inOrder(all));
      }),
    );
  });

  test("makes one block of a full rectangle", () => {
    const all = Array.from({ length: 12 }, (_, index) => ({
      column: 2 + (index % 3),
      row: 5 + Math.floor(index / 3),
      key: "",
    }));
    expect(blocksOf(all)).toEqual([{ top: 5, left: 2, bottom: 8, right: 4, key: "" }]);
  });
});

describe("asLiteral", () => {
  test.each(["=1", "+1", "-1", "@A1", "12", "3/4", "true", "FALSE ", "#N/A", "'x", "March 5", " x", "<b>"])(
    "puts an apostrophe before %s",
    (text) => {
      expect(asLiteral(text)).toBe(`'${text}`);
    },
  );

  test.each(["", "Run", "open hood", "Größe: ok", "true value"])("leaves %p as it is", (text) => {
    expect(asLiteral(text)).toBe(text);
  });

  // The cell is formatted as text before it is filled, and keeps what is typed: an apostrophe would be a letter of it.
  test.each(["95%", "5 µm", "3/4", "true"])("leaves %s as it is for a cell that is formatted as text", (text) => {
    expect([asLiteral(text, "@"), asLiteral(text, "0.00")]).toEqual([text, `'${text}`]);
  });

  test.each(["=1", "+1", "-1", "@A1", "'x"])("puts an apostrophe before %s even there", (text) => {
    expect(asLiteral(text, "@")).toBe(`'${text}`);
  });
});

describe("measures", () => {
  // ECMA-376 Part 1, 18.3.1.13: 7 pixels for a digit of Calibri 11 and 5 of padding, so Excel's usual 8.43 characters
  // are 64 pixels, and 64 pixels at 96 to the inch are 48 points
  test("a usual column of 8.43 characters is 48 points wide", () => {
    expect(pointsOfWidth(8.43)).toBe(48);
  });

  test.each([1, 5, 8.5, 17, 64, 255])("a width of %d characters comes back", (width) => {
    expect(widthOfPoints(pointsOfWidth(width))).toBe(width);
  });

  test("another width comes back within half a pixel", () => {
    expect(Math.abs(widthOfPoints(pointsOfWidth(8.8)) - 8.8)).toBeLessThanOrEqual(0.5 / 7);
  });

  test.each([2, 3, 10, 30])("a height of %d lines comes back", (lines) => {
    expect(linesOfPoints(pointsOfLines(lines))).toBe(lines);
  });

  test("Excel's usual row of 15 points has one line", () => {
    expect(linesOfPoints(15)).toBe(1);
  });

  test("nothing is wider or higher than Excel allows", () => {
    expect(pointsOfWidth(1000)).toBe(pointsOfWidth(255));
    expect(pointsOfLines(1000)).toBe(409);
  });
});

describe("rectangleAt", () => {
  test("passes over a sheet's name and dollar signs", () => {
    expect(rectangleAt("'It''s a sheet!'!$B$4:$C$9")).toEqual({ top: 4, left: 2, bottom: 9, right: 3 });
  });

  test.each(["Runs!A:C", "Runs!3:5"])("finds no end in %s", (address) => expect(rectangleAt(address)).toBeNull());
});

test("base64 says the same as the language's own, over more bytes than go at once", () => {
  const bytes = Uint8Array.from({ length: 70_001 }, (_, index) => index % 256);
  expect(base64(bytes)).toBe(Buffer.from(bytes).toString("base64"));
});
