import type { DataValidation, WriteSheet } from "hucre/xlsx";
import { freeName } from "../../../sheets/freeName";
import { fitsRule, LISTS_SHEET } from "../../../sheets/longLists";
import type { ChoiceList, Workbook } from "../../../sheets/workbook";
import { FileRefusal } from "../fileRefusal";
import { rangeText } from "../../../sheets/rangeRef";
import { readRectangle, rectangleText } from "../../../sheets/rectangle";
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

/** A drop-down as hucre takes it; a list that suggests only lets everything else pass. */
export function validation(list: ChoiceList, lists: ListsSheet): DataValidation {
  const range = readRectangle(list.range);
  if (range === null) throw new FileRefusal(`The list of ${list.range} is for no range of its sheet.`);
  if (list.choices.length === 0) throw new FileRefusal(`The list of ${list.range} has nothing to choose from.`);
  return {
    type: "list",
    range: rectangleText(range),
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
