import type { FunctionsFile } from "../functionsFile";
import { itemAt } from "../../reference/itemAt";

/**
 * What is being typed, in words: the description of the argument in which the cursor stands, else of the function. The
 * grid shows an argument's name only, and the rest behind an arrow that no key reaches.
 *
 * @param head the grid's own line about the function, such as `DUCT.AREA ( diameter, [height] )`, where it shows one
 */
export function argumentWords(head: Element | null, namespace: string, file: FunctionsFile): string {
  if (head === null) return "";
  const typed = itemAt(head.textContent.split("("), 0).trim();
  const known = file.functions.find(({ name }) => typed === `${namespace}.${name}`);
  if (known === undefined) return "";
  const focused = head.querySelector(".o-formula-assistant-focus")?.textContent.replace(/[[\]\s]/g, "");
  const parameter = known.parameters.find(({ name }) => name === focused);
  if (parameter === undefined) return `${typed}: ${known.description}`;
  return `${typed}, ${parameter.name}${parameter.optional === true ? " (optional)" : ""}: ${parameter.description ?? ""}`;
}
