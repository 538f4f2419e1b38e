import { type AnswerColumn, type ScenarioKey, scenarioColumns } from "./answerColumns";
import { type UnitSystem, unitOf } from "./quantities";
import { itemAt } from "./itemAt";

/** The lists of the answers' columns as their writers and readers ask them. */

/** What stands above a column: "Airflow (cfm)". */
export const headerIn = ({ header, quantity }: Omit<AnswerColumn, "key">, system: UnitSystem): string =>
  quantity === null ? header : `${header} (${unitOf(quantity, system).label})`;

/** How many columns stand before one. */
export const placeOfColumn = <Key extends string>(columns: readonly { readonly key: Key }[], key: Key): number =>
  columns.findIndex((column) => column.key === key);

/** The header of a column without its unit. */
export const headerOfColumn = <Column extends AnswerColumn>(columns: readonly Column[], key: Column["key"]): string =>
  itemAt(columns, placeOfColumn(columns, key)).header;

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
