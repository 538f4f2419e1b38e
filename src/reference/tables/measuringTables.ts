import { type ClaimBoundRow, claimBoundRows } from "../claimBounds";
import { type InputErrorRow, inputErrors } from "../inputErrors";
import { type MeterRow, meterErrors } from "../meterErrors";
import { type TraverseRow, traverseFractions } from "../traverseFractions";
import { both, keyedTable, number, text } from "./referenceTable";

export const traverseTable = keyedTable<TraverseRow>("traverse", "Points of a duct traverse", traverseFractions, [
  text("rule", (row) => row.rule),
  text("duct", (row) => row.duct),
  number("points", "", (row) => row.fractions.length),
  text("fractions from one wall", (row) => row.fractions.join("; ")),
  text("in TRAVERSEPOINTS", (row) => (row.offered ? "yes" : "no")),
]);

const percent = (share: number | null): number | null => (share === null ? null : share * 100);

export const meterTable = keyedTable<MeterRow>("meters", "Errors of instruments", meterErrors, [
  number("of the reading, low", "%", (row) => percent(row.percentLow)),
  number("of the reading, high", "%", (row) => percent(row.percentHigh)),
  both("floor low", "velocity", (row) => row.floorLow),
  both("floor high", "velocity", (row) => row.floorHigh),
  both("of a diameter", "diameter", (row) => row.length),
  both("useful from", "velocity", (row) => row.velocityLow),
]);

export const inputErrorTable = keyedTable<InputErrorRow>(
  "input errors",
  "How far the inputs of a system may be off",
  inputErrors,
  [number("standard deviation", "%", (row) => row.percent), number("times or over", "", (row) => row.factor)],
);

export const claimTable = keyedTable<ClaimBoundRow>("claims", "What CLAIM doubts from", claimBoundRows, [
  text("kind", (row) => row.kind),
  number("share", "", (row) => (row.quantity === "ratio" ? row.value : null)),
  both("velocity", "velocity", (row) => (row.quantity === "velocity" ? row.value : null)),
]);
