import { type BookStore, HEAD, keeperOf } from "../../../src/hosts/local/keeper";
import type { OpenBook } from "../../../src/hosts/local/openBook";
import { readShared } from "../../../src/hosts/local/sharedStore";
import type { Sheet } from "../../../src/sheets/workbook";
import { bookOf, sheetOf } from "./gridOfOurs";

const sheet = (word: string): Sheet => sheetOf([{ at: "A1", value: word }]);
const book = (word: string, ...more: readonly Sheet[]): OpenBook => ({
  workbook: bookOf(sheet(word), ...more),
  file: `${word}.xlsx`,
  unsaved: true,
});

type Held = Map<string, unknown>;

/** A store as two tabs share it, which copies what it takes as a browser's does, and tells what was written. */
function shared(held: Held = new Map(), written: string[][] = []): BookStore {
  return {
    entries: async () => structuredClone(held),
    change: async (decide) => {
      const change = decide(structuredClone(held.get(HEAD)));
      if (change === null) return;
      const gone = change.gone === "all" ? [...held.keys()] : change.gone;
      gone.forEach((key) => held.delete(key));
      change.sheets.forEach((one, key) => held.set(key, structuredClone(one)));
      held.set(HEAD, structuredClone(change.head));
      written.push([...change.sheets.values()].map(({ cells }) => String((cells[0] as { value: unknown }).value)));
    },
  };
}

const refusing: BookStore = {
  entries: () => Promise.reject(new Error("blocked")),
  change: () => Promise.reject(new Error("QuotaExceededError")),
};

let stamps = 0;
const VERSION = "7.8.9";
const tab = (store: BookStore, old: unknown = undefined, version = VERSION) =>
  keeperOf(store, { read: async () => readShared(structuredClone(old)) }, () => `stamp ${stamps++}`, version);

/** A book as it comes back. */
const kept = (word: string) => ({ ...book(word), keptBy: VERSION });

describe("keeping the open budget", () => {
  test("what was kept is there after a reload, and gone when it is forgotten", async () => {
    const store = shared();
    const before = tab(store);
    expect(await before.load()).toBe("nothing");
    expect(await before.keep(book("mine"))).toBe("kept");
    expect(await before.keep(book("later"))).toBe("kept");
    const after = tab(store);
    expect(await after.load()).toEqual(kept("later"));
    expect(await after.forget()).toBe(true);
    expect(await tab(store).load()).toBe("nothing");
  });

  test("comes back with the version of the page that kept it, and without one where that did not say so", async () => {
    const held: Held = new Map();
    await tab(shared(held), undefined, "1.2.3").keep(book("mine"));
    expect(await tab(shared(held)).load()).toEqual({ ...book("mine"), keptBy: "1.2.3" });
    const head = held.get(HEAD) as { book: { version?: string } };
    delete head.book.version;
    expect(await tab(shared(held)).load()).toEqual(book("mine"));
  });

  test("only the sheets that changed are written, and those that are gone leave the store", async () => {
    const held: Held = new Map();
    const written: string[][] = [];
    const keeper = tab(shared(held, written));
    const [first, second] = [sheet("first"), sheet("second")];
    const keep = (...sheets: readonly Sheet[]) => keeper.keep({ ...book("x"), workbook: bookOf(...sheets) });
    await keep(first, second);
    await keep(first, sheet("second, changed"));
    await keep(first);
    await keep(sheet("new before it"), first);
    expect(written).toEqual([["first", "second"], ["second, changed"], [], ["new before it"]]);
    expect(held.size).toBe(3); // the head and two sheets
    const again = tab(shared(held, written));
    const found = (await again.load()) as OpenBook;
    expect(found.workbook.sheets).toEqual([sheet("new before it"), first]);
    await again.keep({ ...found, workbook: bookOf(...found.workbook.sheets, sheet("third")) });
    expect(written.at(-1)).toEqual(["third"]); // what was read is there already
  });

  test("a tab never keeps over what another tab has kept since it looked, unless told to", async () => {
    const held: Held = new Map();
    const store = shared(held);
    const [one, other] = [tab(store), tab(store)];
    await one.load();
    await other.load();
    const mine = book("one", sheet("of one"));
    expect(await one.keep(mine)).toBe("kept");
    expect(await other.keep(book("other"))).toBe("parted");
    expect(await tab(store).load()).toEqual({ ...mine, keptBy: VERSION });
    expect(await other.keep(book("other"), true)).toBe("kept");
    expect(held.size).toBe(2);
    expect(await one.keep(mine)).toBe("parted");
    expect(await tab(store).load()).toEqual(kept("other"));
    expect(await one.keep(mine, true)).toBe("kept"); // though its sheets had been written before, and taken away
    expect(await tab(store).load()).toEqual({ ...mine, keptBy: VERSION });
  });

  test("what another tab has cleared is not brought back unasked", async () => {
    const store = shared();
    const [one, other] = [tab(store), tab(store)];
    await one.keep(book("one"));
    await other.load();
    await other.forget();
    expect(await one.keep(book("one"))).toBe("parted");
    expect(await tab(store).load()).toBe("nothing");
  });

  test("a full or blocked store is told, not thrown", async () => {
    const keeper = tab(refusing);
    expect(await keeper.load()).toBe("failed");
    expect(await keeper.keep(book("x"))).toBe("failed");
    expect(await keeper.forget()).toBe(false);
  });

  test("what could not be written is written by the next that can", async () => {
    const held: Held = new Map();
    const store = shared(held);
    let full = true;
    const keeper = tab({ ...store, change: (decide) => (full ? refusing.change(decide) : store.change(decide)) });
    const mine = book("mine");
    expect(await keeper.keep(mine)).toBe("failed");
    full = false;
    expect(await keeper.keep(mine)).toBe("kept");
    expect(await tab(store).load()).toEqual({ ...mine, keptBy: VERSION });
  });

  test.each([
    [{ form: 3, stamp: "s", book: null }],
    ["text"],
    [{ form: 2 }],
    [
      {
        form: 2,
        stamp: "s",
        book: { file: "x", unsaved: true, name: "x", names: [], keys: ["a sheet that is not there"] },
      },
    ],
  ])("%j is not taken for a budget", async (head) => {
    expect(await tab(shared(new Map([[HEAD, head]]))).load()).toBe("unreadable");
  });
});

describe("a budget of before folders had stores of their own", () => {
  const old = { form: 1, stamp: "s", ...book("old") };

  test("comes along into each folder that has none, and stays where it was", async () => {
    const [one, other] = [shared(), shared()];
    expect(await tab(one, old).load()).toEqual(book("old"));
    expect(await tab(one).load()).toEqual(kept("old")); // now it is there
    expect(await tab(other, old).load()).toEqual(book("old"));
  });

  test("does not push away what the folder has, nor come back when that is forgotten", async () => {
    const store = shared();
    const keeper = tab(store, old);
    await keeper.load();
    await keeper.keep(book("newer"));
    expect(await tab(store, old).load()).toEqual(kept("newer"));
    await keeper.forget();
    expect(await tab(store, old).load()).toBe("nothing");
  });

  test("opens also where there is no room for a copy of it", async () => {
    const store = { ...shared(), change: refusing.change };
    expect(await tab(store, old).load()).toEqual(book("old"));
  });

  test("in a form that nobody knows is told, not guessed at", async () => {
    expect(await tab(shared(), { form: 0 }).load()).toBe("unreadable");
  });
});
