import { launchBrowser } from "../browser";
import { type OpenedExcel, openExcel } from "../../test/support/excelOnTheWeb/excelOnTheWeb";
import type { CellCall } from "../../test/support/excelOnTheWeb/cells";
import { type Measured, ratioOf } from "./measure";
import type { Checkout } from "./ofCheckout";
import { ratio, type Row } from "./row";

const CELLS = 2000;
const ROUNDS = 9;

/** Cells asked of Microsoft's own office.js, as Excel on the web asks them, against those of a function that does nothing. */
export async function throughOffice(builds: readonly Checkout[]): Promise<Row[]> {
  const [now, before] = await inTurnOfBuilds(builds);
  const what = `${CELLS} cells of FRICTION, each asked of Microsoft's office.js by itself`;
  return [{ ...ratio(what, "cells of a function that does nothing", now!), before: before ?? null }];
}

async function inTurnOfBuilds(builds: readonly Checkout[]): Promise<Measured[]> {
  const browser = await launchBrowser();
  try {
    const all: Measured[] = [];
    for (const { dist } of builds) {
      const excel = await openExcel(browser, { dist });
      await excel.functionsReady;
      await excel.frame().evaluate("CustomFunctions.associate('NOTHING', () => 1)");
      all.push(await ratioOf(() => answered(excel, "FRICTION"), () => answered(excel, "NOTHING"), ROUNDS)); // prettier-ignore
    }
    return all;
  } finally {
    await browser.close();
  }
}

let asked = 0; // another airflow each time, so that nothing is remembered

async function answered(excel: OpenedExcel, name: string): Promise<number> {
  const calls = Array.from({ length: CELLS }, (): CellCall => [
    name,
    [[400 + ++asked / 1000]],
    [[6]],
    null,
    null,
    null,
  ]);
  const began = performance.now();
  const answers = await excel.cells(...calls);
  const took = performance.now() - began;
  const refused = answers.find((answer) => "error" in answer);
  if (refused !== undefined) throw new Error(`${name} refused what it was asked: ${JSON.stringify(refused)}`);
  return took;
}
