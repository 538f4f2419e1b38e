import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

interface Entry {
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly { readonly name: string; readonly optional?: boolean }[];
}

const START = "<!-- functions:start -->";
const END = "<!-- functions:end -->";

/** The functions as a table, as they are typed in a cell. */
export function functionTable(functions: readonly Entry[]): string {
  const rows = functions.map(({ name, description, parameters }) => {
    const given = parameters.map((parameter) => (parameter.optional === true ? `[${parameter.name}]` : parameter.name));
    return `| \`DUCT.${name}(${given.join(", ")})\` | ${description.replaceAll("|", "\\|")} |`;
  });
  return ["| Function | What it gives |", "| --- | --- |", ...rows].join("\n");
}

/** The text with the table between its two marks renewed. */
export function withFunctionTable(text: string, table: string): string {
  const start = text.indexOf(START);
  const end = text.indexOf(END);
  if (start < 0 || end < start) throw new Error(`the text must hold ${START} and, after it, ${END}`);
  return `${text.slice(0, start + START.length)}\n\n${table}\n\n${text.slice(end)}`;
}

/** The text without the blanks and dashes with which the formatter lines up a table's columns. */
export const unaligned = (text: string): string => text.replace(/ +/g, " ").replace(/-{3,}/g, "---");

if (require.main === module) {
  const root = path.join(__dirname, "..");
  const readme = path.join(root, "README.md");
  const metadata = JSON.parse(readFileSync(path.join(root, "dist/functions.json"), "utf8")) as { functions: Entry[] };
  const text = readFileSync(readme, "utf8");
  const renewed = withFunctionTable(text, functionTable(metadata.functions));
  if (!process.argv.includes("--check")) writeFileSync(readme, renewed);
  else if (unaligned(renewed) !== unaligned(text)) {
    console.error(
      "README.md: the function list is out of step; run npx tsx scripts/functionList.ts and npm run format",
    );
    process.exitCode = 1;
  }
}
