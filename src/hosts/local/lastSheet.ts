import type { GridModel } from "./grid";

/** The sheet that was open in this tab, for a reload. */
export interface LastSheet {
  readonly reopen: (model: GridModel) => void;
  readonly note: (model: GridModel) => void;
}

/** @param folder of the page: what another one shows is another budget */
export function lastSheet(storage: Pick<Storage, "getItem" | "setItem">, folder: string): LastSheet {
  const key = `duct-ledger sheet ${folder}`;
  let noted: string | null = null;
  return {
    reopen: (model) => {
      const sheetIdFrom = model.getters.getActiveSheetId();
      const sheetIdTo = model.getters.getSheetIdByName(storage.getItem(key) ?? undefined);
      if (sheetIdTo !== undefined && sheetIdTo !== sheetIdFrom)
        model.dispatch("ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo });
    },
    note: (model) => {
      const name = model.getters.getSheetName(model.getters.getActiveSheetId());
      if (name === noted) return;
      noted = name;
      storage.setItem(key, name);
    },
  };
}

/** What a tab remembers across a reload; nothing where the browser forbids it. */
export function tabStorage(): Pick<Storage, "getItem" | "setItem"> {
  try {
    return window.sessionStorage;
  } catch {
    return { getItem: () => null, setItem: () => undefined };
  }
}
