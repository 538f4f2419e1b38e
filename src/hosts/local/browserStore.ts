import { del, get, update } from "idb-keyval";
import type { BookStore } from "./keeper";

const KEY = "open-budget";

/** Where this browser keeps the open budget, for pages of this address only. */
export const browserStore: BookStore = {
  get: () => get(KEY),
  update: (change) => update(KEY, change),
  del: () => del(KEY),
};
