import { DENSITY_LIMITS, STANDARD_DENSITY } from "../../core/air/constants";
import { HOSE_MATERIAL } from "../../reference/materials";
import { PLAIN_END } from "../../reference/lossFamilies";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { onAnySheet } from "../formula/ranges";
import { numberText, quotedText } from "../references";
import type { RangeRef } from "../../sheets/rangeRef";
import type { Argument, CallContext, Translator } from "../translate/translation";
import { fixed } from "../translate/translation";
import { unitsOf, unitsStand } from "../translate/unitsOf";
import { answerCells } from "./answerCells";
import { type BlockScalar, blockCells, blockHeight, blockPlace } from "./block";
import {
  type BudgetColumn,
  type BudgetPlace,
  type BudgetScalar,
  budgetScalars,
  flowColumns,
  inputColumns,
} from "./blockNames";
import { countOfHeaders, headersInLine, headersSaid, lostHeader } from "./headerCells";
import { flowCells } from "./flowCells";
import { inputCells } from "./inputCells";
import { nearestWords } from "./nearestWords";
import { runsReader } from "./runsReader";
import type { BudgetLookups } from "./lookups";
import { tableLookups } from "./tableLookups";
import { type RunsTable, runsTable } from "./runsTable";
import { plainNumber, tableCells, tableColumns } from "./tableCells";
import { inSI } from "../translate/expressions/text";
import { NONE } from "./waitCells";
import { isBlank } from "./words";

/** The workings of a table of runs, from which a copy answers BUDGET and begins to solve. */
export interface BudgetBlock {
  readonly place: BudgetPlace;
  readonly table: RunsTable;
  readonly system: UnitSystem;
}

/** BUDGET as plain formulas: a row for each row of its table, worked out step by step on the sheet of workings. */
export const budget: Translator = ([runs, density, units], context) => {
  const system = unitsOf(units ?? null, context);
  if (system === null) return fixed("its units are worked out by a formula or are none");
  const block = budgetBlock(runs ?? null, density ?? null, system, unitsStand(units ?? null, context), context);
  return typeof block === "string" ? fixed(block) : { kind: "cells", formulas: answerCells(block.place, system) };
};

/**
 * Those workings, once for all calls over the same table in the same air; or the reason why the table cannot be read.
 *
 * @param stand the cell that says whether the units stand where the call takes them from; null where it names them itself
 */
export function budgetBlock(
  runs: Argument | null,
  density: Argument | null,
  system: UnitSystem,
  stand: string | null,
  context: CallContext,
): BudgetBlock | string {
  if (runs?.range === undefined) return "its runs table is no range of cells";
  if (runs.computed) return "its runs table is computed by another formula";
  const table = runsTable(runs.range, runs.value, (column) => runs.blankBelow?.(column) ?? 0);
  if (typeof table === "string") return table;
  const air = density === null ? null : onAnySheet(density.text, context.sheet);
  const names = columnNames(Math.ceil(Math.log2(table.rows + 1)), table);
  const scalars: BudgetScalar[] = [
    ...budgetScalars,
    ...table.columns.map((column) => `at ${column}` as const),
    ...table.columns.map((column) => `lost ${column}` as const),
  ];
  const placeIn = (there: RangeRef): BudgetPlace =>
    blockPlace<BudgetColumn, BudgetScalar>(there, table.rows, names, scalars);
  const range = context.workings.once(`budget ${JSON.stringify(runs.range)} ${air} ${system} ${stand}`, () =>
    context.workings.place(blockHeight(table.rows), names.length, (there) =>
      budgetCells(placeIn(there), table, air, system, stand, context),
    ),
  );
  return { place: placeIn(range), table, system };
}

function budgetCells(
  at: BudgetPlace,
  table: RunsTable,
  air: string | null,
  system: UnitSystem,
  stand: string | null,
  context: CallContext,
): string[][] {
  const lookups = tableLookups(system, context);
  const strides = Math.ceil(Math.log2(table.rows + 1));
  const reader = runsReader(at, table, lookups, system);
  const nearest = nearestWords(reader, context.workings, `${table.range} ${system}`);
  const columns = [...tableCells(at, table), ...inputCells(reader, nearest, strides), ...flowCells(at, system)];
  const ordered = columnNames(strides, table).map((name) => columns.find((column) => column.name === name)!);
  const title = `Budget of ${context.sheet}!${context.at}: in SI, first by the rows of the table, then by the order of the flow`;
  return blockCells(title, table.rows, ordered, scalarCells(at, table, air, lookups, system, stand));
}

