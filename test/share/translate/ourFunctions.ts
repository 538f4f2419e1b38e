import "../../support/customFunctions";
import * as air from "../../../src/functions/air";
import * as duct from "../../../src/functions/duct";
import * as fan from "../../../src/functions/fan";
import * as leaks from "../../../src/functions/leaks";
import * as losses from "../../../src/functions/losses";
import * as measuring from "../../../src/functions/measuring";
import * as tables from "../../../src/functions/tables";

type Call = (...args: unknown[]) => (string | number)[][];

const functions = { ...air, ...duct, ...fan, ...leaks, ...losses, ...measuring, ...tables } as unknown as Record<
  string,
  Call
>;

/** What the add-in's function answers, or "refused" where it raises an error. */
export function ours(name: string, args: readonly unknown[]): (string | number)[][] | "refused" {
  try {
    return functions[name.toLowerCase()]!(...args);
  } catch (error) {
    if (error instanceof CustomFunctions.Error) return "refused";
    throw error;
  }
}
