import { isBlank, nameKey } from "../budget/words";
import type { BudgetPlace } from "../budget/blockNames";
import type { SolvePlace } from "./solveNames";

const PREFIX = 2; // r: stands before every name to compare

/** The names in the argument `open` as they are compared, or an empty text. */
export const openText = (cell: string | null): string =>
  cell === null ? '""' : `IF(${isBlank(cell)},"",MID(${nameKey(cell)},${PREFIX + 1},9999))`;

/** Each of them between two semicolons of its own, ;saw;;planer; : a text that is a run's name as it stands is that one name. */
export function openList(place: SolvePlace, budget: BudgetPlace): string {
  const text = place.scalar("open");
  const apart = ['","', "CHAR(10)", '"; "', '" ;"'].reduce((inner, mark) => `SUBSTITUTE(${inner},${mark},";")`, text);
  const names = `";"&SUBSTITUTE(${apart},";",";;")&";"`;
  return `IF(${text}="","",IF(ISNUMBER(MATCH("r:"&${text},${budget.all("key")},0)),";"&${text}&";",${names}))`;
}

const named = (key: string): string => `";"&MID(${key},${PREFIX + 1},9999)&";"`;

/** What is left of the list without the names of the rows down to this one. */
export function restOfList(place: SolvePlace, budget: BudgetPlace, row: number): string {
  const before = row === 1 ? place.scalar("list") : place.cell("rest", row - 1);
  const without = `SUBSTITUTE(${before},${named(budget.cell("key", row))},"")`;
  return `IF(${budget.cell("used", row)}>0,${without},${before})`;
}

/** What of the list is no name of a run: nothing, where all is well. */
export const leftOfList = (rest: string): string =>
  `SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(${rest},";all;",""),";none;",""),";","")`;

/** The gate of a run in the order of the flow: 0 has none, 1 open, 2 shut. */
export function gateOf(place: SolvePlace, budget: BudgetPlace, row: number): string {
  const [inTable, key] = (["gate", "key"] as const).map(
    (column) => `INDEX(${budget.all(column)},${budget.cell("source", row)})`,
  ) as [string, string];
  const all = `ISNUMBER(FIND(";all;",${place.cell("rest", place.rows)}))`;
  const told = `IF(OR(${all},ISNUMBER(FIND(${named(key)},${place.scalar("list")}))),1,2)`;
  const state = `IF(${place.scalar("open")}="",${inTable},IF(${inTable}=0,0,${told}))`;
  return `IF(${budget.cell("sideThere", row)}=1,${state},0)`;
}
