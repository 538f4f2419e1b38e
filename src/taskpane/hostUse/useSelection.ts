import { useEffect, useState } from "react";
import type { SheetHost } from "../../hosts/host";

/** The selected cells of the sheet, with its name, as a formula on any sheet writes them; null while nobody knows. */
export function useSelection(host: SheetHost | null): string | null {
  const [selection, setSelection] = useState<string | null>(null);
  useEffect(() => {
    if (host === null) return;
    let wanted = true;
    const read = (): void =>
      void host.selectionAddress().then(
        (fresh) => wanted && setSelection(fresh),
        () => wanted && setSelection(null),
      );
    read();
    const end = host.follow((what) => what !== "cells" && read());
    return () => {
      wanted = false;
      end();
    };
  }, [host]);
  return selection;
}
