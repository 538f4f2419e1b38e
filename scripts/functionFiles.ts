import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import type { Formula } from "../src/functions/guide";

const folder = path.join(__dirname, "../src/functions");

/** The files that declare a cell function: one each, in the folder of its subject. */
export const functionFiles: readonly string[] = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .map((file) => path.join(folder, file))
  .filter((file) => readFileSync(file, "utf8").includes("\n * @customfunction "))
  .sort();

const LATER_SUBJECTS = ["claims", "lookingUp", "systems"];

/**
 * Whether a function stands in the second file, functionsLater.js: those that look up in the tables with their sources, those that ask more of
 * a system than what it gives, and the list of a traverse's points. The first file computes a cell of its own and a budget.
 */
export const comesLater = (file: string): boolean => {
  const [subject, name] = [path.basename(path.dirname(file)), path.basename(file)];
  const isLater = LATER_SUBJECTS.includes(subject) && !["budget.ts", "solve.ts"].includes(name);
  return functionFiles.includes(file) && (isLater || name === "traversepoints.ts");
};

const load = createRequire(__filename);

/** The formula of a function as a book prints it; a function that looks up or lists has none. */
export const formulaOf = (name: string): Formula | undefined => {
  const file = functionFiles.find((one) => path.basename(one, ".ts") === name.toLowerCase());
  if (file === undefined) throw new Error(`no file of src/functions is named for ${name}`);
  return (load(file) as { formula?: Formula }).formula;
};
