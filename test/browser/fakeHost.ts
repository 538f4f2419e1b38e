import type { Calculated } from "../../src/sheets/calculated";

/** How the fake sheet answers; what is left out goes well. */
export interface FakeAnswers {
  readonly filled?: boolean; // the selected cell is
  readonly adds?: "refused" | "slowly" | "fails";
  readonly opens?: "asked" | "refused"; // whether the sheet is one that is asked to open a copy
}

/**
 * A script that puts a fake sheet where the pane looks for the local one: it holds a book typed by hand, or the one that
 * `window.hold` was given since, and writes down what it is asked, in `window.asked`.
 */
export const fakeHost = (book: Calculated, answers: FakeAnswers = {}): string =>
  `(${inPage.toString()})(${JSON.stringify(held(book))}, ${JSON.stringify(answers)})`;

/** A book as it goes into the page. */
export const held = ({ workbook, shown }: Calculated): HeldBook => ({
  workbook,
  shown: [...shown].map(([sheet, cells]) => [sheet, [...cells]]),
});

export interface HeldBook {
  readonly workbook: unknown;
  readonly shown: [string, [string, unknown][]][];
}

/** Runs in the page; it can use nothing from around it. */
function inPage(first: HeldBook, answers: FakeAnswers): void {
  const asked: unknown[] = [];
  const readings = { count: 0 };
  const followers: ((what: string) => void)[] = [];
  let book = first;
  const tell = (...what: unknown[]): number => asked.push(what);
  interface FakeWatch {
    progress: (done: number, of: number, what: string) => void;
    signal: AbortSignal;
  }
  const add = async (order: { sheets: string[] }, { progress, signal }: FakeWatch): Promise<unknown> => {
    tell("addSheets", order);
    if (answers.adds === "fails") throw new Error("the workbook is protected");
    if (answers.adds === "refused") return { added: false, why: "this book was never a club copy" };
    if (answers.adds === "slowly") {
      for (let done = 1; ; done++) {
        progress(Math.min(done, 999), 1000, "Writing the sheets"); // until somebody cancels it
        await new Promise((next) => setTimeout(next, 20));
        if (signal.aborted) return { added: false, why: "cancelled: nothing was added" };
      }
    }
    return { added: true, sheets: order.sheets };
  };
  const copy = async (kind: string): Promise<unknown> => {
    tell("shareCopy", kind);
    return {
      made: true,
      name: "Budget for the club.xlsx",
      live: 412,
      fixed: 1,
      untranslated: ["Flow!B12: SOLVE finds its answer by trying"],
      unchecked: [],
      ...(answers.opens !== undefined && {
        opening: {
          refused: answers.opens === "asked" ? null : "Excel refused: there was an internal error.",
          file: { name: "club-copy.xlsx", bytes: new Uint8Array([80, 75, 3, 4]) },
        },
      }),
    };
  };
  Object.assign(window, {
    asked,
    hold: (next: HeldBook) => (book = next),
    readings,
    tellAll: (what: string) => followers.forEach((changed) => changed(what)),
    ductLedgerHost: {
      kind: "local",
      selectionAddress: async () => "Sheet1!B4",
      insert: async (content: unknown, over?: string) => {
        tell("insert", content, over);
        if (answers.filled === true && over === undefined) return { written: false, at: "Sheet1!B4", why: "filled" };
        return { written: true, at: "B4", isBlocked: false };
      },
      addSheets: add,
      openExample: async (units: string) => {
        tell("openExample", units);
        return answers.adds === "refused"
          ? { added: false, why: "you kept the budget that is open" }
          : { added: true, sheets: ["Runs"] };
      },
      readBook: async () => {
        readings.count++;
        const shown = new Map(book.shown.map(([sheet, cells]) => [sheet, new Map(cells)]));
        return { workbook: book.workbook, shown };
      },
      goTo: async (sheet: string, at: string) => void tell("goTo", sheet, at),
      shareCopy: copy,
      follow: (changed: (what: string) => void) => {
        followers.push(changed);
        return () => undefined;
      },
    },
  });
}
