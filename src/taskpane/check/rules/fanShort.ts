import { ENOUGH_AIR } from "../../../reference/noteLimits";
import { practice, type CheckRule } from "../finding";
import { inGroups } from "../inGroups";
import { sameName } from "../runs";
import { saysAny } from "../stillAir";

/** Hoods that get less than they ask for from the fan there is. */
export const fanShort: CheckRule = ({ runs: tables, answers }) => {
  const runs = tables.flatMap((table) => table.runs);
  return answers
    .filter(({ of }) => of === "SOLVE")
    .flatMap(({ sheet, system, rows }) =>
      rows.flatMap((row) => {
        const wanted = runs.find((run) => sameName(run.name, row.run))?.airflow ?? 0;
        const isJoined = runs.some((run) => sameName(run.to, row.run));
        if (wanted === 0 || isJoined || row.airflow === null || row.gate.toLowerCase() === "shut") return [];
        const gets = row.airflow - row.leak;
        if (gets >= ENOUGH_AIR * wanted || saysAny(row.note, ["gateShut", "cutOff"])) return [];
        return [
          {
            rule: "The fan can't give it",
            what: `${row.run} gets ${gets < 0 ? "nothing" : inGroups(gets, "airflow", system)} of the ${inGroups(wanted, "airflow", system)} wanted${gets < 0 ? `: ${inGroups(-gets, "airflow", system)} blow out of it` : ""}.`,
            why: "With these gates open the fan and the ducts meet lower than the hoods ask. Fewer open gates, sealed leaks or an easier path help before a larger fan does: GAINS ranks them.",
            source: practice,
            sheet,
            at: row.at("airflow"),
          },
        ];
      }),
    );
};
