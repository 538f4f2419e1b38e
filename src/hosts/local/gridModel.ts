import type { Workbook } from "../../sheets/workbook";
import { withAlikeOnce } from "./alikeFormulas";
import type { GridModel } from "./grid";
import { gridData } from "./model";

interface Packing {
  readonly session: { readonly commandSquisher: { squish: (commands: unknown) => unknown } };
}

/**
 * A workbook in the grid.
 *
 * The grid packs the cells that one step has written before it sends them to others at work on the same sheet. Its packing
 * breaks off on a running sum (=SUM(A$1:A1) above =SUM(A$1:A2)), every later step breaks off with it, and it needs a
 * function of the language that older browsers lack. Nobody else is at work here, so nothing is packed.
 */
export function gridModel(workbook: Workbook): GridModel {
  const data = gridData(workbook);
  const model = withAlikeOnce(() => new o_spreadsheet.Model(data));
  (model as unknown as Packing).session.commandSquisher.squish = (commands) => commands;
  return model;
}
