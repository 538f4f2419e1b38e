import { clubCopy } from "../../src/share/clubCopy";
import { budgetBook } from "../../src/sheets/book/budgetBook";
import { hardRecalculation } from "../../test/support/hardRecalculation";
import { hasLibreOffice } from "../../test/support/libreOffice";
import { calculate } from "../calculate";
import { type Measured, measuredOf } from "./measure";
import { notMeasured, type Row, seconds } from "./row";
import { sheetKeys } from "../../src/sheets/sheetKeys";

const WHAT = "club copy of the demo, opened and recalculated by LibreOffice, its own start not counted";

/** As the tests of this checkout start LibreOffice (test/support/soffice.ts); an older one inherits them, so that both are measured in the same way. */
const KEEPS_MEMORY = { MALLOC_MMAP_THRESHOLD_: "2000000000", MALLOC_TRIM_THRESHOLD_: "2000000000" };

/** The demo with our functions in the grid's model, and its club copy without them in LibreOffice. */
export async function recalculatedCopies(): Promise<Row[]> {
  const demo = budgetBook({ units: "IP", sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });
  const live = calculate(demo);
  const own = await timed(() => calculate(demo));
  const rows = [seconds("the demo, read into the local sheet's grid and calculated with the functions", own)];
  if (!hasLibreOffice) return [...rows, notMeasured(WHAT, "LibreOffice is not there")];
  Object.assign(process.env, KEEPS_MEMORY);
  const { workbook } = clubCopy(live, { kind: "formulas", date: "2000-01-01", version: "0" }).book;
  const empty = { ...demo, sheets: [{ ...demo.sheets[0]!, cells: [{ at: "A1", formula: "=1+1" }] }], names: [] };
  await hardRecalculation(empty);
  const start = await timed(() => hardRecalculation(empty));
  const copy = await timed(() => hardRecalculation(workbook));
  return [
    ...rows,
    seconds("LibreOffice, from its start to its end with a single cell", start),
    seconds(WHAT, { middle: copy.middle - start.middle, from: copy.from - start.to, to: copy.to - start.from }),
  ];
}

const TIMES = 3;

async function timed(job: () => unknown): Promise<Measured> {
  const all: number[] = [];
  for (let time = 0; time < TIMES; time++) {
    const start = performance.now();
    await job();
    all.push((performance.now() - start) / 1000);
  }
  return measuredOf(all);
}
