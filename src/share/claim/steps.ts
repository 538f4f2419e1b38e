import { type Quantity, type Unit, type UnitSystem, unitOf } from "../../reference/quantities";
import { quotedText } from "../references";
import { num } from "../translate/expressions/text";
import type { Said } from "./say";

/** A list of steps on the workings, each in a row of its own: what it is, and its formula. */
export interface Steps {
  readonly system: UnitSystem;
  /** A step; the cell that holds it. */
  readonly step: (heading: string, formula: string) => string;
  /** A value in SI as the function says it: as it was typed, or with as many figures as it means. */
  readonly amount: (heading: string, value: string, quantity: Quantity) => Said;
  readonly inUnit: (heading: string, value: string, unit: Unit) => Said;
  /** The same list; what is added there stays an empty text where this cell is not 1. */
  readonly where: (cell: string) => Steps;
}

/** How wide a list of steps is: what it is, its value, how large that is, the number that is said. */
export const STEPS_WIDE = 4;

const [TYPED, MEANT] = [6, 3]; // figures, as the function has them

/**
 * @param top the row of the list's first step
 * @param lines grows with every step
 */
export function newSteps(top: number, system: UnitSystem, lines: string[][], guard: string | null = null): Steps {
  const guarded = (formula: string): string => (guard === null ? formula : `IF(${guard}=1,${formula},"")`);
  const put = (heading: string, formula: string, more: (row: number) => readonly string[] = () => []): number => {
    const row = top + lines.length;
    lines.push([quotedText(heading), formula, ...more(row)]);
    return row;
  };
  const inUnit: Steps["inUnit"] = (heading, value, unit) => {
    const shown = unit.factor === 1 ? value : `(${value})/${num(unit.factor)}`;
    const row = put(`${heading} (${unit.label})`, guarded(shown), (at) => [
      `IF($B$${at}="",0,IF($B$${at}=0,0,INT(LOG(ABS($B$${at})))))`,
      guarded(tidy(`$B$${at}`, `$C$${at}`)),
    ]);
    return { number: `$D$${row}`, label: unit.label };
  };
  return {
    system,
    step: (heading, formula) => `$B$${put(heading, guarded(formula))}`,
    amount: (heading, value, quantity) => inUnit(heading, value, unitOf(quantity, system)),
    inUnit,
    where: (cell) => newSteps(top, system, lines, cell),
  };
}

/** A number with so many figures. A large one is rounded in its own power of ten, so that no tail of binary digits comes along. */
function figures(value: string, magnitude: string, count: number): string {
  const large = `10^(${magnitude}-${count - 1})`;
  return `IF(${magnitude}>=${count - 1},ROUND(${value}/${large},0)*${large},ROUND(${value},${count - 1}-${magnitude}))`;
}

function tidy(value: string, magnitude: string): string {
  const typed = figures(value, magnitude, TYPED);
  return `IF(${value}=0,0,IF(ABS(${typed}-${value})<=0.000000001*ABS(${value}),${typed},${figures(value, magnitude, MEANT)}))`;
}
