import { sectionArea } from "../../../core/section/section";
import { itemAt } from "../../../reference/itemAt";
import { cite } from "../../../reference/citation";
import { areClean, isBehindDevice, runsCalled } from "../behindDevice";
import type { Finding, CheckRule } from "../finding";
import { inGroups } from "../inGroups";
import { sizeThatCarries } from "../sizeThatCarries";
import { saysAny, STILL_NOTES } from "../stillAir";
import { type BookRuns, sameName } from "../runs";
import { mainsTooWide } from "../tooWideForOne";

const WHY =
  "Slower air drops its dust, which narrows the duct and feeds a fire. Where the hood has its air, a narrower pipe helps; it passes a little less, so try it. Where it has not, more air helps first: fewer open gates, sealed leaks.";

/**
 * Air too slow to carry the dust on: in each answer; in a budget without one, by the airflow that its hoods ask for. A run is
 * told once, by what its hoods ask for where that is too slow already, since no fan mends it then. Air behind a device is taken
 * to be clean (its note is told as a note), and a main too wide for any one gate has a line of its own.
 */
export const settling: CheckRule = (seen) => {
  const { runs: tables, answers, dust: dustOfBook } = seen;
  const tooWide = mainsTooWide(seen)?.mains ?? [];
  const isToldAsTooWide = (name: string, velocity: number): boolean =>
    tooWide.some(
      ({ run, greatest }) => sameName(run.name, name) && greatest !== null && velocity <= 1.001 * greatest.velocity,
    );
  const told: string[] = [];
  const inAnswers = answers.flatMap(({ of, sheet, system, rows }) =>
    rows.flatMap((row): Finding[] => {
      const called = runsCalled(tables, row.run);
      const found = called.length === 1 ? itemAt(called, 0) : null;
      const [one = { dust: dustOfBook }, ...others] = called.map(({ run }) => run);
      const dust = others.every((other) => other.dust === one.dust) ? one.dust : dustOfBook;
      const isAfterFan = called.length > 0 && called.every(({ run }) => run.discharge);
      // A shut branch carries no dust, so slow air in it is no fault.
      if (isAfterFan || row.velocity === null || row.velocity <= 0) return [];
      if (row.velocity >= dust.low || saysAny(row.note, STILL_NOTES)) return [];
      if (of === "SOLVE" && isToldAsTooWide(row.run, row.velocity)) return [];
      if (areClean(called)) return [];
      if (found !== null && told.some((name) => sameName(name, row.run))) return [];
      told.push(row.run);
      const needs = `"${dust.key}" needs ${inGroups(dust.low, "velocity", system)}`;
      const flows = of === "BUDGET" ? "would flow at" : "flows at";
      const cure = row.airflow === null ? "" : sizeThatCarries(row.airflow, dust.low, system);
      return [
        {
          rule: "Dust settles",
          what: `${row.run}: air ${flows} ${inGroups(row.velocity, "velocity", system)}; ${needs}.${cure}`,
          why: WHY,
          source: cite(dust),
          ...(found !== null
            ? { sheet: found.table.sheet, at: found.run.at("Diameter") }
            : { sheet, at: row.at("velocity") }),
        },
      ];
    }),
  );
  return answers.length > 0 ? inAnswers : tables.flatMap(byWishes);
};

function byWishes({ sheet, system, runs }: BookRuns): Finding[] {
  return runs.flatMap((run) => {
    const { name, airflow, diameter, shut, discharge, dust, at } = run;
    if (diameter === null || airflow === 0 || shut || discharge || isBehindDevice(runs, run)) return [];
    const velocity = airflow / sectionArea(diameter, null);
    if (velocity >= dust.low) return [];
    const needs = `"${dust.key}" needs ${inGroups(dust.low, "velocity", system)}`;
    const cure = sizeThatCarries(airflow, dust.low, system);
    return [
      {
        rule: "Dust settles",
        what: `${name}: the airflow asked for makes ${inGroups(velocity, "velocity", system)}; ${needs}.${cure}`,
        why: WHY,
        source: cite(dust),
        sheet,
        at: at("Diameter"),
      },
    ];
  });
}
