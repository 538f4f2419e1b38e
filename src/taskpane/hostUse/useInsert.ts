import { useState } from "react";
import type { Insertion, SheetHost } from "../../hosts/host";
import { failureWords, NO_SHEET, readsItselfWords, writtenWords } from "./words";

/** What became of the last wish to write into the selected cell. */
type InsertState =
  | { readonly step: "nothing" }
  | { readonly step: "writing" }
  | { readonly step: "asking"; readonly at: string; readonly content: Insertion }
  | { readonly step: "told"; readonly sentence: string };

export interface Inserting {
  readonly state: InsertState;
  readonly insert: (content: Insertion) => void;
  readonly overwrite: () => void;
  readonly leave: () => void;
}

/** Writes into the selected cell; a filled one is asked about first, in the pane. */
export function useInsert(host: SheetHost | null): Inserting {
  const [state, setState] = useState<InsertState>({ step: "nothing" });
  const tell = (sentence: string): void => setState({ step: "told", sentence });

  const write = async (content: Insertion, over?: string): Promise<void> => {
    if (host === null) return tell(NO_SHEET);
    setState({ step: "writing" });
    try {
      const outcome = await host.insert(content, over);
      if (outcome.written) tell(writtenWords(outcome));
      else if (outcome.why === "filled") setState({ step: "asking", at: outcome.at, content });
      else
        tell(
          outcome.why === "itself" ? readsItselfWords(outcome.at) : `The sheet refused to take it in ${outcome.at}.`,
        );
    } catch (error) {
      tell(failureWords(error));
    }
  };
  return {
    state,
    insert: (content) => void write(content),
    overwrite: () => state.step === "asking" && void write(state.content, state.at),
    leave: () => state.step === "asking" && tell(`${state.at} was left as it is.`),
  };
}
