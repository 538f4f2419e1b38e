import fc from "fast-check";
import { version } from "../../package.json";
import { movedWords } from "../../src/hosts/movedNumbers";
import type { Calculated, Shown, ShownCell } from "../../src/sheets/calculated";
import type { SheetCell } from "../../src/sheets/workbook";
import { sheetOf } from "../support/sheetOf";

type Values = Readonly<Record<string, ShownCell["value"] | ShownCell>>;

const isCell = (one: ShownCell["value"] | ShownCell): one is ShownCell =>
  typeof one === "object" && one !== null && "value" in one;

const shows = (values: Values): Shown =>
  new Map([
    ["My flow", new Map(Object.entries(values).map(([at, one]) => [at, isCell(one) ? one : { value: one }] as const))],
  ]);

const held = (cells: readonly SheetCell[], values: Values): Calculated => ({
  workbook: { name: "Toy", names: [], sheets: [sheetOf("My flow", cells)] },
  shown: shows(values),
});

const sum: SheetCell = { at: "B1", formula: "=A1*2" };
const OTHERWISE = "What saved the file had not computed it from its present entries, or computes otherwise.";

describe("the numbers that a file held", () => {
  test("are not spoken of where they are those that are computed here", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, min: -1e300, max: 1e300 }), (value) => {
        expect(movedWords(held([sum], { B1: value }), shows({ B1: value }), "file")).toBe("");
        expect(movedWords(held([sum], { B1: value }), shows({ B1: value * (1 + 1e-9) }), "file")).toBe("");
      }),
    );
  });

  test.each([
    [511, 530, "511 here, 530 in the file"],
    [1.23456, 1.23451, "1.2346 here, 1.2345 in the file"], // by four digits they are one
    [-2, 2, "-2 here, 2 in the file"],
    [0, 3, "0 here, 3 in the file"],
    ["no convergence", 3, "no number here, 3 in the file"],
    [null, 3, "no number here, 3 in the file"],
  ])("are told with the number here: %j for %j", (now, before, words) => {
    expect(movedWords(held([sum], { B1: before }), shows({ B1: now }), "file")).toBe(
      `1 number differs from what the file held, most of all 'My flow'!B1: ${words}. ${OTHERWISE}`,
    );
  });

  test("in all cells that a formula fills, led by the one that moved most for its size", () => {
    const cells: SheetCell[] = [{ at: "A1", formula: "=DUCT.SOLVE(X1:Y9)" }, sum];
    const before = { A1: { value: 100, fills: { rows: 2, columns: 1 } }, A2: 10, B1: 1000 };
    expect(movedWords(held(cells, before), shows({ A1: 101, A2: 5, B1: 900 }), "file")).toBe(
      `3 numbers differ from what the file held, most of all 'My flow'!A2: 5 here, 10 in the file. ${OTHERWISE}`,
    );
  });

  test("of a copy stand in cells of their own where one formula fills them here", () => {
    const now = shows({ B1: { value: 1, fills: { rows: 1, columns: 2 } }, C1: 3 });
    expect(movedWords(held([sum], { B1: 1, C1: 2 }), now, "copy")).toBe(
      "1 number differs from what the copy held, most of all 'My flow'!C1: 3 here, 2 in the copy. What saved the copy had not computed it from its present entries, or computes otherwise.",
    );
  });

  test("are compared where a formula gives them, not where somebody typed or a formula changes by itself", () => {
    const cells: SheetCell[] = [
      { at: "A1", value: 1 },
      { at: "A2", formula: "=TODAY()" },
    ];
    expect(movedWords(held(cells, { A1: 1, A2: 46000 }), shows({ A1: 2, A2: 46001 }), "file")).toBe("");
  });

  test("nothing is said beside an error, which speaks for itself, or where the file held no number", () => {
    const none = held([sum], { B1: { error: "#NAME?" } });
    expect(movedWords(none, shows({ B1: 5 }), "file")).toBe("");
    expect(movedWords(held([sum], {}), shows({ B1: 5 }), "file")).toBe("");
    expect(movedWords(held([sum], { B1: 5 }), shows({ B1: { error: "#VALUE!" } }), "file")).toBe("");
  });

  test.each([
    ["1.0.0", `Version 1.0.0 computed the file, this is ${version}: CHANGELOG.md says which results moved, and which were wrong.`], // prettier-ignore
    [version, OTHERWISE],
  ])("go with the version that computed them, as ABOUT had it: %s", (by, words) => {
    const cells: SheetCell[] = [sum, { at: "C1", formula: "=DUCT.ABOUT()" }];
    const before = { B1: 2, C1: "Duct Ledger", D1: "version", E1: by };
    expect(movedWords(held(cells, before), shows({ B1: 1 }), "file")).toMatch(new RegExp(`in the file\\. ${words.replaceAll(".", "\\.")}$`)); // prettier-ignore
  });
});
