import { copierOf } from "../../src/hosts/copyInWorker";
import type { ToldByCopier } from "../../src/hosts/copyWorker";
import type { MadeCopy } from "../../src/hosts/makeCopy";
import { sampleBook } from "../share/sampleBooks";

class FakeWorker extends EventTarget {
  readonly asked: unknown[] = [];
  isEnded = false;
  postMessage(message: unknown): void {
    this.asked.push(message);
  }
  terminate(): void {
    this.isEnded = true;
  }
  tell(data: ToldByCopier): void {
    this.dispatchEvent(new MessageEvent("message", { data }));
  }
}

const book = sampleBook({ One: { rows: [[1]] } });
const order = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

function begun() {
  const worker = new FakeWorker();
  const abort = new AbortController();
  const steps: number[] = [];
  const make = copierOf(() => worker as unknown as Worker);
  return { worker, abort, steps, making: make(book, order, (step) => steps.push(step), abort.signal) };
}

test("a copy is made in the worker, which ends with it", async () => {
  const { worker, steps, making } = begun();
  const made: MadeCopy = { made: false, why: "it differs" };
  worker.tell({ step: 0 });
  worker.tell({ step: 1 });
  worker.tell({ made });
  expect(await making).toBe(made);
  expect({ steps, asked: worker.asked, isEnded: worker.isEnded }).toEqual({
    steps: [0, 1],
    asked: [{ book, order }],
    isEnded: true,
  });
});

test("a cancelled copy ends the worker at once", async () => {
  const { worker, abort, making } = begun();
  abort.abort(new Error("cancelled"));
  await expect(making).rejects.toThrow("cancelled");
  expect(worker.isEnded).toBe(true);
});

test("what went wrong in the worker is said, and so is one that cannot be loaded", async () => {
  const failed = begun();
  failed.worker.tell({ failed: "the sheet One reaches too far" });
  await expect(failed.making).rejects.toThrow("the sheet One reaches too far");
  const lost = begun();
  lost.worker.dispatchEvent(new Event("error"));
  await expect(lost.making).rejects.toThrow("what makes a copy could not be loaded: load the page again");
  expect([failed.worker.isEnded, lost.worker.isEnded]).toEqual([true, true]);
});
