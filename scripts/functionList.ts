import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { tasks } from "../src/functions/tasks";
import type { FunctionMetadata } from "../src/hosts/functionsFile";
import { finishMetadata, type Metadata } from "./finishMetadata";
import { functionFiles } from "./functionFiles";

const START = "<!-- functions:start -->";
const END = "<!-- functions:end -->";

/** The functions as a table, as they are typed in a cell, in the order of the pane. */
export function functionTable(
  functions: readonly Pick<FunctionMetadata, "name" | "description" | "parameters">[],
): string {
  const order = tasks.flatMap((task) => task.functions.map(({ name }) => name));
  const sorted = [...functions].sort((a, b) => order.indexOf(a.name) - order.indexOf(b.name));
  const rows = sorted.map(({ name, description, parameters }) => {
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

/** What the functions' own files say, asked of the generator: no build is needed. */
async function declared(): Promise<readonly FunctionMetadata[]> {
  const { errors, metadataJson } = await generateCustomFunctionsMetadata([...functionFiles]);
  if (errors.length > 0) throw new Error(errors.join("\n"));
  return finishMetadata(JSON.parse(metadataJson) as Metadata, "").functions;
}

async function renew(): Promise<void> {
  const list = path.join(__dirname, "../docs/functions.md");
  const text = readFileSync(list, "utf8");
  const renewed = withFunctionTable(text, functionTable(await declared()));
  if (!process.argv.includes("--check")) writeFileSync(list, renewed);
  else if (unaligned(renewed) !== unaligned(text))
    throw new Error(
      "docs/functions.md: the function list is out of step; run npx tsx scripts/functionList.ts and npm run format",
    );
}

if (require.main === module)
  renew().catch((error: unknown) => {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  });
