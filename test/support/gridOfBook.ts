/** The grid's own library in Node with our own functions: what a described workbook shows, without a page and without a build. */
import { createCustomFunctions } from "../../src/hosts/local/customFunctions";
import { gridModel } from "../../src/hosts/local/gridModel";
import { shownWith } from "../../src/hosts/local/readGrid";
import { registerAll } from "../../src/hosts/local/register";
import { cellAddress, placeOf } from "../../src/sheets/address";
import type { Calculated } from "../../src/sheets/calculated";
import type { Workbook } from "../../src/sheets/workbook";
import { cellFunctions } from "./cellFunctions";
import { library } from "./gridLibrary";

export interface Shows {
  readonly value: (sheet: string, at: string) => unknown; // "" for a blank
  readonly column: (sheet: string, range: string) => unknown[];
  readonly texts: (sheet: string, range: string) => string[][]; // as a person reads them, row by row
  readonly type: (sheet: string, at: string, text: string) => void; // as a person types it
  readonly typeRow: (sheet: string, at: string, texts: readonly string[]) => void; // from there to the right, all at once
  readonly typeColumn: (sheet: string, at: string, texts: readonly string[]) => void; // the same downwards
  readonly insertColumn: (sheet: string, before: string) => void; // by its letters, as it stands now
  readonly deleteColumn: (sheet: string, column: string) => void;
  readonly moveColumn: (sheet: string, column: string, before: string) => void; // by its head, dragged
  readonly moveRow: (sheet: string, row: number, before: number) => void; // upwards, dragged by its number
  readonly insertRow: (sheet: string, before: number) => void; // rows from 1
  readonly deleteRow: (sheet: string, row: number) => void;
  readonly insertCells: (sheet: string, range: string) => void; // those from there on move down
  readonly deleteCells: (sheet: string, range: string) => void; // those below move up
  readonly merge: (sheet: string, range: string) => void;
  readonly clear: (sheet: string, range: string) => void;
  readonly cut: (sheet: string, range: string, to: string) => void;
  readonly copy: (sheet: string, range: string, to: string) => void;
  readonly copyAcross: (sheet: string, range: string, name: string, to: string) => void; // to a new sheet of that name
  readonly sort: (sheet: string, range: string, by: string, direction: "asc" | "desc") => void; // by its letters
  readonly duplicate: (sheet: string, name: string) => void;
  readonly undo: () => void;
  readonly calculated: (workbook: Workbook) => Calculated; // with what was typed since in the description
  readonly errors: () => string[]; // every cell that shows an error, as "Leaks!B7: #VALUE! ..."
}

/** A call of ours as the grid makes it: a range as rows, an argument that is left out as null. */
export interface CallMade {
  readonly name: string;
  readonly args: readonly unknown[];
}

let hear: ((call: CallMade) => void) | null = null;

/** Every call that the grid makes meanwhile. */
export function callsMadeBy(work: () => void): CallMade[] {
  const made: CallMade[] = [];
  hear = (call) => void made.push(call);
  work();
  hear = null;
  return made;
}

let ready = false;

function prepare(): void {
  if (ready) return;
  ready = true;
  const { customFunctions, functions } = createCustomFunctions((message) => {
    throw new Error(message);
  });
  Object.assign(globalThis, { CustomFunctions: customFunctions });
  cellFunctions.forEach(({ name, call }) =>
    customFunctions.associate(name, (...args) => {
      hear?.({ name, args: args.slice(0, call.length) });
      return call(...args);
    }),
  );
  const metadata = cellFunctions.map(({ name, call }) => ({
    id: name,
    name,
    description: name,
    parameters: Array.from({ length: call.length }, (_, index) => ({
      name: `given${index}`,
      description: "",
      dimensionality: "matrix" as const,
      optional: true,
    })),
  }));
  registerAll(
    { addFunction: library.addFunction as never, errorTypes: library.registries.errorTypes },
    "DUCT",
    { functions: metadata, allowErrorForDataTypeAny: true },
    functions,
  );
}

