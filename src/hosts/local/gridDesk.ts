import type { Workbook } from "../../sheets/workbook";
import type { GridModel } from "./grid";
import { gridModel } from "./gridModel";
import type { Notifications } from "./notifications";

/** The grid on the page. Another workbook takes the place of the one that is there; whoever follows follows that one. */
export interface GridDesk {
  readonly model: () => GridModel;
  readonly show: (workbook: Workbook) => Promise<void>;
  readonly focus: () => void;
  /** Calls back whenever a cell or the selection changed. Returns what ends that. */
  readonly follow: (changed: () => void) => () => void;
}

/**
 * @param touched called whenever something was done to what stands in the grid
 */
export async function openDesk(
  first: Workbook,
  place: HTMLElement,
  templates: string,
  notifications: Notifications,
  touched: () => void,
): Promise<GridDesk> {
  const followers = new Set<() => void>();
  const tell = (): void => followers.forEach((changed) => changed());
  let shown = await mounted(gridModel(first));

  async function mounted(model: GridModel) {
    const app = new owl.App(o_spreadsheet.Spreadsheet, { props: { model, ...notifications }, templates });
    const view = await app.mount(place);
    model.joinSession();
    model.on("update", followers, tell);
    model.on("command-dispatched", followers, (happened: object) => {
      const command = happened as { readonly type: string };
      if (
        o_spreadsheet.isCoreCommand(command as never) ||
        command.type === "REQUEST_UNDO" ||
        command.type === "REQUEST_REDO"
      )
        touched();
    });
    return { model, app, view };
  }

  return {
    model: () => shown.model,
    show: async (workbook) => {
      const model = gridModel(workbook); // if it can't be made, the old one stays
      shown.app.destroy();
      shown = await mounted(model);
      tell();
    },
    focus: () => shown.view.focusGrid(),
    follow: (changed) => {
      followers.add(changed);
      return () => followers.delete(changed);
    },
  };
}
