import type { Watch } from "../../../src/hosts/host";

export interface Told {
  readonly watch: Watch;
  readonly steps: string[]; // what was said on the way
  readonly cancel: () => void;
}

/** Somebody who watches a long action; `at` is called with each step and may cancel it. */
export function watching(at: (told: Told, step: number) => void = () => undefined): Told {
  const abort = new AbortController();
  const told: Told = {
    watch: {
      signal: abort.signal,
      progress: (done, of, what) => {
        told.steps.push(`${done}/${of} ${what}`);
        at(told, told.steps.length);
      },
    },
    steps: [],
    cancel: () => abort.abort(),
  };
  return told;
}
