import "../../support/customFunctions";
import { cellFunctions } from "../../support/cellFunctions";

const functions = new Map(cellFunctions.map(({ name, call }) => [name, call]));

/** What the add-in's function answers, or "refused" where it raises an error. */
export function ours(name: string, args: readonly unknown[]): (string | number)[][] | "refused" {
  try {
    return functions.get(name)!(...args);
  } catch (error) {
    if (error instanceof CustomFunctions.Error) return "refused";
    throw error;
  }
}
