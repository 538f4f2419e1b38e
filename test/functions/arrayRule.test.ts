import "../support/customFunctions";
import fc from "fast-check";
import { area } from "../../src/functions/duct/area";
import { velocity } from "../../src/functions/duct/velocity";
import { friction } from "../../src/functions/losses/friction";
import { losscoefficient } from "../../src/functions/losses/losscoefficient";
import { runloss } from "../../src/functions/losses/runloss";
import { refusal, shown } from "../support/refusal";

const column = (...values: unknown[]): unknown[][] => values.map((value) => [value]);
const row = (...values: unknown[]): unknown[][] => [values];
const call = (fn: (...args: any[]) => any[][], ...args: unknown[]): any[][] => fn(...args);

describe("the array rule of cells and ranges", () => {
  test("one cell gives one value", () => {
    // 4 in circle: pi/4 (4/12)^2 ft2
    expect(call(area, [[4]])[0]![0]).toBeCloseTo(Math.PI / 36, 12);
  });

  test("a bare value, as some hosts send one, is one cell", () => {
    expect(call(area, 4)).toEqual(call(area, [[4]]));
  });

  test("two columns go item by item", () => {
    const both = call(velocity, column(350, 700), column(4, 6));
    expect(both).toEqual([call(velocity, [[350]], [[4]])[0], call(velocity, [[700]], [[6]])[0]]);
  });

  test("one cell meets all", () => {
    expect(call(velocity, column(350, 700), [[4]])).toEqual(call(velocity, column(350, 700), column(4, 4)));
  });

  test("a call knows nothing of the calls before it: left out, blank, a name, a number, nonsense", () => {
    const materials = [undefined, null, "corrugated hose", 0.005, "0.005", "smooth", "nonsense", 0];
    const said = (material: unknown) => {
      try {
        return call(friction, [[350]], [[4]], material === undefined ? undefined : [[material]])[0]![0];
      } catch (error) {
        return (error as Error).message;
      }
    };
    const alone = materials.map(said);
    expect(new Set(alone).size).toBe(materials.length - 1); // a number and the same number as a text agree
    fc.assert(
      fc.property(fc.array(fc.nat(materials.length - 1)), (calls) => {
        expect(calls.map((at) => said(materials[at]))).toEqual(calls.map((at) => alone[at]));
      }),
    );
  });

  test("a column with a row makes a grid", () => {
    const grid = call(friction, column(350, 500, 650), row(4, 5));
    expect(grid.map((line) => line.length)).toEqual([2, 2, 2]);
    expect(grid[2]![1]).toBe(call(friction, [[650]], [[5]])[0]![0]);
  });

  test("every cell of a grid is the call of its own two cells, whatever the numbers", () => {
    const flow = fc.double({ min: 1, max: 5000, noNaN: true });
    const width = fc.double({ min: 2, max: 30, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(flow, { minLength: 2, maxLength: 4 }),
        fc.array(width, { minLength: 2, maxLength: 4 }),
        (flows, widths) => {
          const grid = call(velocity, column(...flows), row(...widths));
          flows.forEach((airflow, i) =>
            widths.forEach((diameter, j) => expect(grid[i]![j]).toBe(call(velocity, [[airflow]], [[diameter]])[0]![0])),
          );
        },
      ),
      { numRuns: 50 },
    );
  });

  test("shapes that do not fit are refused by name", () => {
    expect(refusal(() => call(velocity, column(1, 2, 3), column(4, 5)))).toEqual({
      code: "#VALUE!",
      message:
        'diameter must be one cell, one row, one column or 3 by 1 cells like the other ranges; got "2 by 1 cells"',
    });
  });

  test("a ragged range is filled up with blanks", () => {
    expect(call(area, [[4, 5], [6]])[1]![1]).toBe("");
  });

  test("the arguments are not changed", () => {
    const flows = Object.freeze(column(350, null, "x").map((line) => Object.freeze(line)));
    const before = JSON.stringify(flows);
    call(velocity, flows, [[4]]);
    expect(JSON.stringify(flows)).toBe(before);
  });
});

describe("blanks", () => {
  test.each([null, undefined, "", "  ", 0])("a row of a range whose needed cell is %p gives an empty text", (blank) => {
    expect(call(area, column(4, blank))[1]![0]).toBe("");
  });

  test("a half-filled row says what is missing", () => {
    expect(shown(call(velocity, column(350, 350), column(4, null))[1]![0])).toBe(
      "#VALUE! diameter must be given; got a blank cell",
    );
  });

  test("a blank in the heading column of a grid leaves its line empty, and a blank in the heading row its column", () => {
    const grid = call(velocity, column(350, null), row(4, null, 6));
    expect(grid[1]).toEqual(["", "", ""]);
    expect(grid[0]![1]).toBe("");
    expect(typeof grid[0]![2]).toBe("number");
  });

  test("a single blank cell is refused, not answered with nothing", () => {
    expect(refusal(() => call(area, [[null]]))).toEqual({
      code: "#VALUE!",
      message: "diameter must be given; got a blank cell",
    });
  });

  test.each([null, undefined])("an argument that is left out (%p) takes its default", (nothing) => {
    expect(call(friction, [[350]], [[4]], nothing, nothing, nothing)).toEqual(call(friction, [[350]], [[4]]));
  });

  test.each([null, undefined, "", 0])("so does a given cell that is %p, where 0 cannot be meant", (blank) => {
    expect(call(friction, [[350]], [[4]], null, [[blank]], [[blank]])).toEqual(call(friction, [[350]], [[4]]));
  });
});

