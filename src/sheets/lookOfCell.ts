import type { CellLook } from "./workbook";

type MaybeLook = { readonly [Part in keyof CellLook]: CellLook[Part] | undefined } & { readonly at: string };

/** Where a cell stands and how it looks, without what it holds; a part that is not there is left out. */
export const lookOfCell = ({ at, style, format, note }: MaybeLook): CellLook => ({
  at,
  ...(style && { style }),
  ...(format !== undefined && { format }),
  ...(note !== undefined && { note }),
});