/** The columns in their order. The table and its inputs first; the strides need the join, everything else needs the order that they give. */
function columnNames(strides: number, table: RunsTable): BudgetColumn[] {
  const stride = Array.from({ length: strides + 1 }, (_, index) => [`reach${index}`, `steps${index}`] as const).flat();
  return [...tableColumns(table), ...inputColumns, ...stride, ...flowColumns];
}

function scalarCells(
  place: BudgetPlace,
  table: RunsTable,
  air: string | null,
  lookups: BudgetLookups,
  system: UnitSystem,
  stand: string | null,
): BlockScalar<BudgetScalar>[] {
  const standard = numberText(STANDARD_DENSITY);
  const { all, scalar } = place;
  const before = ["density", "hoseRoughness", "plainEnd", "troubles", "last"] as const;
  const firstWrong = (side: 1 | 2): string => least(place, `(${all("fault")}<>"")*(${all("side")}=${side})`);
  const lastCause = `SUMIF(${all("way")},0,${all("cause")})`;
  const answered = ["density", "hoseRoughness", "plainEnd", "troubles", "fanAirflow", "dischargeLoss"] as const;
  const formulas: Record<(typeof budgetScalars)[number], [heading: string, formula: string]> = {
    tableRows: ["Rows of the table", `ROWS(${table.range})-1`],
    named: ["Runs named in its column, and below it", `IFERROR(ROWS(${table.names})-COUNTBLANK(${table.names})-1,0)`],
    unread: ["of which are not read", `${scalar("named")}-SUMPRODUCT(1*(${all("typed Run")}<>""))`],
    density: [
      "Density (kg/m³)",
      air === null ? standard : `IF(${isBlank(air)},${standard},${inSI(`(${plainNumber(air)})`, "density", system)})`,
    ],
    hoseRoughness: ["Roughness of hose (m)", lookups.usualRoughness(HOSE_MATERIAL)],
    plainEnd: ["K of an open pipe end", lookups.usualHood(PLAIN_END)],
    headersInLine: ["Headers in a line", headersInLine(table)],
    headers: ["Headers that are taken", countOfHeaders(place)],
    headed: ["Why its headers are not those that are read", headersSaid(place, table, system, stand)],
    last: ["Last row used", `MAX(${all("used")})`],
    ends: ["Runs that end at the fan", `COUNTIFS(${all("toKey")},"r:fan",${all("side")},1)`],
    troubles: ["Rows with trouble", `SUMPRODUCT(1*(${all("trouble")}<>""))`],
    fanAirflow: ["Airflow at the fan (m³/s)", `SUMIF(${all("next")},0,${all("flow")})`],
    fanSuction: ["Suction at the fan (Pa)", `SUMIF(${all("next")},0,${all("endSuction")})`],
    dischargeLoss: ["Loss after the fan (Pa)", `SUMIF(${all("sideThere")},2,${all("total")})`],
    exitRow: [
      "Row that the air leaves",
      `SUMPRODUCT(MAX((${all("leaves")}=MAX(${all("leaves")}))*(${all("side")}=2)*${all("used")}))`,
    ],
    outletArea: [
      "Area of the fan's outlet (m²)",
      `IF(COUNTIF(${all("side")},2)=0,1,PI()/4*INDEX(${all("diameter")},IFERROR(MATCH(1,${all("begins")},0),MATCH(2,${all("side")},0)))^2)`,
    ],
    wrong: ["Rows that are wrong", `SUMPRODUCT(1*(${all("fault")}<>""))`],
    wrongTo: ["First row that goes to none that is there", least(place, `(${all("into")}<0)*(${all("fault")}="")`)],
    wrongHood: ["Whose hood is none", least(place, `ISERROR(${all("hood")})*(${all("errorIn")}="")`)],
    wrongList: ["of whose fittings one is none", least(place, `(${all("wrongEntry")}<>"")*(${all("errorIn")}="")`)],
    wrongMaterial: ["whose material", least(place, `ISERROR(${all("roughness")})*(${all("errorIn")}="")`)],
    wrongDust: ["whose dust", least(place, `ISERROR(${all("dustLow")})*(${all("errorIn")}="")`)],
    lost: ["First row that goes nobody knows where", lostAfter(place, "0")],
    alsoLost: ["and the next", lostAfter(place, scalar("lost"))],
    lostBranches: [
      "Branches that may join any run",
      `SUMPRODUCT((${all("mayBranch")}>0)*(${all("toKey")}<>"r:fan")*(COUNTIF(${all("key")},${all("toKey")})=0))`,
    ],
    ok: [
      "1: all can be computed",
      `IF(ISERROR(${answered.map(scalar).join("+")}),0,IF(AND(${lookups.nameGone}="",${scalar("troubles")}=0,${scalar("ends")}=1,${scalar("density")}>=${DENSITY_LIMITS.atLeast},${scalar("density")}<=${DENSITY_LIMITS.atMost}),1,0))`,
    ],
    part: [
      "1: some can be computed",
      `IF(ISERROR(${before.map(scalar).join("+")}),0,IF(AND(${lookups.nameGone}="",${scalar("headed")}="",${scalar("ok")}=0,${scalar("unread")}=0,${scalar("last")}>0,${scalar("density")}>=${DENSITY_LIMITS.atLeast},${scalar("density")}<=${DENSITY_LIMITS.atMost},${scalar("troubles")}+(${scalar("ends")}=0)>0),1,0))`,
    ],
    fanWaits: [
      "Row that the fan waits for; 0 none, -1 one that ends at the fan",
      `IF(${scalar("part")}=0,0,IF(${firstWrong(1)}<${NONE},${firstWrong(1)},IF(${scalar("ends")}=0,-1,IF(${lastCause}<${NONE},${lastCause},IF(${scalar("lost")}<${NONE},${scalar("lost")},0)))))`,
    ],
    outWaits: ["What comes after it waits for", `IF(${scalar("fanWaits")}<>0,${scalar("fanWaits")},${firstWrong(2)})`],
    after: [
      "2: the fan follows the last row",
      `IF(AND(${scalar("ok")}+${scalar("part")}=1,${scalar("last")}=${table.rows}),2,0)`,
    ],
    errorAt: ["First row of the tables in which an error stands; 0 none", lookups.errorAt],
    errorSaid: [
      "said of it",
      `IF(${scalar("errorAt")}=0,"",${quotedText(`; an error stands on the sheet ${lookups.sheet}, row `)}&${scalar("errorAt")})`,
    ],
    stop: ["Why nothing can be computed", whyNothing(scalar, lookups, system)],
  };
  return [
    ...budgetScalars.map((name) => ({ name, heading: formulas[name][0], formula: formulas[name][1] })),
    ...table.columns.map((column) => {
      const [header, first] = [`COLUMN(${table.header(column)})`, `COLUMN(${table.first})`];
      return {
        name: `at ${column}` as const,
        heading: `${column} is column`,
        formula: `IF(${header}<${first},NA(),${header}-${first}+1)`,
      };
    }),
    ...table.columns.map((column) => lostHeader(place, table, column)),
  ];
}

