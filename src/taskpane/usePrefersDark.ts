import { useSyncExternalStore } from "react";

const dark = (): MediaQueryList => window.matchMedia("(prefers-color-scheme: dark)");

function subscribe(changed: () => void): () => void {
  const query = dark();
  query.addEventListener("change", changed);
  return () => query.removeEventListener("change", changed);
}

/** Whether the person's system asks for dark, also when that changes while the pane is open. */
export const usePrefersDark = (): boolean => useSyncExternalStore(subscribe, () => dark().matches);
