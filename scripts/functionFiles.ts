import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import type { Formula } from "../src/functions/guide";
import type { FUNCTION_SCRIPTS } from "../src/hosts/functionsFile";

const folder = path.join(__dirname, "../src/functions");

/** The files that declare a cell function: one each, in the folder of its subject. */
export const functionFiles: readonly string[] = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .map((file) => path.join(folder, file))
  .filter((file) => readFileSync(file, "utf8").includes("\n * @customfunction "))
  .sort();

/** What stands in functionsTables.js, by subject or name: what looks up in the tables with their sources, claims, and the list of a traverse's points. */
const TABLES = ["claims", "lookingUp", "traversepoints"];

/** What stands in functions.js of the systems: a budget, and what really flows. */
const FIRST_OF_SYSTEMS = ["budget", "solve"];

/** What stands in functionsLater.js besides the other systems: what makes something of many readings. */
const OF_MANY_READINGS = ["difference", "fancurve"];

/** The script in which a function stands. */
export function scriptOf(file: string): (typeof FUNCTION_SCRIPTS)[number] {
  const [subject, name] = [path.basename(path.dirname(file)), path.basename(file, ".ts")];
  if (TABLES.includes(subject) || TABLES.includes(name)) return "functionsTables.js";
  const asksMore = subject === "systems" && !FIRST_OF_SYSTEMS.includes(name);
  return asksMore || OF_MANY_READINGS.includes(name) ? "functionsLater.js" : "functions.js";
}

const load = createRequire(__filename);

/** The formula of a function as a book prints it; a function that looks up or lists has none. */
export const formulaOf = (name: string): Formula | undefined => {
  const file = functionFiles.find((one) => path.basename(one, ".ts") === name.toLowerCase());
  if (file === undefined) throw new Error(`no file of src/functions is named for ${name}`);
  return (load(file) as { formula?: Formula }).formula;
};
