/** Cells computed after a change, the shown sheet's first: whatever is done meanwhile, a cell shows what it shows in a book that is opened anew. */
import fc from "fast-check";
import { computedByLibrary, gridOf, setUpGrid, shownOn, step } from "../gridOfOurs";
import type { GridModel } from "../../../../src/hosts/local/grid";
import type { WithFinishing } from "../../../../src/hosts/local/evaluation/evaluateShownFirst";
import type { Workbook } from "../../../../src/sheets/workbook";
import { lawRuns } from "../../../support/lawRuns";
import { sheetOf } from "../../../support/sheetOf";

beforeAll(setUpGrid);

const SHEETS = ["One", "Two", "Three"] as const;
const ROWS = 9;

/** What fills cells stands in columns of its own, with room below; a formula reads from columns left of its own, so none is circular. */
const LEFT_OF: Readonly<Record<string, string>> = { C: "A", E: "AC", G: "ACE", K: "ACEG" };

const sheet = fc.constantFrom(...SHEETS);
const row = fc.integer({ min: 1, max: 5 });

const NAMES = [{ name: "First", sheet: "Two", at: `C1:C${ROWS}` }, { name: "Second", sheet: "One", at: `E2:E${ROWS}` }]; // prettier-ignore

const formulaIn = (column: string): fc.Arbitrary<string> =>
  fc
    .record({ from: sheet, also: sheet, read: fc.constantFrom(...LEFT_OF[column]!), row, kind: fc.nat({ max: 12 }) })
    .map(({ from, also, read, row, kind }) => {
      const cell = `${from}!${read}${row}`;
      const range = `${from}!${read}${row}:${read}${ROWS}`;
      return [
        `=SEQUENCE(${also}!A${row})`,
        `=SEQUENCE(MIN(5,COUNT(${range})+1),1,SUM(${range}))`,
        `=TOY.TWICE(${from}!A1:A4)`,
        `=TOY.TWICE(${range})`,
        `=${cell}`,
        `=${cell}+${also}!A${row}`,
        `=SUM(${range})`,
        `=IF(${also}!A${row}>3,${range},${cell})`,
        `=SUM(INDIRECT("${range}"))`,
        `=MIN(3,${cell})`, // what reads it often finds it as it was
        `=IF(${cell}>3,"many","few")&COUNT(${range})`,
        `=SUMPRODUCT((${range}>3)*1)`,
        `=SUM(${NAMES.find(({ at }) => at.startsWith(read))?.name ?? range})`,
      ][kind]!;
    });

type Do = (model: GridModel) => void | Promise<void>;

const idOf = (model: GridModel, name: string): string => model.getters.getSheetIdByName(name)!;
const type =
  (on: string, at: string, content: string): Do =>
  (model) =>
    void model.dispatch("UPDATE_CELL", {
      sheetId: idOf(model, on),
      ...o_spreadsheet.helpers.toCartesian(at),
      content,
    });
const finishing = ({ getters }: GridModel) => (getters as unknown as WithFinishing).getFinishing();

const column = fc.constantFrom(...Object.keys(LEFT_OF));
const slot = column.chain((letter) =>
  fc.record({ letter: fc.constant(letter), formula: formulaIn(letter), row: letter === "K" ? row : fc.constant(1) }),
);

interface Change {
  readonly words: string;
  readonly act: Do;
}

const show: fc.Arbitrary<Change> = sheet.map((to) => ({
  words: `show ${to}`,
  act: (model: GridModel) =>
    void model.dispatch("ACTIVATE_SHEET", {
      sheetIdFrom: model.getters.getActiveSheetId(),
      sheetIdTo: idOf(model, to),
    }),
}));

const computeMore: fc.Arbitrary<Change> = fc.nat({ max: 12 }).map((cells) => ({
  words: `compute ${cells} more`,
  act: (model: GridModel) => {
    let left = cells;
    finishing(model).finish(() => left-- <= 0);
  },
}));

