import type { ReferenceTable } from "../../../src/reference";

const column = (name: string, unit = "") => ({ name, unit });

/** A table with invented rows, built like the real ones. */
export const inventedTable = (rows: ReferenceTable["rows"]): ReferenceTable => ({
  name: "pipes",
  title: "Invented pipes",
  columns: [
    column("key"),
    column("label"),
    column("also"),
    column("bore", "mm"),
    column("bore", "in"),
    column("low", "mm"),
    column("high", "mm"),
    column("note"),
    column("basis"),
    column("weak"),
    column("source"),
    column("where"),
  ],
  rows,
});

export const redPipe = [
  "red",
  "Red pipe",
  "rouge",
  4.76251,
  3,
  2,
  null,
  "Invented.",
  "read",
  "",
  "Book",
  "p 1",
] as const;
export const bluePipe = [
  "blue 15",
  "Blaues Röhrchen",
  null,
  1.5,
  null,
  1.5,
  1.5,
  null,
  "from memory",
  "weak",
  "Red book",
  "p 2",
] as const;
