import type { Sheet, Workbook } from "../../sheets/workbook";
import type { Watch } from "../host";
import { sentenceOf } from "./faults";
import { mark } from "./marks";
import { writeFormulas, writeValues } from "./writeCells";
import { PATIENT } from "./patient";
import { removeChart, writeChart } from "./writeChart";
import { writeLayout } from "./writeLayout";
import { longLists, type LongLists, writeLists, writeLongLists, writePrompts } from "./writeLists";
import { writeFlags, writeLooks } from "./writeLooks";
import { writePrint } from "./writePrint";
import { writeTables } from "./writeTables";

interface Step {
  readonly what: string;
  readonly work: (context: Excel.RequestContext) => Promise<void>;
}

/** What a budget can do without: where Excel refuses it, the sheets stay, and a sentence says what is missing. */
interface Extra {
  readonly missing: string;
  readonly work: Step["work"];
  readonly tidy?: Step["work"]; // where the work was refused halfway
}

/**
 * All sheets and names come first, since formulas of one sheet speak of others; then the contents, a sheet at a time;
 * then all formulas at once, so that no function of ours runs over a table that is half filled.
 *
 * @returns a sentence for each thing that Excel refused and the budget can do without
 */
export async function writeWorkbook(
  workbook: Workbook,
  listsSheet: string, // what a sheet for long lists is called
  made: string[], // takes the ids of the new sheets
  { progress, signal }: Watch,
): Promise<string[]> {
  const { sheets } = workbook;
  const refused: string[] = [];
  const lists = longLists(sheets);
  const longIn = (context: Excel.RequestContext): LongLists | null =>
    lists.length === 0 ? null : { sheet: context.workbook.worksheets.getItem(listsSheet), lists };
  const steps: Step[] = [
    {
      what: "Making the sheets",
      work: (context) => makeSheets(context, workbook, lists.length > 0 ? listsSheet : null, made),
    },
    ...(lists.length === 0 ? [] : [{ what: "Lists", work: inOneGo((context) => writeLongLists(longIn(context)!)) }]),
    ...sheets.map((sheet) => ({
      what: sheet.name,
      work: inOneGo((context) => writeContents(context, sheet, longIn(context))),
    })),
    { what: "Formulas", work: inOneGo((context) => sheets.forEach((sheet) => writeAnswers(context, sheet))) },
    { what: "Charts and page set-up", work: () => writeExtras(sheets, refused) },
  ];
  for (const [done, { what, work }] of steps.entries()) {
    signal.throwIfAborted();
    progress(done, steps.length, what);
    await Excel.run(PATIENT, work);
  }
  signal.throwIfAborted();
  await Excel.run(PATIENT, inOneGo((context) => showFirst(context, sheets))); // prettier-ignore
  progress(steps.length, steps.length, "Done");
  return refused;
}

const inOneGo =
  (work: (context: Excel.RequestContext) => void): Step["work"] =>
  async (context) => {
    work(context);
    await context.sync();
  };

async function makeSheets(
  context: Excel.RequestContext,
  workbook: Workbook,
  hidden: string | null,
  ids: string[],
): Promise<void> {
  const { worksheets, names } = context.workbook;
  const made = workbook.sheets.map(({ name, key }) => {
    const sheet = worksheets.add(name);
    mark(sheet, name, key);
    return sheet;
  });
  if (hidden !== null) {
    const lists = worksheets.add(hidden);
    lists.visibility = "VeryHidden";
    made.push(lists);
  }
  for (const { name, sheet, at } of workbook.names) names.add(name, worksheets.getItem(sheet).getRange(at));
  for (const sheet of made) sheet.load("id");
  await context.sync();
  ids.push(...made.map(({ id }) => id));
}

function writeContents(context: Excel.RequestContext, sheet: Sheet, long: LongLists | null): void {
  const there = context.workbook.worksheets.getItem(sheet.name);
  writeLayout(there, sheet);
  writeLooks(there, sheet);
  writeValues(there, sheet);
  writeLists(there, sheet.lists, long);
  writePrompts(there, sheet);
  writeFlags(there, sheet.flags);
}

/** Tables come after the formulas, since Excel would fill a table's column with the first formula entered there. */
function writeAnswers(context: Excel.RequestContext, sheet: Sheet): void {
  const there = context.workbook.worksheets.getItem(sheet.name);
  writeFormulas(there, sheet);
  writeTables(there, sheet.tables ?? []);
}

async function writeExtras(sheets: readonly Sheet[], refused: string[]): Promise<void> {
  for (const { missing, work, tidy } of [...chartsOf(sheets), pagesOf(sheets)]) {
    try {
      await Excel.run(PATIENT, work);
    } catch (fault) {
      refused.push(`${missing} ${sentenceOf(fault)}`);
      if (tidy !== undefined) await Excel.run(PATIENT, tidy);
    }
  }
}

const chartsOf = (sheets: readonly Sheet[]): Extra[] =>
  sheets.flatMap(({ name, charts = [] }) =>
    charts.map((chart) => ({
      missing: `The chart "${chart.title}" on ${name} is missing.`,
      work: (context) => writeChart(context, context.workbook.worksheets.getItem(name), chart),
      tidy: (context) => removeChart(context, context.workbook.worksheets.getItem(name), chart),
    })),
  );

/** Excel may refuse paper where no printer is set up. */
const pagesOf = (sheets: readonly Sheet[]): Extra => ({
  missing: "The page set-up for printing is missing.",
  work: inOneGo((context) => {
    for (const { name, print } of sheets) {
      if (print !== undefined) writePrint(context.workbook.worksheets.getItem(name), print);
    }
  }),
});

function showFirst(context: Excel.RequestContext, [first]: readonly Sheet[]): void {
  if (first !== undefined) context.workbook.worksheets.getItem(first.name).activate();
}
