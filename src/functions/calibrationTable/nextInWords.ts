import { nextReading } from "../../core/network/calibration/nextReading";
import type { Reading, Spot } from "../../core/network/calibration/reading";
import { itemAt } from "../../reference/itemAt";
import { FAN } from "../../reference/readingColumns";
import { sayNote } from "../../reference/notes";
import { runFlows } from "../flowTable/runFlows";
import type { Calibration } from "./calibration";
import { COVERAGE } from "./inputRows";
import { USUAL_PERCENT } from "./readReadingRows";
import { openInWords, spotInWords } from "./spotInWords";

/** The one further reading that tells most of the air at all open hoods, in the sets in which somebody reads already. */
export function nextInWords(calibration: Calibration): string {
  const { model, judged, sets, typed } = calibration;
  const meter = model.unknowns.findIndex(({ kind }) => kind === "meter");
  const isRead = (spot: Spot): boolean =>
    typed.some(({ reading: one }) => one?.set === spot.set && one.run === spot.run && one.what === spot.what);
  const [wanted, spots]: [Spot[], Omit<Reading, "value">[]] = [[], []];
  judged.fit.state.sets.forEach((solved, set) => {
    if (solved === null) return;
    const { system, solution } = solved;
    const { runs } = system.network;
    const offer = (run: number, what: Spot["what"]): void => {
      const spot: Spot = { set, run, what };
      const isAir = what === "airflow";
      if (!isRead(spot)) spots.push({ ...spot, deviation: USUAL_PERCENT[what] / 100, meter: isAir ? meter : -1 });
    };
    runFlows({ network: system.network, solution }).forEach((flow, run) => {
      if (flow.end && !flow.beyondShut) {
        wanted.push({ set, run, what: "airflow" });
        offer(run, "airflow");
      }
      const own = itemAt(runs, run);
      if (flow.fed && !flow.beyondShut && own.side === "suction") offer(run, "suction");
      if (own.device !== null && own.device.ratedLoss > 0) offer(run, "drop");
    });
    offer(-1, "suction");
    offer(-1, "airflow");
  });
  const next = wanted.length === 0 ? null : nextReading(model, judged.fit, wanted, spots);
  if (next === null) return "";
  const { set, run, what } = next.spot;
  const { table } = itemAt(sets, set);
  const percent = (deviation: number): number => Number((100 * COVERAGE * deviation).toPrecision(2));
  return sayNote("readNext", {
    what: spotInWords(what, run < 0 ? `the ${FAN}` : itemAt(table.runs, run).run.name),
    open: openInWords(itemAt(sets, set)),
    now: percent(next.now),
    then: percent(next.then),
  });
}
