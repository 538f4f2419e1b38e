import {
  cautionTable,
  damperTable,
  deviceTable,
  exposureTable,
  filterTable,
  gateTable,
  hazardTable,
  leakageTable,
  machineTable,
  materialTable,
  tradeSizeTable,
  transportTable,
} from "./tables/keyedTables";
import { lossTable } from "./tables/lossTable";
import { claimTable, inputErrorTable, meterTable, traverseTable } from "./tables/measuringTables";
import type { ReferenceTable } from "./tables/referenceTable";
import { sourceTable } from "./tables/sourceTable";
import { unitTable } from "./tables/unitTable";

export type { ReferenceTable } from "./tables/referenceTable";

/** The date of the tables: what changed later is not in them. */
export const TABLES_DATE = "2026-11-25";

/** The tables as REFERENCE lists them. */
export const referenceTables: readonly ReferenceTable[] = [
  materialTable,
  lossTable("fittings", "Loss coefficients of fittings", "fitting"),
  lossTable("hoods", "Entry loss coefficients of hoods and duct ends", "hood"),
  transportTable,
  machineTable,
  leakageTable,
  gateTable,
  damperTable,
  filterTable,
  deviceTable,
  traverseTable,
  meterTable,
  inputErrorTable,
  claimTable,
  exposureTable,
  hazardTable,
  tradeSizeTable,
  cautionTable,
  unitTable,
  sourceTable,
];
