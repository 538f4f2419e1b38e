import type { GridModel } from "./grid";

/** What this needs to know of the place where one types. */
interface Typing {
  readonly isTyping: () => boolean;
  readonly afterEachKey: (then: () => void) => void;
}

/** A row that is filled with Tab: where it was begun, and how far it went. */
interface Filled {
  readonly row: number;
  readonly from: number;
  readonly to: number;
}

/**
 * After a row was filled with Tab, Enter begins the next one where this one began, as in other spreadsheets. The grid goes
 * straight down, and whoever typed a table went back by hand, or typed over the formula left of it. Where nothing is being
 * typed, Enter begins that.
 */
export function enterReturns(sheet: HTMLElement, model: () => GridModel, typing: Typing): void {
  let filled: Filled | null = null;
  let goBack = (): void => undefined;
  const pressed = ({ key, isTrusted, shiftKey, ctrlKey, altKey, metaKey }: KeyboardEvent): void => {
    if (!isTrusted || shiftKey || ctrlKey || altKey || metaKey) return;
    const { col, row } = model().getters.getActivePosition();
    const goesOn = filled !== null && filled.row === row && col >= filled.from && col <= filled.to;
    if (key === "Tab") filled = { row, from: goesOn ? filled!.from : col, to: col + 1 };
    if (key !== "Enter" || !goesOn || !typing.isTyping()) return;
    const { from } = filled!;
    goBack = () => {
      const now = model().getters.getActivePosition();
      if (now.col === col && now.row === row + 1) model().selection.selectCell(from, row + 1); // not where Enter took an offered word
    };
  };
  sheet.addEventListener("keydown", pressed, true);
  typing.afterEachKey(() => {
    goBack();
    goBack = () => undefined;
  });
}
