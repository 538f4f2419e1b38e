import { gainUncertaintyColumns, type GainUncertaintyKey } from "../../reference/answerColumns";
import type { Spread } from "../../core/network/derivative/spread";
import { sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, headerRow, type Value } from "../answerRows";
import { hoodNow } from "../flowTable/gainTable";
import { mostAir } from "../flowTable/mostAir";
import type { Gain } from "../flowTable/oneChange";
import type { Fan } from "../flowTable/solveRuns";
import type { RunsTable } from "../runsTable/readRuns";
import { gainFactor } from "./gainInWords";
import { gainSpreads } from "./gainSpread";
import { inputInWords } from "./inputInWords";
import type { Deviations } from "./readErrors";
import { COVERAGE, inWords, leakInWords } from "./uncertaintyTable";

/** The answer of GAINUNCERTAINTY: the rows of GAINS, each with its ±. */
export function gainUncertainty(
  runs: RunsTable,
  fan: Fan,
  hood: unknown,
  errors: Deviations,
  system: UnitSystem,
): Value[][] {
  const { now, place } = hoodNow(runs, fan, hood);
  const names = now.network.runs.map(({ name }) => name);
  const row = (of: Partial<Record<GainUncertaintyKey, Value | null>>): Value[] =>
    answerRow(gainUncertaintyColumns, of, system);
  const spreadOf = gainSpreads(now, place, fan, errors);
  const rows = mostAir(now, place, fan, system).gains.map((gain) =>
    row({ run: gain.name, change: gain.words, gained: gain.gained, ...told(gain, spreadOf(gain), names, system) }),
  );
  return [
    headerRow(gainUncertaintyColumns, system),
    ...(rows.length > 0 ? rows : [row({ change: sayNote("nothingGains") })]),
  ];
}

function told(
  gain: Gain,
  spread: Spread,
  names: readonly string[],
  system: UnitSystem,
): Partial<Record<GainUncertaintyKey, Value>> {
  const { deviation, largest } = spread;
  const mostlyFrom = largest === null ? "" : inputInWords(largest.kind, names[largest.run] ?? "");
  const error = COVERAGE * deviation;
  const factor = gainFactor(gain, spread);
  if (factor === null) return { error, mostlyFrom, inWords: inWords(gain.gained, error, system) };
  return { factor, mostlyFrom, inWords: leakInWords(gain.gained, factor, system) };
}
