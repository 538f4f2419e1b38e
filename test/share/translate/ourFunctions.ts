import "../../support/customFunctions";
import { cellFunctions } from "../../support/cellFunctions";

const functions = new Map(cellFunctions.map(({ name, call }) => [name, call]));

/** What the add-in's function answers, "refused" in a cell that is an error, or throughout where the call is one. */
export function ours(name: string, args: readonly unknown[]): (string | number)[][] | "refused" {
  try {
    const answer: unknown[][] = functions.get(name)!(...args);
    return answer.map((line) =>
      line.map((cell) => (cell instanceof CustomFunctions.Error ? "refused" : (cell as string | number))),
    );
  } catch (error) {
    if (error instanceof CustomFunctions.Error) return "refused";
    throw error;
  }
}
