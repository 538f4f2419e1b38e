import type { KeyboardEvent } from "react";

/** One step with an arrow key from the focused element to its neighbour among those that the selector names. */
export function stepFocus(
  event: KeyboardEvent<HTMLElement>,
  selector: string,
  keys: [back: string, forth: string],
): void {
  const step = { [keys[0]]: -1, [keys[1]]: 1 }[event.key];
  const stops = [...event.currentTarget.querySelectorAll<HTMLElement>(selector)];
  const at = stops.indexOf(event.target as HTMLElement);
  if (step === undefined || at < 0) return;
  const next = stops[at + step];
  if (next === undefined) return;
  event.preventDefault();
  next.focus();
}
