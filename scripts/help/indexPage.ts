import { referenceTables } from "../../src/reference";
import type { Task } from "../../src/functions/guide";
import type { FunctionsFile } from "../../src/hosts/functionsFile";
import { functionFile, tableFile } from "../../src/taskpane/help/files";
import { code, type HelpPage, link, section, table } from "./html";

export function indexPage(file: FunctionsFile, tasks: readonly Task[]): HelpPage {
  const described = (name: string): string => file.functions.find((entry) => entry.name === name)?.description ?? "";
  const functions = tasks.map(({ title, functions: guides }) =>
    table(
      title,
      ["Function", "What it gives"],
      guides.map(({ name }) => [link(functionFile(name), name), described(name)]),
    ),
  );
  return {
    file: "index.html",
    title: "Duct Ledger help",
    lead: "Every function and every reference table, with its formula, units, limits and source.",
    body: [
      section("Functions", functions.join("\n"), "functions"),
      section(
        "Tables",
        table(
          "Reference tables",
          ["Table", "What stands in it", "Rows"],
          referenceTables.map(({ name, title, rows }) => [link(tableFile(name), name), title, String(rows.length)]),
        ),
        "tables",
      ),
      section(
        "In a sheet",
        `<p>Begin a cell with ${code("=DUCT.").markup} and choose. The last argument of a function with units is ${code('"IP"').markup} (when left out) or ${code('"SI"').markup}.</p>`,
      ),
    ].join("\n"),
  };
}
