import { sheetPrefix } from "../../sheets/sheetPrefix";
import type { Workbook } from "../../sheets/workbook";

/**
 * The grid refuses an apostrophe in a sheet's name, which Excel allows ("Bob's shop"). So it gets a typographic one, in
 * the name and in every formula that spells it.
 */
export function withHeldNames(workbook: Workbook): Workbook {
  const renamed = new Map(workbook.sheets.flatMap(({ name }) => (name.includes("'") ? [[name, held(name)]] : [])));
  if (renamed.size === 0) return workbook;
  const spelled = (code: string): string =>
    [...renamed].reduce((written, [name, after]) => respell(written, sheetPrefix(name), sheetPrefix(after)), code);
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...sheet,
      name: renamed.get(sheet.name) ?? sheet.name,
      cells: sheet.cells.map((cell) => ("formula" in cell ? { ...cell, formula: spelled(cell.formula) } : cell)),
      ...(sheet.charts === undefined
        ? {}
        : {
            charts: sheet.charts.map((chart) => ({
              ...chart,
              x: { ...chart.x, range: spelled(chart.x.range) },
              y: {
                ...chart.y,
                series: chart.y.series.map((series) => ({ ...series, range: spelled(series.range) })),
              },
            })),
          }),
    })),
    names: workbook.names.map((name) => ({ ...name, sheet: renamed.get(name.sheet) ?? name.sheet })),
  };
}

const held = (name: string): string => name.replaceAll("'", "\u2019");

/** Replaces a sheet's name where it refers to a sheet, not inside a text between double quotes. */
const respell = (code: string, before: string, after: string): string =>
  code
    .split(/("(?:[^"]|"")*")/)
    .map((part, index) => (index % 2 === 1 ? part : part.replaceAll(before, after)))
    .join("");
