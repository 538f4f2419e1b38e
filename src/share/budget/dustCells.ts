import { DEFAULT_DUST } from "../../reference/transport";
import { quotedText } from "../references";
import type { ColumnCells } from "./blockNames";
import { numberOfWord, sparkName } from "./metalWords";
import type { RunsReader } from "./runsReader";
import { nameKey } from "./words";

/** The dust of a run: the speeds that it asks for, and whether it burns or brings sparks. */
export function dustCells({
  place,
  source,
  lookups,
  used,
  optional,
}: RunsReader): ColumnCells<"dustKey" | "dustLow" | "dustHigh" | "brings" | "sparkName"> {
  const figure =
    (part: "key" | "low" | "high", unused: string) =>
    (row: number): string => {
      const read = (cell: string): string => lookups.dust(cell)[part];
      return used(row, optional(row, "Dust", read(quotedText(DEFAULT_DUST)), read), unused);
    };
  return {
    dustKey: { heading: "Dust", formula: figure("key", '""') },
    dustLow: { heading: "settles under (m/s)", formula: figure("low", "0") },
    dustHigh: { heading: "too fast over (m/s)", formula: figure("high", "0") },
    brings: {
      heading: "Burns or sparks, by its dust; -1 none typed",
      formula: (row) =>
        used(
          row,
          optional(row, "Dust", "-1", (cell) => numberOfWord(lookups.dust(cell).hazard)),
          "-1",
        ),
    },
    sparkName: {
      heading: "Sparks, by its name",
      formula: (row) =>
        used(row, sparkName(place.cell("key", row), source.has("Hood") ? nameKey(source.cell("Hood", row)) : null)),
    },
  };
}
