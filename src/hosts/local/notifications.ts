/** What the grid wants to tell or ask, shown on the page: its own way is a dialog window, which stops everything. */
export interface Notifications {
  readonly notifyUser: (notification: { readonly text: string }) => void;
  readonly raiseError: (text: string, then?: () => void) => void;
  readonly askConfirmation: (question: string, confirm: () => void, cancel?: () => void) => void;
}

/** A bar on the page with a sentence and its buttons. It stays until answered. */
export function notificationsIn(bar: HTMLElement, backToGrid: () => void): Notifications {
  const show = (text: string, answers: readonly { readonly label: string; readonly act: () => void }[]): void => {
    const sentence = document.createElement("p");
    sentence.textContent = text;
    const buttons = answers.map(({ label, act }) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = label;
      button.addEventListener("click", () => {
        bar.hidden = true;
        act();
        backToGrid();
      });
      return button;
    });
    bar.replaceChildren(sentence, ...buttons);
    bar.hidden = false;
    buttons[0]?.focus();
  };
  const nothing = (): void => undefined;
  return {
    notifyUser: ({ text }) => show(text, [{ label: "Close", act: nothing }]),
    raiseError: (text, then = nothing) => show(text, [{ label: "Close", act: then }]),
    askConfirmation: (question, confirm, cancel = nothing) =>
      show(question, [
        { label: "Yes", act: confirm },
        { label: "No", act: cancel },
      ]),
  };
}