/** A run that is not read must not be missed in a total. */
const UNREAD =
  "The table has more runs than this copy reads: type them into the blank rows of the table, or ask for a new copy";

/** What no row of the table is to blame for, in words, or an empty text; told in the first row. */
function whyNothing(scalar: BudgetPlace["scalar"], lookups: BudgetLookups, system: UnitSystem): string {
  const { atLeast, atMost } = DENSITY_LIMITS;
  const density = scalar("density");
  const unit = unitOf("density", system);
  const [least, most] = [atLeast, atMost].map((limit) => Number(fromSI(limit, unit).toPrecision(3)));
  const air = `The density of the air must be a number from ${least} to ${most} ${unit.label}`;
  const isAir = `IF(ISERROR(${density}),FALSE,AND(${density}>=${atLeast},${density}<=${atMost}))`;
  const tables = `The sheet ${lookups.sheet} has no number for hose or for an open pipe end`;
  const isRead = `ISNUMBER(${scalar("hoseRoughness")}+${scalar("plainEnd")})`;
  const gone = `${quotedText(`On the sheet ${lookups.sheet} the name `)}&${lookups.nameGone}&${quotedText(" is gone or out of its place: undo what changed it")}`;
  return `IF(${lookups.nameGone}<>"",${gone},IF(${scalar("headed")}<>"",${scalar("headed")},IF(${scalar("unread")}>0,${quotedText(UNREAD)},IF(${isAir},IF(${isRead},"",${quotedText(tables)}&${scalar("errorSaid")}),${quotedText(air)}))))`;
}

/** The first row of the table for which this holds. */
const least = ({ all }: BudgetPlace, holds: string): string =>
  `(${NONE}-SUMPRODUCT(MAX(${holds}*(${all("used")}>0)*(${NONE}-${all("used")}))))`;

const lostAfter = (place: BudgetPlace, row: string): string =>
  least(place, `((${place.all("into")}<0)+(${place.all("inLoop")}>0)>0)*(${place.all("used")}>${row})`);
