/** Reads a file in a thread of its own that ends when it needs more memory than it is given. */
import path from "node:path";
import { Worker } from "node:worker_threads";
import { buildSync } from "esbuild";

export type Outcome = { readonly cells: number } | { readonly refused: string } | { readonly thrown: string };

const READER = path.join(__dirname, "../../src/hosts/file/readBook.ts");

/** @param megabytes of memory, the file's bytes not counted */
export function boundedReader(megabytes: number): (bytes: Uint8Array) => Promise<Outcome> {
  const { outputFiles } = buildSync({
    stdin: {
      contents: `
        import { parentPort, workerData } from "node:worker_threads";
        import { readBook } from ${JSON.stringify(READER)};
        readBook(workerData).then(
          ({ workbook }) => ({ cells: workbook.sheets.reduce((sum, { cells }) => sum + cells.length, 0) }),
          (error) => (error.name === "FileRefusal" ? { refused: error.message } : { thrown: String(error) }),
        ).then((outcome) => parentPort.postMessage(outcome));`,
      resolveDir: __dirname,
    },
    bundle: true,
    platform: "node",
    write: false,
  });
  const code = outputFiles[0]!.text;
  return (bytes) =>
    new Promise((resolve) => {
      const worker = new Worker(code, {
        eval: true,
        workerData: bytes,
        resourceLimits: { maxOldGenerationSizeMb: megabytes },
      });
      let outcome: Outcome = { thrown: "it ended without a word" };
      worker.once("message", (told: Outcome) => (outcome = told));
      worker.once("error", (error) => (outcome = { thrown: String(error) }));
      worker.once("exit", () => resolve(outcome)); // its memory is free then, and no thread outlives the tests
    });
}
