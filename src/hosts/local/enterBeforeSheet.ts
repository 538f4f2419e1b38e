/**
 * Whoever goes to another sheet while typing in a cell has entered it, as in other spreadsheets. The grid drops what is being
 * typed there, without a word.
 */
export function enterBeforeSheet(sheet: HTMLElement, enterTyped: () => void): void {
  const byMouse = ({ target }: Event): void => {
    if (target instanceof Element && target.closest(".o-spreadsheet-bottom-bar") !== null) enterTyped();
  };
  const byKey = ({ key, shiftKey }: KeyboardEvent): void => {
    if (shiftKey && (key === "PageUp" || key === "PageDown")) enterTyped();
  };
  sheet.addEventListener("pointerdown", byMouse, true);
  sheet.addEventListener("keydown", byKey, true);
}
