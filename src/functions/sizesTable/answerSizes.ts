import { DomainError, requireWithin } from "../../core/errors";
import { itemAt } from "../../reference/itemAt";
import type { UnitSystem } from "../../reference/quantities";
import { readDensity, readOptional, readWithin, singleCell } from "../arguments";
import type { Answered } from "../cellErrors";
import { toMatrix } from "../cells";
import { usualScenarios } from "../flowTable/hoodGates";
import { readOpen, requireGates } from "../flowTable/openRuns";
import { readScenarios } from "../flowTable/readScenarios";
import { inHost } from "../inHost";
import type { rememberingAnswers } from "../remember";
import { sharedRuns } from "../runsTable/sharedRuns";
import type { OptionalNumber } from "../signature";
import { fansTable } from "./fansTable";
import { readFans } from "./readFans";
import { readStock } from "./readStock";
import type { Wish } from "./sizeTaskOf";
import { withoutFan } from "./withoutFan";

/** What SIZES is asked with, as the host handed it over. */
interface Given {
  readonly runs: unknown;
  readonly curve: unknown;
  readonly scenarios: unknown;
  readonly stock: unknown;
  readonly margin: unknown;
  readonly keep: unknown;
  readonly density: unknown;
  readonly units: unknown;
  readonly fastest: unknown;
}

const USUAL_MARGIN = 15; // %
const MARGIN: OptionalNumber<number> = {
  ...{ kind: "number", needed: false, quantity: "ratio", usual: USUAL_MARGIN, zero: ["none", "no margin"] },
  limits: { atLeast: 1, atMost: 100 }, // 15 % that is typed with its sign is 0.15
};
const FASTEST = { above: 0, atMost: 200 }; // m/s
const MOST_SCENARIOS = 40;

/** Reads what SIZES takes and answers; what it was asked before is not searched for again. */
export function answerSizes(remember: ReturnType<typeof rememberingAnswers>, given: Given): Answered[][] {
  const { runs, curve, scenarios, stock, margin, keep, density, units, fastest } = given;
  return inHost(units, (system) => {
    const [air, table] = [readDensity(density, system), sharedRuns(runs, system)];
    const inputs = [runs, curve, scenarios, stock, keep].map(toMatrix);
    const percent = readMargin(margin, system);
    const greatest = readFastest(fastest, system);
    return remember([...inputs, percent, air, system, greatest], () => {
      requireGates(table);
      const typed = readScenarios(toMatrix(scenarios), table.names).filter((set) => set !== null);
      const sets = typed.length > 0 ? typed : usualScenarios(table);
      if (sets.length > MOST_SCENARIOS)
        throw new DomainError("scenarios", sets.length, `at most ${MOST_SCENARIOS} sets of open gates`);
      const present = table.runs(null).runs.map(({ run }) => run.diameter);
      const wish: Wish = {
        ...{ table, scenarios: sets, density: air, system, times: 1 + percent / 100, fastest: greatest },
        stock: readStock(stock, present, system),
        keep: readOpen("keep", keep, table.names) ?? new Set(),
      };
      const noCurve = itemAt(inputs, 1).every((line) => line.every((cell) => cell === null || cell === 0));
      return noCurve ? withoutFan(wish) : fansTable(wish, readFans(curve, system));
    });
  });
}

/** Left out it is the usual one; a cell that is blank or 0 is refused, since a host may send one for the other. */
function readMargin(given: unknown, system: UnitSystem): number {
  if (given === undefined || given === null) return USUAL_MARGIN;
  const percent = readOptional("margin", singleCell("margin", given), MARGIN, system);
  if (percent !== 0) requireWithin("margin", percent, MARGIN.limits, "%");
  return percent;
}

/** A cell that is blank or 0 asks for none: no air stands still on purpose. */
function readFastest(given: unknown, system: UnitSystem): number | null {
  const cell = singleCell("fastest", given);
  return cell === null || cell === 0 ? null : readWithin("fastest", cell, "velocity", FASTEST, system);
}
