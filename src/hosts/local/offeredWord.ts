/** The word that the open list under the typed text offers to Tab. */
export interface Offered {
  readonly word: string;
  readonly place: number; // in the list, from 0
}

/**
 * The shortest of the offered words that goes on as what is typed begins. A word that only resembles it is offered to the
 * arrow keys alone: Tab must never put a name in place of a number.
 */
export function offeredWord(typed: string, words: readonly string[]): Offered | null {
  const begins = typed.toLowerCase();
  const longer = words.filter((word) => word.length > typed.length && word.toLowerCase().startsWith(begins));
  const [word] = longer.sort((one, other) => one.length - other.length);
  return typed.trim() === "" || word === undefined ? null : { word, place: words.indexOf(word) };
}

/** What the grid shows of it now; null where it has chosen a word itself, or the arrow keys have. */
export function offeredIn(sheet: HTMLElement): Offered | null {
  const list = sheet.querySelector(".o-autocomplete-dropdown");
  if (list === null || list.querySelector(".o-autocomplete-value-focus") !== null) return null;
  const words = [...list.querySelectorAll(".o-autocomplete-value")].map((word) => word.textContent.trim());
  return offeredWord(composerIn(sheet)?.textContent ?? "", words);
}

const composerIn = (sheet: HTMLElement): Element | null => {
  const active = document.activeElement;
  return active !== null && sheet.contains(active) ? active : null;
};
