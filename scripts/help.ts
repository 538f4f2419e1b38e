import { copyFileSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { runInThisContext } from "node:vm";
import { createCustomFunctions } from "../src/hosts/local/customFunctions";
import { callFunction } from "../src/taskpane/functions/callFunction";
import { FUNCTION_SCRIPTS, type FunctionsFile } from "../src/hosts/functionsFile";
import { tasks } from "../src/functions/tasks";
import { cautionsPage } from "./help/cautionsPage";
import { checksPage } from "./help/checksPage";
import { firstInExcelPage } from "./help/firstInExcelPage";
import { functionPages } from "./help/functionPages";
import { type HelpPage, wholePage } from "./help/html";
import { indexPage } from "./help/indexPage";
import { installPage } from "./help/installPage";
import { sizesPage } from "./help/sizesPage";
import { tablePages } from "./help/tablePages";

const dist = path.join(__dirname, "../dist");

/** All pages of the help, computed with the functions that the build wrote. */
export function helpPages(): HelpPage[] {
  const { customFunctions, functions } = createCustomFunctions((message) => console.warn(message));
  Object.assign(globalThis, { CustomFunctions: customFunctions });
  for (const script of FUNCTION_SCRIPTS) runInThisContext(readFileSync(path.join(dist, script), "utf8"));
  const file = JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8")) as FunctionsFile;
  return [
    indexPage(file, tasks),
    ...functionPages(file, tasks, (question) => callFunction(functions, question)),
    ...tablePages(),
    checksPage(),
    cautionsPage(),
    installPage(),
    firstInExcelPage(),
    sizesPage(),
  ];
}

if (require.main === module) {
  const folder = path.join(dist, "help");
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const pages = helpPages();
  for (const page of pages) writeFileSync(path.join(folder, page.file), wholePage(page));
  copyFileSync(path.join(__dirname, "help/help.css"), path.join(folder, "help.css"));
  console.log(`dist/help: ${pages.length} pages`);
}
