import { type SourceId, sources } from "../reference/sources";
import type { Calculated } from "../sheets/calculated";
import { ourCallsIn } from "../sheets/ourCalls";
import type { Sheet } from "../sheets/workbook";
import { methodSources } from "./methodSources";

/** The longest first, since one title may begin another. */
const titles = (Object.keys(sources) as SourceId[])
  .map((id) => ({ id, title: sources[id].title }))
  .sort((one, other) => other.title.length - one.title.length);

/**
 * The sources that the numbers of a copy rest on, in the order of the list of sources: those of the methods that the book's
 * formulas call, and those that stand beside a row or a value of the copy.
 *
 * @param added sheets of the copy that the book did not have
 */
export function sourcesOfCopy({ workbook, shown }: Calculated, added: readonly Sheet[]): readonly SourceId[] {
  const texts = new Set<string>();
  const take = (value: unknown): void => void (typeof value === "string" && texts.add(value));
  for (const cells of shown.values()) for (const { value } of cells.values()) take(value);
  const found = new Set<SourceId>();
  for (const { cells } of [...workbook.sheets, ...added])
    for (const cell of cells)
      if ("value" in cell) take(cell.value);
      else for (const name of ourCallsIn(cell.formula)) methodSources[name]?.forEach((id) => found.add(id));
  for (const text of texts) for (const id of citedIn(text)) found.add(id);
  return (Object.keys(sources) as SourceId[]).filter((id) => found.has(id));
}

function citedIn(text: string): SourceId[] {
  let rest = text;
  return titles.flatMap(({ id, title }) => {
    if (!rest.includes(title)) return [];
    rest = rest.replaceAll(title, "");
    return [id];
  });
}
