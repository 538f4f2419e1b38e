import { itemAt } from "../../reference/itemAt";
import type { SheetKey } from "../../sheets/sheetKeys";
import type { Workbook } from "../../sheets/workbook";
import type { CopyFacts } from "./wordsInCopy";

/** What a reader of a copy can change and see followed, by the budget's sheets that it has. */
export function triesIn({ sheets }: Workbook, { isLive }: CopyFacts, lookups: string): readonly string[] {
  const called = (key: SheetKey): string | undefined => sheets.find((sheet) => sheet.key === key)?.name;
  const [runs, flow, budget] = [called("runs"), called("flow"), called("budget")];
  const follow = [isLive("DUCT.BUDGET(") ? budget : undefined, isLive("DUCT.SOLVE(") ? flow : undefined].filter(
    (name) => name !== undefined,
  );
  if (runs === undefined || follow.length === 0) return [];
  const shutting =
    flow !== undefined && follow.includes(flow)
      ? [`Shut a gate: on the sheet ${flow} type shut and the run's name into column A, and read what the others get.`]
      : [];
  return [
    ...shutting,
    `Widen a pipe: type another diameter on the sheet ${runs}; ${follow.join(" and ")} ${itemAt(["follows", "follow"], follow.length - 1)}.`,
    `Add a run: use a blank row of the table on the sheet ${runs}, since beside a row that is inserted nothing is checked.`,
    `Change a figure: a material's roughness or a fitting's K on the sheet ${lookups}.`,
  ];
}
