import type { SheetHost, Watch } from "../../hosts/host";
import type { UnitSystem } from "../../reference/quantities";
import { addedWords } from "../build/outcomeWords";

/** Shows the example, leads to its runs and says what to try; where it can't be shown, says why. */
export async function openDemo(host: SheetHost | null, units: UnitSystem, watch: Watch): Promise<readonly string[]> {
  if (host === null) {
    return [
      "No sheet is open beside this pane.",
      "In the folder of Duct Ledger, type npm start: the example opens in your browser, with this pane beside it.",
    ];
  }
  const outcome = await host.openExample(units, watch);
  if (!outcome.added) return addedWords(outcome);
  const { seenIn } = await import("../check/seenIn");
  const [runs] = seenIn(await host.readBook()).runs;
  if (runs === undefined) return addedWords(outcome);
  await host.goTo(runs.sheet, runs.runs[0]!.at("Airflow"));
  return [
    `The example is open. Its runs stand on the sheet ${runs.sheet}: change the airflow of a hood, and watch the budget and its notes follow.`,
    ...(outcome.refused ?? []),
  ];
}
