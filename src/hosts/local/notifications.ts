import { itemAt } from "../../reference/itemAt";

/** What the grid wants to tell or ask, shown on the page: its own way is a dialog window, which stops everything. */
export interface Notifications {
  /** Without taking the focus: whoever has just pasted types on, or undoes it. */
  readonly notifyUser: (notification: { readonly text: string }) => void;
  readonly raiseError: (text: string, then?: () => void) => void;
  readonly askConfirmation: (question: string, confirm: () => void, cancel?: () => void) => void;
}

/** The bar on the page with a sentence and its buttons. It stays until answered; Escape gives the last answer. */
export interface NoticeBar extends Notifications {
  /** Asks, and gives back which of the answers was chosen, by its index. The last one changes nothing. */
  readonly ask: (question: string, answers: readonly string[]) => Promise<number>;
  /** Asks without taking the focus from whoever is typing; F6 goes there. */
  readonly askAside: (question: string, answers: readonly string[]) => Promise<number>;
  readonly say: (sentence: string) => void;
  /** Takes a sentence away that was only said; a question stays. */
  readonly quiet: () => void;
}

interface Answer {
  readonly label: string;
  readonly act: () => void;
}

/**
 * @param goBack gives the focus back to the button or the frame that asked, or to the grid where that is null
 */
export function notificationsIn(bar: HTMLElement, goBack: (asker: HTMLElement | null) => void): NoticeBar {
  let unanswered: (() => void) | null = null;
  let isQuestion = false;
  const show = (text: string, answers: readonly Answer[], focused: number | null): void => {
    unanswered?.(); // a question that another pushes away is answered by its last answer
    const asker = (focused === null ? null : document.activeElement?.closest<HTMLElement>("button, iframe")) ?? null;
    const sentence = document.createElement("p");
    sentence.textContent = text;
    const close = (act: () => void) => (): void => {
      unanswered = null;
      const focusGoes = bar.contains(document.activeElement);
      bar.hidden = true;
      if (asker !== null || focusGoes) goBack(asker);
      act();
    };
    const last = itemAt(answers, answers.length - 1).act;
    unanswered = last;
    isQuestion = answers.length > 1;
    const buttons = answers.map(({ label, act }) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = label;
      button.addEventListener("click", close(act));
      return button;
    });
    bar.onkeydown = (event) => {
      if (event.key === "Escape") close(last)();
    };
    bar.replaceChildren(sentence, ...buttons);
    bar.hidden = false;
    if (focused !== null) buttons[focused]?.focus();
  };
  const nothing = (): void => undefined;
  const ask = (question: string, answers: readonly string[], focused: number | null): Promise<number> =>
    new Promise((resolve) =>
      show(
        question,
        answers.map((label, index) => ({ label, act: () => resolve(index) })),
        focused,
      ),
    );
  const say = (sentence: string, then = nothing): void => show(sentence, [{ label: "Close", act: then }], 0);
  return {
    notifyUser: ({ text }) => show(text, [{ label: "Close", act: nothing }], null),
    raiseError: say,
    askConfirmation: (question, confirm, cancel = nothing) =>
      show(
        question,
        [
          { label: "Yes", act: confirm },
          { label: "No", act: cancel },
        ],
        0,
      ),
    ask: (question, answers) => ask(question, answers, answers.length - 1),
    askAside: (question, answers) => ask(question, answers, null),
    say: (sentence) => say(sentence),
    quiet: () => {
      if (!isQuestion) bar.hidden = true;
    },
  };
}
