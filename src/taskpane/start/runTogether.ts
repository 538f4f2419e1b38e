import { togetherColumns, type TogetherKey } from "../../reference/answerColumns";
import { placeOfColumn } from "../../reference/columnsOfAnswers";
import { notesIn } from "../../reference/notes";
import type { Seen } from "../check/seenIn";
import { sameName } from "../check/runs";
import type { Calculate } from "../functions/askWorker";
import { argumentsOfSets } from "./argumentsOfSets";

const MOST_IN_PAIRS = 8; // gates, as on the sheet Sizes: pairs of more are too many sets for every change
const MOST_SAID = 6; // sets

/** Which two machines can run at once, as TOGETHER has it, in a sentence; "" where it has nothing to say. */
export async function runTogether(seen: Seen, calculate: Calculate): Promise<string> {
  const asked = argumentsOfSets(seen);
  if (asked === null) return "";
  const { runs } = asked;
  const isHood = (name: string): boolean => !runs.some(({ to }) => sameName(to, name));
  const gates = runs.filter(({ gated, name }) => gated && isHood(name)).length;
  if (gates < 2) return "";
  if (gates > MOST_IN_PAIRS) return "The sheet Sizes tells which of them can run together.";
  const answer = await calculate({ id: "TOGETHER", args: asked.args(2) });
  if ("error" in answer) return ""; // the sentence above it says why
  const works = answer.rows.slice(1).flatMap((row) => {
    const text = (key: TogetherKey): string => String(row[placeOfColumn(togetherColumns, key)] ?? "");
    const isPair = notesIn(text("verdict")).some(({ key }) => key === "worksTogether");
    return isPair ? [text("open").split("; ").filter(isHood).join(" + ")] : [];
  });
  if (works.length === 0)
    return "No two of them can run together: too little air at a hood, or dust that settles. The sheet Sizes says which, and the pane looks for pipe sizes that serve (Build, Choose sizes).";
  const more = works.length - MOST_SAID;
  return `Can run together: ${works.slice(0, MOST_SAID).join(", ")}${more > 0 ? `, and ${more} more on the sheet Sizes` : ""}.`;
}
