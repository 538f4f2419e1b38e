import { CellError } from "../../../src/hosts/local/customFunctions";
import { callFunction } from "../../../src/taskpane/functions/callFunction";
import { calculatorOf } from "../../../src/taskpane/functions/askWorker";

const functions = new Map<string, (...args: unknown[]) => unknown>([
  ["DOUBLE", (cells) => [[2 * (cells as number[][])[0]![0]!]]],
  [
    "REFUSE",
    () => {
      throw new CellError("#VALUE!", "number must be above 0; got -1");
    },
  ],
  [
    "BREAK",
    () => {
      throw new Error("a bug");
    },
  ],
  ["SOME", () => [[8], [new CellError("#VALUE!", "number must be above 0; got -1")]]],
  ["GAPS", () => [[null, undefined, true, "x"]]],
]);

test("an answer is what a cell would show", () => {
  expect(callFunction(functions, { id: "double", args: [[[4]]] })).toEqual({ rows: [[8]] });
  expect(callFunction(functions, { id: "GAPS", args: [] })).toEqual({ rows: [[0, 0, true, "x"]] });
  expect(callFunction(functions, { id: "REFUSE", args: [] })).toEqual({
    error: "#VALUE!",
    message: "number must be above 0; got -1",
  });
  expect(callFunction(functions, { id: "SOME", args: [] })).toEqual({
    rows: [[8], ["#VALUE! number must be above 0; got -1"]],
  });
  expect(callFunction(functions, { id: "BREAK", args: [] })).toEqual({ error: "#VALUE!", message: "" });
  expect(callFunction(functions, { id: "NONE", args: [] })).toMatchObject({ error: "#NAME?" });
});

/** Stands for a worker: answers when told, in any order. */
class FakeWorker extends EventTarget {
  readonly asked: { number: number }[] = [];
  postMessage(message: { number: number }): void {
    this.asked.push(message);
  }
  reply(index: number, value: number): void {
    const data = { number: this.asked[index]!.number, answer: { rows: [[value]] } };
    this.dispatchEvent(Object.assign(new Event("message"), { data }));
  }
}

test("answers find their questions in whatever order they come", async () => {
  const worker = new FakeWorker();
  const calculate = calculatorOf(() => worker as unknown as Worker);
  const [first, second] = [calculate({ id: "A", args: [] }), calculate({ id: "B", args: [] })];
  worker.reply(1, 2);
  worker.reply(0, 1);
  expect(await first).toEqual({ rows: [[1]] });
  expect(await second).toEqual({ rows: [[2]] });
});

test("a worker that cannot start answers with a sentence, and the next question starts another", async () => {
  const workers: FakeWorker[] = [];
  const calculate = calculatorOf(() => {
    workers.push(new FakeWorker());
    return workers.at(-1) as unknown as Worker;
  });
  const lost = calculate({ id: "A", args: [] });
  workers[0]!.dispatchEvent(new Event("error"));
  expect(await lost).toEqual({ error: "#NAME?", message: "the functions could not be loaded: load the pane again" });
  const found = calculate({ id: "A", args: [] });
  workers[1]!.reply(0, 5);
  expect(await found).toEqual({ rows: [[5]] });
});
