import { type CheckRule, type Finding, practice } from "../finding";
import type { BookRun, BookRuns } from "../runs";

/** Fittings whose last number is one more than in a row above, as a spreadsheet makes them that fills a column by dragging. */
export const countedUp: CheckRule = ({ runs }) => runs.flatMap(inTable);

function inTable({ sheet, runs }: BookRuns): Finding[] {
  const texts = runs.map(({ fittings }) => endOf(fittings));
  const [first, ...more] = runs.filter((_, row) => isCounted(texts, row));
  if (first === undefined) return [];
  const others = more.length === 0 ? "" : `; so have ${more.map(({ name }: BookRun) => name).join(", ")}`;
  return [
    {
      rule: "Fittings counted up",
      what: `${first.name} has "${first.fittings}", one more than a row above${others}.`,
      why: "Where a column is filled by dragging, a spreadsheet counts up the number that a text ends with: branch 30 goes on as branch 31, elbow 2 as elbow 3, each another fitting with another loss. Copy and paste the cell instead. Where it is meant so, leave it.",
      source: practice,
      sheet,
      at: first.at("Fittings"),
    },
  ];
}

interface End {
  readonly before: string;
  readonly number: number;
}

function endOf(text: string): End | null {
  const [, before, digits] = /^(.*?)(\d+)\s*$/.exec(text) ?? [];
  return before === undefined || before === "" ? null : { before, number: Number(digits) };
}

/** One more than a row above, where nobody makes such an angle or radius; or the third in a row that goes on so. */
function isCounted(texts: readonly (End | null)[], row: number): boolean {
  const here = texts[row];
  if (here == null) return false;
  const { before, number } = here;
  const goesOn = (one: End | null | undefined, less: number): boolean =>
    one?.before === before && one.number === number - less;
  const odd = number % 5 !== 0 && (number > 10 || /\d[.,]$/.test(before));
  return (
    (odd && texts.slice(0, row).some((one) => goesOn(one, 1))) ||
    (goesOn(texts[row - 1], 1) && goesOn(texts[row - 2], 2))
  );
}
