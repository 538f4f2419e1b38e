import type { GridDesk } from "./gridDesk";
import type { Keeper } from "./keeper";
import type { OpenBook } from "./openBook";
import type { NoticeBar } from "./notifications";
import type { SharedStore } from "./sharedStore";

/** What the page says about the budget that is open: where it is kept, or why it is not. */
export interface KeptLine {
  readonly say: (words: string, state: KeptState) => void;
}

export type KeptState = "none" | "waiting" | "kept" | "not kept";

/** The open budget as the page handles it: kept in the browser after each change, replaced only when its user agrees. */
export interface Workspace {
  readonly file: () => string;
  readonly touched: () => void;
  /** Opens another budget in place of this one; asks where work would be lost. */
  readonly open: (book: OpenBook, what: string) => Promise<boolean>;
  readonly saved: () => void; // a file has it now
  readonly forget: (instead: OpenBook) => Promise<void>;
}

interface OnDesk {
  /** Hands the open budget to the browser's downloads; false where it can't be a file, which is said then. */
  readonly save: () => Promise<boolean>;
}

const KEEPING = "Keeping ...";
const KEPT = "Kept in this browser.";
const FULL = "Not kept: this browser's store is full or blocked, so save a file.";
const LEFT = "Not kept: this browser keeps what another tab made of it, so save a file.";
const UNREAD =
  "Not kept: what this browser has from before can't be read. It stays until you forget it; save a file meanwhile.";

/**
 * @param atRisk told whenever it changes whether leaving the page would lose work: changes that neither a file nor this
 *   browser has
 */
export function workspaceOf(
  desk: Pick<GridDesk, "workbook" | "show" | "focus"> & OnDesk,
  keeper: Keeper,
  bar: Pick<NoticeBar, "ask" | "askAside" | "quiet">,
  line: KeptLine,
  atRisk: (is: boolean) => void,
  shared: Pick<SharedStore, "isThere" | "forget">,
  first: OpenBook,
  found: "kept" | "nothing" | "unreadable" | "failed",
): Workspace {
  let book = { file: first.file, unsaved: first.unsaved };
  let opening = false;
  let left = found === "unreadable"; // what stands in the store is left alone
  let state: KeptState = "none";
  let asked = false; // whether what stands here is to be kept once more
  let work: Promise<void> | null = null; // until all that was asked for is kept
  let savedAs = "";
  const starts = {
    kept: KEPT,
    nothing: "What you change will be kept in this browser.",
    unreadable: UNREAD,
    failed: FULL,
  };
  say(starts[found], found === "kept" ? "kept" : found === "nothing" ? "none" : "not kept");

  function say(words: string, now: KeptState): void {
    state = now;
    line.say(words, now);
    tellRisk();
  }

  function tellRisk(): void {
    atRisk(book.unsaved && state !== "kept");
  }

  /** Begins at once; what changes while the store writes is kept after that. */
  function keep(): Promise<void> {
    asked = true;
    if (left) return Promise.resolve();
    say(KEEPING, "waiting");
    work ??= keepAll().finally(() => {
      work = null;
    });
    return work;
  }

  async function keepAll(): Promise<void> {
    while (asked && !left) await keepOnce(false);
  }

  async function keepOnce(overOthers: boolean): Promise<void> {
    await Promise.resolve(); // the command that asked for it is done then
    asked = false;
    const outcome = await attempt(overOthers);
    if (outcome === "parted") void settleWithOtherTab();
    else if (!asked && outcome === "kept") say(savedAs === "" ? KEPT : `Saved as ${savedAs}. ${KEPT}`, "kept");
    else if (!asked) say(FULL, "not kept");
  }

  async function attempt(overOthers: boolean): ReturnType<Keeper["keep"]> {
    try {
      return await keeper.keep({ workbook: desk.workbook(), ...book }, overOthers);
    } catch (error) {
      console.error(error); // it could not be described
      return "failed";
    }
  }

  async function settleWithOtherTab(): Promise<void> {
    left = true;
    say(LEFT, "not kept");
    const answer = await bar.askAside(
      "Another tab has changed or cleared the budget that this browser keeps. What you change here is not kept.",
      ["Keep mine instead", "Show the other here", "Leave it"],
    );
    if (answer === 2) return;
    left = false;
    if (answer === 0) {
      say(KEEPING, "waiting");
      await keepOnce(true);
      return asked ? keep() : undefined;
    }
    const other = await keeper.load();
    if (typeof other === "object") {
      await replace(other);
      say(KEPT, "kept");
    } else say("The other tab has cleared it: what you change here next will be kept.", "none");
  }

  async function replace(next: OpenBook): Promise<void> {
    opening = true;
    try {
      await desk.show(next.workbook);
    } finally {
      opening = false;
    }
    asked = false;
    book = { file: next.file, unsaved: next.unsaved };
    savedAs = "";
    bar.quiet(); // it was said of another book, or of a file that was none
    desk.focus();
  }

  async function forgetShared(): Promise<void> {
    if (!(await shared.isThere().catch(() => false))) return;
    const answer = await bar.ask(
      "An earlier version kept one budget for all folders of this address. This folder has forgotten it; another folder may still want it.",
      ["Forget it there too", "Leave it"],
    );
    if (answer === 0) await shared.forget();
  }

  const agreed = async (question: string, yes: string): Promise<boolean> =>
    !book.unsaved || (await bar.ask(question, [yes, "Keep it"])) === 0;

  return {
    file: () => book.file,
    touched: () => {
      if (opening) return;
      book = { ...book, unsaved: true };
      savedAs = "";
      tellRisk();
      void keep();
    },
    open: async (next, what) => {
      if (book.unsaved) {
        const question = `${what} takes the place of the budget that is open, and no file has its last changes.`;
        const answer = await bar.ask(question, ["Save it first", "Replace it", "Keep it"]);
        if (answer === 2 || (answer === 0 && !(await desk.save()))) return false;
      }
      await replace(next);
      await keep();
      return true;
    },
    saved: () => {
      book = { ...book, unsaved: false };
      savedAs = book.file;
      if (left) say(`Saved as ${savedAs}. ${found === "unreadable" ? UNREAD : LEFT}`, "not kept");
      else void keep();
    },
    forget: async (instead) => {
      if (!(await agreed("Forgetting clears the budget that is open, and no file has its last changes.", "Forget it")))
        return;
      const forgotten = await keeper.forget();
      await replace(instead);
      left = false;
      if (forgotten) say("Forgotten. What you change next will be kept in this browser.", "none");
      else say(FULL, "not kept");
      await forgetShared();
    },
  };
}
