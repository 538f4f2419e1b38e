import type { BudgetPlace } from "./blockNames";
import { KINDS, ROOM, USUAL } from "./metalWords";

const held = (sum: string, kind: keyof typeof KINDS): string => `MOD(INT(${sum}/${KINDS[kind]}),${ROOM})>0`;

/** What comes into a run of its own; `brings` is below 0 where no dust is typed. */
export function ownDust(place: BudgetPlace, row: number): string {
  const input = (column: "brings" | "sparkName"): string => `INDEX(${place.all(column)},${place.cell("source", row)})`;
  const brings = input("brings");
  const end = `IF(AND(${input("sparkName")}=1,NOT(${held(`MAX(0,${brings})`, "sparks")})),${KINDS.maySpark},IF(${brings}<0,${USUAL},${brings}))`;
  return `IF(${place.cell("joining", row)}=0,${end},MAX(0,${brings}))`;
}

/** 2 where sparks meet what burns in a run, 1 where they may, 0 where not. */
export function metIn(place: BudgetPlace, row: number): string {
  const sum = place.cell("dusts", row);
  const [burns, sparks, mayBurn, maySpark] = (["burns", "sparks", "mayBurn", "maySpark"] as const).map((kind) =>
    held(sum, kind),
  );
  return `IF(AND(${burns},${sparks}),2,IF(OR(AND(${burns},${maySpark}),AND(${sparks},${mayBurn})),1,0))`;
}

/** The most of that in the runs that join. */
export const metBefore = (place: BudgetPlace, row: number): string =>
  `SUMPRODUCT(MAX((${place.above("next", row)}=${place.cell("own", row)})*${place.above("met", row)}))`;
