/** A book that is opened, its shown sheet first: answers that cross each other, blanks that are filled, circles. The library, which computes all sheets in passes, says what each cell shows. */
import fc from "fast-check";
import { bookOf, computedByLibrary, gridOf, setUpGrid, sheetOf, shownOn } from "../gridOfOurs";
import type { GridModel } from "../../../../src/hosts/local/grid";
import type { WithFinishing } from "../../../../src/hosts/local/evaluation/evaluateShownFirst";
import type { Sheet, Workbook } from "../../../../src/sheets/workbook";
import { lawRuns } from "../../../support/lawRuns";

beforeAll(() => {
  setUpGrid();
  jest.spyOn(console, "warn").mockImplementation(() => undefined); // of the library, where answers push each other for ever
});

const SIZE = 5;
const LETTERS = "ABCDE";

const at = fc
  .tuple(fc.nat({ max: SIZE - 1 }), fc.nat({ max: SIZE - 1 }))
  .map(([col, row]) => `${LETTERS[col]}${row + 1}`);
const size = fc.integer({ min: 1, max: 3 });

/** Any cell of either sheet may be read, so some rest on themselves. */
const formula = fc
  .record({ on: fc.constantFrom("One", "Two"), read: at, height: size, width: size, kind: fc.nat({ max: 8 }) })
  .map(
    ({ on, read, height, width, kind }) =>
      [
        `=SEQUENCE(${height},${width})`,
        `=SEQUENCE(${height},${width})`,
        `=SEQUENCE(IF(${on}!${read}="",1,2),${width})`,
        `=IFERROR(${on}!${read}+1,7)`,
        `=${on}!${read}`,
        `=SUM(${on}!${read}:${read[0]}${SIZE})`,
        `=TOY.TWICE(${on}!${read}:${read[0]}${SIZE})`,
        `=COUNT(${on}!A1:E5)`,
        `=${on}!${read}:${read[0]}${SIZE}`,
      ][kind]!,
  );

const cells = fc.dictionary(at, formula, { minKeys: 1, maxKeys: 5, noNullPrototype: true });

const named = (name: string, formulas: Readonly<Record<string, string>>): Sheet => ({
  ...sheetOf(Object.entries(formulas).map(([place, text]) => ({ at: place, formula: text }))),
  name,
});

const book = fc.tuple(cells, cells).map(([one, two]): Workbook => bookOf(named("One", one), named("Two", two)));

/** What is seldom drawn: an answer beside the one that is read, which is in its way; one that nobody would expect; one over a cell that it read itself. */
const RARE: readonly Workbook[] = [
  bookOf(named("One", { A1: "=Two!B2" }), named("Two", { B1: "=SEQUENCE(4)", A3: "=SEQUENCE(1,2)" })),
  bookOf(named("One", { A1: "=Two!B2" }), named("Two", { A1: "=SEQUENCE(3)", B1: "=A1:A3" })),
  bookOf(named("One", { A1: "=Two!B2" }), named("Two", { B1: "=SEQUENCE(2+COUNT(B2:B4))" })),
];

const finishing = ({ getters }: GridModel) => (getters as unknown as WithFinishing).getFinishing();

test("law: the sheet that is shown first, and then the other, show what they show when all is computed in passes", () => {
  let [left, circles, inTheWay] = [0, 0, 0];
  fc.assert(
    fc.property(book, fc.boolean(), (made, second) => {
      const model = gridOf(made);
      if (finishing(model).isLeft()) left++;
      const all = computedByLibrary(() => gridOf(made));
      const ids = model.getters.getSheetIds();
      for (const id of second ? [ids[1]!, ids[0]!] : ids) {
        const lines = shownOn(all, id);
        if (lines.some((line) => line.includes("#CYCLE"))) circles++;
        if (lines.some((line) => line.includes("#SPILL"))) inTheWay++;
        expect(shownOn(model, id)).toEqual(lines);
      }
    }),
    { ...lawRuns(400), examples: RARE.map((made) => [made, false] as [Workbook, boolean]) },
  );
  for (const times of [left, circles, inTheWay]) expect(times).toBeGreaterThan(0);
});

// Each cell is one more than the one above it: the last of 4,000 is 4,000. Asked for before the others, it would wait for all of them, more deeply than the stack holds.
test("a sheet that reads the end of a long chain shows it, though it is asked for first", () => {
  const chain = Object.fromEntries(Array.from({ length: 4000 }, (_, index) => [`A${index + 1}`, index === 0 ? "=1" : `=A${index}+1`])); // prettier-ignore
  const model = gridOf(bookOf(named("One", {}), named("Two", chain), named("Three", { A1: "=Two!A4000" })));
  expect(shownOn(model, model.getters.getSheetIds()[2]!)).toEqual(["A1 4000 "]);
});

test("a change that follows at once finds the opened book as it is", () => {
  const model = gridOf(
    bookOf(
      named("One", { B1: "=SUM(Two!B1:B3)" }),
      named("Two", { A1: "=SEQUENCE(3)", B1: "=A1+1", B3: "=A3*2" }),
      named("Three", { A1: "=One!B1+Two!A2" }),
    ),
  );
  const [one, two, three] = model.getters.getSheetIds() as [string, string, string];
  expect(shownOn(model, one)).toEqual(["B1 8 "]); // 1 + 1, a blank, 3 times 2
  expect(finishing(model).isLeft()).toBe(true);
  model.dispatch("UPDATE_CELL", { sheetId: two, col: 0, row: 0, content: "=SEQUENCE(2)" }); // A3 is blank then
  expect(shownOn(model, one)).toEqual(["B1 2 "]);
  expect(shownOn(model, three)).toEqual(["A1 4 "]); // 2 + 2
});

test("a formula that is computed aside finds the sheets that it reads computed", () => {
  const model = gridOf(bookOf(named("One", {}), named("Two", { A1: "=SEQUENCE(3)" })));
  expect(finishing(model).isLeft()).toBe(true);
  const [one] = model.getters.getSheetIds() as [string, string];
  expect(model.getters.evaluateFormula(one, "=Two!A2+Two!A3")).toBe(5); // 2 + 3
});
