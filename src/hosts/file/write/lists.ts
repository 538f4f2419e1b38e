import type { DataValidation, WriteSheet } from "hucre/xlsx";
import { freeName } from "../../../sheets/freeName";
import { fitsRule, LISTS_SHEET } from "../../../sheets/longLists";
import { asPrompt, HINT_TITLE } from "../../../sheets/prompts";
import type { ChoiceList, Hint, Sheet, Workbook } from "../../../sheets/workbook";
import { FileRefusal } from "../fileRefusal";
import { rangeText } from "../../../sheets/rangeRef";
import { readRectangle, type Rectangle, rectangleOf, rectangleText, without } from "../../../sheets/rectangle";
import { toFileText } from "../xlsxText";

/** Choices that do not fit into a rule are kept in the columns of a sheet that no program shows in its tabs. */
export interface ListsSheet {
  readonly name: string;
  readonly columns: (readonly string[])[];
}

/** A sheet of lists under a name that is free. */
export function listsSheet({ sheets }: Workbook): ListsSheet {
  const taken = sheets.map(({ name }) => name);
  return { name: freeName(LISTS_SHEET, taken), columns: [] };
}

/** A sheet's drop-downs and what to type, as hucre takes them. A cell can have one rule: so a list has the words of the cells that it is for. */
export function validations({ lists, hints = [] }: Sheet, at: ListsSheet): DataValidation[] {
  const listed = lists.map((list) => ({ list, area: areaOf(list) }));
  const areas = listed.map(({ area }) => area);
  const told = hints.map((hint) => ({ hint, area: rectangleOf(hint.range) }));
  return [
    ...listed.map(({ list, area }) => ({
      ...validation(list, area, at),
      ...message(told.find((one) => without(area, [one.area]).length === 0)?.hint),
    })),
    ...told.flatMap(({ hint, area }) =>
      without(area, areas).map((rest) => ({
        type: "none" as DataValidation["type"], // of the format, which hucre writes as it is
        range: rectangleText(rest),
        allowBlank: true,
        ...message(hint),
      })),
    ),
  ];
}

const message = (hint: Hint | undefined): Partial<DataValidation> =>
  hint === undefined
    ? {}
    : { showInputMessage: true, inputTitle: HINT_TITLE, inputMessage: toFileText(asPrompt(hint.text)) };

function areaOf({ range, choices }: ChoiceList): Rectangle {
  const area = readRectangle(range);
  if (area === null) throw new FileRefusal(`The list of ${range} is for no range of its sheet.`);
  if (choices.length === 0) throw new FileRefusal(`The list of ${range} has nothing to choose from.`);
  return area;
}

/** A drop-down; a list that suggests only lets everything else pass. */
function validation(list: ChoiceList, area: Rectangle, lists: ListsSheet): DataValidation {
  return {
    type: "list",
    range: rectangleText(area),
    allowBlank: true,
    ...(list.strict
      ? {
          showErrorMessage: true,
          errorStyle: "stop" as const,
          errorTitle: "Not in the list",
          errorMessage: "Choose one of the words of the list.",
        }
      : {}),
    ...(fitsRule(list.choices) ? { values: list.choices.map(toFileText) } : { formula1: rangeIn(lists, list.choices) }),
  };
}

function rangeIn(lists: ListsSheet, choices: readonly string[]): string {
  const known = lists.columns.findIndex((column) => JSON.stringify(column) === JSON.stringify(choices));
  const column = known === -1 ? lists.columns.push(choices) : known + 1;
  return rangeText({ sheet: lists.name, top: 1, left: column, bottom: choices.length, right: column });
}

/** The sheet itself, where any list needs it. */
export function writtenLists({ name, columns }: ListsSheet): WriteSheet[] {
  if (columns.length === 0) return [];
  const height = Math.max(...columns.map((column) => column.length));
  const rows = Array.from({ length: height }, (_, row) =>
    columns.map((column) => (column[row] === undefined ? null : toFileText(column[row]))),
  );
  return [{ name, rows, veryHidden: true }];
}