const change: fc.Arbitrary<Change> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc
      .tuple(sheet, row, fc.integer({ min: 1, max: 6 }))
      .map(([on, at, value]) => ({ words: `${on}!A${at} ${value}`, act: type(on, `A${at}`, String(value)) })),
  },
  {
    weight: 3,
    arbitrary: fc.tuple(sheet, slot).map(([on, { letter, formula, row: at }]) => ({
      words: `${on}!${letter}${at} ${formula}`,
      act: type(on, `${letter}${at}`, formula),
    })),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(sheet, column, row, fc.constantFrom("", "7")).map(([on, letter, at, text]) => ({
      words: `${on}!${letter}${at} "${text}"`,
      act: type(on, `${letter}${at}`, text),
    })),
  },
  {
    weight: 3,
    arbitrary: show,
  },
  { weight: 2, arbitrary: computeMore },
  {
    weight: 1,
    arbitrary: fc.tuple(sheet, row).map(([on, before]) => ({
      words: `row before ${on}!${before}`,
      act: (model: GridModel) =>
        void model.dispatch("ADD_COLUMNS_ROWS", {
          sheetId: idOf(model, on),
          sheetName: on,
          dimension: "ROW",
          base: before - 1,
          position: "before",
          quantity: 1,
        }),
    })),
  },
  { weight: 1, arbitrary: fc.constant({ words: "undo", act: (model: GridModel) => step(model, "REQUEST_UNDO") }) },
);

const book = fc.tuple(...SHEETS.map(() => fc.array(slot, { minLength: 2, maxLength: 6 }))).map((all): Workbook => ({
  name: "Toy",
  names: NAMES,
  sheets: all.map((slots, index) => {
    const formulas = new Map(slots.map(({ letter, row: at, formula }) => [`${letter}${at}`, formula]));
    const numbers = [1, 2, 3, 4, 5].map((at) => ({ at: `A${at}`, value: ((at * 7 + index) % 6) + 1 }));
    return sheetOf(SHEETS[index]!, [...numbers, ...[...formulas].map(([at, formula]) => ({ at, formula }))]);
  }),
}));

/**
 * All at once, in the library's own way. What INDIRECT and names read it learns only in computing, and where that is computed again
 * later in the same go, it leaves their formula behind. So these are computed once more, when all of it is known.
 */
const openedAnew = (model: GridModel): GridModel =>
  computedByLibrary(() => {
    const anew = new o_spreadsheet.Model(model.exportData());
    const { getters } = anew;
    const cells = getters.getSheetIds().flatMap((id) => getters.getCells(id));
    const late = cells.filter(
      (cell) => cell.isFormula && cell.compiledFormula.toFormulaString(getters).includes("INDIRECT"),
    );
    void anew.dispatch("EVALUATE_CELLS", { cellIds: late.map(({ id }) => id) });
    return anew;
  });

test("a book that is opened shows it, whatever is shown or asked for first", async () => {
  let times = 0;
  await fc.assert(
    fc.asyncProperty(book, fc.array(fc.oneof(show, computeMore), { maxLength: 4 }), async (made, looks) => {
      const model = gridOf(made);
      const anew = openedAnew(model);
      for (const { act } of [{ act: () => undefined }, ...looks]) {
        await act(model);
        if (finishing(model).isLeft()) times++;
        const shown = model.getters.getActiveSheetId();
        expect(shownOn(model, shown)).toEqual(shownOn(anew, shown));
      }
      finishing(model).finish();
      for (const id of model.getters.getSheetIds()) expect(shownOn(model, id)).toEqual(shownOn(anew, id));
    }),
    lawRuns(200),
  );
  expect(times).toBeGreaterThan(0);
});

test("a book that is edited shows what it shows when it is opened anew", async () => {
  let times = 0;
  await fc.assert(
    fc.asyncProperty(book, fc.array(change, { minLength: 1, maxLength: 12 }), async (made, changes) => {
      const model = gridOf(made);
      for (const { act } of changes) {
        await act(model);
        if (finishing(model).isLeft()) times++;
        const shown = model.getters.getActiveSheetId();
        expect(shownOn(model, shown)).toEqual(shownOn(openedAnew(model), shown));
      }
      const anew = openedAnew(model);
      for (const id of model.getters.getSheetIds()) expect(shownOn(model, id)).toEqual(shownOn(anew, id));
    }),
    lawRuns(100),
  );
  expect(times).toBeGreaterThan(0);
});

// Two formulas, the upper one blocked by the lower; once that is gone the upper one fills its cell, and clearing the cell again changes nothing.
test.each([1, 2])("a cell that a formula fills keeps its value when it is cleared (%d times)", (times) => {
  const numbers = [{ at: "K1", formula: "=SEQUENCE(2)" }, { at: "K2", formula: "=SEQUENCE(2)" }]; // prettier-ignore
  const model = gridOf({ name: "Toy", names: [], sheets: [sheetOf("One", []), sheetOf("Two", numbers)] });
  for (let time = 0; time < times; time++) void type("Two", "K2", "")(model);
  expect(shownOn(model, idOf(model, "Two"))).toEqual(["K1 1 ", "K2 2 "]);
});
