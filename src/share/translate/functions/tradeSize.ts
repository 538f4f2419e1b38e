import { takes } from "../../../functions/duct/tradesize";
import { stockDiameters } from "../../../reference/tradeSizes";
import { scalar } from "../arrayRule";
import type { Reader } from "../element";
import { NO_ANSWER, num } from "../expressions/text";
import { readerOf } from "../readerOf";

const SLACK = 1e-9; // of the wanted size: 4 in typed as 101.6 mm is still 4 in

/** The wanted size as it stands in its cell, since the table of sizes is in the same unit. */
const asItStands: Reader = (element, system, context) => ({
  ...readerOf(takes.takes.diameter)(element, system, context),
  value: element?.text ?? NO_ANSWER,
});

export const tradeSize = scalar(
  takes,
  ({ diameter, rounding }, { system, context }) => {
    const sizes = context.tables.block(`sizes ${system}`).range("size");
    const most = stockDiameters(system).length;
    const upTo = `SUMPRODUCT((${sizes}<=${diameter}*${num(1 + SLACK)})*1)`;
    const under = `SUMPRODUCT((${sizes}<${diameter}*${num(1 - SLACK)})*1)`;
    const down = `IF(${upTo}=0,${NO_ANSWER},INDEX(${sizes},MAX(1,${upTo})))`;
    const up = `IF(${under}=${most},${NO_ANSWER},INDEX(${sizes},MIN(${most},${under}+1)))`;
    const [below, above] = [`INDEX(${sizes},MAX(1,${upTo}))`, `INDEX(${sizes},MIN(${most},${under}+1))`];
    const closer = `IF(ABS(${diameter}-${below})<=ABS(${above}-${diameter})+${num(SLACK)}*${diameter},${below},${above})`;
    const ways: Readonly<Record<string, string>> = { down, up, nearest: closer };
    const byCell = `IF(${rounding}="up",${up},IF(${rounding}="nearest",${closer},${down}))`;
    return { value: ways[rounding] ?? byCell, isInUsersUnit: true };
  },
  { diameter: asItStands },
);
