import type { Sheet, Workbook } from "../../sheets/workbook";
import type { OpenBook } from "./openBook";
import type { SharedStore } from "./sharedStore";
import { itemAt } from "../../reference/itemAt";

/** What is written in one step. */
export interface StoreChange {
  readonly head: unknown;
  readonly sheets: ReadonlyMap<string, Sheet>; // new ones, under keys that were never used
  readonly gone: readonly string[] | "all"; // keys of those that nothing needs any more
}

/** The browser's store of this page's folder: a head, and each sheet under a key of its own. */
export interface BookStore {
  readonly entries: () => Promise<ReadonlyMap<string, unknown>>;
  /** Writes what is decided in view of the head that stands there; nothing else changes the store meanwhile. */
  readonly change: (decide: (head: unknown) => StoreChange | null) => Promise<void>;
}

export const HEAD = "head";

/** "parted": another tab has changed or cleared what is kept since this one looked. "failed": full or blocked. */
type KeepOutcome = "kept" | "parted" | "failed";

/** What a browser kept, and the version of the page that kept it, where it said so. */
export interface KeptBook extends OpenBook {
  readonly keptBy?: string;
}

export interface Keeper {
  readonly load: () => Promise<KeptBook | "nothing" | "unreadable" | "failed">;
  /** Keeps the book, but never over what another tab kept, unless told to. A sheet that is the very object of last time is there already. */
  readonly keep: (book: OpenBook, overOthers?: boolean) => Promise<KeepOutcome>;
  readonly forget: () => Promise<boolean>;
}

/** Form of what is kept, counted up when it changes; what has another form is not guessed at. Form 1 is of `sharedStore.ts`. */
const FORM = 2;

interface Head {
  readonly form: typeof FORM;
  readonly stamp: string; // another with each change, so that a tab sees that it was not its own
  readonly book:
    | (Pick<OpenBook, "file" | "unsaved"> & Omit<Workbook, "sheets"> & { keys: readonly string[]; version?: string })
    | null;
}

/**
 * @param stamp a text that it has never given before, in no tab
 * @param version of the page
 */
export function keeperOf(
  store: BookStore,
  shared: Pick<SharedStore, "read">,
  stamp: () => string,
  version: string,
): Keeper {
  let seen: unknown = null; // the stamp that this tab knows
  let stored: ReadonlyMap<Sheet, string> = new Map();

  async function keep({ workbook, file, unsaved }: OpenBook, overOthers = false): Promise<KeepOutcome> {
    const { sheets, ...rest } = workbook;
    const next = stamp();
    const known = overOthers ? new Map<Sheet, string>() : stored;
    const keyed = new Map(sheets.map((sheet, index) => [sheet, known.get(sheet) ?? `${next} ${index}`]));
    const keys = [...keyed.values()];
    let parted = false;
    try {
      await store.change((head) => {
        parted = !overOthers && stampOf(head) !== seen;
        if (parted) return null;
        return {
          head: { form: FORM, stamp: next, book: { ...rest, file, unsaved, keys, version } } satisfies Head,
          sheets: new Map([...keyed].flatMap(([sheet, key]) => (known.has(sheet) ? [] : [[key, sheet]]))),
          gone: overOthers ? "all" : [...known.values()].filter((key) => !keys.includes(key)),
        };
      });
    } catch {
      return "failed";
    }
    if (parted) return "parted";
    [seen, stored] = [next, keyed];
    return "kept";
  }

  async function load(): Promise<KeptBook | "nothing" | "unreadable"> {
    const entries = await store.entries();
    const head = entries.get(HEAD);
    seen = stampOf(head);
    stored = new Map();
    if (head === undefined) return takeOver();
    if (!isHead(head)) return "unreadable";
    if (head.book === null) return "nothing";
    const { file, unsaved, keys, version: keptBy, ...rest } = head.book;
    const sheets = keys.map((key) => entries.get(key));
    if (!sheets.every(isSheet)) return "unreadable";
    stored = new Map(sheets.map((sheet, index) => [sheet, itemAt(keys, index)]));
    return { workbook: { ...rest, sheets }, file, unsaved, ...(typeof keptBy === "string" ? { keptBy } : {}) };
  }

  /** A budget of before folders had stores of their own comes along, and stays where it was for the other folders. */
  async function takeOver(): Promise<OpenBook | "nothing" | "unreadable"> {
    const found = await shared.read();
    if (typeof found === "object") await keep(found);
    return found;
  }

  return {
    load: () => load().catch(() => "failed"),
    keep,
    forget: async () => {
      const next = stamp();
      try {
        await store.change(() => ({
          head: { form: FORM, stamp: next, book: null } satisfies Head, // so that the shared one does not come along again
          sheets: new Map(),
          gone: "all",
        }));
      } catch {
        return false;
      }
      [seen, stored] = [next, new Map()];
      return true;
    },
  };
}

const fieldsOf = (value: unknown): Partial<Record<string, unknown>> =>
  typeof value === "object" && value !== null ? value : {};

const stampOf = (head: unknown): unknown => fieldsOf(head).stamp ?? null;

const isSheet = (value: unknown): value is Sheet => Array.isArray(fieldsOf(value).cells);

function isHead(head: unknown): head is Head {
  const { form, book } = fieldsOf(head);
  const { file, names, keys } = fieldsOf(book);
  return form === FORM && (book === null || (typeof file === "string" && Array.isArray(names) && Array.isArray(keys)));
}
