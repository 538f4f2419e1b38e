import type { Workbook } from "../../sheets/workbook";
import type { Change } from "../host";
import { changesBook, describer, type GridCommand } from "./describer";
import { isTooFar, TOO_FAR_WORDS } from "./extentPlugin";
import { finished } from "./evaluation/finished";
import type { GridModel } from "./grid";
import { gridModel } from "./gridModel";
import type { Notifications } from "./notifications";
import { tearsTable, TORN_WORDS } from "./sortWholeRows";
import { toldAfter } from "./toldAfter";

/** The grid on the page. Another workbook takes the place of the one that is there; whoever follows follows that one. */
export interface GridDesk {
  readonly model: () => GridModel;
  /** What stands in it. A sheet that nobody touched since the last time is the very object of then. */
  readonly workbook: () => Workbook;
  readonly show: (workbook: Workbook) => Promise<void>;
  readonly focus: () => void;
  /** Calls back whenever something changed, and says what. Returns what ends that. */
  readonly follow: (changed: (what: Change) => void) => () => void;
}

/**
 * @param touched called whenever something was done to what stands in the grid
 * @param prepareFirst called with the first model before it is shown
 */
export async function openDesk(
  first: Workbook,
  place: HTMLElement,
  templates: string,
  notifications: Notifications,
  touched: () => void,
  prepareFirst: (model: GridModel) => Promise<void>,
): Promise<GridDesk> {
  const followers = new Set<(what: Change) => void>();
  let what: Change = "selection"; // until a command changes what stands in the book
  const tell = (): void => {
    const happened = what;
    what = "selection";
    followers.forEach((changed) => changed(happened));
  };
  let shown = await mounted(first, prepareFirst);

  async function mounted(workbook: Workbook, made: (model: GridModel) => Promise<void> | void) {
    const model = gridModel(workbook); // if it can't be made, the old one stays
    const described = describer(model, workbook);
    await made(model);
    const app = new owl.App(o_spreadsheet.Spreadsheet, { props: { model, ...notifications }, templates });
    const view = await app.mount(place);
    model.joinSession();
    model.on("update", followers, tell);
    model.on("command-rejected", followers, (rejected: object) => {
      if (isTooFar(rejected)) notifications.notifyUser({ text: TOO_FAR_WORDS });
      if (tearsTable(rejected)) notifications.notifyUser({ text: TORN_WORDS });
    });
    model.on("command-dispatched", followers, (happened: object) => {
      const command = happened as GridCommand;
      const words = toldAfter(command, model);
      if (words !== null) notifications.notifyUser({ text: words });
      if (!changesBook(command)) return;
      described.done(command);
      what = "cells";
      touched();
    });
    requestAnimationFrame(() => requestAnimationFrame(() => void finished(model))); // the shown sheet is painted then
    return { model, described, app, view };
  }

  return {
    model: () => shown.model,
    workbook: () => shown.described.workbook(),
    show: async (workbook) => {
      shown = await mounted(workbook, () => shown.app.destroy());
      what = "book";
      tell();
    },
    focus: () => shown.view.focusGrid(),
    follow: (changed) => {
      followers.add(changed);
      return () => followers.delete(changed);
    },
  };
}
