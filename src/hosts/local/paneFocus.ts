/**
 * Gives the focus to the pane in its frame: to what had it there last, else to the tab of the view that is shown. The
 * browser itself forgets what had the focus in a frame that it has left.
 */
export function paneFocus(frame: HTMLIFrameElement): () => void {
  let last: Element | null = null;
  frame.addEventListener("load", () =>
    frame.contentDocument?.addEventListener("focusin", ({ target }) => (last = target as Element)),
  );
  return () => {
    frame.contentWindow?.focus();
    const isShown = last !== null && last.getClientRects().length > 0; // a view that is hidden now has none
    const there = isShown ? last : frame.contentDocument?.querySelector("[role=tab][aria-selected=true]");
    (there as HTMLElement | null | undefined)?.focus(); // of another window, so no instance of this one's class
  };
}
