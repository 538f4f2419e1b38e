import { useCallback, useSyncExternalStore } from "react";

/** Whether a media query holds, also when that changes while the pane is open. */
export function useMedia(query: string): boolean {
  const subscribe = useCallback(
    (changed: () => void): (() => void) => {
      const list = window.matchMedia(query);
      list.addEventListener("change", changed);
      return () => list.removeEventListener("change", changed);
    },
    [query],
  );
  return useSyncExternalStore(subscribe, () => window.matchMedia(query).matches);
}

/** Whether the person's system asks for dark. */
export const usePrefersDark = (): boolean => useMedia("(prefers-color-scheme: dark)");
