import { calculatedOf } from "./calculated";
import type { GridDesk } from "./gridDesk";
import type { Keeper, OpenBook } from "./keeper";
import type { NoticeBar } from "./notifications";

/** What the page says about the budget that is open: where it is kept, or why it is not. */
export interface KeptLine {
  readonly say: (words: string, state: "none" | "waiting" | "kept" | "not kept") => void;
}

/** The open budget as the page handles it: kept in the browser after each change, replaced only when its user agrees. */
export interface Workspace {
  readonly file: () => string;
  readonly touched: () => void;
  /** Opens another budget in place of this one; asks where work would be lost. */
  readonly open: (book: OpenBook, verb: string) => Promise<boolean>;
  readonly saved: () => void; // a file has it now
  readonly forget: (instead: OpenBook) => Promise<void>;
  readonly keepNow: () => Promise<void>;
}

const PAUSE = 400; // ms after a change until it is kept

const KEPT = "Kept in this browser.";
const FULL = "Not kept: this browser's store is full or blocked, so save a file.";
const LEFT = "Not kept: this browser keeps what another tab made of it, so save a file.";
const UNREAD =
  "Not kept: what this browser has from before can't be read. It stays until you forget it; save a file meanwhile.";

export function workspaceOf(
  desk: Pick<GridDesk, "model" | "show" | "focus">,
  keeper: Keeper,
  bar: Pick<NoticeBar, "ask" | "askAside">,
  line: KeptLine,
  first: OpenBook,
  found: "kept" | "nothing" | "unreadable" | "failed",
): Workspace {
  let book = { file: first.file, unsaved: first.unsaved };
  let opening = false;
  let left = found === "unreadable"; // what stands in the store is left alone
  let timer: ReturnType<typeof setTimeout> | undefined;
  let savedAs = "";
  const starts = {
    kept: KEPT,
    nothing: "What you change will be kept in this browser.",
    unreadable: UNREAD,
    failed: FULL,
  };
  line.say(starts[found], found === "kept" ? "kept" : found === "nothing" ? "none" : "not kept");

  async function keep(overOthers = false): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    if (left) return;
    const { workbook } = calculatedOf(desk.model());
    const outcome = await keeper.keep({ workbook, ...book }, overOthers);
    if (timer !== undefined) return; // changed meanwhile: the next one tells
    if (outcome === "kept") line.say(savedAs === "" ? KEPT : `Saved as ${savedAs}. ${KEPT}`, "kept");
    else if (outcome === "failed") line.say(FULL, "not kept");
    else await settleWithOtherTab();
  }

  async function settleWithOtherTab(): Promise<void> {
    left = true;
    line.say(LEFT, "not kept");
    const answer = await bar.askAside(
      "Another tab has changed or cleared the budget that this browser keeps. What you change here is not kept.",
      ["Keep mine instead", "Show the other here", "Leave it"],
    );
    if (answer === 2) return;
    left = false;
    if (answer === 0) return keep(true);
    const other = await keeper.load();
    if (typeof other === "object") {
      await replace(other);
      line.say(KEPT, "kept");
    } else line.say("The other tab has cleared it: what you change here next will be kept.", "none");
  }

  async function replace(next: OpenBook): Promise<void> {
    opening = true;
    try {
      await desk.show(next.workbook);
    } finally {
      opening = false;
    }
    clearTimeout(timer);
    book = { file: next.file, unsaved: next.unsaved };
    savedAs = "";
    desk.focus();
  }

  const agreed = async (question: string, yes: string): Promise<boolean> =>
    !book.unsaved || (await bar.ask(question, [yes, "Keep it"])) === 0;

  return {
    file: () => book.file,
    touched: () => {
      if (opening) return;
      book = { ...book, unsaved: true };
      savedAs = "";
      if (left) return;
      clearTimeout(timer);
      timer = setTimeout(() => void keep(), PAUSE);
      line.say(KEPT, "waiting");
    },
    open: async (next, verb) => {
      if (
        !(await agreed(
          `${verb} takes the place of the budget that is open, and no file has its last changes.`,
          "Replace it",
        ))
      )
        return false;
      await replace(next);
      await keep();
      return true;
    },
    saved: () => {
      book = { ...book, unsaved: false };
      savedAs = book.file;
      if (left) line.say(`Saved as ${savedAs}. ${found === "unreadable" ? UNREAD : LEFT}`, "not kept");
      else void keep();
    },
    forget: async (instead) => {
      if (!(await agreed("Forgetting clears the budget that is open, and no file has its last changes.", "Forget it")))
        return;
      const forgotten = await keeper.forget();
      await replace(instead);
      left = false;
      if (forgotten) line.say("Forgotten. What you change next will be kept in this browser.", "none");
      else line.say(FULL, "not kept");
    },
    keepNow: async () => {
      if (timer !== undefined) await keep();
    },
  };
}
