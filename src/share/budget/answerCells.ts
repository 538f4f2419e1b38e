import { type Quantity, type UnitSystem, unitOf } from "../../reference/quantities";
import { quotedText } from "../references";
import type { BudgetColumn } from "./blockNames";
import type { Place } from "./inputCells";
import { fanNote } from "./noteCells";
import { over } from "./words";

/** A run's value by the name of its column in the workings. */
type ValueOf = (column: BudgetColumn) => string;

interface AnswerColumn {
  readonly header: string;
  readonly quantity: Quantity | null;
  readonly run: (value: ValueOf) => string; // SI
  readonly when?: (value: ValueOf) => string; // blank where this does not hold
  readonly fan: string; // SI
}

const BLANK = '""';

function answerColumns(place: Place, system: UnitSystem): AnswerColumn[] {
  const scalar = place.onOtherSheets.scalar;
  const carries = (value: ValueOf): string => `${value("carries")}=1`;
  const suctionSide = (value: ValueOf): string => `${value("sideThere")}=1`;
  const cost = (header: string, run: AnswerColumn["run"], fan = BLANK): AnswerColumn => ({
    header,
    quantity: "pressure",
    run,
    when: carries,
    fan,
  });
  return [
    {
      header: "Run",
      quantity: null,
      run: (value) => `INDEX(${place.onOtherSheets.all("name")},${value("source")})`,
      fan: '"Fan"',
    },
    { header: "Airflow", quantity: "airflow", run: (value) => value("airflow"), fan: scalar("fanAirflow") },
    { header: "Velocity", quantity: "velocity", run: (value) => value("velocity"), fan: BLANK },
    { header: "Velocity pressure", quantity: "pressure", run: (value) => value("velocityPressure"), fan: BLANK },
    cost("Friction", (value) => value("friction")),
    cost("Fittings", (value) => `${value("entry")}+${value("fittings")}`),
    cost("Device", (value) => value("device")),
    cost("Run loss", (value) => value("total"), scalar("dischargeLoss")),
    {
      header: "Suction at its end",
      quantity: "pressure",
      run: (value) => value("endShown"),
      when: suctionSide,
      fan: scalar("fanSuction"),
    },
    {
      header: "Path loss to fan",
      quantity: "pressure",
      run: (value) => value("toFan"),
      when: (value) => `${value("asked")}=1`,
      fan: `${scalar("fanSuction")}+${scalar("dischargeLoss")}`,
    },
    {
      header: "Governs",
      quantity: null,
      run: (value) => `IF(${value("governs")}=1,"yes","no")`,
      when: (value) => `${value("asked")}=1`,
      fan: BLANK,
    },
    {
      header: "Airflow when balanced",
      quantity: "airflow",
      run: (value) => `${value("flow")}*SQRT(${value("ratio")})`,
      when: (value) => `${value("ratio")}>0`,
      fan: BLANK,
    },
    { header: "Note", quantity: null, run: (value) => value("note"), fan: fanNote(place, system) },
  ];
}

/** BUDGET's answer by plain formulas on any sheet: the header, a row for each row of the table, and one more for the fan. */
export function answerCells(place: Place, system: UnitSystem): string[][] {
  const columns = answerColumns(place, system);
  const header = columns.map(({ header: words, quantity }, index) => {
    const text = quotedText(quantity === null ? words : `${words} (${unitOf(quantity, system).label})`);
    return index === 0 ? `IF(${place.onOtherSheets.scalar("ok")}=1,${text},NA())` : text;
  });
  const rows = Array.from({ length: place.rows + 1 }, (_, index) =>
    columns.map((column) => answerCell(place, system, column, index + 1)),
  );
  return [header, ...rows];
}

function answerCell(place: Place, system: UnitSystem, column: AnswerColumn, row: number): string {
  const { cell, all, scalar } = place.onOtherSheets;
  const inUnit = (value: string): string =>
    column.quantity === null || value === BLANK ? value : over(`(${value})`, unitOf(column.quantity, system).factor);
  if (row > place.rows) return column.fan === BLANK ? BLANK : `IF(${scalar("after")}=2,${inUnit(column.fan)},"")`;
  const value: ValueOf = (name) => `INDEX(${all(name)},${cell("rank", row)})`;
  const run = inUnit(column.run(value));
  const shown = column.when === undefined ? run : `IF(${column.when(value)},${run},"")`;
  const otherwise = column.header === "Note" ? cell("trouble", row) : BLANK;
  const fan = column.fan === BLANK ? otherwise : `IF(${cell("kind", row)}=2,${inUnit(column.fan)},${otherwise})`;
  return `IF(${cell("kind", row)}=1,${shown},${fan})`;
}
