import { createStore, entries, promisifyRequest } from "idb-keyval";
import { type BookStore, HEAD, type StoreChange } from "./keeper";

/**
 * The store in this browser for the pages of one folder.
 *
 * @param folder path of the folder that the page stands in; another address or port has stores of its own anyway
 */
export function browserStore(folder: string): BookStore {
  const store = createStore(`duct-ledger ${folder}`, "open-budget");
  return {
    entries: async () => new Map(await entries<string, unknown>(store)),
    change: (decide) =>
      store("readwrite", (kept) => {
        const asked = kept.get(HEAD);
        asked.onsuccess = () => {
          const change = decide(asked.result);
          if (change !== null) write(kept, change); // what it throws aborts the whole step
        };
        return promisifyRequest(kept.transaction);
      }),
  };
}

function write(kept: IDBObjectStore, { head, sheets, gone }: StoreChange): void {
  if (gone === "all") kept.clear();
  else gone.forEach((key) => kept.delete(key));
  sheets.forEach((sheet, key) => kept.put(sheet, key));
  kept.put(head, HEAD);
  kept.transaction.commit(); // at once, without a turn in which the page could go
}
