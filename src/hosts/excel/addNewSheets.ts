import { freeName } from "../../sheets/freeName";
import { LISTS_SHEET } from "../../sheets/longLists";
import type { Workbook } from "../../sheets/workbook";
import type { AddOutcome, Watch } from "../host";
import { sentenceOf } from "./faults";
import { MAY_BE_OLD } from "./manual";
import { whyUnready } from "./probe";
import { type Stock, takeStock } from "./stock";
import { type Begun, undo } from "./undo";
import { writeWorkbook } from "./writeWorkbook";

/** Makes a workbook whose names differ from those that are there. */
export type Build = (stock: Stock) => Promise<Workbook>;

const LOCKED =
  "The structure of this workbook is protected, so no sheet can be added. Lift that under Review › Protect Workbook, then try again.";
const CANCELLED = "Cancelled: nothing was added.";

/** Adds the sheets of a workbook to the open one. Whatever happens on the way, no half of them stays. */
export async function addNewSheets(build: Build, watch: Watch): Promise<AddOutcome> {
  let begun: Begun | null = null;
  try {
    const stock = await Excel.run(takeStock);
    if (stock.isLocked) return refusal(LOCKED);
    watch.signal.throwIfAborted();
    watch.progress(0, 1, "Asking Excel for the functions");
    const unready = await whyUnready(stock, watch.signal);
    if (unready !== null) return refusal(unready);
    const workbook = await build(stock);
    watch.signal.throwIfAborted();
    const lists = listsName(stock, workbook);
    begun = {
      stock,
      sheets: [...workbook.sheets.map(({ name }) => name), lists],
      names: workbook.names.map(({ name }) => name),
      made: [],
    };
    const refused = await writeWorkbook(workbook, lists, begun.made, watch);
    return {
      added: true,
      sheets: workbook.sheets.map(({ name }) => name),
      refused: stock.isManual ? [...refused, MAY_BE_OLD] : refused,
    };
  } catch (fault) {
    const left = begun === null ? [] : await undo(begun);
    const why = watch.signal.aborted ? CANCELLED : `${sentenceOf(fault)} Nothing was added.`;
    return refusal(left.length === 0 ? why : `${sentenceOf(fault)} Please delete by hand: ${left.join(", ")}.`);
  }
}

const refusal = (why: string): AddOutcome => ({ added: false, why });

const listsName = ({ sheets }: Stock, workbook: Workbook): string =>
  freeName(LISTS_SHEET, [...sheets, ...workbook.sheets.map(({ name }) => name)]);
