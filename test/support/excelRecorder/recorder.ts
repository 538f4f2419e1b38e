import { isEditing } from "../../../src/hosts/excel/faults";
import { played } from "./check";
import type { Calculate } from "./enter";
import { enter } from "./enter";
import { type Batch, clientObject } from "./object";
import { areaOn } from "./places";
import { playBook } from "./playBook";
import { Refusal } from "./refuse";
import { type BookState, newSheet, type SheetState } from "./state";

/** How the recorder's Excel behaves; a test may change it on the way. */
interface Behaviour {
  calculate: Calculate;
  spilledFormulas: "anchor's" | "values";
  /** Called before each request is carried out, with its number; what it throws is Excel's refusal, half of the request being done. */
  beforeSync: (request: number) => void;
}

export interface Recorder {
  readonly book: BookState;
  readonly behaviour: Behaviour;
  readonly requests: () => number;
  readonly opened: string[]; // what createWorkbook was given
  readonly tell: (event: "onChanged" | "onCalculated" | "onSelectionChanged") => Promise<void>;
  readonly listeners: () => number;
  readonly fill: (sheet: string, at: string, rows: unknown[][]) => SheetState; // what the user typed
}

interface Context {
  readonly workbook: unknown;
  readonly sync: () => Promise<void>;
  readonly isIdle: () => boolean; // the recorder's own: whether nothing waits to be sent
}

type Work = (context: Context) => Promise<unknown>;

interface Options {
  readonly delayForCellEdit: boolean;
}

const MOST_BYTES = 5_000_000; // in one request or answer, on the web

/** DUCT functions are known and answer 1, all other formulas answer 0. */
export const answersOnes: Calculate = (formula) => (/DUCT[._]/i.test(formula) ? 1 : 0);
export const knowsNone: Calculate = (formula) => (/DUCT[._]/i.test(formula) ? "#NAME?" : 0);

const isSetSupported = (name: string, version: string): boolean =>
  name === "ExcelApi" && Number(version.replace(/^1\./, "")) <= played.level;

/** A workbook with one blank sheet behind a strict `Excel`, which is put into the global scope; of ExcelApi 1.12 where nothing else is said. */
export function record(level = 12): Recorder {
  played.level = level;
  const book: BookState = {
    ...{ name: "Mine.xlsx", sheets: [], names: [], isLocked: false, selection: null!, made: 0 },
    ...{ calculationMode: "Automatic", usePrecisionAsDisplayed: false, iterates: false, countedBy: null },
  };
  book.selection = { sheet: newSheet(book, "Sheet1"), areas: ["A1"] };
  const behaviour: Behaviour = { calculate: answersOnes, spilledFormulas: "values", beforeSync: () => undefined };
  const calculate: Calculate = (...call) => behaviour.calculate(...call);
  const listeners: { event: string; handler: () => Promise<void> }[] = [];
  const opened: string[] = [];
  let requests = 0;

  const newContext = (waits = false): Context => {
    const queue: (() => void)[] = [];
    const batch: Batch = {
      played: playBook(book, {
        calculate,
        get spilledFormulas() {
          return behaviour.spilledFormulas;
        },
      }),
      queue,
      addHandler: (_, event, handler) => {
        const listener = { event, handler };
        listeners.push(listener);
        return () => void listeners.splice(listeners.indexOf(listener), 1);
      },
      context: null,
      bytes: 0,
      turn: 0,
    };
    const context: Context = {
      workbook: clientObject(batch, "Workbook", () => book),
      sync: () => sync(batch, waits),
      isIdle: () => queue.length === 0,
    };
    batch.context = context;
    return context;
  };

  /** While a cell is being edited nothing of a request is done: it is refused, or waits where its maker said so. */
  const refusalOf = async (waits: boolean): Promise<unknown> => {
    try {
      behaviour.beforeSync(++requests);
      return null;
    } catch (thrown) {
      if (!isEditing(thrown) || !waits) return thrown;
    }
    await new Promise((resolve) => setTimeout(resolve));
    return refusalOf(waits);
  };

  const sync = async (batch: Batch, waits: boolean): Promise<void> => {
    await Promise.resolve();
    const works = batch.queue.splice(0);
    batch.bytes = 0;
    const fault = await refusalOf(waits);
    if (fault !== null) works.length = isEditing(fault) ? 0 : Math.ceil(works.length / 2);
    for (const work of works) work(); // what was done before a refusal stays done, as in Excel
    batch.turn++;
    if (fault !== null) throw fault as Error;
    if (batch.bytes > MOST_BYTES)
      throw new Refusal("RequestPayloadSizeLimitExceeded", "the request or its answer is too large");
  };

  const run = async (first: Context | Options | Work, second?: Work): Promise<unknown> => {
    const [given, work] = typeof first === "function" ? [{ delayForCellEdit: false }, first] : [first, second!];
    const context = "delayForCellEdit" in given ? newContext(given.delayForCellEdit) : given;
    const result = await work(context);
    if (!context.isIdle()) await context.sync(); // Office.js sends what is left
    return result;
  };

  Object.assign(globalThis, {
    Office: { context: { requirements: { isSetSupported } } },
    Excel: { run, createWorkbook: async (base64: string) => void opened.push(base64) },
  });
  return {
    book,
    behaviour,
    requests: () => requests,
    opened,
    tell: async (event) => {
      for (const listener of [...listeners]) if (listener.event === event) await listener.handler();
    },
    listeners: () => listeners.length,
    fill: (name, at, rows) => {
      const sheet = book.sheets.find((each) => each.name === name) ?? newSheet(book, name);
      enter(book, areaOn(sheet, at), rows, calculate);
      return sheet;
    },
  };
}

/** All that stands in a workbook, as plain data that two moments can be compared by. */
export const snapshot = ({ book }: Recorder): unknown =>
  JSON.parse(
    JSON.stringify({
      sheets: book.sheets.map(({ cells, flags, tables, widths, heights, marks, filteredRows, merged, ...rest }) => ({
        ...rest,
        cells: [...cells].sort(([one], [other]) => (one < other ? -1 : 1)),
        flags: flags.map(({ range, type, rule }) => ({ range, type, rule })),
        tables: tables.map(({ name, range }) => ({ name, range })),
        rest: [[...widths], [...heights], [...marks], [...filteredRows], merged],
      })),
      names: book.names,
      selection: { sheet: book.selection.sheet.name, areas: book.selection.areas },
    }),
  );