describe("wrong values", () => {
  const air = column(350, -5, "much", true, new CustomFunctions.Error(CustomFunctions.ErrorCode.divisionByZero), 700);

  test("only the wrong rows of a range are errors, each with its sentence; the others compute", () => {
    const answer = call(velocity, air, [[4]]).map(([cell]) => shown(cell));
    expect(answer.slice(1, 5)).toEqual([
      "#VALUE! airflow must be at least 0 cfm; got -5",
      '#VALUE! airflow must be a number (cfm); got "much"',
      "#VALUE! airflow must be a number (cfm); got TRUE",
      "#VALUE! airflow must be a number (cfm); got the error #DIV/0!",
    ]);
    expect(answer[5]).toBe(call(velocity, [[700]], [[4]])[0]![0]);
  });

  test("the sentence repeats the number in the unit it was typed in", () => {
    expect(refusal(() => call(area, [[-4]])).message).toBe("diameter must be above 0 in; got -4");
    expect(refusal(() => call(area, [[-100]], null, [["SI"]])).message).toBe("diameter must be above 0 mm; got -100");
    expect(refusal(() => call(area, [[30000]], null, [["SI"]])).message).toBe(
      "diameter must be at most 20000 mm; got 30000",
    );
    expect(refusal(() => call(runloss, [[350]], [[4]], [[-10]])).message).toBe(
      "length must be from 0 to 10000 ft; got -10",
    );
  });

  test.each([NaN, Infinity, -Infinity])("%p is refused", (value) => {
    expect(refusal(() => call(area, [[value]]))).toEqual({
      code: "#VALUE!",
      message: "diameter must be a number (in); got a number that is not finite",
    });
  });

  test("an answer too large for a number is #N/A with the reason", () => {
    expect(refusal(() => call(velocity, [[1e308]], [[1e-300]]))).toEqual({
      code: "#N/A",
      message: "no finite result for these inputs",
    });
  });

  test("long text is cut in the sentence", () => {
    expect(refusal(() => call(area, [["x".repeat(10_000)]])).message.length).toBeLessThan(120);
  });

  test("a numeric text is a number, and a formatted number its basic value", () => {
    expect(call(area, [["4"]])).toEqual(call(area, [[4]]));
    expect(call(area, [[{ type: "FormattedNumber", basicValue: 4, numberFormat: "0.0" }]])).toEqual(call(area, [[4]]));
  });

  test("an object that is no cell value counts as blank", () => {
    expect(refusal(() => call(area, [[{}]])).message).toBe("diameter must be given; got a blank cell");
  });
});

describe("units", () => {
  test.each(["IP", "ip", " Ip ", "I-P", null, ""])("%p is inches and pounds", (units) => {
    expect(call(area, [[4]], null, [[units]])).toEqual(call(area, [[4]]));
  });

  test("SI takes mm and gives m²", () => {
    expect(call(area, [[1000]], null, [["si"]])[0]![0]).toBeCloseTo(Math.PI / 4, 12);
  });

  test("another word is refused", () => {
    expect(refusal(() => call(area, [[4]], null, [["metric"]]))).toEqual({
      code: "#VALUE!",
      message: 'units must be "IP" or "SI"; got "metric"',
    });
  });

  test("more than one cell is refused", () => {
    expect(refusal(() => call(area, [[4]], null, [["IP", "SI"]])).message).toBe(
      'units must be one cell; got "1 by 2 cells"',
    );
  });
});

describe("names", () => {
  test("case and outer blanks do not matter", () => {
    expect(call(friction, [[350]], [[4]], [["  PVC Pipe "]])).toEqual(call(friction, [[350]], [[4]], [["pvc pipe"]]));
  });

  test("a wrong name is answered with the nearest", () => {
    expect(refusal(() => call(friction, [[350]], [[4]], [["pvc pip"]])).message).toMatch(
      /^material must be a name in the table "materials" or a roughness \(nearest: "pvc pipe", .*\); got "pvc pip"$/,
    );
    expect(refusal(() => call(losscoefficient, [["elbw 1.5"]])).message).toMatch(/\(nearest: "elbow/);
  });

  test.each(["__proto__", "constructor", "toString", "hasOwnProperty"])("%s is no name", (name) => {
    expect(refusal(() => call(friction, [[350]], [[4]], [[name]])).code).toBe("#VALUE!");
    expect(refusal(() => call(losscoefficient, [[name]])).code).toBe("#VALUE!");
  });

  test("a number of a fitting's own text is refused with that number", () => {
    expect(refusal(() => call(losscoefficient, [["elbow 9"]])).message).toBe(
      'shape must be from 0.75 to 2 for "elbow 4-piece" (r/D); got 9',
    );
  });
});
