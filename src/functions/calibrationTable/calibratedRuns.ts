import { NoAnswerError } from "../../core/errors";
import { PLAIN } from "../../core/fittings/fittingList";
import { lossCoefficient } from "../../core/fittings/lossCoefficient";
import { rowOf } from "../../core/naming/findNamed";
import { itemAt } from "../../reference/itemAt";
import { BRANCH, lossFamilies } from "../../reference/lossFamilies";
import { quantityOfColumn } from "../../reference/columnsOfRuns";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import type { RunColumn } from "../../reference/runColumns";
import type { Value } from "../answerRows";
import { type Cell, CellErrorValue, type Matrix } from "../cells";
import { type ColumnPlaces, findColumns } from "../runsTable/columns";
import type { TableRun } from "../runsTable/readRun";
import { plainEnd } from "../runsTable/surroundings";
import type { Calibration } from "./calibration";
import { type FactorOf, factorsOf } from "./factorsOf";

/** The table as it was given, with the values that the readings speak for: other functions take it in its place. */
export function calibratedRuns(calibration: Calibration, table: Matrix, system: UnitSystem): Value[][] {
  const factor = factorsOf(calibration);
  const { runs } = itemAt(calibration.sets, 0).table;
  const { joining } = itemAt(calibration.model.systems, 0).network;
  const places: Partial<Record<RunColumn, number>> = {
    ...(findColumns(table, system) satisfies ColumnPlaces),
  };
  const rows = table.map((line) => line.map(asValue));
  const put = (row: number, column: RunColumn, value: Value): void => {
    const place = (places[column] ??= itemAt(rows, 0).push(column) - 1);
    rows.forEach((line) => {
      while (line.length <= place) line.push("");
    });
    itemAt(rows, row)[place] = value;
  };
  runs.forEach((entry, run) => {
    const row = entry.row + 1;
    const cell = (column: RunColumn): Cell => {
      const place = places[column];
      return place === undefined ? null : (table[row]?.[place] ?? null);
    };
    const isEnd = entry.run.side === "suction" && itemAt(joining, run).length === 0;
    for (const [column, value] of changesOf(entry, run, isEnd, cell, factor))
      put(row, column, typeof value === "number" ? inUnit(value, column, system) : value);
  });
  return rows;
}

/** What is rounded so was never measured to that. */
const DIGITS = 12;

const inUnit = (value: number, column: RunColumn, system: UnitSystem): number =>
  Number(fromSI(value, unitOf(quantityOfColumn(column), system)).toPrecision(DIGITS));

const asValue = (cell: Cell): Value => {
  if (cell === null || cell instanceof CellErrorValue) return "";
  return typeof cell === "boolean" ? String(cell).toUpperCase() : cell;
};

type Changes = [RunColumn, Value][]; // numbers in SI

/** The cells of a run that its factors change. */
function changesOf(
  entry: TableRun,
  run: number,
  isEnd: boolean,
  cell: (column: RunColumn) => Cell,
  factor: FactorOf,
): Changes {
  const { length, hoseLength, device } = entry.run;
  return [
    ...(length > 0 && factor("pipe") !== 1 ? [["Length", length * factor("pipe")] as [RunColumn, Value]] : []),
    ...(hoseLength > 0 && factor("hose") !== 1 ? [hose(cell("Flex"), hoseLength, factor("hose"))] : []),
    ...(device !== null && factor("device", run) !== 1 ? [["Device loss", device.ratedLoss * factor("device", run)] as [RunColumn, Value]] : []), // prettier-ignore
    ...fittings(entry, factor("fittings", run)),
    ...(isEnd && factor("entry", run) !== 1 ? [entryOf(entry, cell("Port suction"), factor("entry", run))] : []),
    ...leaks(entry, run, factor),
  ];
}

/** The length in a text such as "10 as it hangs", or the whole cell. */
function hose(cell: Cell, length: number, factor: number): [RunColumn, Value] {
  if (typeof cell !== "string" || Number.isFinite(Number(cell))) return ["Flex", length * factor];
  const scaled = (digits: string): string =>
    String(Number((Number(digits.replace(",", ".")) * factor).toPrecision(DIGITS)));
  return ["Flex", cell.trim().replace(/^(\d+(?:[.,]\d*)?|[.,]\d+)/, scaled)];
}

/** More loss stands in the column K; less is taken from there, or where that is not enough the fittings become a number. */
function fittings({ run, coefficientOf }: TableRun, factor: number): Changes {
  if (run.coefficient === 0 || factor === 1) return [];
  const further = coefficientOf([], run.diameter) + run.coefficient * (factor - 1);
  if (further >= 0) return [["K", Number(further.toPrecision(DIGITS))]];
  const kept = branchOf(run);
  const rest = run.coefficient * factor - kept.counted;
  if (rest < 0)
    throw new NoAnswerError(
      `by these readings the fittings of ${run.name} cost less than its "${kept.entry}" alone, for which no table has words: leave ${PLAIN} away there`,
    );
  const list = [kept.entry, String(Number(rest.toPrecision(DIGITS)))].filter((entry) => entry !== "");
  return [
    ["Fittings", list.join("; ")],
    ["K", ""],
  ];
}

/**
 * The branch by which a run joins another stays, with its angle, since what the others lose there hangs on it. Where its loss goes by
 * airflows it is none of the coefficient; a plain one is.
 */
function branchOf({ branch }: TableRun["run"]): { readonly entry: string; readonly counted: number } {
  if (branch === null) return { entry: "", counted: 0 };
  const entry = `${BRANCH} ${branch.angle}`;
  if (!branch.plain) return { entry, counted: 0 };
  const counted = lossCoefficient(rowOf(lossFamilies, BRANCH), null, branch.angle);
  return { entry: `${entry} ${PLAIN}`, counted };
}

/** A machine's port keeps its column: K = p / p_v - 1 there, so p goes with K + 1. */
function entryOf({ run }: TableRun, port: Cell, factor: number): [RunColumn, Value] {
  const coefficient = run.hood ?? plainEnd;
  if (port === null || port === 0) return ["Hood", coefficient * factor];
  const suction = Number(port) * ((coefficient * factor + 1) / (coefficient + 1));
  return ["Port suction", String(Number(suction.toPrecision(DIGITS)))];
}

/** The leak of each state of the gate in a column of its own, so that each may have its own factor. */
function leaks({ run, leakOf }: TableRun, index: number, factor: FactorOf): Changes {
  const { diameter, gate } = run;
  if (gate === "none") {
    const area = leakOf("none", diameter);
    const times = factor("leak", index, "none");
    return area === 0 || times === 1 ? [] : [["Leak", area * times]];
  }
  const states = (["open", "shut"] as const).map((state) => ({
    column: state === "open" ? ("Leak open" as const) : ("Leak shut" as const),
    area: leakOf(state, diameter) * factor("leak", index, state),
    times: factor("leak", index, state),
  }));
  if (states.every(({ times }) => times === 1)) return [];
  return [["Leak", ""], ...states.map(({ column, area }): [RunColumn, Value] => [column, area === 0 ? "" : area])];
}

/** Readings of which one cannot be used have no calibrated table: which rows are meant would stand nowhere. */
export function requireUsable({ typed, judged }: Calibration): void {
  const wrong = typed.find(({ refusal }) => refusal !== null);
  if (wrong !== undefined) throw new NoAnswerError(wrong.refusal!);
  if (judged.fit.atEnd)
    throw new NoAnswerError(
      "these readings ask for more air than the fan's curve has points for: type more of its points",
    );
}
