/** The grid's own library in Node, with our plugins and a toy function: what the parts give together, without a page. */
import { library } from "../../support/gridLibrary";
import { sheetOf as namedSheet } from "../../support/sheetOf";
import { createCustomFunctions } from "../../../src/hosts/local/customFunctions";
import type { GridModel } from "../../../src/hosts/local/grid";
import type { Desk } from "../../../src/hosts/local/desk";
import { gridModel } from "../../../src/hosts/local/gridModel";
import { calculatedOf } from "../../../src/hosts/local/readGrid";
import { addPlugins } from "../../../src/hosts/local/plugins";
import { registerAll } from "../../../src/hosts/local/register";
import type { Sheet, SheetCell, Workbook } from "../../../src/sheets/workbook";

const { customFunctions, functions } = createCustomFunctions(() => undefined);
customFunctions.associate("TWICE", (range) =>
  (range as unknown[][]).map((row) =>
    row.map((cell) => {
      if (typeof cell !== "number")
        throw new customFunctions.Error(
          customFunctions.ErrorCode.invalidValue,
          `a number is needed; got ${String(cell)}`,
        );
      return 2 * cell;
    }),
  ),
);

const evaluation = library.registries.coreViewsPluginRegistry.get("evaluation");

/** A grid that the library computes in its own way, all at once: what ours must show. Other models stay as they are. */
export function computedByLibrary(make: () => GridModel): GridModel {
  const { coreViewsPluginRegistry: views, featurePluginRegistry: features } = library.registries;
  const [ours, finish] = [views.get("evaluation"), features.get("finish_cells")];
  views.replace("evaluation", evaluation);
  features.remove("finish_cells");
  try {
    return make();
  } finally {
    views.replace("evaluation", ours);
    features.add("finish_cells", finish);
  }
}

/** What the cells of a sheet show, each as "B2 4 ", with the sentence of an error behind it; `asShown` with what one reads there, too. */
export const shownOn = ({ getters }: GridModel, sheetId: string, how?: "asShown"): string[] =>
  getters
    .getEvaluatedCellsPositions(sheetId)
    .map((position) => {
      const { value, message, formattedValue } = getters.getEvaluatedCell(position);
      const read = how === "asShown" ? `${formattedValue} ` : "";
      return `${library.helpers.toXC(position.col, position.row)} ${JSON.stringify(value)} ${read}${String(message ?? "")}`;
    })
    .filter((line) => !line.includes(" null "))
    .sort();

let isSetUp = false;

/** For each test file, before its first model: whichever of those that are loaded together comes first has it done. */
export function setUpGrid(): void {
  if (isSetUp) return;
  isSetUp = true;
  const metadata = {
    id: "TWICE",
    name: "TWICE",
    description: "Twice.",
    parameters: [{ name: "range", description: "", dimensionality: "matrix" as const }],
  };
  registerAll(
    { addFunction: library.addFunction as never, errorTypes: library.registries.errorTypes },
    "TOY",
    { functions: [metadata] },
    functions,
  );
  addPlugins();
}

export function gridOf(workbook: Workbook): GridModel {
  const model = gridModel(workbook);
  model.joinSession(); // as the page does; undo needs it
  return model;
}

/** Undo and redo go through the grid's session, which answers a turn later. */
export async function step(model: GridModel, which: "REQUEST_UNDO" | "REQUEST_REDO"): Promise<void> {
  await nextTurn();
  model.dispatch(which);
  await nextTurn();
}

const nextTurn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

export const sheetOf = (cells: readonly SheetCell[], more: Partial<Sheet> = {}): Sheet =>
  namedSheet("One", cells, more);

export const bookOf = (...sheets: readonly Sheet[]): Workbook => ({ name: "Toy", sheets, names: [] });

/** A page around one grid that keeps what is sent out of it. */
export function deskOf(model: GridModel): Desk & { readonly sent: { bytes: Uint8Array; name: string }[] } {
  const sent: { bytes: Uint8Array; name: string }[] = [];
  return {
    sent,
    model: () => model,
    workbook: () => calculatedOf(model).workbook,
    follow: (changed) => {
      const owner = {};
      model.on("update", owner, () => changed("cells"));
      return () => model.off("update", owner);
    },
    open: async () => false,
    download: (bytes, name) => void sent.push({ bytes, name }),
  };
}

export const place = (model: GridModel, at: string) => ({
  sheetId: model.getters.getActiveSheetId(),
  ...library.helpers.toCartesian(at),
});

export const valueAt = (model: GridModel, at: string): unknown =>
  model.getters.getEvaluatedCell(place(model, at)).value;
