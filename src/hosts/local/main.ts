import { FUNCTION_SCRIPTS } from "../functionsFile";
import { argumentWords } from "./argumentHelp";
import { createCustomFunctions } from "./customFunctions";
import { loadFunctionsFile, loadScript, loadText } from "./load";
import { addPlugins } from "./plugins";
import { openPage } from "./page";
import { registerAll } from "./register";
import { keysInOrder } from "./typing";

const NAMESPACE = "DUCT";

async function start(): Promise<void> {
  const { customFunctions, functions } = createCustomFunctions((message) => console.warn(message));
  Object.assign(globalThis, { CustomFunctions: customFunctions });
  const [file, templates] = await Promise.all([
    loadFunctionsFile("functions.json"),
    loadText("vendor/o_spreadsheet.xml"),
    ...FUNCTION_SCRIPTS.map(loadScript),
  ]);
  const { addFunction, registries } = o_spreadsheet;
  registerAll({ addFunction: addFunction as never, errorTypes: registries.errorTypes }, NAMESPACE, file, functions);
  addPlugins();
  keysInOrder();
  await openPage(templates, (head) => argumentWords(head, NAMESPACE, file));
}

start().catch((error: unknown) => {
  console.error(error);
  const line = document.getElementById("loading");
  if (line !== null)
    line.textContent = `The sheet could not start: ${error instanceof Error ? error.message : String(error)}`;
});