export function gridOfBook(workbook: Workbook): Shows {
  prepare();
  const model = gridModel(workbook);
  const { getters } = model;
  const idOf = (sheet: string): string => {
    const id = getters.getSheetIdByName(sheet);
    if (id === undefined) throw new Error(`no sheet ${sheet}`);
    return id;
  };
  const cell = (sheet: string, at: string) =>
    getters.getEvaluatedCell({ sheetId: idOf(sheet), ...library.helpers.toCartesian(at) });
  const value = (sheet: string, at: string): unknown => cell(sheet, at).value ?? "";
  const { toCartesian, toZone } = library.helpers;
  const order = ((...command: Parameters<typeof model.dispatch>) => {
    const result = model.dispatch(...command);
    if (!result.isSuccessful) throw new Error(`${command[0]}: ${result.reasons.join(", ")}`);
    return result;
  }) as typeof model.dispatch;
  const show = (sheet: string): void => {
    const [from, to] = [getters.getActiveSheetId(), idOf(sheet)];
    if (from !== to) order("ACTIVATE_SHEET", { sheetIdFrom: from, sheetIdTo: to });
  };
  const paste = (kind: "CUT" | "COPY", sheet: string, range: string, to: string): void => {
    show(sheet);
    const zone = toZone(range);
    model.selection.selectZone({ cell: { col: zone.left, row: zone.top }, zone });
    if (kind === "CUT") order("CUT");
    else order("COPY");
    order("PASTE", { target: [toZone(to)] });
  };
  const copyAcross: Shows["copyAcross"] = (sheet, range, name, to) => {
    order("CREATE_SHEET", { sheetId: name, name, position: 1, cols: 104, rows: 200 });
    show(sheet);
    const zone = toZone(range);
    model.selection.selectZone({ cell: { col: zone.left, row: zone.top }, zone });
    order("COPY");
    show(name);
    order("PASTE", { target: [toZone(to)] });
  };
  const pasteText = (sheet: string, at: string, text: string): void => {
    show(sheet);
    order("PASTE_FROM_OS_CLIPBOARD", { target: [toZone(at)], clipboardContent: { text } });
  };
  return {
    value,
    column: (sheet, range) => {
      const [from, to] = range.split(":").map(placeOf);
      return Array.from({ length: to!.row - from!.row + 1 }, (_, index) =>
        value(sheet, cellAddress(from!.column, from!.row + index)),
      );
    },
    texts: (sheet, range) => {
      const { top, bottom, left, right } = toZone(range);
      const textAt = (col: number, row: number): string =>
        getters.getEvaluatedCell({ sheetId: idOf(sheet), col, row }).formattedValue;
      return Array.from({ length: bottom - top + 1 }, (_, down) =>
        Array.from({ length: right - left + 1 }, (_, across) => textAt(left + across, top + down)),
      );
    },
    type: (sheet, at, text) => {
      const result = model.dispatch("UPDATE_CELL", {
        sheetId: idOf(sheet),
        ...library.helpers.toCartesian(at),
        content: text,
      });
      const nothingNew = result.reasons.every((reason) => String(reason) === "NoChanges");
      if (!result.isSuccessful && !nothingNew) throw new Error(`could not type into ${sheet}!${at}`);
    },
    insertColumn: (sheet, before) => {
      const { isSuccessful } = model.dispatch("ADD_COLUMNS_ROWS", {
        sheetId: idOf(sheet),
        sheetName: sheet,
        dimension: "COL",
        base: library.helpers.lettersToNumber(before),
        position: "before",
        quantity: 1,
      });
      if (!isSuccessful) throw new Error(`could not insert a column before ${sheet}!${before}`);
    },
    deleteColumn: (sheet, column) =>
      order("REMOVE_COLUMNS_ROWS", {
        ...{ sheetId: idOf(sheet), sheetName: sheet, dimension: "COL" },
        elements: [library.helpers.lettersToNumber(column)],
      }),
    moveColumn: (sheet, column, before) => {
      show(sheet);
      const [from, to] = [column, before].map(library.helpers.lettersToNumber) as [number, number];
      // To the right the grid is told the column behind which, as its own dragging tells it: by the one before which it loses that one.
      order("MOVE_COLUMNS_ROWS", {
        ...{ sheetId: idOf(sheet), sheetName: sheet, dimension: "COL", elements: [from] },
        ...(to > from ? { base: to - 1, position: "after" } : { base: to, position: "before" }),
      });
    },
    moveRow: (sheet, row, before) => {
      show(sheet);
      order("MOVE_COLUMNS_ROWS", {
        ...{ sheetId: idOf(sheet), sheetName: sheet, dimension: "ROW", elements: [row - 1] },
        ...{ base: before - 1, position: "before" },
      });
    },
    typeRow: (sheet, at, texts) => pasteText(sheet, at, texts.join("\t")),
    typeColumn: (sheet, at, texts) => pasteText(sheet, at, texts.join("\n")),
    insertRow: (sheet, before) =>
      order("ADD_COLUMNS_ROWS", {
        sheetId: idOf(sheet),
        sheetName: sheet,
        dimension: "ROW",
        base: before - 1,
        position: "before",
        quantity: 1,
      }),
    deleteRow: (sheet, row) =>
      order("REMOVE_COLUMNS_ROWS", { sheetId: idOf(sheet), sheetName: sheet, dimension: "ROW", elements: [row - 1] }),
    insertCells: (sheet, range) => {
      show(sheet);
      order("INSERT_CELL", { zone: toZone(range), shiftDimension: "ROW" });
    },
    deleteCells: (sheet, range) => {
      show(sheet);
      order("DELETE_CELL", { zone: toZone(range), shiftDimension: "ROW" });
    },
    merge: (sheet, range) => order("ADD_MERGE", { sheetId: idOf(sheet), target: [toZone(range)], force: true }),
    clear: (sheet, range) => order("DELETE_CONTENT", { sheetId: idOf(sheet), target: [toZone(range)] }),
    cut: (sheet, range, to) => paste("CUT", sheet, range, to),
    copy: (sheet, range, to) => paste("COPY", sheet, range, to),
    copyAcross,
    sort: (sheet, range, by, direction) => {
      const zone = toZone(range);
      const { col } = toCartesian(`${by}1`);
      order("SORT_CELLS", {
        sheetId: idOf(sheet),
        col,
        row: zone.top,
        zone,
        sortDirection: direction,
        sortOptions: { sortHeaders: true },
      });
    },
    duplicate: (sheet, name) => order("DUPLICATE_SHEET", { sheetId: idOf(sheet), sheetIdTo: name, sheetNameTo: name }),
    undo: () => void order("REQUEST_UNDO"),
    calculated: (described) => shownWith(model, described),
    errors: () =>
      getters.getSheetIds().flatMap((sheetId: string) => {
        const positions = getters.getEvaluatedCellsPositions(sheetId);
        return getters.getEvaluatedCells(sheetId).flatMap((shown, index) => {
          if (shown.type !== "error") return [];
          const { col, row } = positions[index]!;
          const said = "message" in shown ? String(shown.message) : "";
          return [`${getters.getSheetName(sheetId)}!${library.helpers.toXC(col, row)}: ${String(shown.value)} ${said}`];
        });
      }),
  };
}
