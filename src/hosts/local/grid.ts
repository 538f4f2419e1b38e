import type * as GridLibrary from "@odoo/o-spreadsheet";

/** The spreadsheet library and its view library, which the page loads from files of their own. */
declare global {
  const o_spreadsheet: typeof GridLibrary;
  const owl: { readonly App: new (component: unknown, options: object) => ViewApp };
}

interface ViewApp {
  mount(target: HTMLElement): Promise<GridView>;
  destroy(): void;
}

/** The mounted spreadsheet. */
interface GridView {
  focusGrid(): void;
}

export type GridModel = GridLibrary.Model;
export type CellPosition = ReturnType<GridModel["getters"]["getActivePosition"]>;
