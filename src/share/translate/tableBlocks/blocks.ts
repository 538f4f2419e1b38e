import type { BlockNeeds, TableBlock } from "./block";
import { diameterItemBlock, entryBlock, lineNameBlock } from "./fittingBlocks";
import { gateBlock, leakageBlock, materialBlock, sizeBlock, unitBlock } from "./keyedBlocks";

/** Every table that a formula may ask for by name. */
export const blocks = {
  materials: (tables) => materialBlock(tables.units),
  gates: (tables) => gateBlock(tables.units),
  leakage: () => leakageBlock(),
  "sizes IP": () => sizeBlock("IP", null),
  "sizes SI": () => sizeBlock("SI", null),
  "metric stock IP": () => sizeBlock("IP", "metric stock"),
  "metric stock SI": () => sizeBlock("SI", "metric stock"),
  "drain pipe IP": () => sizeBlock("IP", "drain pipe"),
  "drain pipe SI": () => sizeBlock("SI", "drain pipe"),
  units: () => unitBlock(),
  "fittings IP": (tables) => entryBlock("any", "IP", tables),
  "fittings SI": (tables) => entryBlock("any", "SI", tables),
  "hoods IP": (tables) => entryBlock("hood", "IP", tables),
  "hoods SI": (tables) => entryBlock("hood", "SI", tables),
  "diameter items IP": (tables) => diameterItemBlock("IP", tables),
  "diameter items SI": (tables) => diameterItemBlock("SI", tables),
  "line names": () => lineNameBlock(),
} satisfies Record<string, (tables: BlockNeeds) => TableBlock>;

export type BlockName = keyof typeof blocks;
