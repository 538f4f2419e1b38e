import type { FunctionAnswer, Question } from "./callFunction";
import type { AnsweredByCalculator, AskedOfCalculator } from "./functionsWorker";

export type Calculate = (question: Question) => Promise<FunctionAnswer>;

const BROKEN = "the functions could not be loaded: load the pane again";

/** Asks the functions' worker, which starts with the first question. */
export function calculatorOf(start: () => Worker): Calculate {
  let worker: Worker | null = null;
  let asked = 0;
  const waiting = new Map<number, (answer: FunctionAnswer) => void>();
  const begin = (): Worker => {
    const fresh = start();
    fresh.addEventListener("message", ({ data }: MessageEvent<AnsweredByCalculator>) => {
      waiting.get(data.number)?.(data.answer);
      waiting.delete(data.number);
    });
    fresh.addEventListener("error", () => {
      waiting.forEach((tell) => tell({ error: "#NAME?", message: BROKEN }));
      waiting.clear();
      worker = null;
    });
    return fresh;
  };
  return (question) =>
    new Promise((resolve) => {
      worker ??= begin();
      asked += 1;
      waiting.set(asked, resolve);
      worker.postMessage({ number: asked, question } satisfies AskedOfCalculator);
    });
}
