/** What a worker told: the last word with which it is done, or a step on the way. */
export type Heard<Answer> = { readonly answer: Answer } | "goes on";

/**
 * Asks a worker one thing. It ends with its answer, or as soon as it is cancelled, and then rejects with the signal's reason.
 *
 * @param start makes the worker
 * @param question what is sent to it
 * @param hear reads what it tells; what it throws is why there is no answer
 * @param broken the sentence where it cannot be loaded
 */
export function askOnce<Told, Answer>(
  start: () => Worker,
  question: unknown,
  hear: (told: Told) => Heard<Answer>,
  signal: AbortSignal,
  broken: string,
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    signal.throwIfAborted();
    const worker = start();
    const end = (): void => {
      worker.terminate();
      signal.removeEventListener("abort", stop);
    };
    const fail = (why: Error): void => {
      end();
      reject(why);
    };
    const stop = (): void => fail(signal.reason as Error);
    signal.addEventListener("abort", stop);
    worker.addEventListener("message", ({ data }: MessageEvent<Told>) => {
      try {
        const heard = hear(data);
        if (heard === "goes on") return;
        end();
        resolve(heard.answer);
      } catch (why) {
        fail(why as Error);
      }
    });
    worker.addEventListener("error", () => fail(new Error(broken)));
    worker.postMessage(question);
  });
}
