import { type Source, sources } from "../sources";
import { type ReferenceTable, referenceTable, text } from "./referenceTable";

type Entry = readonly [id: string, source: Source];

/** Every source, with its year, kind and terms; its own title stands as its source. */
export const sourceTable: ReferenceTable = referenceTable<Entry>(
  "sources",
  "Sources of the tables and formulas",
  Object.entries(sources),
  [
    text("key", ([id]) => id),
    text("label", ([, source]) => source.title),
    text("year", ([, source]) => source.year),
    text("kind", ([, source]) => source.kind),
    text("terms", ([, source]) => source.terms),
  ],
  ([, source]) => ["", "", source.title, ""],
);
