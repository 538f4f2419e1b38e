import { gateConditions } from "../../reference/gateConditions";
import { lossFamilies } from "../../reference/lossFamilies";
import { materials } from "../../reference/materials";
import { cellAddress } from "../address";
import { formula, input, text } from "../cells";
import type { ChoiceList, SheetCell } from "../workbook";
import {
  ANSWER,
  answerColumn,
  columnOf,
  DUST_LIMIT_CELL,
  FIRST,
  HEADER,
  inTable,
  LAST,
  TABLE_COLUMN,
} from "./budgetLayout";
import { columnNotes, runColumns, type RunColumn, shedRuns } from "./shed";

const NUMBER_INPUTS: readonly RunColumn[] = ["Airflow (cfm)", "Diameter (in)", "Length (ft)", "Flex (ft)"];

/** The runs table with a check before each run. */
export function runsTable(): SheetCell[] {
  const cells: SheetCell[] = [text(`A${HEADER}`, "Check", "header")];
  runColumns.forEach((column, index) => {
    const style = NUMBER_INPUTS.includes(column) ? "numberHeader" : "header";
    cells.push(text(cellAddress(TABLE_COLUMN + index, HEADER), column, style, { note: columnNotes[column] }));
  });
  for (let at = FIRST; at <= LAST; at++) {
    const run = shedRuns[at - FIRST];
    cells.push(formula(`A${at}`, checkOf(at)));
    runColumns.forEach((column, index) =>
      cells.push(input(cellAddress(TABLE_COLUMN + index, at), run?.[column] ?? null)),
    );
  }
  return cells;
}

/** The velocity of a run in words: what a person at the machine needs to see beside the number just typed. */
function checkOf(at: number): string {
  const cell = (column: RunColumn): string => cellAddress(columnOf(column), at);
  const velocity = `INDEX(${answerColumn("D")},MATCH(B${at}&"",${answerColumn("B")},0))`;
  const spoken = `IF(${velocity}<${absolute(DUST_LIMIT_CELL)},"settles: ","ok: ")&ROUND(${velocity},0)&" fpm"`;
  const state = `IF(${cell("Side")}="discharge","after the fan",IF(${cell("Gate")}="shut","gate shut",${spoken}))`;
  return `=IF(B${at}="","",IFERROR(${state},"see B${ANSWER}"))`;
}

const absolute = (address: string): string => address.replace(/^([A-Z]+)/, "$$$1$$");

/** Words to choose from. Only those that admit nothing else are strict: a K or a roughness may stand in place of a name. */
export function runsLists(): ChoiceList[] {
  const hoods = lossFamilies.filter((family) => family.kind === "hood").map((family) => family.key);
  const leaksWhile = (state: "open" | "shut"): string[] =>
    gateConditions.filter((row) => row.state === state || row.state === "either").map(({ key }) => key);
  return [
    { range: inTable("Gate"), choices: ["open", "shut"], strict: true },
    { range: inTable("Side"), choices: ["suction", "discharge"], strict: true },
    { range: inTable("Material"), choices: materials.map(({ key }) => key), strict: false },
    { range: inTable("Hood"), choices: hoods, strict: false },
    { range: inTable("Leak open"), choices: leaksWhile("open"), strict: false },
    { range: inTable("Leak shut"), choices: leaksWhile("shut"), strict: false },
  ];
}
