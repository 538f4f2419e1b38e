import { useEffect, useState } from "react";
import type { SheetHost } from "../../../hosts/host";
import { useSelection } from "../../hostUse/useSelection";
import { type SelectedPart, selectedPart } from "./selectedPart";

const PAUSE = 200; // ms without another change before the book is read

/** The selected cell as it stands in the book now, where it takes fittings or a hood. */
export function useSelectedPart(host: SheetHost | null): SelectedPart | null {
  const selection = useSelection(host);
  const [part, setPart] = useState<SelectedPart | null>(null);
  useEffect(() => {
    if (host === null || selection === null) return setPart(null);
    let wanted = true;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const read = (): void =>
      void host.readBook().then(
        (book) => wanted && setPart(selectedPart(book, selection)),
        () => wanted && setPart(null),
      );
    const soon = (): void => {
      clearTimeout(timer);
      timer = setTimeout(read, PAUSE);
    };
    soon();
    const end = host.follow((what) => what === "cells" && soon());
    return () => {
      wanted = false;
      clearTimeout(timer);
      end();
    };
  }, [host, selection]);
  return part;
}
