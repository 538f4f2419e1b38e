import { ourName } from "../../../sheets/ourCalls";
import { cellsMade, ourWork, stepsTaken } from "./askedFor";
import { limitRanges } from "./limitRanges";
import { begin, isRefusal, MOST_WORK, refusedValue, spend } from "./meter";
import { type Argument, cellsOf, heightOf, isMatrix, sum, type Value, valueOf, widthOf } from "./sizes";
import { cellsInZone, type Zone } from "./zones";

const MOST_CELLS = 250_000; // of one answer
const MOST_STEPS = 1e7; // of one call of the grid's own functions
const MAKING = 20; // visits that a new cell counts, for the memory that it takes
const LONGEST_TEXT = 32_767; // characters that a cell holds, in Excel as well

type Result = Value | readonly (readonly Value[])[];
type Compute = (this: Context, ...args: Argument[]) => Result;

interface Context {
  readonly __originSheetId: string;
  readonly getters: { readonly getRangeFromSheetXC: (sheetId: string, text: string) => { readonly zone: Zone } };
}

interface Parameter {
  readonly acceptMatrix?: boolean;
}

const HIDING = new Set(["IFERROR", "IFNA", "ISERROR", "ISERR", "ISNA", "COUNT", "COUNTA"]);

/**
 * Gives every function of the grid a measure: one call makes no more cells than a file may have, and all calls
 * after a change take no more work than some seconds. A formula beyond that shows an error that says so, and so does whatever
 * computes with it. Called when all functions are there.
 */
export function limitWork(): void {
  const { functionRegistry, featurePluginRegistry } = o_spreadsheet.registries;
  const mapping = functionRegistry.mapping as unknown as Record<string, Compute>;
  const described = functionRegistry.content as Readonly<Record<string, { readonly args: readonly Parameter[] }>>;
  for (const [name, compute] of Object.entries(mapping)) mapping[name] = limited(name, compute, described[name]!.args);
  limitRanges();
  class WorkPlugin extends o_spreadsheet.UIPlugin {
    override beforeHandle(): void {
      begin();
    }
  }
  featurePluginRegistry.add("work", WorkPlugin);
}

function limited(name: string, compute: Compute, parameters: readonly Parameter[]): Compute {
  const isOurs = ourName(name) !== null;
  const made = name === "INDIRECT" ? indirectCells : cellsMade.get(name);
  const steps = isOurs ? (...all: Argument[]) => ourWork(name, all) : stepsTaken.get(name);
  const mostSteps = isOurs ? MOST_WORK : MOST_STEPS;
  return function (...args) {
    let hasRange = false;
    for (const one of args) {
      if (isMatrix(one)) hasRange = true;
      else if (isRefusal(one)) return one!;
    }
    if (made === undefined && steps === undefined && !hasRange)
      return spend(1) ? held(compute.apply(this, args)) : refusedValue();
    if (HIDING.has(name) && args.some((one) => isMatrix(one) && one.some((column) => column.some(isRefusal))))
      return refusedValue();
    const calls = callsMade(args, parameters);
    const makes = (made?.apply(this, args) ?? 0) + (calls > 1 ? calls : 0);
    const takes = steps?.(...args) ?? 0;
    if (!(makes <= MOST_CELLS) || !(takes <= mostSteps)) return refusedValue();
    const cost = calls * (1 + rangesGiven(args, parameters)) + MAKING * makes + takes;
    return spend(cost) ? held(compute.apply(this, args)) : refusedValue();
  };
}

const takesRange = (parameters: readonly Parameter[], index: number): boolean =>
  (parameters[index] ?? parameters.at(-1))?.acceptMatrix === true;

/** A function that takes single values is called for each cell of the ranges it is given instead. */
function callsMade(args: readonly Argument[], parameters: readonly Parameter[]): number {
  let [across, down] = [1, 1];
  args.forEach((one, index) => {
    if (!isMatrix(one) || takesRange(parameters, index)) return;
    across = Math.max(across, widthOf(one));
    down = Math.max(down, heightOf(one));
  });
  return across * down;
}

/** Cells of the ranges that it goes over with each call. */
const rangesGiven = (args: readonly Argument[], parameters: readonly Parameter[]): number =>
  sum(args.map((one, index) => (takesRange(parameters, index) ? cellsOf(one) : 0)));

function indirectCells(this: Context, text: Argument): number {
  return cellsInZone(this.getters.getRangeFromSheetXC(this.__originSheetId, String(valueOf(text))).zone);
}

/** An answer, where a sheet can hold it. */
function held(result: Result): Result {
  if (!isMatrix(result)) return isLong(result) ? refusedValue() : result;
  if (cellsOf(result) > MOST_CELLS) return refusedValue();
  spend(MAKING * cellsOf(result));
  return result.some((column) => column.some(isLong)) ? refusedValue() : result;
}

const isLong = (value: Value | undefined): boolean =>
  typeof value?.value === "string" && value.value.length > LONGEST_TEXT;
