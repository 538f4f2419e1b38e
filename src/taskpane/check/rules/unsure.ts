import { LIMIT } from "../../../core/network/calibration/slips";
import { calibrateColumns, type CalibrateKey, uncertaintyColumns } from "../../../reference/answerColumns";
import { headerOfColumn } from "../../../reference/columnsOfAnswers";
import { sources } from "../../../reference/sources";
import { type CheckRule, type Finding, practice } from "../finding";
import { type FoundTable, numberIn, tablesWith, textIn } from "../tablesIn";

const calibrate = (key: CalibrateKey): string => headerOfColumn(calibrateColumns, key);
const [PART, WHAT, MISFIT, WORDS] = [calibrate("part"), calibrate("what"), calibrate("misfit"), calibrate("inWords")] as const; // prettier-ignore
const FROM = headerOfColumn(uncertaintyColumns, "mostlyFrom");
const SHARE = headerOfColumn(uncertaintyColumns, "share");
const RUN = headerOfColumn(uncertaintyColumns, "run");

/** Readings that fit no plausible system, as CALIBRATE says; and what to measure first where nobody has read anything yet. */
export const unsure: CheckRule = ({ sheets }) => {
  const readings = tablesWith(sheets, [PART, WHAT, WORDS]).flatMap((table) =>
    table.rows.filter((row) => table.value(row, PART) === "reading").map((row) => ({ table, row })),
  );
  if (readings.length > 0) return readings.flatMap(slip);
  return tablesWith(sheets, [RUN, FROM, SHARE]).flatMap(measureFirst);
};

function slip({ table, row }: { readonly table: FoundTable; readonly row: number }): Finding[] {
  const misfit = numberIn(table.value(row, MISFIT));
  if (misfit === null || Math.abs(misfit) < LIMIT) return [];
  const words = textIn(table.value(row, WORDS));
  return [
    {
      rule: "A reading that fits nothing",
      what: `${textIn(table.value(row, WHAT))}: ${words}${words.endsWith("?") ? "" : "."}`,
      why: "No plausible fan, hose, entry or leak makes such a reading beside the others, so CALIBRATE sets it aside. Look at what was typed, or read there once more.",
      source: sources.jcgm100.title,
      sheet: table.sheet,
      at: table.address(row, WORDS),
    },
  ];
}

/** Of the fan's airflow alone, which every hood's hangs on. */
function measureFirst(table: FoundTable): Finding[] {
  const row = table.rows.find((one) => textIn(table.value(one, RUN)).toLowerCase() === "fan");
  const share = row === undefined ? null : numberIn(table.value(row, SHARE));
  if (row === undefined || share === null) return [];
  const from = textIn(table.value(row, FROM));
  return [
    {
      rule: "Measure first",
      what: from.startsWith("the fan's")
        ? "Your largest unknown is the fan's curve: measure suction at the fan with one gate open."
        : `Your largest unknown is this: ${from}. Measure there first.`,
      why: `It makes ${Math.round(share)} % of what the fan's airflow may be off by (of its variance). A reading on a sheet for CALIBRATE narrows it for every hood.`,
      source: practice,
      sheet: table.sheet,
      at: table.address(row, FROM),
    },
  ];
}
