/**
 * Every call that the books make, again with its blank cells as each host may send them, and with each cell of its ranges blank
 * in turn: null, 0 and an empty text may be refused, but they never make two different numbers.
 */
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { cellFunctions } from "../../support/cellFunctions";
import { type CallMade, callsMadeBy, gridOfBook } from "../../support/gridOfBook";

const BLANKS = [null, 0, ""] as const;
const FEW = 40; // cells of a range that are all tried; of a longer one the headings, the first rows and a blank one
const ROWS = [0, 1, 2, 30];
const FEWER_ROWS = [0, 1]; // where a call takes a tenth of a second

const functions = new Map(cellFunctions.map(({ name, call }) => [name, call]));

const made = callsMadeBy(() => {
  for (const units of ["IP", "SI"] as const)
    for (const contents of ["example", "empty"] as const)
      gridOfBook(budgetBook({ units, contents, sheets: [...sheetKeys] }, { sheets: [], names: [] }));
});
const calls = [...new Map(made.map((call) => [JSON.stringify(call), call])).values()];

/** The numbers of an answer by their places; none where it is refused. */
function numbersOf({ name, args }: CallMade): Map<string, number> {
  const numbers = new Map<string, number>();
  let answer: unknown[][] = [];
  try {
    answer = functions.get(name)!(...args);
  } catch (error) {
    expect(error).toBeInstanceOf(CustomFunctions.Error);
  }
  answer.forEach((line, row) =>
    line.forEach((cell, column) => void (typeof cell === "number" && numbers.set(`${row},${column}`, cell))),
  );
  return numbers;
}

/** Places at which the same call has different numbers by the way in which a blank comes. */
function differing(variants: readonly CallMade[]): string[] {
  const all = variants.map(numbersOf);
  const places = new Set(all.flatMap((numbers) => [...numbers.keys()]));
  return [...places].filter((place) => {
    const there = new Set(all.flatMap((numbers) => numbers.get(place) ?? []));
    return there.size > 1;
  });
}

const isBlank = (cell: unknown): boolean => cell === null || cell === "";
const isRange = (arg: unknown): arg is unknown[][] => Array.isArray(arg);

/** These read what SOLVE takes by its own reader, and compute much longer. */
const SLOWEST = [
  "CALIBRATE",
  "CALIBRATEDRUNS",
  "CALIBRATEDCURVE",
  "CALIBRATEDUNCERTAINTY",
  "FANCURVE",
  "BUDGETUNCERTAINTY",
];
const SLOW = ["SCENARIOS", "GAINS", "LEAKGAINS", "TOGETHER", "UNCERTAINTY", ...SLOWEST];
const ofSolve = new Set(
  calls
    .filter(({ name }) => name === "SOLVE")
    .flatMap(({ args }) => args.filter(isRange).map((arg) => JSON.stringify(arg))),
);

test("the books call most functions that take cells", () => {
  expect(new Set(calls.map(({ name }) => name)).size).toBeGreaterThan(12);
  expect(calls.length).toBeGreaterThan(50);
});

test("a host that sends every blank as 0, or as an empty text, gets the same numbers", () => {
  const wrong = calls.flatMap((call) => {
    const variants = BLANKS.map((blank) => ({
      ...call,
      args: call.args.map((arg) =>
        isRange(arg) ? arg.map((line) => line.map((cell) => (isBlank(cell) ? blank : cell))) : arg,
      ),
    }));
    return differing(variants).map((place) => `${call.name} at ${place}`);
  });
  expect(wrong).toEqual([]);
});

test.each([...new Set(calls.map(({ name }) => name))])("%s with any one cell blank", (name) => {
  const wrong = calls
    .filter((call) => call.name === name)
    .slice(0, SLOWEST.includes(name) ? 1 : undefined) // the same cells are read in either units
    .flatMap((call) =>
      call.args.flatMap((arg, at) => {
        if (!isRange(arg) || (SLOW.includes(name) && ofSolve.has(JSON.stringify(arg)))) return [];
        const rows =
          arg.length * arg[0]!.length <= FEW
            ? [...arg.keys()]
            : (SLOWEST.includes(name) ? FEWER_ROWS : ROWS).filter((row) => row < arg.length);
        return rows.flatMap((row) =>
          [...arg[0]!.keys()].flatMap((column) => {
            const with_ = (blank: unknown): CallMade => ({
              name,
              args: call.args.map((one, index) =>
                index === at
                  ? arg.map((line, r) => line.map((cell, c) => (r === row && c === column ? blank : cell)))
                  : one,
              ),
            });
            return differing(BLANKS.map(with_)).map((place) => `argument ${at}, ${row},${column}: at ${place}`);
          }),
        );
      }),
    );
  expect(wrong).toEqual([]);
});
