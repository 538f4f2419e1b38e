export interface Line {
  readonly weight: "Thin" | "Medium";
  readonly ink: string;
}

/** The lines around a cell to fill in, and below a header: the same on every host. */
export const BOX: Line = { weight: "Thin", ink: "#a08a4a" };
export const BELOW: Line = { weight: "Medium", ink: "#5c7a78" };
