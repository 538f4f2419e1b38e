import type { Shown } from "../../sheets/calculated";
import { bookInFile } from "./files";
import type { OpenBook } from "./openBook";
import { newForm } from "./newForm";
import type { NoticeBar } from "./notifications";
import type { KeptLine, Workspace } from "./workspace";

/** The parts of the page's top line that this file makes work. */
export interface TopBar {
  readonly new: HTMLButtonElement;
  readonly newForm: HTMLFormElement;
  readonly open: HTMLButtonElement;
  readonly chooser: HTMLInputElement;
  readonly save: HTMLButtonElement;
  readonly forget: HTMLButtonElement;
}

/**
 * The line that says where the budget is kept. While it is being kept nothing is read out, nor when it comes out as before.
 *
 * @param where the address whose store it is: another port or folder has its own
 */
export function keptLine(line: HTMLElement, forget: HTMLButtonElement, where: string): KeptLine {
  let settled = "";
  return {
    say: (words, state) => {
      const said = state === "kept" ? words.replace(/\.$/, `, for ${where} only.`) : words;
      line.dataset.state = state;
      line.setAttribute("aria-live", state === "waiting" || said === settled ? "off" : "polite");
      if (state !== "waiting") settled = said;
      if (line.textContent !== said) line.textContent = said;
      forget.hidden = state === "none";
    },
  };
}

/**
 * New, Open, Save and Forget it.
 *
 * @param shown what the cells of the open budget show, once all are computed
 * @returns what opens a file
 */
export function fileButtons(
  bar: TopBar,
  save: () => Promise<unknown>,
  workspace: Workspace,
  notices: Pick<NoticeBar, "say">,
  example: () => OpenBook,
  shown: () => Promise<Shown>,
): (file: File) => void {
  const orSay = (work: Promise<unknown>): void => {
    work.catch((error: unknown) => {
      console.error(error);
      notices.say("That did not work, and what was open is still open.");
    });
  };
  newForm(bar.newForm, bar.new, (workbook) =>
    orSay(workspace.open({ workbook, file: "air-budget.xlsx", unsaved: false }, "A new budget")),
  );
  const openFile = (file: File): void =>
    orSay(
      bookInFile(file).then(async (found) => {
        bar.chooser.value = ""; // so that the same file can be chosen again
        if (typeof found === "string") return notices.say(`${file.name} was not opened. ${found}`);
        if (!(await workspace.open(found.book, "This file"))) return;
        const words = [found.words, found.movedWords(await shown())].filter((sentence) => sentence !== "");
        if (words.length > 0) notices.say(words.join(" "));
      }),
    );
  bar.open.addEventListener("click", () => bar.chooser.click());
  bar.chooser.addEventListener("change", () => {
    const file = bar.chooser.files?.[0];
    if (file !== undefined) openFile(file);
  });
  bar.save.addEventListener("click", () => orSay(save()));
  bar.forget.addEventListener("click", () => orSay(workspace.forget(example())));
  return openFile;
}
