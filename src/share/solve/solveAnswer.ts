import { solveColumns } from "../../reference/answerColumns";
import { headerIn } from "../../reference/columnsOfAnswers";
import type { UnitSystem } from "../../reference/quantities";
import type { BudgetColumn, BudgetPlace } from "../budget/blockNames";
import { quotedText } from "../references";
import { fromSIText } from "../translate/expressions/text";
import { noteOfFan } from "./solveNotes";
import { type SolveColumn, type SolvePlace, SWEEPS } from "./solveNames";

type SolveKey = (typeof solveColumns)[number]["key"];

interface Filling {
  readonly run: string; // SI, of the run in a row of the table
  readonly blank?: string; // where nothing is shown of it
  readonly fan?: string; // SI
}

/** SOLVE's answer by plain formulas on any sheet: the header, a row for each row of the table, and one more for the fan. */
export function answerCells(place: SolvePlace, budget: BudgetPlace, system: UnitSystem): string[][] {
  const { scalar } = place.onOtherSheets;
  const header = solveColumns.map((column, index) => {
    const text = quotedText(headerIn(column, system));
    return index === 0 ? `IF(${scalar("ok")}=1,${text},NA())` : text;
  });
  const rows = Array.from({ length: place.rows + 1 }, (_, index) => {
    const filled = fillings(place, budget, Math.min(index + 1, place.rows));
    return solveColumns.map(({ key, quantity }) => {
      const inUnit = (value: string): string =>
        quantity === null ? value : fromSIText(`(${value})`, quantity, system);
      return answerCell(place, budget, filled[key], inUnit, index + 1, key === "note");
    });
  });
  return [header, ...rows];
}

/** A row of the table shows its run, or the fan where the last run stands just above; without an answer a note tells why. */
function answerCell(
  place: SolvePlace,
  budget: BudgetPlace,
  { run, blank, fan }: Filling,
  inUnit: (value: string) => string,
  row: number,
  isNote: boolean,
): string {
  const known = budget.onOtherSheets;
  const { scalar } = place.onOtherSheets;
  const ofFan = fan === undefined ? '""' : `IF(${known.scalar("last")}=${row - 1},${inUnit(fan)},"")`;
  if (row > place.rows) return fan === undefined ? '""' : `IF(${scalar("ok")}=1,${ofFan},"")`;
  const shown = blank === undefined ? inUnit(run) : `IF(${blank},"",${inUnit(run)})`;
  const solved = `IF(${known.cell("used", row)}>0,${shown},${ofFan})`;
  return `IF(${scalar("ok")}=1,${solved},${isNote ? whyNot(place, budget, row) : '""'})`;
}

/** The sentence of a wrong row beside it; what else stands in the way, in the first row. */
function whyNot(place: SolvePlace, budget: BudgetPlace, row: number): string {
  const trouble = budget.onOtherSheets.cell("trouble", row);
  return row === 1 ? `IF(${trouble}="",${place.onOtherSheets.scalar("why")},${trouble})` : trouble;
}

/** What fills each column of the answer in a row of the table. */
function fillings(place: SolvePlace, budget: BudgetPlace, row: number): Readonly<Record<SolveKey, Filling>> {
  const rank = budget.onOtherSheets.cell("rank", row);
  const found = (column: SolveColumn): string => `INDEX(${place.onOtherSheets.all(column)},${rank})`;
  const known = (column: BudgetColumn): string => `INDEX(${budget.onOtherSheets.all(column)},${rank})`;
  const { scalar } = place.onOtherSheets;
  const airflow = found(`airflow${SWEEPS}`);
  const isAfter = `${known("sideThere")}=2`;
  const isEnd = `${found("fed")}*(${known("joining")}=0)=1`; // an open end has no other deficit than its entry loss
  return {
    run: { run: budget.onOtherSheets.cell("name", row), fan: '"Fan"' },
    airflow: { run: airflow, fan: scalar(`fanAirflow${SWEEPS}`) },
    velocity: { run: `${airflow}/${known("area")}` },
    staticSuction: {
      run: `${found(`suction${SWEEPS}`)}+${found("perVelocity")}*${airflow}^2`,
      blank: `OR(${isAfter},${found("cut")}=1)`,
      fan: scalar("fanPressure"),
    },
    leak: { run: found(`leak${SWEEPS}`), blank: isAfter, fan: scalar("leaks") },
    runLoss: {
      run: `${found(`loss${SWEEPS + 1}`)}+${found(`joint${SWEEPS + 1}`)}+IF(${isEnd},${found(`suction${SWEEPS}`)},0)`,
    },
    gate: { run: `IF(${found("gate")}=1,"open",IF(${found("gate")}=2,"shut",""))` },
    note: { run: found("note"), fan: noteOfFan(place) },
  };
}
