import type * as GridLibrary from "@odoo/o-spreadsheet";

/** The spreadsheet library and its view library, which the page loads unmodified from files of their own. */
declare global {
  const o_spreadsheet: typeof GridLibrary;
  const owl: { readonly mount: (component: unknown, target: HTMLElement, options: object) => Promise<GridView> };
}

/** The mounted spreadsheet. */
export interface GridView {
  focusGrid(): void;
}

export type GridModel = GridLibrary.Model;
export type CellPosition = ReturnType<GridModel["getters"]["getActivePosition"]>;
