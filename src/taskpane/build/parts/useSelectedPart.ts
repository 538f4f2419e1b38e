import { useEffect, useState } from "react";
import type { SheetHost } from "../../../hosts/host";
import { failureWords } from "../../hostUse/words";
import { useSelection } from "../../hostUse/useSelection";
import { type SelectedPart, selectedPart } from "./selectedPart";

const PAUSE = 200; // ms without another change before the book is read

/** The selected cell as it stands in the book now, where it takes fittings or a hood; reading a book takes Excel a while, so there the user says when. */
export function useSelectedPart(host: SheetHost | null): {
  readonly part: SelectedPart | null;
  readonly show: (() => void) | null; // where the user says when
  readonly said: string; // of what was asked for last: that it is read, or why it could not be
} {
  const follows = host?.kind === "local" ? host : null;
  const selection = useSelection(follows);
  const [part, setPart] = useState<SelectedPart | null>(null);
  useEffect(() => {
    if (follows === null) return;
    if (selection === null) return setPart(null);
    let wanted = true;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const read = (): void =>
      void follows.readBook().then(
        (book) => wanted && setPart(selectedPart(book, selection)),
        () => wanted && setPart(null),
      );
    const soon = (): void => {
      clearTimeout(timer);
      timer = setTimeout(read, PAUSE);
    };
    soon();
    const end = follows.follow((what) => what !== "selection" && soon());
    return () => {
      wanted = false;
      clearTimeout(timer);
      end();
    };
  }, [follows, selection]);
  const [said, setSaid] = useState("");
  const show = (): void => {
    const tell = (found: SelectedPart | null, words: string): void => {
      setPart(found);
      setSaid(words);
    };
    tell(null, "Reading the book …");
    void Promise.all([host!.readBook(), host!.selectionAddress()]).then(
      ([book, address]) => tell(selectedPart(book, address), ""),
      (error: unknown) => tell(null, failureWords(error)),
    );
  };
  return { part, show: host?.kind === "excel" ? show : null, said };
}
