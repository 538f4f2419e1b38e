import { bookOf, gridOf, setUpGrid, sheetOf } from "./gridOfOurs";

beforeAll(setUpGrid);

const choices = ["seated", "gap"];
const model = (strict: boolean) =>
  gridOf(
    bookOf(
      sheetOf(
        [
          { at: "A1", value: "seated" },
          { at: "A2", value: "SEATED" },
          { at: "A3", value: 12.5 },
          { at: "A4", formula: '=IF(A1="","words","")' },
          { at: "A5", value: "saeted" },
        ],
        { lists: [{ range: "A1:A6", choices, strict }] },
      ),
    ),
  );

const marked = (strict: boolean): number[] => {
  const { getters } = model(strict);
  const sheetId = getters.getActiveSheetId();
  return [1, 2, 3, 4, 5, 6].filter((row) => getters.isDataValidationInvalid({ sheetId, col: 0, row: row - 1 }));
};

describe("a cell with a drop-down", () => {
  test("is never marked where the list only suggests: a number or another name may be what the function takes", () => {
    expect(marked(false)).toEqual([]);
  });

  test("is marked where the list is all that it takes, but neither blank nor for a formula that shows nothing", () => {
    expect(marked(true)).toEqual([3, 5]);
  });
});
