import { budgetColumns, type BudgetKey } from "../../reference/answerColumns";
import { headerIn } from "../../reference/columnsOfAnswers";
import type { UnitSystem } from "../../reference/quantities";
import { quotedText } from "../references";
import { fromSIText } from "../translate/expressions/text";
import type { BudgetColumn, BudgetPlace } from "./blockNames";
import { fanNote } from "./noteCells";

/** A run's value by the name of its column in the workings. */
type ValueOf = (column: BudgetColumn) => string;

interface Filling {
  readonly run: (value: ValueOf) => string; // SI
  readonly when?: (value: ValueOf) => string; // blank where this does not hold
  readonly fan: string; // SI
}

const BLANK = '""';

/** What fills each column of the answer. */
function fillings(place: BudgetPlace, system: UnitSystem): Readonly<Record<BudgetKey, Filling>> {
  const scalar = place.onOtherSheets.scalar;
  const carries = (value: ValueOf): string => `${value("carries")}=1`;
  const suctionSide = (value: ValueOf): string => `${value("sideThere")}=1`;
  const cost = (run: Filling["run"], fan = BLANK): Filling => ({ run, when: carries, fan });
  return {
    run: { run: (value) => `INDEX(${place.onOtherSheets.all("name")},${value("source")})`, fan: '"Fan"' },
    airflow: { run: (value) => value("airflow"), fan: scalar("fanAirflow") },
    velocity: { run: (value) => value("velocity"), fan: BLANK },
    velocityPressure: { run: (value) => value("velocityPressure"), fan: BLANK },
    friction: cost((value) => value("friction")),
    fittings: cost((value) => `${value("entry")}+${value("fittings")}+${value("meets")}`),
    device: cost((value) => value("device")),
    runLoss: cost((value) => value("total"), scalar("dischargeLoss")),
    suctionAtEnd: { run: (value) => value("endShown"), when: suctionSide, fan: scalar("fanSuction") },
    pathLoss: {
      run: (value) => value("toFan"),
      when: (value) => `${value("asked")}=1`,
      fan: `${scalar("fanSuction")}+${scalar("dischargeLoss")}`,
    },
    governs: {
      run: (value) => `IF(${value("governs")}=1,"yes","no")`,
      when: (value) => `${value("asked")}=1`,
      fan: BLANK,
    },
    balancedAirflow: {
      run: (value) => `${value("flow")}*SQRT(${value("ratio")})`,
      when: (value) => `${value("ratio")}>0`,
      fan: BLANK,
    },
    note: { run: (value) => value("note"), fan: fanNote(place, system) },
  };
}

/** BUDGET's answer by plain formulas on any sheet: the header, a row for each row of the table, and one more for the fan. */
export function answerCells(place: BudgetPlace, system: UnitSystem): string[][] {
  const filled = fillings(place, system);
  const header = budgetColumns.map((column, index) => {
    const text = quotedText(headerIn(column, system));
    return index === 0 ? `IF(${place.onOtherSheets.scalar("ok")}=1,${text},NA())` : text;
  });
  const rows = Array.from({ length: place.rows + 1 }, (_, index) =>
    budgetColumns.map(({ key, quantity }) => {
      const inUnit = (value: string): string =>
        quantity === null || value === BLANK ? value : fromSIText(`(${value})`, quantity, system);
      return answerCell(place, filled[key], inUnit, index + 1, key === "note");
    }),
  );
  return [header, ...rows];
}

/** A row of the table shows its run, or the fan where the last run stands just above; without an answer its note tells why. */
function answerCell(
  place: BudgetPlace,
  filling: Filling,
  inUnit: (value: string) => string,
  row: number,
  isNote: boolean,
): string {
  const { cell, all, scalar } = place.onOtherSheets;
  if (row > place.rows) return filling.fan === BLANK ? BLANK : `IF(${scalar("after")}=2,${inUnit(filling.fan)},"")`;
  const value: ValueOf = (name) => `INDEX(${all(name)},${cell("rank", row)})`;
  const run = inUnit(filling.run(value));
  const shown = filling.when === undefined ? run : `IF(${filling.when(value)},${run},"")`;
  const otherwise = isNote ? cell("trouble", row) : BLANK;
  const fan = filling.fan === BLANK ? otherwise : `IF(${cell("kind", row)}=2,${inUnit(filling.fan)},${otherwise})`;
  return `IF(${cell("kind", row)}=1,${shown},${fan})`;
}
