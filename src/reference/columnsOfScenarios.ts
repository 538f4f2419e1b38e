import { type ScenarioKey, scenarioColumns } from "./answerColumns";

interface ScenarioColumn<Hood> {
  readonly key: ScenarioKey;
  readonly header: string;
  readonly quantity: (typeof scenarioColumns)[number]["quantity"];
  readonly hood: Hood | null; // whose column it is, where it is one hood's
}

/** The columns of SCENARIOS for these hoods: what each hood has comes hood by hood. */
export function scenarioColumnsFor<Hood>(hoods: readonly Hood[]): ScenarioColumn<Hood>[] {
  const columns: readonly (Omit<ScenarioColumn<Hood>, "hood"> & { readonly forEachHood?: true })[] = scenarioColumns;
  return columns.flatMap((column, index): ScenarioColumn<Hood>[] => {
    if (!column.forEachHood) return [{ ...column, hood: null }];
    if (columns[index - 1]?.forEachHood) return []; // told with the first of its neighbours
    const end = columns.findIndex((other, place) => place > index && !other.forEachHood);
    const group = columns.slice(index, end < 0 ? columns.length : end);
    return hoods.flatMap((hood) => group.map((one) => ({ ...one, hood })));
  });
}
