import { sectionArea } from "../../../core/section/section";
import { cite } from "../../../reference/citation";
import type { Finding, CheckRule } from "../finding";
import { inGroups } from "../inGroups";
import { saysAny, STILL_NOTES } from "../stillAir";
import { type BookRuns, sameName } from "../runs";

/** Air too slow to carry the dust on: in each answer; in a budget without one, by the airflow that its hoods ask for. */
export const settling: CheckRule = ({ runs: tables, answers, dust: dustOfBook }) => {
  const dustOf = (name: string) =>
    tables.flatMap(({ runs }) => runs).find((run) => sameName(run.name, name)) ?? {
      dust: dustOfBook,
      discharge: false,
    };
  const inAnswers = answers.flatMap(({ of, sheet, system, rows }) =>
    rows.flatMap((row): Finding[] => {
      const { dust, discharge } = dustOf(row.run);
      // A shut branch carries no dust, so slow air in it is no fault.
      if (discharge || row.velocity === null || row.velocity <= 0 || row.velocity >= dust.low) return [];
      if (saysAny(row.note, STILL_NOTES)) return [];
      const needs = `"${dust.key}" needs ${inGroups(dust.low, "velocity", system)}`;
      const flows = of === "BUDGET" ? "would flow at" : "flows at";
      return [
        {
          rule: "Dust settles",
          what: `${row.run}: air ${flows} ${inGroups(row.velocity, "velocity", system)}; ${needs}.`,
          why: "Slower air drops its dust, which narrows the duct and feeds a fire. A smaller pipe or more air helps.",
          source: cite(dust),
          sheet,
          at: row.at("velocity"),
        },
      ];
    }),
  );
  return answers.length > 0 ? inAnswers : tables.flatMap(byWishes);
};

function byWishes({ sheet, system, runs }: BookRuns): Finding[] {
  return runs.flatMap(({ name, airflow, diameter, shut, discharge, dust, at }) => {
    if (diameter === null || airflow === 0 || shut || discharge) return [];
    const velocity = airflow / sectionArea(diameter, null);
    if (velocity >= dust.low) return [];
    const needs = `"${dust.key}" needs ${inGroups(dust.low, "velocity", system)}`;
    return [
      {
        rule: "Dust settles",
        what: `${name}: the airflow asked for makes ${inGroups(velocity, "velocity", system)}; ${needs}.`,
        why: "Slower air drops its dust, which narrows the duct and feeds a fire. A smaller pipe or more air helps.",
        source: cite(dust),
        sheet,
        at: at("Diameter"),
      },
    ];
  });
}
