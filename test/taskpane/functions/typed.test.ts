import fc from "fast-check";
import { argumentOf, formulaText, readInTwoWays, readTyped } from "../../../src/taskpane/functions/typed";

const names = [{ name: "units", sheet: "Start", at: "B4" }];

test.each([
  ["", { kind: "nothing" }],
  ["  ", { kind: "nothing" }],
  ["4", { kind: "value", value: 4 }],
  ["4,5", { kind: "value", value: 4.5 }],
  ["1,700", { kind: "value", value: "1,700" }],
  ["-120,000", { kind: "value", value: "-120,000" }],
  ["0,125", { kind: "value", value: 0.125 }],
  ["1,70", { kind: "value", value: 1.7 }],
  ["1700,125", { kind: "value", value: 1700.125 }],
  [".5", { kind: "value", value: 0.5 }],
  ["-1e3", { kind: "value", value: -1000 }],
  ["B4", { kind: "cells", reference: "B4" }],
  ["$B$8:$S$48", { kind: "cells", reference: "$B$8:$S$48" }],
  ["Runs!B8:S48", { kind: "cells", reference: "Runs!B8:S48" }],
  ["'My ducts'!A1", { kind: "cells", reference: "'My ducts'!A1" }],
  ["UNITS", { kind: "cells", reference: "UNITS" }],
  ["elbow 1.5 x2; branch 30", { kind: "value", value: "elbow 1.5 x2; branch 30" }],
  ['"B4"', { kind: "value", value: "B4" }],
  ["=1+1", { kind: "value", value: "=1+1" }],
])("%j is read as %j", (text, typed) => expect(readTyped(text, names)).toEqual(typed));

test.each([
  ["1.200", "1.200 counts as 1.2, not as 1200. "],
  [" -2.375 ", "-2.375 counts as -2.375, not as -2375. "],
  ["1,700", "1,700 may mean 1700 or 1.7: type one of these. "],
  ["0.125", ""],
  ["1.2000", ""],
  ["1200.125", ""],
  ["1.200.000", ""],
  ["elbow 1.500", ""],
  ["", ""],
])("beside %j stands %j", (text, words) => expect(readInTwoWays(text)).toBe(words));

test("a formula leaves out what is left out at its end, and keeps the gaps before it", () => {
  const typed = ["elbow", "", "45", ""].map((text) => readTyped(text, []));
  expect(formulaText("LOSSCOEFFICIENT", typed)).toBe('=DUCT.LOSSCOEFFICIENT("elbow",,45)');
  expect(formulaText("ABOUT", [])).toBe("=DUCT.ABOUT()");
});

test("whatever text is typed stays one text in the formula", () => {
  fc.assert(
    fc.property(fc.string({ minLength: 1 }), (text) => {
      const typed = readTyped(`x ${text}`, []);
      const formula = formulaText("AREA", [typed]);
      const inside = /^=DUCT\.AREA\("((?:[^"]|"")*)"\)$/s.exec(formula);
      return inside !== null && inside[1]!.replaceAll('""', '"') === `x ${text}`.trim();
    }),
  );
});

test("an argument is a single cell, a range's cells, or nothing", () => {
  expect(argumentOf({ kind: "nothing" }, () => [[1]])).toBeNull();
  expect(argumentOf({ kind: "value", value: "pvc" }, () => null)).toEqual([["pvc"]]);
  expect(argumentOf({ kind: "cells", reference: "A1:A2" }, (reference) => [[reference], [2]])).toEqual([
    ["A1:A2"],
    [2],
  ]);
});
