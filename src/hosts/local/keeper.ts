import type { Workbook } from "../../sheets/workbook";

/** The open budget and what the page knows of it: what a reload must bring back. */
export interface OpenBook {
  readonly workbook: Workbook;
  readonly file: string; // the name under which it is saved
  readonly unsaved: boolean; // whether it has changes that no file has
}

/** One place in the browser's store. */
export interface BookStore {
  readonly get: () => Promise<unknown>;
  readonly update: (change: (old: unknown) => unknown) => Promise<void>; // nothing else changes it meanwhile
  readonly del: () => Promise<void>;
}

/** "parted": another tab has changed or cleared what is kept since this one looked. "failed": full or blocked. */
type KeepOutcome = "kept" | "parted" | "failed";

export interface Keeper {
  readonly load: () => Promise<OpenBook | "nothing" | "unreadable" | "failed">;
  /** Keeps the book, but never over what another tab kept, unless told to. */
  readonly keep: (book: OpenBook, overOthers?: boolean) => Promise<KeepOutcome>;
  readonly forget: () => Promise<boolean>;
}

/** Form of what is kept, counted up when it changes; what has another form is not guessed at. */
const FORM = 1;

interface Record extends OpenBook {
  readonly form: typeof FORM;
  readonly stamp: string; // another with each change, so that a tab sees that it was not its own
}

/** @param stamp a text that it has never given before, in no tab */
export function keeperOf(store: BookStore, stamp: () => string): Keeper {
  let seen: string | null = null;
  return {
    load: async () => {
      try {
        const record = await store.get();
        seen = stampOf(record);
        if (record === undefined) return "nothing";
        return isRecord(record) ? record : "unreadable";
      } catch {
        return "failed";
      }
    },
    keep: async ({ workbook, file, unsaved }, overOthers = false) => {
      const next: Record = { form: FORM, stamp: stamp(), workbook, file, unsaved };
      let parted = false;
      try {
        await store.update((old) => {
          parted = !overOthers && stampOf(old) !== seen;
          return parted ? old : next;
        });
      } catch {
        return "failed";
      }
      if (parted) return "parted";
      seen = next.stamp;
      return "kept";
    },
    forget: async () => {
      try {
        await store.del();
      } catch {
        return false;
      }
      seen = null;
      return true;
    },
  };
}

const fieldsOf = (record: unknown): Partial<Record> => (typeof record === "object" && record !== null ? record : {});

const stampOf = (record: unknown): string | null => fieldsOf(record).stamp ?? null;

function isRecord(record: unknown): record is Record {
  const { form, workbook, file } = fieldsOf(record);
  return form === FORM && typeof file === "string" && Array.isArray(workbook?.sheets) && Array.isArray(workbook.names);
}
