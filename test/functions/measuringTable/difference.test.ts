import "../../support/customFunctions";
import { difference } from "../../../src/functions/measuring/difference";
import { refusal } from "../../support/refusal";

const call = (...args: any[]): unknown[][] => (difference as (...all: any[]) => unknown[][])(...args);
const HEADER = ["Before", "After", "Change", "Chance alone, ±", "Change in %", "Verdict", "Readings needed, each"];

describe("DIFFERENCE", () => {
  // by hand: means 26 and 3, s = 1, four degrees: 2.132 × √(2/3) = 1.7408 (Student's t as printed in tables)
  test("answers with a header and one row, in the unit of the readings", () => {
    const [header, row] = call([[25], [27], [26]], [[3, 2, 4]], null, null, null, [["less"]]);
    expect(header).toEqual(HEADER);
    expect(row!.slice(0, 3)).toEqual([26, 3, -23]);
    expect(Number(row![3])).toBeCloseTo(1.7407, 3);
    expect(Number(row![4])).toBeCloseTo(-88.46, 2);
    expect(row!.slice(5)).toEqual(["less, beyond chance", ""]);
  });

  test("gives no verdict over single readings of which nothing is known, and none in percent of nothing", () => {
    const single = "no verdict: single readings, and nothing tells how far one strays from the next";
    expect(call(26, 3)[1]).toEqual([26, 3, -23, "", (-100 * 23) / 26, single, ""]);
    expect(call("still", 3, 5)[1]!.slice(0, 5)).toEqual([0, 3, 3, expect.any(Number), ""]);
  });

  // by hand: -2 and -4, a change of -2, which is 100 % of 2 below it; 1.9600 x 0.1 x √2 = 0.2772
  test("of readings below 0 goes by their sign, in percent too, and says so", () => {
    const below = "; readings below 0 count by sign, -4 as less than -2: type suctions without it";
    const row = call(-2, -4, null, 0.1)[1]!;
    expect([...row.slice(0, 3), ...row.slice(4)]).toEqual([-2, -4, -2, -100, `less, beyond chance${below}`, ""]);
    expect(Number(row[3])).toBeCloseTo(0.2772, 4);
    expect(call(-4, -2, null, 0.1)[1]!.slice(4, 6)).toEqual([50, `more, beyond chance${below}`]);
    expect(call(-2, -4, null, 0.1, null, "more")[1]![5]).toBe(`not shown: it went the other way${below}`);
    expect(call([[25], [-27], [26]], [[3, 2, 4]])[1]![5]).toBe(`too small to tell${below}`); // a slip of the sign
    expect(call(2, 4, null, 0.1)[1]!.slice(4, 6)).toEqual([100, "more, beyond chance"]);
  });

  test("takes a blank or a 0 as no percent and no floor, and either word for what was meant", () => {
    for (const nothing of [null, 0, "", [[null]]])
      expect(call([[5, 6]], [[9, 8]], nothing, nothing, null, nothing)).toEqual(call([[5, 6]], [[9, 8]]));
    expect(call([[5, 6]], [[9, 8]], null, null, null, " MORE ")[1]![5]).toBe("more, beyond chance");
    expect(call([[5, 6]], [[9, 8]], null, null, null, "less")[1]![5]).toBe("not shown: it went the other way");
  });

  test.each<[string, unknown[]]>([
    ['before must be filled throughout: "still" for a reading of 0, "not read" where nobody read, or cells left out of the range; got "1 of 2 cells blank or 0"', [[[5, null]], [[6]]]], // prettier-ignore
    ['row 1, column 2 of after must be a number; got "six"', [[[5]], [[5, "six"]]]],
    ["after must be at least one reading; got a blank cell", [[[5]], [["not read"]]]],
    ["percent must be from 0.1 to 100; got 101", [5, 6, 101]],
    ["percent must be from 0.1 to 100; got 0.03", [5, 6, 0.03]],
    ["floor must be at least 0; got -1", [5, 6, null, -1]],
    ['repeats must be left out where percent or floor is given; got "both"', [5, 6, 3, null, [[5, 6]]]],
    ['repeats must be at least two readings; got "one reading"', [5, 6, null, null, [[5]]]],
    ['meant must be "either" or "less" or "more"; got "up"', [5, 6, null, null, null, "up"]],
    ['percent must be one cell; got "1 by 2 cells"', [5, 6, [[1, 2]]]],
  ])("refuses: %s", (message, args) => {
    expect(refusal(() => call(...args))).toEqual({ code: "#VALUE!", message });
  });
});
