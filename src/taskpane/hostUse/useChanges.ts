import { useCallback, useEffect, useRef, useState } from "react";
import type { SheetHost } from "../../hosts/host";

/** When something was read of the open book: two that are alike found the same in it. */
export interface Moment {
  readonly changes: number; // so far
  readonly books: number; // opened in the place of the first
}

const FIRST: Moment = { changes: 0, books: 0 };

/**
 * The present moment of the open book. What is read of it belongs to the moment when the reading began: a mere mark "changed", which
 * is taken away when it has been read, loses a change that falls in between.
 *
 * @param host null while there is none, or while nobody needs to know
 * @returns the moment that is drawn, and what gives the present one, which may not be drawn yet
 */
export function useChanges(host: SheetHost | null): { readonly drawn: Moment; readonly now: () => Moment } {
  const present = useRef(FIRST);
  const [drawn, setDrawn] = useState(FIRST);
  useEffect(
    () =>
      host?.follow((what) => {
        if (what === "selection") return;
        const { changes, books } = present.current;
        present.current = { changes: changes + 1, books: books + (what === "book" ? 1 : 0) };
        setDrawn(present.current);
      }),
    [host],
  );
  return { drawn, now: useCallback(() => present.current, []) };
}
