import { budgetColumns, type BudgetKey } from "../../reference/answerColumns";
import { headerIn } from "../../reference/columnsOfAnswers";
import type { UnitSystem } from "../../reference/quantities";
import { quotedText } from "../references";
import { fromSIText } from "../translate/expressions/text";
import type { BudgetColumn, BudgetPlace } from "./blockNames";
import { KIND } from "./judgedCells";
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
  const partly = `${scalar("part")}=1`;
  const unless = (waits: string, known: string): string => `IF(${waits},NA(),${known})`;
  /** After the fan nothing is known before all of it is; at a junction nobody knows what meets there. */
  const afterFan = (value: ValueOf): string => `AND(${partly},${value("sideThere")}=2)`;
  const meets = (value: ValueOf): string => `OR(${afterFan(value)},${value("unmet")}=1)`;
  const fanAir = (name: "fanAirflow" | "fanSuction"): string => unless(`${scalar("fanWaits")}<>0`, scalar(name));
  const suctionSide = (value: ValueOf): string => `${value("sideThere")}=1`;
  const cost = (run: Filling["run"], waits: Filling["run"], fan = BLANK): Filling => ({
    ...{ run: (value) => unless(waits(value), run(value)), when: carries, fan },
  });
  return {
    run: { run: (value) => `INDEX(${place.onOtherSheets.all("name")},${value("source")})`, fan: '"Fan"' },
    airflow: { run: (value) => value("airflow"), fan: fanAir("fanAirflow") },
    velocity: { run: (value) => value("velocity"), fan: BLANK },
    velocityPressure: { run: (value) => value("velocityPressure"), fan: BLANK },
    friction: cost((value) => value("friction"), afterFan),
    fittings: cost((value) => `${value("entry")}+${value("fittings")}+${value("meets")}`, meets),
    device: cost((value) => value("device"), afterFan),
    runLoss: cost((value) => value("total"), meets, unless(partly, scalar("dischargeLoss"))),
    suctionAtEnd: { run: (value) => value("endShown"), when: suctionSide, fan: fanAir("fanSuction") },
    pathLoss: {
      run: (value) => unless(`${value("pathWaits")}<>0`, value("toFan")),
      when: (value) => `${value("asked")}=1`,
      fan: unless(partly, `${scalar("fanSuction")}+${scalar("dischargeLoss")}`),
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
    const { scalar } = place.onOtherSheets;
    return index === 0 ? `IF(${scalar("ok")}+${scalar("part")}>0,${text},NA())` : text;
  });
  const rows = Array.from({ length: place.rows + 1 }, (_, index) =>
    budgetColumns.map(({ key, quantity }) => {
      const inUnit = (value: string): string =>
        quantity === null || value === BLANK ? value : fromSIText(`(${value})`, quantity, system);
      return answerCell(place, filled[key], inUnit, index + 1, key);
    }),
  );
  return [header, ...rows];
}

/** A row of the table shows its run, or the fan where the last run stands just above; what cannot be computed is an error, and its note tells why. */
function answerCell(
  place: BudgetPlace,
  filling: Filling,
  inUnit: (value: string) => string,
  row: number,
  key: BudgetKey,
): string {
  const { cell, all, scalar } = place.onOtherSheets;
  if (row > place.rows) return filling.fan === BLANK ? BLANK : `IF(${scalar("after")}=2,${inUnit(filling.fan)},"")`;
  const value: ValueOf = (name) => `INDEX(${all(name)},${cell("rank", row)})`;
  const run = inUnit(filling.run(value));
  const shown = filling.when === undefined ? run : `IF(${filling.when(value)},${run},"")`;
  const otherwise = withoutNumbers(place, row, key);
  const fan =
    filling.fan === BLANK ? otherwise : `IF(${cell("kind", row)}=${KIND.fan},${inUnit(filling.fan)},${otherwise})`;
  return `IF(${cell("kind", row)}=${KIND.run},${shown},${fan})`;
}

/** What stands in a row of which no numbers are known. */
function withoutNumbers({ onOtherSheets: { cell } }: BudgetPlace, row: number, key: BudgetKey): string {
  if (key === "note") return cell("told", row);
  if (key === "run") return `IF(${cell("kind", row)}>${KIND.fan},IFERROR(${cell("name", row)},""),"")`;
  return cell("lacks", row);
}
