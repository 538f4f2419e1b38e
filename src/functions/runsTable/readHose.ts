import { type HoseText, hoseText } from "../../core/hose/hoseText";
import type { Limits } from "../../core/errors";
import { LONGEST_RUN } from "../../core/largest";
import { findNamed } from "../../core/naming/findNamed";
import { quantityOfColumn } from "../../reference/columnsOfRuns";
import { materials, SMOOTH_HOSE } from "../../reference/materials";
import { toSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { readWithin } from "../arguments";
import type { Cell } from "../cells";
import { readingsOfPoint } from "../readingsOfPoint";

const smoothRoughness = findNamed(materials, SMOOTH_HOSE)!.roughness;
const LENGTH: Limits = { atLeast: 0, atMost: LONGEST_RUN };

/** The hose of a run, as its cell tells it. */
export interface Hose {
  readonly length: number; // [m]
  readonly roughness: number | null; // [m]; null: as corrugated hose has it
  readonly lies: HoseText["lies"];
}

/** A length of hose, or one with its kind and how it lies. */
export function readHose(name: string, cell: Cell, system: UnitSystem): Hose {
  if (cell === null) return { length: 0, roughness: null, lies: "drawn out" };
  // "1.500" is 1.5 here: nobody has 1500 of hose
  if (typeof cell !== "string" || (Number.isFinite(Number(cell)) && readingsOfPoint(cell.trim()).length === 1))
    return {
      length: readWithin(name, cell, quantityOfColumn("Flex"), LENGTH, system),
      roughness: null,
      lies: "drawn out",
    };
  const { length, smooth, lies } = hoseText(name, cell);
  return { length: toSI(length, unitOf("length", system)), roughness: smooth ? smoothRoughness : null, lies };
}
