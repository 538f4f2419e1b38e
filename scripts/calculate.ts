import * as library from "@odoo/o-spreadsheet";
import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { calculatedOf } from "../src/hosts/local/readGrid";
import type { GridModel } from "../src/hosts/local/grid";
import { createCustomFunctions } from "../src/hosts/local/customFunctions";
import { gridModel } from "../src/hosts/local/gridModel";
import { addPlugins } from "../src/hosts/local/plugins";
import { FUNCTION_SCRIPTS, type FunctionsFile } from "../src/hosts/functionsFile";
import { registerAll } from "../src/hosts/local/register";
import type { Calculated } from "../src/sheets/calculated";
import type { Workbook } from "../src/sheets/workbook";

const dist = path.resolve(__dirname, "../dist");

let isReady = false;

/** Computes a workbook without a page: the local sheet's grid with the functions of dist/, in Node. */
export const calculate = (workbook: Workbook): Calculated => calculatedOf(modelOf(workbook));

/** The grid's own model of a workbook, computed. */
export function modelOf(workbook: Workbook): GridModel {
  if (!isReady) makeReady();
  isReady = true;
  const { debug } = console;
  console.debug = () => undefined; // the grid reports each step of its loading
  try {
    return gridModel(workbook);
  } finally {
    console.debug = debug;
  }
}

/** What the page does when it opens: our functions become the grid's, and its plugins are added, once. */
function makeReady(): void {
  const { customFunctions, functions } = createCustomFunctions((message) => console.warn(message));
  Object.assign(globalThis, { o_spreadsheet: library });
  for (const script of FUNCTION_SCRIPTS) {
    const code = readFileSync(path.join(dist, script), "utf8");
    // not in a context of its own, where every word of the language is looked up anew and a solve takes five times as long
    const run = vm.compileFunction(code, ["CustomFunctions"]) as (theirs: typeof customFunctions) => void;
    run(customFunctions);
  }
  const file = JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8")) as FunctionsFile;
  const { addFunction, registries } = library;
  registerAll({ addFunction: addFunction as never, errorTypes: registries.errorTypes }, "DUCT", file, functions);
  addPlugins();
}
