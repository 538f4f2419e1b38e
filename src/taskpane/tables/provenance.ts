import { display, type Row } from "./values";

/** What the last four columns of every table say of a row. */
export interface RowProvenance {
  readonly basis: string;
  readonly weakness: string; // its basis; "" for a row that is not weak
  readonly source: string;
  readonly where: string;
}

export function provenanceOf(row: Row): RowProvenance {
  const [basis = "", weak = "", source = "", where = ""] = row.slice(-4).map(display);
  return { basis, weakness: weak === "" ? "" : basis, source, where };
}
