import { createStore, del, get } from "idb-keyval";
import type { OpenBook } from "./openBook";

/**
 * Where version 1.0.0 kept the open budget: one for all folders of an address. It is never written any more. Each folder
 * takes a copy along once, and it stays for the others until somebody forgets it.
 */
export interface SharedStore {
  readonly read: () => Promise<OpenBook | "nothing" | "unreadable">;
  readonly isThere: () => Promise<boolean>;
  readonly forget: () => Promise<void>;
}

/** The names that the store's library gave by itself. */
const [DATABASE, STORE, KEY] = ["keyval-store", "keyval", "open-budget"];

export const sharedStore: SharedStore = {
  read: async () => readShared(await stored()),
  isThere: async () => (await stored()) !== undefined,
  forget: async () => {
    if (await exists()) await del(KEY, createStore(DATABASE, STORE));
  },
};

const stored = async (): Promise<unknown> => ((await exists()) ? get(KEY, createStore(DATABASE, STORE)) : undefined);

/** Looks without making it. */
function exists(): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE);
    let made = false;
    request.onupgradeneeded = () => {
      made = true;
      request.transaction!.abort();
    };
    request.onsuccess = () => {
      const there = request.result.objectStoreNames.contains(STORE);
      request.result.close();
      resolve(there);
    };
    request.onerror = () => {
      if (made) resolve(false);
      else reject(request.error ?? new Error("the store can't be opened"));
    };
  });
}

/** What stood there, if it has the form of that version. */
export function readShared(record: unknown): OpenBook | "nothing" | "unreadable" {
  if (record === undefined) return "nothing";
  const { form, workbook, file, unsaved } = (record ?? {}) as Partial<OpenBook> & { readonly form?: unknown };
  const isBook =
    form === 1 && typeof file === "string" && Array.isArray(workbook?.sheets) && Array.isArray(workbook.names);
  return isBook ? { workbook, file, unsaved: unsaved === true } : "unreadable";
}
