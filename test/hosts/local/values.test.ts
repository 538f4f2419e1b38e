import fc from "fast-check";
import { CellError } from "../../../src/hosts/local/customFunctions";
import { percentIn } from "../../../src/hosts/local/days";
import { errorToGrid, fromGrid, toGrid, transpose } from "../../../src/hosts/local/values";

const isError = (value: unknown): boolean => typeof value === "string" && value.startsWith("#");

describe("values between the grid and a cell function", () => {
  test("a matrix turned twice is the same", () => {
    const matrix = fc
      .integer({ min: 1, max: 5 })
      .chain((width) => fc.array(fc.array(fc.integer(), { minLength: width, maxLength: width }), { minLength: 1 }));
    fc.assert(fc.property(matrix, (rows) => expect(transpose(transpose(rows))).toEqual(rows)));
  });

  test("rows of an answer become columns of the grid", () => {
    expect(
      toGrid([
        [1, 2, 3],
        ["a", true, ""],
      ]),
    ).toEqual([
      [{ value: 1 }, { value: "a" }],
      [{ value: 2 }, { value: true }],
      [{ value: 3 }, { value: "" }],
    ]);
  });

  test("an answer of one cell is a single value", () => {
    expect(toGrid([[4]])).toEqual({ value: 4 });
    expect(toGrid("text")).toEqual({ value: "text" });
  });

  // The number of a cell is a hundredth of what it shows with a percent sign (ECMA-376 part 1, 18.8.31), in full though it shows less.
  test.each([
    [0.03, "0%", "3%"],
    [0.125, "0%", "12.5%"],
    [0.07, "0.0%", "7%"],
    [-0.5, "0%", "-50%"],
    [0, "0%", null],
    [0.03, '0.00"%"', null],
    [0.03, undefined, null],
    ["3", "0%", null],
  ])("%p in a cell of the format %p is the percentage %p", (value, format, shown) => {
    expect(percentIn({ value, ...(format === undefined ? {} : { format }) })).toBe(shown);
  });

  // Excel shows 0 for null and an error for what is no finite number: notes on the runtime's results.
  test("nothing shows as 0, and no cell shows NaN or infinity", () => {
    expect(toGrid([[null], [undefined]])).toEqual([[{ value: 0 }, { value: 0 }]]);
    expect(toGrid([[NaN], [Infinity]])).toEqual([[{ value: "#NUM!" }, { value: "#NUM!" }]]);
    expect(toGrid({})).toEqual({ value: "#VALUE!" });
  });

  test("a blank comes as null, other values as they are", () => {
    expect(
      [undefined, { value: null }, { value: 0 }, { value: "" }, { value: false }].map((cell) =>
        fromGrid(cell, isError),
      ),
    ).toEqual([null, null, 0, "", false]);
  });

  test.each([
    ["#ERROR", "#VALUE!"],
    ["#REF", "#REF!"],
    ["#BAD_EXPR", "#NAME?"],
    ["#CYCLE", "#VALUE!"],
    ["#N/A", "#N/A"],
    ["#DIV/0!", "#DIV/0!"],
  ])("the grid's %s comes as Excel's %s with its sentence", (here, there) => {
    const error = fromGrid({ value: here, message: "why" }, isError);
    expect(error).toBeInstanceOf(CellError);
    expect(error).toMatchObject({ code: there, message: "why" });
  });

  test("only #VALUE! and #N/A keep their sentence, and an unknown code becomes #VALUE!", () => {
    expect(errorToGrid(new CellError("#VALUE!", "why"))).toEqual({ value: "#VALUE!", message: "why" });
    expect(errorToGrid(new CellError("#N/A", "why"))).toEqual({ value: "#N/A", message: "why" });
    expect(errorToGrid(new CellError("#NUM!", "why"))).toEqual({ value: "#NUM!" });
    expect(errorToGrid(new CellError("#NAME?", "why"))).toEqual({ value: "#VALUE!" });
    expect(errorToGrid(new CellError("#VALUE!"))).toEqual({ value: "#VALUE!" });
    expect(errorToGrid(new TypeError("a bug"))).toEqual({ value: "#VALUE!" });
  });
});
