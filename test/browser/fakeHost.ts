import type { Calculated } from "../../src/sheets/calculated";

/** How the fake sheet answers; what is left out goes well. */
export interface FakeAnswers {
  readonly filled?: boolean; // the selected cell is
  readonly adds?: "refused" | "slowly" | "fails";
  readonly repair?: { repaired: number; stillWrong: string[]; protectedSheets: string[] };
}

/**
 * A script that puts a fake sheet where the pane looks for the local one: it holds a book typed by hand and writes down
 * what it is asked, in `window.asked`.
 */
export function fakeHost({ workbook, shown }: Calculated, answers: FakeAnswers = {}): string {
  const data = { workbook, shown: [...shown].map(([sheet, cells]) => [sheet, [...cells]]), answers };
  return `(${inPage.toString()})(${JSON.stringify(data)})`;
}

interface Data {
  workbook: unknown;
  shown: [string, [string, unknown][]][];
  answers: FakeAnswers;
}

/** Runs in the page; it can use nothing from around it. */
function inPage({ workbook, shown, answers }: Data): void {
  const asked: unknown[] = [];
  const listeners = new Set<() => void>();
  const tell = (...what: unknown[]): number => asked.push(what);
  interface FakeWatch {
    progress: (done: number, of: number, what: string) => void;
    signal: AbortSignal;
  }
  const add = async (what: string, order: { sheets: string[] }, { progress, signal }: FakeWatch): Promise<unknown> => {
    tell(what, order);
    if (answers.adds === "fails") throw new Error("the workbook is protected");
    if (answers.adds === "refused") return { added: false, why: "this book was never a club copy" };
    if (answers.adds === "slowly") {
      for (let done = 1; done < 1000; done++) {
        progress(done, 1000, "Writing the sheets");
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
    };
  };
  Object.assign(window, {
    asked,
    change: () => listeners.forEach((changed) => changed()),
    ductLedgerHost: {
      kind: "local",
      selectionAddress: async () => "B4",
      isSelectionEmpty: async () => answers.filled !== true,
      insert: async (content: unknown, overwrite: boolean) => {
        tell("insert", content, overwrite);
        if (answers.filled === true && !overwrite) return { written: false, at: "B4", why: "filled" };
        return { written: true, at: "B4" };
      },
      addSheets: (order: { sheets: string[] }, watch: FakeWatch) => add("addSheets", order, watch),
      readBook: async () => ({ workbook, shown: new Map(shown.map(([sheet, cells]) => [sheet, new Map(cells)])) }),
      goTo: async (sheet: string, at: string) => void tell("goTo", sheet, at),
      shareCopy: copy,
      repair: async () => {
        tell("repair");
        return answers.repair ?? { repaired: 3, stillWrong: [], protectedSheets: [] };
      },
      revive: (watch: FakeWatch) => add("revive", { sheets: ["Runs", "Budget"] }, watch),
      follow: (changed: () => void) => {
        listeners.add(changed);
        return () => listeners.delete(changed);
      },
    },
  });
}
