import { workshops } from "../demo/workshops";
import { legible } from "../paper";
import type { Sheet, Workbook } from "../workbook";
import { aboutSheet } from "./about/aboutSheet";
import { budgetSheet } from "./budget/budgetSheet";
import { cautionsSheet } from "./cautions/cautionsSheet";
import { claimsSheet, emptyClaims, exampleClaims } from "./claims/claimsSheet";
import { emptyFan, exampleFan } from "./fan/fanContents";
import { fanSheet } from "./fan/fanSheet";
import { emptyFlow, exampleFlow } from "./flow/flowContents";
import { NOTES_RUN_OVER } from "./flow/flowLayout";
import { flowSheet } from "./flow/flowSheet";
import { cellNames, type Frame } from "./frame";
import { emptyLeaks, exampleLeaks, leaksSheet } from "./leaks/leaksSheet";
import type { SheetOrder } from "./order";
import { frameOf } from "./parts/frameOf";
import { hinted } from "./parts/hinted";
import { plan } from "./parts/plan";
import { emptyMeasured, exampleMeasured, measuredSheet } from "./measured/measuredSheet";
import { emptyReadings, exampleReadings, readingsSheet } from "./readings/readingsSheet";
import { emptyRuns, exampleRuns } from "./runs/runsContents";
import { runsSheet } from "./runs/runsSheet";
import { emptyStart, exampleStart } from "./start/startContents";
import { namedCells } from "./start/startLayout";
import { sizesSheet } from "./sizes/sizesSheet";
import { startSheet } from "./start/startSheet";
import { emptySummary, exampleSummary } from "./summary/summaryContents";
import { summarySheet } from "./summary/summarySheet";
import { tablesSheet } from "./tables/tablesSheet";
import type { SheetKey } from "../sheetKeys";
import type { Taken } from "./parts/taken";

/**
 * The sheets of a budget as an order asks for them, with those that they lean on, under names that nothing else has.
 *
 * @param taken what the workbook has already; by `ours`, which of its sheets are a budget's own, so that new ones use them
 */
export function budgetBook(order: SheetOrder, taken: Taken): Workbook {
  const planned = plan(order.sheets, taken);
  const frame = frameOf(order.units, planned, taken);
  // an example goes with the example's ducts: beside ducts that are there already it would speak of others
  const example = order.contents === "example" && (planned.added.includes("runs") || !frame.has("runs"));
  const sheets = planned.added.map((key): Sheet =>
    legible(
      hinted({ key, gridlines: false, ...sheetOf(key, frame, example ? "example" : "empty") }),
      key === "flow" ? [NOTES_RUN_OVER] : [],
    ),
  );
  const names = planned.added.includes("start")
    ? cellNames.map((key) => ({
        name: planned.names[key],
        sheet: frame.sheet("start"),
        at: namedCells[key].replaceAll("$", ""),
      }))
    : [];
  return { name: "Air budget", sheets, names };
}

function sheetOf(key: SheetKey, frame: Frame, contents: SheetOrder["contents"]): Sheet {
  const { units } = frame;
  const pick = <Contents>(example: (system: typeof units) => Contents, empty: Contents): Contents =>
    contents === "example" ? example(units) : empty;
  switch (key) {
    case "start":
      return startSheet(frame, pick(exampleStart, emptyStart(units)));
    case "runs":
      return runsSheet(frame, pick(exampleRuns, emptyRuns));
    case "fan":
      return fanSheet(frame, pick(exampleFan, emptyFan));
    case "budget":
      return budgetSheet(frame, null);
    case "flow":
      return flowSheet(frame, pick(exampleFlow, emptyFlow));
    case "sizes":
      return sizesSheet(frame, null);
    case "leaks":
      return leaksSheet(frame, pick(exampleLeaks, emptyLeaks));
    case "readings":
      return readingsSheet(frame, pick(exampleReadings, emptyReadings));
    case "measured":
      return measuredSheet(frame, pick(exampleMeasured, emptyMeasured));
    case "claims":
      return claimsSheet(frame, pick(exampleClaims, emptyClaims));
    case "summary":
      return summarySheet(frame, pick(exampleSummary, emptySummary));
    case "tables":
      return tablesSheet(frame, null);
    case "cautions":
      return cautionsSheet(frame, null);
    case "about":
      return aboutSheet(
        frame,
        pick((system) => ({ invented: workshops[system].invented }), null),
      );
  }
}
