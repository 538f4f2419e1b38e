import { DEFAULT_MATERIAL, SMOOTH_HOSE } from "../../reference/materials";
import type { ColumnCells } from "./blockNames";
import { hoseLength, hoseLies, hoseTimes, hoseWords, isSmooth } from "./hoseCells";
import type { RunsReader } from "./runsReader";

/** How wide, how long and how rough the pipe and the hose of a run are. */
export function pipeCells({
  place,
  source,
  lookups,
  inSI,
  unlessNumber,
  used,
  optional,
  numbers,
}: RunsReader): ColumnCells<
  "diameter" | "length" | "hose" | "hoseWords" | "hoseLies" | "hoseTimes" | "hoseWall" | "roughness"
> {
  const at = place.cell;
  return {
    diameter: {
      heading: "Diameter (m)",
      formula: (row) => used(row, inSI(source.cell("Diameter", row), "Diameter")),
    },
    length: { heading: "Length (m)", formula: numbers("Length") },
    hose: {
      heading: "Hose (m)",
      formula: (row) =>
        used(
          row,
          optional(row, "Flex", "0", (cell) => inSI(`(${hoseLength(cell)})`, "Flex")),
        ),
    },
    hoseWords: {
      heading: "Hose, in words",
      formula: (row) => used(row, source.has("Flex") ? hoseWords(source.cell("Flex", row)) : '""', '""'),
    },
    hoseLies: { heading: "how it lies", formula: (row) => hoseLies(at("hoseWords", row)) },
    hoseTimes: {
      heading: "costs so many times",
      formula: (row) => used(row, hoseTimes(at("hoseLies", row), at("diameter", row)), "1"),
    },
    hoseWall: {
      heading: "Its roughness (m)",
      formula: (row) =>
        `IF(${isSmooth(at("hoseWords", row))},${lookups.usualRoughness(SMOOTH_HOSE)},${place.scalar("hoseRoughness")})`,
    },
    roughness: {
      heading: "Roughness (m)",
      formula: (row) =>
        used(
          row,
          optional(row, "Material", lookups.usualRoughness(DEFAULT_MATERIAL), (cell) =>
            unlessNumber(cell, "Material", lookups.roughness(cell)),
          ),
        ),
    },
  };
}
