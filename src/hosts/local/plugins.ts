import { addAppendPlugin } from "./appendPlugin";
import { readFractions } from "./days";
import { drawWhenHere } from "./drawWhenHere";
import { addExtentPlugin } from "./extentPlugin";
import { lookBeforeRemoval } from "./hiddenLines";
import { addKeptPlugin } from "./keptPlugin";
import { pasteAnywhere } from "./pasteAnywhere";
import { pasteValues } from "./pasteValues";
import { printByBrowser } from "./print/printByBrowser";
import { sortWholeRows } from "./sortWholeRows";
import { evaluateShownFirst } from "./evaluation/evaluateShownFirst";
import { removeLinks } from "./noLinks";
import { offerWords } from "./offerWords";
import { markNoValidCell } from "./validCells";
import { limitWork } from "./limits/limitWork";
import { whenAsked } from "./whenAsked";
import { addWritePlugin } from "./writePlugin";

/** What we change of the grid's library, once, when our functions are registered and before the first model is made. */
export function addPlugins(): void {
  addKeptPlugin();
  addExtentPlugin();
  addAppendPlugin();
  addWritePlugin();
  sortWholeRows();
  lookBeforeRemoval();
  readFractions();
  removeLinks();
  markNoValidCell();
  offerWords();
  pasteAnywhere();
  pasteValues();
  printByBrowser();
  drawWhenHere();
  whenAsked();
  limitWork();
  evaluateShownFirst();
}
