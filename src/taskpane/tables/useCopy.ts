import { useRef, useState } from "react";
import { copyText } from "./copyText";

const SELECTED = "Selected";

interface Copied {
  readonly id: string;
  readonly word: string;
  readonly sentence: string;
}

export interface Copying {
  readonly sentence: string;
  readonly wordOf: (id: string) => string; // on the button: what it does, or has just done
  readonly helpFor: (id: string) => string; // what to do where copying is not allowed
  readonly refOf: (id: string) => (element: HTMLElement | null) => void;
  readonly copy: (id: string, text: string) => void;
}

/** Copies texts; where the page may not, the text is selected and the sentence says which keys copy it. */
export function useCopy(): Copying {
  const [copied, setCopied] = useState<Copied>({ id: "", word: "", sentence: "" });
  const elements = useRef(new Map<string, HTMLElement>());
  const copy = async (id: string, text: string): Promise<void> => {
    if (await copyText(text, navigator.clipboard))
      return setCopied({ id, word: "Copied", sentence: `Copied ${text}.` });
    const element = elements.current.get(id);
    if (element !== undefined) window.getSelection()?.selectAllChildren(element);
    const sentence = `Copying is not allowed here. ${text} is selected: press Ctrl+C (on a Mac, Command+C).`;
    setCopied({ id, word: SELECTED, sentence });
  };
  return {
    sentence: copied.sentence,
    wordOf: (id) => (copied.id === id ? copied.word : "Copy"),
    helpFor: (id) => (copied.id === id && copied.word === SELECTED ? copied.sentence : ""),
    refOf: (id) => (element) => {
      if (element === null) elements.current.delete(id);
      else elements.current.set(id, element);
    },
    copy: (id, text) => void copy(id, text),
  };
}
