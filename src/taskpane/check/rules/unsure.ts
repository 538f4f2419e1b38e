import { LIMIT } from "../../../core/network/calibration/slips";
import { calibrateColumns, type CalibrateKey, uncertaintyColumns } from "../../../reference/answerColumns";
import { headerOfColumn } from "../../../reference/columnsOfAnswers";
import { readingColumns } from "../../../reference/readingColumns";
import { sources } from "../../../reference/sources";
import { cellAddress } from "../../../sheets/address";
import type { Calculated } from "../../../sheets/calculated";
import { type CheckRule, type Finding, practice } from "../finding";
import { argumentCells } from "../named/callsIn";
import { type FoundTable, type LookedThrough, numberIn, tablesWith, textIn } from "../tablesIn";
import { headerName } from "../../../core/naming/headerName";

const calibrate = (key: CalibrateKey): string => headerOfColumn(calibrateColumns, key);
const [PART, WHAT, MISFIT, ROW, WORDS] = [calibrate("part"), calibrate("what"), calibrate("misfit"), calibrate("row"), calibrate("inWords")] as const; // prettier-ignore
const READINGS = 2; // place of that argument of CALIBRATE, from 0
const FROM = headerOfColumn(uncertaintyColumns, "mostlyFrom");
const SHARE = headerOfColumn(uncertaintyColumns, "share");
const RUN = headerOfColumn(uncertaintyColumns, "run");

/** Readings that fit no plausible system, and what to read next, as CALIBRATE says; and what to measure first where nobody has read anything yet. */
export const unsure: CheckRule = ({ book, sheets }) => {
  const readings = tablesWith(sheets, [PART, WHAT, WORDS]).flatMap((table) =>
    table.rows.filter((row) => table.value(row, PART) === "reading").map((row) => ({ table, row })),
  );
  if (readings.length > 0) return [...readings.flatMap((one) => slip(one, book, sheets)), ...tablesWith(sheets, [PART, WHAT, WORDS]).flatMap(measureNext)]; // prettier-ignore
  return tablesWith(sheets, [RUN, FROM, SHARE]).flatMap(measureFirst);
};

interface ReadingRow {
  readonly table: FoundTable;
  readonly row: number;
}

function slip({ table, row }: ReadingRow, book: Calculated, sheets: readonly LookedThrough[]): Finding[] {
  const misfit = numberIn(table.value(row, MISFIT));
  if (misfit === null || Math.abs(misfit) < LIMIT) return [];
  const words = textIn(table.value(row, WORDS)).replaceAll("?; ", "? Or ");
  return [
    {
      rule: "A reading that fits nothing",
      what: `${textIn(table.value(row, WHAT))}, ${words}${words.endsWith("?") ? "" : "."}`,
      why: "No plausible fan, hose, entry or leak makes such a reading beside the others, so CALIBRATE sets it aside. Look at what was typed, or read there once more.",
      source: sources.jcgm100.title,
      ...typedAt({ table, row }, book, sheets),
    },
  ];
}

/** Where somebody typed the reading: it is what has to be mended, and the answer's own row where the readings are no cells of a sheet. */
function typedAt(
  { table, row }: ReadingRow,
  book: Calculated,
  sheets: readonly LookedThrough[],
): Pick<Finding, "sheet" | "at"> {
  const answered = { sheet: table.sheet, at: table.address(row, WORDS) };
  const typed = argumentCells(book, table.sheet, table.address(table.headerRow, PART), "CALIBRATE", READINGS);
  const place = numberIn(table.value(row, ROW));
  const there = sheets.find(({ sheet }) => sheet === typed?.sheet);
  if (typed === null || place === null || there === undefined) return answered;
  const [what] = textIn(table.value(row, WHAT)).split(" ");
  const name = readingColumns.find((column) => column.name.toLowerCase() === what)?.name ?? "At";
  const columns = Array.from({ length: typed.right - typed.left + 1 }, (_, index) => typed.left + index);
  const column = columns.find((one) => headerName(textIn(there.at(one, typed.top))) === headerName(name));
  return column === undefined ? answered : { sheet: typed.sheet, at: cellAddress(column, typed.top + place - 1) };
}

/** After some readings: the one that would narrow most what is left. */
function measureNext(table: FoundTable): Finding[] {
  const row = table.rows.find((one) => table.value(one, PART) === "in short" && table.value(one, WHAT) === "next");
  const words = row === undefined ? "" : textIn(table.value(row, WORDS));
  if (row === undefined || words === "") return [];
  return [
    {
      rule: "Measure next",
      what: `${words.charAt(0).toUpperCase()}${words.slice(1)}.`,
      why: "Of all readings that can be taken this one narrows the ± of the air at the hoods most.",
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
