import type { ConditionalRule, WriteSheet } from "hucre/xlsx";
import type { Shown } from "../../../sheets/calculated";
import type { StepLink } from "../../../sheets/stepLinks";
import type { Flag, Sheet } from "../../../sheets/workbook";
import { cellAddress } from "../../../sheets/address";
import { readRectangle, rectangleText } from "../../../sheets/rectangle";
import { fileHeight, fileWidth } from "../sizes";
import { toFileText } from "../xlsxText";
import { fileCells } from "./cells";
import { fileChart } from "./chart";
import { type ListsSheet, validations } from "./lists";
import { flagStyle } from "./look";
import { oldRules } from "./oldRules";
import { pageSetup } from "./print";
import { fileTables } from "./tables";

/** One sheet as hucre takes it. */
export function fileSheet(
  sheet: Sheet,
  shown: Shown,
  lists: ListsSheet,
  { title, recalculate }: { readonly title: string; readonly recalculate: boolean },
  links: readonly StepLink[],
): WriteSheet {
  const { rows, columns } = sheet.frozen;
  return {
    name: sheet.name,
    cells: fileCells(sheet, shown, links, !recalculate),
    columns: sheet.columns.map((width) => ({ width: fileWidth(width) })),
    rowDefs: new Map(sheet.tallRows.map(({ row, lines }) => [row - 1, { height: fileHeight(lines) }])),
    ...(rows + columns === 0 ? {} : { freezePane: { rows, columns } }),
    ...(sheet.gridlines === false ? { view: { showGridLines: false } } : {}),
    dataValidations: validations(sheet, lists),
    conditionalRules: conditionalRules(sheet, shown),
    charts: (sheet.charts ?? []).map((chart) => fileChart(chart, sheet.name)),
    tables: fileTables(sheet),
    ...pageSetup(sheet, title),
  };
}

/** What is old is told before anything else of a cell. */
function conditionalRules(sheet: Sheet, shown: Shown): ConditionalRule[] {
  const old = oldRules(sheet, shown.get(sheet.name));
  return [...old, ...sheet.flags.flatMap((flag, index) => rule(flag, old.length + index + 1))];
}

/** A flag as the format has it: the text that it looks for, and a formula that says the same of the range's first cell. */
function rule({ range, containsText, style }: Flag, priority: number): ConditionalRule[] {
  const area = readRectangle(range);
  if (area === null) return [];
  const wanted = containsText.replace(/[~*?]/g, "~$&").replaceAll('"', '""');
  return [
    {
      type: "containsText",
      operator: "containsText" as never, // the format asks for it here; hucre's type knows comparisons only
      text: toFileText(containsText),
      formula: toFileText(`NOT(ISERROR(SEARCH("${wanted}",${cellAddress(area.left, area.top)})))`),
      priority,
      range: rectangleText(area),
      style: flagStyle(style),
    },
  ];
}
