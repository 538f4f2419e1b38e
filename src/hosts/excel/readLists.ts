import { cellAddress } from "../../sheets/address";
import { HINT_TITLE } from "../../sheets/prompts";
import type { ChoiceList, Hint } from "../../sheets/workbook";
import { referenceIn } from "./referenceIn";
import { columnsOf, isOneCell, placesIn, rowsOf, type Rectangle, rectangleText } from "../../sheets/rectangle";
import { rangeAt, rectangleAt } from "./rangeAt";
import { blocksOf } from "./blocks";
import { itemAt } from "../../reference/itemAt";

const AT_ONCE = 500; // areas asked in one request

export interface Validations {
  readonly lists: readonly ChoiceList[];
  readonly hints: readonly Hint[];
  readonly notes: ReadonlyMap<string, string>;
}

/** Drop-downs and input messages of a sheet, in areas that share one rule. */
export async function readLists(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  used: Excel.Range,
): Promise<Validations> {
  const special = used.getSpecialCellsOrNullObject("DataValidations");
  special.load("address");
  await context.sync();
  if (special.isNullObject) return { lists: [], hints: [], notes: new Map() };
  const found: Found[] = [];
  let areas = special.address.split(",").flatMap((one) => rectangleAt(one) ?? []);
  while (areas.length > 0) {
    const cutUp = await readAreas(context, sheet, areas.slice(0, AT_ONCE), found);
    areas = [...areas.slice(AT_ONCE), ...cutUp];
  }
  const isHint = ({ title }: Found): boolean => title === HINT_TITLE;
  return {
    lists: await listsOf(context, found),
    hints: hintsOf(found.filter(isHint)),
    notes: notesOf(found.filter((one) => !isHint(one))),
  };
}

interface Found {
  readonly area: Rectangle;
  readonly source: string | null; // of a list
  readonly strict: boolean;
  readonly title: string; // of the input message
  readonly note: string;
}

/** Reads the areas that have one rule, and answers the others cut into columns, then into cells. */
async function readAreas(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  areas: readonly Rectangle[],
  found: Found[],
): Promise<Rectangle[]> {
  const rules = areas.map((area) => rangeAt(sheet, area).dataValidation);
  for (const rule of rules) rule.load("type,rule,prompt,errorAlert");
  await context.sync();
  return rules.flatMap(({ type, rule, prompt, errorAlert }, index) => {
    const area = itemAt(areas, index);
    const isMixed = MIXED.has(type) || prompt == null || errorAlert == null;
    if (isMixed && !isOneCell(area)) return cut(area);
    const { source } = rule?.list ?? {};
    found.push({
      area,
      source: typeof source === "string" ? source : null,
      strict: errorAlert?.showAlert === true && errorAlert.style === "Stop",
      title: prompt?.title ?? "",
      note: prompt?.message ?? "",
    });
    return [];
  });
}

const MIXED = new Set<string>(["Inconsistent", "MixedCriteria"]);

const cut = (area: Rectangle): Rectangle[] =>
  area.left < area.right
    ? Array.from({ length: columnsOf(area) }, (_, across) => ({
        ...area,
        left: area.left + across,
        right: area.left + across,
      }))
    : Array.from({ length: rowsOf(area) }, (_, down) => ({ ...area, top: area.top + down, bottom: area.top + down }));

/** Areas of one list that lie together are one again, however they were found. */
async function listsOf(context: Excel.RequestContext, found: readonly Found[]): Promise<ChoiceList[]> {
  const cells = found.flatMap(({ area, source, strict }) =>
    source === null
      ? []
      : placesIn(area)
          .flat()
          .map((place) => ({ ...place, key: JSON.stringify([source, strict]) })),
  );
  const blocks = blocksOf(cells).map(({ key, ...area }) => {
    const [source, strict] = JSON.parse(key) as [string, boolean];
    return { area, strict, source, range: source.startsWith("=") ? rangeOf(context, source) : null };
  });
  for (const { range } of blocks) range?.load("values");
  await context.sync();
  return blocks.flatMap(({ area, strict, source, range }) => {
    const written = source.startsWith("=") ? [] : source.split(",").map((choice) => choice.trim());
    const choices = (range?.values.flat().map(String) ?? written).filter((choice) => choice !== "");
    return choices.length === 0 ? [] : [{ range: rectangleText(area), choices, strict }];
  });
}

/** The cells that hold a list's choices; null where its source is a formula of another kind. */
function rangeOf(context: Excel.RequestContext, source: string): Excel.Range | null {
  const reference = referenceIn(source);
  if (reference === null) return null;
  return rangeAt(context.workbook.worksheets.getItem(reference.sheet), reference);
}

/** What to type, again for all cells that lie together. */
const hintsOf = (found: readonly Found[]): Hint[] =>
  blocksOf(
    found.flatMap(({ area, note }) =>
      placesIn(area)
        .flat()
        .map((place) => ({ ...place, key: note })),
    ),
  ).map(({ key, ...area }) => ({ range: rectangleText(area), text: key }));

const notesOf = (found: readonly Found[]): Map<string, string> =>
  new Map(
    found.flatMap(({ area, note }) =>
      note === ""
        ? []
        : placesIn(area)
            .flat()
            .map(({ column, row }): [string, string] => [cellAddress(column, row), note]),
    ),
  );
