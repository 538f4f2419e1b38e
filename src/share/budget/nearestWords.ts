import { lossFamilies } from "../../reference/lossFamilies";
import { materials } from "../../reference/materials";
import type { RunColumn } from "../../reference/runColumns";
import { transport } from "../../reference/transport";
import { type Wanted, spelling } from "../nearest/spelling";
import { tableNames } from "../nearest/tableNames";
import { withoutDigits } from "../translate/expressions/digits";
import type { Workings } from "../translate/workings";
import type { BudgetScalar } from "./blockNames";
import { runNames } from "./runNames";
import type { RunsReader } from "./runsReader";
import { NONE } from "./waitCells";

/** For a row in which a name is none, the words behind its sentence: which name is nearest, or nothing. */
export interface NearestWords {
  readonly hood: (row: number) => string;
  readonly fittings: (row: number) => string;
  readonly material: (row: number) => string;
  readonly dust: (row: number) => string;
  readonly to: (row: number) => string;
}

/**
 * Of each kind the first wrong name of the table is compared with all that are known, by the rule of the functions; the same name
 * in another row is told the same, and one that differs has its turn when the first is mended. A hood's comes before a fitting's.
 */
export function nearestWords({ place, source }: RunsReader, workings: Workings, table: string): NearestWords {
  const { scalar, cell, all } = place;
  const of = (what: string, wanted: Omit<Wanted, "key" | "title">) =>
    spelling({ ...wanted, key: `nearest ${what} of ${table}`, title: `The nearest ${what}` }, workings);
  const first = (row: BudgetScalar, column: string): string =>
    `IF(${scalar(row)}<${NONE},INDEX(${column},MIN(${scalar(row)},${place.rows})),"")`;
  const none = (): string => '""';
  const byTable = (
    column: Extract<RunColumn, "Material" | "Dust">,
    wrong: BudgetScalar,
    rows: typeof materials | typeof transport,
  ): ((row: number) => string) => {
    if (!source.has(column)) return none;
    const typed = first(wrong, source.all(column));
    const { typed: text, hint } = of(column.toLowerCase(), {
      typed: `IF(OR(${withoutDigits(typed)}="",${typed}="?"),"",${typed})`,
      isList: false,
      ...tableNames(rows),
    });
    return (row) => `IF(${source.cell(column, row)}=${text},${hint},"")`;
  };
  const entries = (): Pick<NearestWords, "hood" | "fittings"> => {
    if (!source.has("Hood") && !source.has("Fittings")) return { hood: none, fittings: none };
    const isHood = `${scalar("wrongHood")}<${NONE}`;
    const hood = source.has("Hood") ? first("wrongHood", source.all("Hood")) : '""';
    const typed = `IF(${isHood},${hood},${first("wrongList", all("wrongEntry"))})`;
    const { typed: text, hint } = of("fitting or hood", {
      typed: `IF(OR(ISNUMBER(FIND(";",${typed})),ISNUMBER(FIND(CHAR(10),${typed})),${typed}="?",${typed}="#"),"",${typed})`,
      isList: true,
      ...tableNames(lossFamilies, ({ kind }) => (kind === "hood" ? null : isHood)),
    });
    return {
      hood: (row) => (source.has("Hood") ? `IF(${source.cell("Hood", row)}=${text},${hint},"")` : '""'),
      fittings: (row) =>
        `IF(${isHood},"",IF(${cell("wrongEntry", row)}="","",IF(${cell("wrongEntry", row)}=${text},${hint},"")))`,
    };
  };
  const run = of("run", {
    typed: `MID(${first("wrongTo", all("toKey"))},3,999)`,
    isList: false,
    ...runNames(place),
  });
  const isSameEnd = (row: number): string =>
    `AND(${cell("toKey", row)}="r:"&${run.typed},${cell("openEnd", row)}=1,INDEX(${all("openEnd")},MIN(${scalar("wrongTo")},${place.rows}))=1)`;
  return {
    ...entries(),
    material: byTable("Material", "wrongMaterial", materials),
    dust: byTable("Dust", "wrongDust", transport),
    to: (row) => `IF(OR(${cell("used", row)}=${scalar("wrongTo")},${isSameEnd(row)}),${run.hint},"")`,
  };
}
