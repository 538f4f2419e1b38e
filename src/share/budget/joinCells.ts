import { OPEN_AIR_NAMES } from "../../core/network/openAir";
import { columnsOfAnyRun } from "../../reference/columnsOfRuns";
import type { BlockColumn } from "./block";
import type { BudgetColumn, BudgetPlace, ColumnCells } from "./blockNames";
import type { RunsReader } from "./runsReader";
import { quotedText } from "../references";
import { ERROR_THERE } from "./tableCells";
import { endsInTheOpen, isOneOf } from "./troubleCells";
import { isBlank, nameKey, oneOfTwo } from "./words";

/** How the runs join: their names, where each goes, which are after the fan, and how far from the fan each stands. */
export function joinCells(
  { place, source, used, optional }: RunsReader,
  strides: number,
): ColumnCells<
  "used" | "name" | "key" | "toKey" | "sideSaid" | "side" | "into" | "inLoop" | "begins" | "leaves" | "far" | "rank"
> {
  const at = place.cell;
  // Where nothing is said: 2 for a run that goes into the open air, unless a run is named so.
  const unsaidSide = (row: number): string =>
    `IF(AND(${isOneOf(at("toKey", row), OPEN_AIR_NAMES)},COUNTIF(${place.all("key")},${at("toKey", row)})=0),2,1)`;
  return {
    used: {
      heading: "Row, where used",
      formula: (row) =>
        `IF(AND(${columnsOfAnyRun
          .filter((column) => source.has(column))
          .map((column) => isBlank(source.cell(column, row)))
          .join(",")}),0,${row})`,
    },
    name: { heading: "Run", formula: (row) => used(row, nameOf(source.cell("Run", row)), '""') },
    key: {
      heading: "Run, to compare",
      formula: (row) => used(row, `IF(ISERROR(${at("name", row)}),"r:",${nameKey(source.cell("Run", row))})`, '""'),
    },
    toKey: { heading: "To, to compare", formula: (row) => used(row, optional(row, "To", '"r:"', toOf), '""') },
    sideSaid: {
      heading: "Side: 1 suction, 2 discharge",
      formula: (row) =>
        used(
          row,
          source.has("Side")
            ? oneOfTwo(source.cell("Side", row), "suction", "discharge", unsaidSide(row))
            : unsaidSide(row),
        ),
    },
    side: {
      heading: "which counts as suction where it is neither",
      formula: (row) => `IFERROR(${at("sideSaid", row)},1)`,
    },
    into: {
      heading: "Joins row; -1 none that is there",
      formula: (row) => {
        const found = `MATCH(${at("toKey", row)},${place.all("key")},0)`;
        const isFirst = `COUNTIFS(${place.above("toKey", row)},"r:fan",${place.above("side", row)},1)=0`;
        const joined = `IFERROR(IF(INDEX(${place.all("side")},${found})=1,${found},-1),-1)`;
        return `IF(${at("side", row)}<>1,0,IF(${at("toKey", row)}="r:fan",IF(${isFirst},0,-1),IF(${at("toKey", row)}="r:",-1,${joined})))`;
      },
    },
    inLoop: {
      heading: "Row, where it is one of a loop", // the longest stride takes each way into its loop, and there to each of its rows
      formula: (row) =>
        `IF(${at(`reach${strides}`, row)}=0,0,IF(COUNTIF(${place.all(`reach${strides}`)},${row})>0,${row},0))`,
    },
    begins: {
      heading: "1: no run goes to it, after the fan",
      formula: (row) =>
        `IF(${at("side", row)}=2,IF(COUNTIFS(${place.all("toKey")},${at("key", row)},${place.all("side")},2)=0,1,0),0)`,
    },
    leaves: {
      heading: "1: the air leaves it",
      formula: (row) => `IF(${at("side", row)}=2,IF(${endsInTheOpen(at("toKey", row))},1,0),0)`,
    },
    far: {
      heading: "Runs to the fan",
      edge: -9,
      formula: (row) => `IF(${at("used", row)}=0,-2,IF(${at("side", row)}=1,${at(`steps${strides}`, row)},-1))`,
    },
    rank: {
      heading: "Order of the flow",
      formula: (row) =>
        `COUNTIF(${place.all("far")},">"&${at("far", row)})+COUNTIF(${place.above("far", row + 1)},${at("far", row)})`,
    },
  };
}

const isError = (cell: string): string => `${cell}=${quotedText(ERROR_THERE)}`;

/** Where an error says where a run goes, nobody knows. */
const toOf = (cell: string): string => `IF(${isError(cell)},"r:",${nameKey(cell)})`;

/** A name without its outer blanks; what is no name is an error. */
const nameOf = (cell: string): string =>
  `IF(OR(${isBlank(cell)},ISLOGICAL(${cell}),${isError(cell)}),NA(),IF(OR(LEFT(${cell},1)=" ",RIGHT(${cell},1)=" "),TRIM(${cell}),${cell}&""))`;

/**
 * Each stride is twice the one before it, so that any way to the fan takes few of them; a loop never arrives. Of a way into a loop
 * only the runs before it count.
 */
export function strideCells(place: BudgetPlace, stride: number): BlockColumn<BudgetColumn>[] {
  const [reach, steps] = [`reach${stride}`, `steps${stride}`] as const;
  if (stride === 0) {
    return [
      { name: reach, heading: "Next row", formula: (row) => `MAX(0,${place.cell("into", row)})` },
      {
        name: steps,
        heading: "runs on",
        formula: (row) => `IF(AND(${place.cell("into", row)}>0,${place.cell("inLoop", row)}=0),1,0)`,
      },
    ];
  }
  const [reachBefore, stepsBefore] = [`reach${stride - 1}`, `steps${stride - 1}`] as const;
  const onward = (column: BudgetColumn, row: number): string => {
    const from = place.cell(reachBefore, row);
    return `IF(${from}=0,0,INDEX(${place.all(column)},${from}))`;
  };
  return [
    { name: reach, heading: "Row reached", formula: (row) => onward(reachBefore, row) },
    {
      name: steps,
      heading: "runs on",
      formula: (row) => `${place.cell(stepsBefore, row)}+${onward(stepsBefore, row)}`,
    },
  ];
}
