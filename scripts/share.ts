// npm run share -- budget.xlsx club.xlsx [--values] [--overwrite]: a copy of a budget for people without the add-in.
import { existsSync, readFileSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import packageJson from "../package.json";
import { movedWords } from "../src/hosts/movedNumbers";
import { openBudget } from "../src/hosts/file/readBook";
import { leftOutWords } from "../src/hosts/fit/fitted";
import { shownWith } from "../src/hosts/local/readGrid";
import { COPY_STEPS } from "../src/hosts/copyOutcome";
import { type MadeCopy, makeCopy } from "../src/hosts/makeCopy";
import type { FixedCell } from "../src/share/copy";
import type { Calculated, Shown, ShownCell } from "../src/sheets/calculated";
import { buildIfNeeded } from "./buildIfNeeded";
import { calculate, modelOf } from "./calculate";
import { command, readOptions } from "./command";

const root = path.resolve(__dirname, "..");
const USAGE = "npm run share -- budget.xlsx club.xlsx [--values] [--overwrite]";

interface Wanted {
  readonly from: string;
  readonly to: string;
  readonly kind: "formulas" | "values";
  readonly overwrite: boolean;
}

/** What was asked for; a sentence where it cannot be understood or must not be done. */
export function wanted(args: string[]): Wanted {
  const { values, positionals } = read(args);
  const [from, to, ...more] = positionals;
  if (from === undefined || to === undefined || more.length > 0)
    throw new Error(`a budget to read and a copy to write must be named; the command is ${USAGE}`);
  if (!/\.xlsx$/i.test(to)) throw new Error(`the copy's name must end in .xlsx, and ${to} does not`);
  if (!existsSync(from) || !statSync(from).isFile()) throw new Error(`there is no file ${from}`);
  if (path.resolve(from) === path.resolve(to)) throw new Error("the copy must be another file than the budget");
  const overwrite = values.overwrite ?? false;
  if (existsSync(to) && !overwrite)
    throw new Error(`${to} is there already and was left alone; add --overwrite to replace it`);
  const folder = path.dirname(path.resolve(to));
  if (!existsSync(folder) || !statSync(folder).isDirectory()) throw new Error(`there is no folder ${path.dirname(to)}`);
  return { from, to, kind: values.values === true ? "values" : "formulas", overwrite };
}

function read(args: string[]) {
  const options = { values: { type: "boolean" }, overwrite: { type: "boolean" } } as const;
  return readOptions({ args, allowPositionals: true, options }, USAGE);
}

/** The book with freshly computed values. Where the grid knows no function of that name, the file's own value stays. */
function recalculated(book: Calculated): Calculated {
  const { shown } = calculate(book.workbook);
  const mended: Shown = new Map(
    [...shown].map(([sheet, cells]) => [
      sheet,
      new Map(
        [...cells].map(([at, cell]) => {
          const before = book.shown.get(sheet)?.get(at);
          return [at, isUnknown(cell) && before !== undefined && !isUnknown(before) ? before : cell];
        }),
      ),
    ]),
  );
  return { workbook: book.workbook, shown: mended };
}

const isUnknown = ({ value }: ShownCell): boolean =>
  value !== null && typeof value === "object" && value.error === "#NAME?";

async function share({ from, to, kind, overwrite }: Wanted): Promise<void> {
  await buildIfNeeded(root, true);
  const { leftOut, ...opened } = await openBudget(readFileSync(from));
  if (leftOut.length > 0) console.log(leftOutWords(leftOut));
  const book = recalculated(opened);
  const moved = movedWords(opened, book.shown, "file");
  if (moved !== "") console.log(moved);
  const copy = await makeCopy(
    book,
    { kind, date: today(), version: packageJson.version },
    (workbook) => shownWith(modelOf(workbook), workbook).shown,
    (index) => console.log(`${COPY_STEPS[index]} ...`),
  );
  if (!copy.made) throw new Error(copy.why);
  writeFileSync(to, copy.bytes, { flag: overwrite ? "w" : "wx" });
  console.log(report(copy, to));
}

const today = (): string => new Date().toISOString().slice(0, 10);

/** What became of the cells, with the cells that stay as they are. */
function report({ live, fixed, untranslated, unchecked }: Extract<MadeCopy, { made: true }>, to: string): string {
  const line = ({ sheet, at, function: name, why }: FixedCell): string =>
    `  ${sheet}!${at} ${name === "" ? "" : `${name}: `}${why}`;
  const untold = untranslated.length === 0 ? "" : `, ${untranslated.length} could not be translated`;
  const counts = `${to}: ${live} formulas recalculate, ${fixed.length} are fixed${untold}.`;
  const compared =
    unchecked.length === 0 ? [] : [`  Not compared, since they were not computed here: ${unchecked.join(", ")}.`];
  return [counts, ...(live === 0 ? [] : fixed.map(line)), ...untranslated.map(line), ...compared].join("\n");
}

if (require.main === module) command(USAGE, async (args) => share(wanted(args)));
