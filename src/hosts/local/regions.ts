/** A part of the page that F6 goes to, since Tab inside a grid moves from cell to cell and never leaves it. */
export interface Region {
  readonly contains: (element: Element | null) => boolean;
  readonly focus: () => void;
  readonly isShown: () => boolean;
}

/** F6 goes to the next part of the page, Shift+F6 to the one before. */
export function moveByF6(regions: readonly Region[], windows: readonly Window[]): void {
  const go = (event: KeyboardEvent): void => {
    if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    event.stopPropagation();
    const shown = regions.filter((region) => region.isShown());
    const here = shown.findIndex((region) => region.contains(document.activeElement));
    const step = event.shiftKey ? -1 : 1;
    shown[(here + step + shown.length) % shown.length]?.focus();
  };
  windows.forEach((one) => one.addEventListener("keydown", go, true));
}
