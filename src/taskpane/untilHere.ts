const AGAIN = 3000; // ms

/** Asks for a file of ours until it is here: a server or a network that fails once must not leave the pane, or the cells, waiting for good. */
export function untilHere<File>(fetched: () => Promise<File>, then: (file: File) => void, missing?: () => void): void {
  fetched().then(then, () => {
    missing?.();
    setTimeout(() => untilHere(fetched, then, missing), AGAIN);
  });
}

/** When a script of the page has run; one that did not come is fetched anew. */
export function scriptRun(script: HTMLScriptElement): () => Promise<void> {
  let asked: HTMLScriptElement | null = null;
  return () => {
    const next = asked === null ? script : document.createElement("script");
    if (asked !== null) {
      next.src = script.src;
      asked.replaceWith(next);
    }
    asked = next;
    return new Promise((resolve, reject) => {
      next.addEventListener("load", () => resolve());
      next.addEventListener("error", reject);
    });
  };
}
