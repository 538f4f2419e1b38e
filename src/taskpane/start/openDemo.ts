import type { SheetHost, Watch } from "../../hosts/host";
import type { UnitSystem } from "../../reference/quantities";
import { addedWords } from "../build/outcomeWords";
import { seenIn } from "../check/seenIn";
import { sheetKeys } from "../../sheets/sheetKeys";

/** Leads to the budget that is open in these units, or adds the example where there is none; says what was done. */
export async function openDemo(host: SheetHost | null, units: UnitSystem, watch: Watch): Promise<readonly string[]> {
  if (host === null) {
    return [
      "No sheet is open beside this pane.",
      "In the folder of Duct Ledger, type npm start: the example opens in your browser, with this pane beside it.",
    ];
  }
  const runs = seenIn(await host.readBook()).runs.find(({ system }) => system === units);
  if (runs !== undefined) {
    await host.goTo(runs.sheet, runs.runs[0]!.at("Airflow"));
    return [
      `The runs of a budget stand on the sheet ${runs.sheet}: change the airflow of a hood, and watch the budget and its notes follow.`,
    ];
  }
  return addedWords(await host.addSheets({ units, sheets: sheetKeys, contents: "example" }, watch));
}
