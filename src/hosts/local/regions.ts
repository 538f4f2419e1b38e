/** A part of the page that F6 goes to, since Tab inside a grid moves from cell to cell and never leaves it. */
export interface Region {
  readonly name: string;
  readonly contains: (element: Element | null) => boolean;
  readonly focus: () => void;
  readonly isShown: () => boolean;
}

/**
 * F6 goes to the next part of the page, Shift+F6 to the one before.
 *
 * @param page tells in `data-by-keys` which part the keys lead to, until the mouse is used, so that a ring can show it
 */
export function moveByF6(regions: readonly Region[], windows: readonly Window[], page: HTMLElement): void {
  const go = (event: KeyboardEvent): void => {
    if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    event.stopPropagation();
    const shown = regions.filter((region) => region.isShown());
    const here = shown.findIndex((region) => region.contains(document.activeElement));
    const step = event.shiftKey ? -1 : 1;
    const next = shown[(here + step + shown.length) % shown.length];
    if (next === undefined) return;
    next.focus();
    page.dataset.byKeys = next.name;
  };
  const byMouse = (): void => void delete page.dataset.byKeys;
  windows.forEach((one) => {
    one.addEventListener("keydown", go, true);
    one.addEventListener("pointerdown", byMouse, true);
  });
}
