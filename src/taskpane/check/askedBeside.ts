import { placeOf } from "../../sheets/address";
import type { RangeRef } from "../../sheets/rangeRef";
import { isOneCell, placesIn } from "../../sheets/rectangle";
import type { OurCall } from "../../share/formula/tree";
import type { Matrix } from "../functions/callFunction";
import { cellOf, densityIn } from "./callArguments";
import { curveFor } from "./curves";
import { isWithinRange, rangeOfArgument } from "./named/callsIn";
import { ourFormulasOn } from "./ourFormulas";
import type { BookRuns } from "./runs";
import type { Seen } from "./seenIn";

/** What the book's own functions take beside a table of runs, so that the pane computes what the sheet does. */

const CURVE = 1; // place among the arguments of each of these
const TAKE_A_CURVE = ["SOLVE", "UNCERTAINTY", "SCENARIOS", "GAINS", "TOGETHER", "CALIBRATE"];
const DENSITY: Readonly<Record<string, number>> = { SOLVE: 3, BUDGET: 1 };

/** The fan's curve that goes with a table of runs: that of a call which takes both, else of any; null where no call names its cells. */
export function curveCells(seen: Seen, runs: BookRuns): RangeRef | null {
  const { book } = seen;
  const found = callsOf(seen, TAKE_A_CURVE).flatMap(({ sheet, call }) => {
    const range = rangeOfArgument(call.args[CURVE] ?? [], sheet, book);
    const there = seen.sheets.find((one) => one.sheet === range?.sheet);
    if (range === null || there === undefined) return [];
    return [{ range: { ...range, bottom: Math.min(range.bottom, Math.max(range.top, there.lastRow)) }, isOf: takes(seen, sheet, call, runs) }]; // prettier-ignore
  });
  return (found.find(({ isOf }) => isOf) ?? found[0])?.range ?? null;
}

/** The same as it stands there: a wrong point is refused here as on the sheet, in place of a curve that ends above it. */
function curveAsked(seen: Seen, runs: BookRuns): Matrix | null {
  const range = curveCells(seen, runs);
  const there = seen.sheets.find(({ sheet }) => sheet === range?.sheet);
  if (range === null || there === undefined) return null;
  return placesIn(range).map((line) => line.map(({ column, row }) => cellOf(there.at(column, row))));
}

/**
 * The curve by which the pane solves: that of the call, else the first of the book; null where nobody has typed one yet. Two rows with a number
 * are one: what is wrong in them is refused, and never passed over as if there were no fan.
 */
export function curveToSolve(seen: Seen, runs: BookRuns): Matrix | null {
  const asked = curveAsked(seen, runs);
  const found = curveFor(seen, runs.system, curveCells(seen, runs));
  if (asked === null) return found?.points.map((point) => [...point]) ?? null;
  const isTyped = asked.filter((row) => row.some((cell) => typeof cell === "number")).length > 1;
  return isTyped ? asked : null;
}

/** What is refused in place of a density that no cell shows: another air would stand beside the sheet's without a word. */
const IN_NO_CELL = "worked out within a formula, in no cell";

/** The density of the call that takes the table: none where it names none, which is standard air; the named cell where no call takes it. */
export function densityAsked(seen: Seen, runs: BookRuns): Matrix | null {
  for (const { sheet, call } of callsOf(seen, Object.keys(DENSITY))) {
    if (!takes(seen, sheet, call, runs)) continue;
    const pieces = (call.args[DENSITY[call.name]!] ?? []).filter(({ type }) => type !== "whitespace");
    const [only, ...rest] = pieces as readonly { readonly type: string; readonly value: string }[];
    if (only === undefined) return null;
    if (only.type === "number" && rest.length === 0) return [[Number(only.value)]];
    const range = rangeOfArgument(pieces, sheet, seen.book);
    const there = seen.sheets.find((one) => one.sheet === range?.sheet);
    if (range === null || !isOneCell(range) || there === undefined) return [[IN_NO_CELL]];
    const cell = cellOf(there.at(range.left, range.top));
    return cell === null ? null : [[cell]];
  }
  return densityIn(seen.book);
}

const callsOf = ({ book }: Seen, names: readonly string[]): { readonly sheet: string; readonly call: OurCall }[] =>
  book.workbook.sheets.flatMap((sheet) =>
    ourFormulasOn(sheet).flatMap(({ calls }) =>
      calls.filter(({ name }) => names.includes(name)).map((call) => ({ sheet: sheet.name, call })),
    ),
  );

function takes({ book }: Seen, sheet: string, call: OurCall, { table }: BookRuns): boolean {
  const range = rangeOfArgument(call.args[0] ?? [], sheet, book);
  return range?.sheet === table.sheet && isWithinRange(range, placeOf(table.address(table.headerRow, "run")));
}
