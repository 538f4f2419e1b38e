/** A formula that finds what it reads as it was is not computed again, and whatever it reads that is another has it computed. */
import { UNSTEADY } from "../../../../src/hosts/local/evaluation/asBefore";
import type { GridModel } from "../../../../src/hosts/local/grid";
import { bookOf, gridOf, place, setUpGrid, sheetOf, valueAt } from "../gridOfOurs";

beforeAll(setUpGrid);

const type = (model: GridModel, at: string, content: string, format?: string): void =>
  void model.dispatch("UPDATE_CELL", { ...place(model, at), content, ...(format === undefined ? {} : { format }) });

const gridWith = (first: number | string, formulas: Readonly<Record<string, string>>): GridModel =>
  gridOf(
    bookOf(
      sheetOf([{ at: "A1", value: first }, ...Object.entries(formulas).map(([at, formula]) => ({ at, formula }))]),
    ),
  );

const functions = () =>
  o_spreadsheet.registries.functionRegistry as unknown as {
    readonly mapping: Record<"TOY.TWICE", (...args: unknown[]) => unknown>;
    readonly content: Readonly<Record<string, { readonly compute: (...args: unknown[]) => unknown }>>;
  };

test("what rests on a change is computed as far as something is another", () => {
  const model = gridWith(7, { B1: "=MIN(A1,5)", C1: "=TOY.TWICE(B1)" });
  const twice = jest.spyOn(functions().mapping, "TOY.TWICE");
  type(model, "A1", "8"); // B1 is 5 as before
  expect(valueAt(model, "C1")).toBe(10);
  expect(twice).toHaveBeenCalledTimes(0);
  type(model, "A1", "3");
  expect(valueAt(model, "C1")).toBe(6);
  expect(twice).toHaveBeenCalledTimes(1);
  twice.mockRestore();
});

test("an error of the same name with another sentence is another", () => {
  const model = gridWith("nine", { B1: "=TOY.TWICE(A1)", C1: "=B1" });
  for (const typed of ["eleven", "ten"]) type(model, "A1", typed);
  const { value, message } = model.getters.getEvaluatedCell(place(model, "C1"));
  expect([value, String(message)]).toEqual(["#VALUE!", "a number is needed; got ten"]);
});

test("so is the same number in another format", () => {
  const model = gridWith(0.25, { B1: "=A1", C1: "=B1" });
  type(model, "A1", "0.25", "0%");
  expect(model.getters.getEvaluatedCell(place(model, "C1")).formattedValue).toBe("25%");
  type(model, "A1", "0.25", "0.0000");
  expect(model.getters.getEvaluatedCell(place(model, "C1")).formattedValue).toBe("0.2500");
});

test("a formula that is typed over another, or moves, is computed", () => {
  const model = gridWith(4, { B1: "=A1+1", C2: "=ROW()+A1" });
  for (const typed of ["=A1+3", "=A1+2"]) type(model, "B1", typed);
  expect(valueAt(model, "B1")).toBe(6);
  const { sheetId } = place(model, "A1");
  model.dispatch("ADD_COLUMNS_ROWS", {
    ...{ sheetId, sheetName: "One", dimension: "ROW", base: 0, quantity: 1, position: "before" },
  });
  expect([valueAt(model, "B2"), valueAt(model, "C3")]).toEqual([6, 7]); // 4 + 2; the third row + 4
});

test("a name that stands for another cell gives that one's value", () => {
  const cells = [
    { at: "A1", value: 7 },
    { at: "B1", formula: "=one+E1" },
    { at: "C1", value: 3 },
    { at: "D1", value: 4 },
    { at: "E1", formula: "=MIN(A1,5)" },
  ];
  const model = gridOf({ ...bookOf(sheetOf(cells)), names: [{ name: "one", sheet: "One", at: "C1" }] });
  type(model, "A1", "9");
  expect(valueAt(model, "B1")).toBe(8); // 3 + 5
  const { sheetId } = place(model, "A1");
  const ranges = [model.getters.getRangeDataFromXc(sheetId, "D1")];
  model.dispatch("UPDATE_NAMED_RANGE", { oldRangeName: "one", newRangeName: "one", ranges });
  type(model, "A1", "8"); // E1 is 5 as before
  expect(valueAt(model, "B1")).toBe(9); // 4 + 5
});

// A1 above 0: B1 reads C1, which reads nothing; else C1 reads B1, which reads nothing. Each names the other, and neither reads itself.
test("two formulas that name each other are no circle while one of them does not read the other", () => {
  const model = gridWith(1, { B1: "=IF(A1>0,C1,10)", C1: "=IF(A1>0,20,B1)" });
  const both = () => [valueAt(model, "B1"), valueAt(model, "C1")];
  for (const [typed, shows] of [
    ["-1", 10],
    ["2", 20],
    ["-3", 10],
    ["4", 20],
  ] as const) {
    // prettier-ignore
    type(model, "A1", typed);
    expect(both()).toEqual([shows, shows]);
  }
});

test("a circle ends when it is broken, and comes when it is closed", () => {
  const model = gridWith(1, { B1: "=IF(A1>5,C1,0)", C1: "=B1+1", D1: "=IFERROR(C1,-1)" });
  const all = () => ["B1", "C1", "D1"].map((at) => valueAt(model, at));
  for (let time = 0; time < 2; time++) {
    type(model, "A1", "6");
    expect(all()).toEqual(["#CYCLE", "#CYCLE", -1]);
    type(model, "A1", "2");
    expect(all()).toEqual([0, 1, 1]);
  }
});

test("of the library's functions those are computed each time that look beyond what they are given", () => {
  const looks = Object.entries(functions().content).flatMap(([name, { compute }]) =>
    /this\.(?!locale|lookupCaches)|random|\.now\(|new Date\(\)/.test(String(compute)) ? [name] : [],
  );
  expect(looks).toEqual(expect.arrayContaining(["INDIRECT", "NOW", "OFFSET", "RAND", "SUBTOTAL"]));
  const ownPlace = ["COLUMN", "ROW"]; // which asBefore compares
  expect(looks.filter((name) => !UNSTEADY.has(name) && !ownPlace.includes(name))).toEqual([]);
});
