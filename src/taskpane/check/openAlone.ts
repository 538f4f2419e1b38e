import { togetherColumns, type TogetherKey } from "../../reference/answerColumns";
import { headerOfColumn } from "../../reference/columnsOfAnswers";
import { toSI, unitOf } from "../../reference/quantities";
import { type BookRun, sameName } from "./runs";
import { type LookedThrough, numberIn, tablesWith, textIn } from "./tablesIn";
import { tooSlowIn } from "./tooSlowIn";

/** What an answer of TOGETHER in a book says of one hood's gate open alone, with the gates on its way. */
export interface OpenAlone {
  readonly hood: string;
  readonly slowest: string;
  readonly velocity: number | null; // [m/s] of that run
  readonly tooSlow: readonly string[];
}

const header = (key: TogetherKey): string => headerOfColumn(togetherColumns, key);

/** Every hood's gate alone that answers of TOGETHER in a book have, each once. */
export function openAloneIn(sheets: readonly LookedThrough[], runs: readonly BookRun[]): OpenAlone[] {
  const found: OpenAlone[] = [];
  for (const table of tablesWith(sheets, (["open", "slowest", "velocity", "verdict"] as const).map(header)))
    for (const row of table.rows) {
      const text = (key: TogetherKey): string => textIn(table.value(row, header(key)));
      const names = text("open").split("; ");
      const hoods = names.filter((name) => name !== "" && !runs.some(({ to }) => sameName(to, name)));
      const [hood] = hoods;
      if (hood === undefined || hoods.length > 1 || found.some((one) => sameName(one.hood, hood))) continue;
      const velocity = numberIn(table.value(row, header("velocity")));
      found.push({
        ...{ hood, slowest: text("slowest"), tooSlow: tooSlowIn(text("verdict")) },
        velocity: velocity === null ? null : toSI(velocity, unitOf("velocity", table.system)),
      });
    }
  return found;
}
