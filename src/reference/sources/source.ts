/** Where a figure comes from. Facts and figures are carried over, never sentences or layouts. */
export interface Source {
  readonly title: string;
  readonly year: string; // as printed; "undated" or "various" where that is so
  readonly terms: string; // what its use is bound to
  readonly repealed?: true; // a later edition holds in its place
  readonly kind:
    | "standard"
    | "handbook"
    | "textbook"
    | "government"
    | "paper"
    | "software"
    | "practice sheet"
    | "trade article"
    | "data page"
    | "common practice";
}
