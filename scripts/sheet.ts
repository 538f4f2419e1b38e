// npm run sheet -- --units SI --out my-budget.xlsx [--contents example|empty] [--overwrite]: writes a budget as an .xlsx workbook.
import { existsSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { writeBook } from "../src/hosts/file/writeBook";
import { budgetBook } from "../src/sheets/book/budgetBook";
import { buildIfNeeded } from "./buildIfNeeded";
import { calculate } from "./calculate";
import { command, readOptions } from "./command";
import { sheetKeys } from "../src/sheets/sheetKeys";

const root = path.resolve(__dirname, "..");
const USAGE = "npm run sheet -- --units SI --out my-budget.xlsx [--contents example] [--overwrite]";

interface Wanted {
  readonly units: "IP" | "SI";
  readonly contents: "empty" | "example";
  readonly out: string;
  readonly overwrite: boolean;
}

/** What was asked for; a sentence where it cannot be understood or must not be done. */
export function wanted(args: string[]): Wanted {
  const { units: words, contents = "empty", out, overwrite = false } = read(args);
  const units = words?.toUpperCase().replace("-", "");
  if (units !== "IP" && units !== "SI")
    throw new Error(`--units is IP or SI${words === undefined ? "" : `, not ${words}`}; the command is ${USAGE}`);
  if (contents !== "empty" && contents !== "example")
    throw new Error(`--contents is empty or example, not ${contents}; the command is ${USAGE}`);
  if (out === undefined || !/\.xlsx$/i.test(out))
    throw new Error(`--out names the file to write, which ends in .xlsx; the command is ${USAGE}`);
  if (existsSync(out) && !overwrite)
    throw new Error(`${out} is there already and was left alone; add --overwrite to replace it`);
  const folder = path.dirname(path.resolve(out));
  if (!existsSync(folder) || !statSync(folder).isDirectory())
    throw new Error(`there is no folder ${path.dirname(out)}`);
  return { units, contents, out, overwrite };
}

function read(args: string[]) {
  const options = {
    units: { type: "string" },
    contents: { type: "string" },
    out: { type: "string" },
    overwrite: { type: "boolean" },
  } as const;
  return readOptions({ args, options }, USAGE).values;
}

async function write({ units, contents, out, overwrite }: Wanted): Promise<void> {
  await buildIfNeeded(root, true);
  const book = calculate(budgetBook({ units, sheets: sheetKeys, contents }, { sheets: [], names: [] }));
  const bytes = await writeBook(book, { title: book.workbook.name });
  writeFileSync(out, bytes, { flag: overwrite ? "w" : "wx" });
  console.log(
    `${out} is written: ${book.workbook.sheets.length} sheets, ${contents === "empty" ? "empty" : "with the invented example"}, in ${units} units.`,
  );
}

if (require.main === module) command(USAGE, async (args) => write(wanted(args)), "No sheet was written: ");
