/** Books of three small sheets, drawn by lot, and what may be done with them: what fills cells has room, and nothing rests on itself. */
import fc from "fast-check";
import { step } from "../gridOfOurs";
import type { GridModel } from "../../../../src/hosts/local/grid";
import type { WithFinishing } from "../../../../src/hosts/local/evaluation/evaluateShownFirst";
import type { Workbook } from "../../../../src/sheets/workbook";
import { sheetOf } from "../../../support/sheetOf";

const SHEETS = ["One", "Two", "Three"] as const;
const ROWS = 9;

/** What fills cells stands in columns of its own, with room below; a formula reads from columns left of its own, so none is circular. */
const LEFT_OF: Readonly<Record<string, string>> = { C: "A", E: "AC", G: "ACE", K: "ACEG" };

const sheet = fc.constantFrom(...SHEETS);
const row = fc.integer({ min: 1, max: 5 });

export const NAMES = [{ name: "First", sheet: "Two", at: `C1:C${ROWS}` }, { name: "Second", sheet: "One", at: `E1:E${ROWS}` }]; // prettier-ignore

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

export const idOf = (model: GridModel, name: string): string => model.getters.getSheetIdByName(name)!;
export const type =
  (on: string, at: string, content: string): Do =>
  (model) =>
    void model.dispatch("UPDATE_CELL", {
      sheetId: idOf(model, on),
      ...o_spreadsheet.helpers.toCartesian(at),
      content,
    });
export const finishing = ({ getters }: GridModel) => (getters as unknown as WithFinishing).getFinishing();

const column = fc.constantFrom(...Object.keys(LEFT_OF));
const slot = column.chain((letter) =>
  fc.record({ letter: fc.constant(letter), formula: formulaIn(letter), row: letter === "K" ? row : fc.constant(1) }),
);

export interface Change {
  readonly words: string;
  readonly act: Do;
}

export const show: fc.Arbitrary<Change> = sheet.map((to) => ({
  words: `show ${to}`,
  act: (model: GridModel) =>
    void model.dispatch("ACTIVATE_SHEET", {
      sheetIdFrom: model.getters.getActiveSheetId(),
      sheetIdTo: idOf(model, to),
    }),
}));

export const computeMore: fc.Arbitrary<Change> = fc.nat({ max: 12 }).map((cells) => ({
  words: `compute ${cells} more`,
  act: (model: GridModel) => {
    let left = cells;
    finishing(model).finish(() => left-- <= 0);
  },
}));

type Dimension = "ROW" | "COL";

const insert = (dimension: Dimension): fc.Arbitrary<Change> =>
  fc.tuple(sheet, row).map(([on, before]) => ({
    words: `${dimension} before ${on}!${before}`,
    act: (model) =>
      void model.dispatch("ADD_COLUMNS_ROWS", {
        sheetId: idOf(model, on),
        sheetName: on,
        dimension,
        base: before - 1,
        position: "before",
        quantity: 1,
      }),
  }));

const remove = (dimension: Dimension): fc.Arbitrary<Change> =>
  fc.tuple(sheet, row).map(([on, after]) => ({
    words: `without ${dimension} after ${on}!${after}`,
    act: (model) =>
      void model.dispatch("REMOVE_COLUMNS_ROWS", {
        sheetId: idOf(model, on),
        sheetName: on,
        dimension,
        elements: [after],
      }),
  }));

const cellOfA = (row: number) => ({ left: 0, right: 0, top: row - 1, bottom: row - 1 });

const moveName = fc.tuple(fc.constantFrom(...NAMES), sheet, row).map(([{ name }, on, at]): Change => ({
  words: `${name} for ${on}!A${at}`,
  act: ({ dispatch, getters }) =>
    void dispatch("UPDATE_NAMED_RANGE", {
      oldRangeName: name,
      newRangeName: name,
      ranges: [getters.getRangeDataFromZone(getters.getSheetIdByName(on)!, cellOfA(at))],
    }),
}));

const cutAndPaste = fc.tuple(sheet, row, sheet, row).map(([from, at, to, there]): Change => ({
  words: `${from}!A${at} to ${to}!A${there}`,
  act: (model) =>
    void model.dispatch("MOVE_RANGES", {
      sheetId: idOf(model, from),
      sheetName: from,
      target: [cellOfA(at)],
      targetSheetId: idOf(model, to),
      col: 0,
      row: there - 1,
    }),
}));

const duplicate = sheet.map((on): Change => ({
  words: `${on} once more`,
  act: (model) => {
    const copies = model.getters.getSheetIds().length;
    void model.dispatch("DUPLICATE_SHEET", {
      sheetId: idOf(model, on),
      sheetIdTo: `copy ${copies}`,
      sheetNameTo: `Copy ${copies}`,
    });
  },
}));

/** What was not undone is not done again: the library would do the last step once more where the selection is. */
async function undoAndRedo(model: GridModel): Promise<void> {
  await step(model, "REQUEST_UNDO");
  if (model.getters.canRedo()) await step(model, "REQUEST_REDO");
}

export const change: fc.Arbitrary<Change> = fc.oneof(
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
  { weight: 1, arbitrary: fc.constantFrom("ROW", "COL").chain(insert) },
  { weight: 1, arbitrary: fc.constantFrom("ROW", "COL").chain(remove) },
  { weight: 1, arbitrary: moveName },
  { weight: 1, arbitrary: cutAndPaste },
  { weight: 1, arbitrary: duplicate },
  { weight: 1, arbitrary: fc.constant({ words: "undo", act: (model: GridModel) => step(model, "REQUEST_UNDO") }) },
  { weight: 1, arbitrary: fc.constant({ words: "undo, redo", act: undoAndRedo }) },
);

export const book = fc
  .tuple(...SHEETS.map(() => fc.array(slot, { minLength: 2, maxLength: 6 })))
  .map((all): Workbook => ({
    name: "Toy",
    names: NAMES,
    sheets: all.map((slots, index) => {
      const formulas = new Map(slots.map(({ letter, row: at, formula }) => [`${letter}${at}`, formula]));
      const numbers = [1, 2, 3, 4, 5].map((at) => ({ at: `A${at}`, value: ((at * 7 + index) % 6) + 1 }));
      return sheetOf(SHEETS[index]!, [...numbers, ...[...formulas].map(([at, formula]) => ({ at, formula }))]);
    }),
  }));
