import { CellError, type CellFunction } from "../../../src/hosts/local/customFunctions";
import type { FunctionsFile } from "../../../src/hosts/functionsFile";
import { type GridFunction, registerAll } from "../../../src/hosts/local/register";

const parameter = (name: string, dimensionality: "scalar" | "matrix", optional = false) => ({
  name,
  description: `the ${name}`,
  dimensionality,
  optional,
});

const file = (extra: Partial<FunctionsFile> = {}): FunctionsFile => ({
  functions: [
    {
      id: "SPY",
      name: "SPY",
      description: "What it is, in ft².",
      parameters: [parameter("range", "matrix"), parameter("one", "scalar", true)],
    },
  ],
  ...extra,
});

function registered(
  cellFunction: CellFunction,
  metadata = file(),
): { name: string; entry: GridFunction; errorTypes: Set<string> } {
  const errorTypes = new Set(["#ERROR", "#N/A"]);
  const added: [string, GridFunction][] = [];
  const addFunction = (name: string, entry: GridFunction): void => void added.push([name, entry]);
  registerAll({ addFunction, errorTypes }, "DUCT", metadata, new Map([["SPY", cellFunction]]));
  const [name, entry] = added[0]!;
  return { name, entry, errorTypes };
}

describe("registering cell functions with the grid", () => {
  test("takes name, description and arguments from functions.json, and range arguments accept matrices and errors", () => {
    const { name, entry } = registered(() => 1);
    expect(name).toBe("DUCT.SPY");
    expect(entry.description).toBe("What it is, in ft².");
    expect(entry.args).toEqual([
      {
        name: "range",
        description: "the range",
        type: ["ANY"],
        optional: false,
        acceptMatrix: true,
        acceptErrors: true,
      },
      { name: "one", description: "the one", type: ["ANY"], optional: true, acceptMatrix: false, acceptErrors: true },
    ]);
  });

  test("gives the function rows, null for what is left out, and an invocation last", () => {
    const spy = jest.fn<unknown, unknown[]>(() => [[1]]);
    const { entry } = registered(spy);
    // two columns of three rows, as the grid keeps them
    entry.compute([
      [{ value: 1 }, { value: 2 }, { value: null }],
      [{ value: "a" }, undefined, { value: true }],
    ]);
    const [range, one, invocation, ...more] = spy.mock.calls[0]!;
    expect(range).toEqual([
      [1, "a"],
      [2, null],
      [null, true],
    ]);
    expect(one).toBeNull();
    expect(invocation).toEqual({ functionName: "SPY", isInValuePreview: false });
    expect(more).toEqual([]);
  });

  test("gives a single cell for a range as a matrix of one, and for a single value as itself", () => {
    const spy = jest.fn<unknown, unknown[]>(() => 1);
    registered(spy).entry.compute({ value: 4 }, { value: "SI" });
    expect(spy.mock.calls[0]!.slice(0, 2)).toEqual([[[4]], "SI"]);
  });

  test("passes an error cell on without asking the function, unless functions.json says that it wants to see errors", () => {
    const spy = jest.fn<unknown, unknown[]>(() => 1);
    const cells = [[{ value: 1 }, { value: "#N/A", message: "not there" }]];
    expect(registered(spy).entry.compute(cells)).toEqual({ value: "#N/A", message: "not there" });
    expect(spy).not.toHaveBeenCalled();
    registered(spy, file({ allowErrorForDataTypeAny: true })).entry.compute(cells);
    const seen = (spy.mock.calls[0]![0] as unknown[][])[1]![0];
    expect(seen).toBeInstanceOf(CellError);
    expect(seen).toMatchObject({ code: "#N/A", message: "not there" });
  });

  test("shows what the function throws, and tells the console of a bug without showing its words", () => {
    const complain = jest.spyOn(console, "error").mockImplementation(() => undefined);
    const throwing = (error: Error) =>
      registered(() => {
        throw error;
      }).entry.compute({ value: 1 });
    expect(throwing(new CellError("#VALUE!", "diameter must be above 0 in; got -4"))).toEqual({
      value: "#VALUE!",
      message: "diameter must be above 0 in; got -4",
    });
    expect(complain).not.toHaveBeenCalled();
    expect(throwing(new TypeError("x is undefined"))).toEqual({ value: "#VALUE!" });
    expect(complain).toHaveBeenCalledTimes(1);
    complain.mockRestore();
  });

  test("makes Excel's names of errors errors of the grid too", () => {
    const { errorTypes } = registered(() => 1);
    expect([...errorTypes]).toEqual(expect.arrayContaining(["#VALUE!", "#REF!"]));
  });

  test("refuses a function that functions.json lists and no script brings", () => {
    const registerNothing = (): void =>
      registerAll({ addFunction: () => undefined, errorTypes: new Set() }, "DUCT", file(), new Map());
    expect(registerNothing).toThrow(Error);
    expect(registerNothing).toThrow(
      "functions.json lists SPY, which none of functions.js, functionsLater.js, functionsTables.js associates",
    );
  });
});
