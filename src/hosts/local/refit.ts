/**
 * Lets the grid measure itself anew whenever its place on the page has another size.
 *
 * It learns of the window's size alone, and reckons which of its tools have room by the width of the time before: so it is
 * told once when the place has changed, and once more when it has drawn itself in it.
 */
export function refit(place: HTMLElement): void {
  const tell = (): boolean => window.dispatchEvent(new Event("resize"));
  new ResizeObserver(() => {
    tell();
    requestAnimationFrame(() => requestAnimationFrame(tell));
  }).observe(place);
}
