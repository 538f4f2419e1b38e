/** The functions of the later files as Excel gets them, with a page whose scripts come when the test says so. */
import type * as Later from "../../src/functions/later";
import "../support/customFunctions";

interface Script {
  readonly src: string;
  readonly come: () => void;
  readonly fail: () => void;
}

type CellFunction = (...given: unknown[]) => unknown;

const cells = new Map<string, CellFunction>();
const scripts: Script[] = []; // that the page was given
let later: typeof Later;

const host = (runsAllFiles: boolean): object => ({
  ...CustomFunctions,
  runsAllFiles,
  associate: (id: string, compute: CellFunction) => cells.set(id, compute),
});

const page = {
  createElement: () => {
    const heard = new Map<string, () => void>();
    return {
      src: "",
      heard,
      addEventListener: (event: string, hear: () => void) => heard.set(event, hear),
      remove: () => undefined,
    };
  },
  head: {
    append: ({ src, heard }: { src: string; heard: Map<string, () => void> }) =>
      scripts.push({ src, come: heard.get("load")!, fail: heard.get("error")! }),
  },
};

const NOT_HERE = /^the file of the add-in that holds TWICE could not be loaded: enter the formula again/;
const twice = (value: unknown): number => 2 * (value as number);
const call = (): unknown => cells.get("TWICE")!(4);

/** The second file, as often as it was asked for. */
const asked = (): Script[] => scripts.filter(({ src }) => src === "second.js");

/** What the second file does when it runs. */
const secondFileRuns = (): void => later.CustomFunctions.associate("TWICE", twice);

async function start(runsAllFiles: boolean): Promise<void> {
  cells.clear();
  scripts.length = 0;
  Object.assign(globalThis, { document: page, CustomFunctions: host(runsAllFiles) });
  await jest.isolateModulesAsync(async () => {
    later = await import("../../src/functions/later");
  });
  later.comeLater(["second.js", ["TWICE"]], ["third.js", ["THRICE"]]);
}

beforeEach(() => {
  jest.useFakeTimers();
  return start(false);
});
afterEach(() => {
  jest.useRealTimers();
  Reflect.deleteProperty(globalThis, "document");
});

test("a file is fetched at once, and only once; a cell that asks before waits, and one that asks after does not", async () => {
  const [one, other] = [call(), call()];
  expect(asked()).toHaveLength(1);
  secondFileRuns();
  asked()[0]!.come();
  expect(await Promise.all([one, other])).toEqual([8, 8]);
  expect(call()).toBe(8);
  expect(asked()).toHaveLength(1);
});

test("the next file is fetched behind the first, whether that comes or not, and at once where a cell asks for it", async () => {
  const names = (): string[] => scripts.map(({ src }) => src);
  expect(names()).toEqual(["second.js"]);
  asked()[0]!.fail();
  await jest.advanceTimersByTimeAsync(0);
  expect(names()).toEqual(["second.js", "third.js"]);
  await start(false);
  void (cells.get("THRICE")!(4) as Promise<unknown>).catch(() => undefined);
  expect(names()).toEqual(["second.js", "third.js"]);
  asked()[0]!.come();
  await jest.advanceTimersByTimeAsync(0);
  expect(names()).toEqual(["second.js", "third.js"]);
});

test("a file that is here does not stand for another that did not come: the cells of that one ask for it again", async () => {
  secondFileRuns();
  asked()[0]!.come();
  expect(call()).toBe(8);
  const thrice = (): Promise<unknown> => cells.get("THRICE")!(4) as Promise<unknown>;
  const waiting = thrice();
  scripts[1]!.fail();
  await expect(waiting).rejects.toMatchObject({ code: "#N/A", message: expect.stringMatching(/holds THRICE could/) });
  void thrice().catch(() => undefined);
  expect(scripts.map(({ src }) => src)).toEqual(["second.js", "third.js", "third.js"]);
});

test("a file that does not come is an error with its sentence; the next call asks again, and computes", async () => {
  const first = call();
  asked()[0]!.fail();
  await expect(first).rejects.toMatchObject({ code: "#N/A", message: expect.stringMatching(NOT_HERE) });
  const next = call();
  expect(asked()).toHaveLength(2);
  secondFileRuns();
  asked()[1]!.come();
  expect(await next).toBe(8);
});

test("a file of another version, which hands over nothing, is one that did not come", async () => {
  const first = call();
  asked()[0]!.come();
  await expect(first).rejects.toMatchObject({ code: "#N/A", message: expect.stringMatching(NOT_HERE) });
  void (call() as Promise<unknown>).catch(() => undefined);
  expect(asked()).toHaveLength(2);
});

test("a server that never answers leaves no cell waiting for ever", async () => {
  const first = call() as Promise<unknown>;
  const refused = expect(first).rejects.toMatchObject({ code: "#N/A", message: expect.stringMatching(NOT_HERE) });
  await jest.runAllTimersAsync();
  await refused;
});

test("a refusal of the function itself comes through as it is", async () => {
  const waiting = call();
  later.CustomFunctions.associate("TWICE", () => {
    throw new RangeError("not so much");
  });
  asked()[0]!.come();
  await expect(waiting).rejects.toThrow(new RangeError("not so much"));
});

test("a host that runs all files gets the functions themselves, and nothing is fetched", async () => {
  await start(true);
  expect([...cells.keys()]).toEqual([]);
  secondFileRuns();
  expect(cells.get("TWICE")).toBe(twice);
  expect(scripts).toEqual([]);
});
