import { type BookStore, keeperOf, type OpenBook } from "../../../src/hosts/local/keeper";
import { bookOf, sheetOf } from "./gridOfOurs";

const book = (word: string): OpenBook => ({
  workbook: bookOf(sheetOf([{ at: "A1", value: word }])),
  file: `${word}.xlsx`,
  unsaved: true,
});

/** A store as two tabs share it, which copies what it takes as a browser's does. */
function shared(held: { value: unknown } = { value: undefined }): BookStore {
  return {
    get: async () => structuredClone(held.value),
    update: async (change) => void (held.value = structuredClone(change(structuredClone(held.value)))),
    del: async () => void (held.value = undefined),
  };
}

const refusing: BookStore = {
  get: () => Promise.reject(new Error("blocked")),
  update: () => Promise.reject(new Error("QuotaExceededError")),
  del: () => Promise.reject(new Error("blocked")),
};

let stamps = 0;
const tab = (store: BookStore) => keeperOf(store, () => `stamp ${stamps++}`);

describe("keeping the open budget", () => {
  test("what was kept is there after a reload, and gone when it is forgotten", async () => {
    const store = shared();
    const before = tab(store);
    expect(await before.load()).toBe("nothing");
    expect(await before.keep(book("mine"))).toBe("kept");
    expect(await before.keep(book("later"))).toBe("kept");
    const after = tab(store);
    expect(await after.load()).toMatchObject(book("later"));
    expect(await after.forget()).toBe(true);
    expect(await tab(store).load()).toBe("nothing");
  });

  test("a tab never keeps over what another tab has kept since it looked, unless told to", async () => {
    const store = shared();
    const [one, other] = [tab(store), tab(store)];
    await one.load();
    await other.load();
    expect(await one.keep(book("one"))).toBe("kept");
    expect(await other.keep(book("other"))).toBe("parted");
    expect(await tab(store).load()).toMatchObject(book("one"));
    expect(await other.keep(book("other"), true)).toBe("kept");
    expect(await one.keep(book("one again"))).toBe("parted");
    expect(await tab(store).load()).toMatchObject(book("other"));
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

  test.each([[{ form: 2, stamp: "s", workbook: { sheets: [], names: [] }, file: "x" }], ["text"], [{ form: 1 }]])(
    "%p is not taken for a budget",
    async (value) => {
      expect(await tab(shared({ value })).load()).toBe("unreadable");
    },
  );
});
