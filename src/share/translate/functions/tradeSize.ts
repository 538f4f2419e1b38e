import { readWay, takes } from "../../../functions/duct/tradesize";
import type { UnitSystem } from "../../../reference/quantities";
import { NAMED_SERIES, type NamedSeries, stockSizes } from "../../../reference/tradeSizes";
import { scalar } from "../arrayRule";
import type { Reader } from "../element";
import { NO_ANSWER, num } from "../expressions/text";
import type { LookupTables } from "../lookupTables";
import { readerOf } from "../readerOf";

const SLACK = 1e-9; // of the wanted size: 4 in typed as 101.6 mm is still 4 in

/** The wanted size as it stands in its cell, since the table of sizes is in the same unit. */
const asItStands: Reader = (element, system, context) => ({
  ...readerOf(takes.takes.diameter)(element, system, context),
  value: element?.text ?? NO_ANSWER,
});

/** Each way of rounding to the sizes of one series. */
function waysIn(series: NamedSeries | null, diameter: string, system: UnitSystem, tables: LookupTables) {
  const sizes = tables.block(series === null ? `sizes ${system}` : `${series} ${system}`).range("size");
  const most = stockSizes(system, series).length;
  const upTo = `SUMPRODUCT((${sizes}<=${diameter}*${num(1 + SLACK)})*1)`;
  const under = `SUMPRODUCT((${sizes}<${diameter}*${num(1 - SLACK)})*1)`;
  const [below, above] = [`INDEX(${sizes},MAX(1,${upTo}))`, `INDEX(${sizes},MIN(${most},${under}+1))`];
  return {
    down: `IF(${upTo}=0,${NO_ANSWER},${below})`,
    up: `IF(${under}=${most},${NO_ANSWER},${above})`,
    nearest: `IF(ABS(${diameter}-${below})<=ABS(${above}-${diameter})+${num(SLACK)}*${diameter},${below},${above})`,
  };
}

export const tradeSize = scalar(
  takes,
  ({ diameter, rounding }, { system, context }) => {
    const waysOf = (series: NamedSeries | null) => waysIn(series, diameter, system, context.tables);
    const typed = takes.takes.rounding.words.find((word) => word === rounding);
    if (typed !== undefined) {
      const way = readWay(typed);
      return { value: waysOf(way.series)[way.rounding], isInUsersUnit: true };
    }
    const byCell = (series: NamedSeries | null): string => {
      const { down, up, nearest } = waysOf(series);
      return `IF(LEFT(${rounding},2)="up",${up},IF(LEFT(${rounding},7)="nearest",${nearest},${down}))`;
    };
    const value = NAMED_SERIES.reduce(
      (others, series) => `IF(ISNUMBER(SEARCH("${series}",${rounding})),${byCell(series)},${others})`,
      byCell(null),
    );
    return { value, isInUsersUnit: true };
  },
  { diameter: asItStands },
);
