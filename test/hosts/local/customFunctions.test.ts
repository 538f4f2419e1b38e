import { CellError, createCustomFunctions, errorCodes } from "../../../src/hosts/local/customFunctions";

describe("the CustomFunctions object", () => {
  test("associates one function or a map of them, by ids in any case", () => {
    const warn = jest.fn();
    const { customFunctions, functions } = createCustomFunctions(warn);
    const one = (): number => 1;
    const two = (): number => 2;
    customFunctions.associate("area", one);
    customFunctions.associate({ VELOCITY: two });
    expect(functions.get("AREA")).toBe(one);
    expect(functions.get("VELOCITY")).toBe(two);
    expect(warn).not.toHaveBeenCalled();
  });

  test("lets a second association of an id win, and warns", () => {
    const warn = jest.fn();
    const { customFunctions, functions } = createCustomFunctions(warn);
    const later = (): number => 2;
    customFunctions.associate("AREA", () => 1);
    customFunctions.associate("Area", later);
    expect(functions.get("AREA")).toBe(later);
    expect(warn).toHaveBeenCalledWith("the cell function AREA was associated twice; the later one is used");
  });

  test("has an Error that keeps code and sentence", () => {
    const { customFunctions } = createCustomFunctions(() => undefined);
    const error = new customFunctions.Error(
      customFunctions.ErrorCode.invalidValue,
      "diameter must be above 0 in; got -4",
    );
    expect(error).toBeInstanceOf(CellError);
    expect(error).toBeInstanceOf(Error);
    expect(error.code).toBe("#VALUE!");
    expect(error.message).toBe("diameter must be above 0 in; got -4");
    expect(new customFunctions.Error("#N/A").message).toBe("");
  });

  // The members of the enum CustomFunctions.ErrorCode in @types/custom-functions-runtime.
  test("has the error codes of Excel's runtime", () => {
    expect(errorCodes).toEqual({
      divisionByZero: "#DIV/0!",
      invalidName: "#NAME?",
      invalidNumber: "#NUM!",
      invalidReference: "#REF!",
      invalidValue: "#VALUE!",
      notAvailable: "#N/A",
      nullReference: "#NULL!",
    });
  });
});
