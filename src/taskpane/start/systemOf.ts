import { togetherColumns, type TogetherKey } from "../../reference/answerColumns";
import { placeOfColumn } from "../../reference/columnsOfAnswers";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import { densityIn, matrixOf } from "../check/callArguments";
import type { Finding } from "../check/finding";
import { findingsIn } from "../check/findingsIn";
import { type Picture, pictureOf } from "../check/picture/pictureOf";
import type { Seen } from "../check/seenIn";
import type { Calculate } from "../functions/askWorker";
import type { Cell } from "../functions/callFunction";

/** A machine with every other gate shut. */
export interface MachineAlone {
  readonly machine: string; // the run whose gate is open
  readonly facts: string; // what the worst served hood gets then, and where the air is slowest
  readonly verdict: string;
}

/** What an owner asks first: how is my system, machine by machine, and what do I do next. */
export interface SystemSeen {
  readonly picture: Picture | string; // a sentence where there is nothing to draw
  readonly alone: readonly MachineAlone[] | string;
  readonly next: readonly Finding[];
}

const STEPS = 3;

/** Computed with the cell functions from what stands in the book. */
export async function systemOf(seen: Seen, calculate: Calculate): Promise<SystemSeen> {
  return {
    picture: await pictureOf(seen, calculate),
    alone: await eachAlone(seen, calculate),
    next: findingsIn(seen).slice(0, STEPS),
  };
}

async function eachAlone(seen: Seen, calculate: Calculate): Promise<SystemSeen["alone"]> {
  const [runs] = seen.runs;
  if (runs === undefined) return "Type your ducts on the sheet Runs, then see here what each machine gets alone.";
  const { system } = runs;
  const curve = seen.curves.find((one) => one.system === system);
  if (curve === undefined)
    return "Type two points or more of the fan's curve, then see here what each machine gets alone.";
  const args = [matrixOf(runs), curve.points.map((point) => [...point]), [[1]], densityIn(seen.book), [[system]]];
  const answer = await calculate({ id: "TOGETHER", args });
  if ("error" in answer) return `What each machine gets alone has no answer: ${answer.message || answer.error}.`;
  return answer.rows.slice(1).map((row) => machineAlone(row, system));
}

function machineAlone(row: readonly Cell[], system: UnitSystem): MachineAlone {
  const cell = (key: TogetherKey): Cell => row[placeOfColumn(togetherColumns, key)] ?? null;
  const text = (key: TogetherKey): string => String(cell(key) ?? "");
  const machine = text("open");
  const hood = text("hood") === machine ? "It" : text("hood");
  const facts = [
    said(cell("hoodAirflow"), (airflow) => {
      const share = said(cell("hoodShare"), (percent) => `, ${Math.round(percent)} % of what it wants`);
      return `${hood} gets ${Math.round(airflow).toLocaleString("en-GB")} ${unitOf("airflow", system).label}${share}.`;
    }),
    said(cell("velocity"), (velocity) => {
      const number = system === "IP" ? Math.round(velocity) : Math.round(velocity * 10) / 10;
      return `The slowest air is in ${text("slowest")}: ${number.toLocaleString("en-GB")} ${unitOf("velocity", system).label}.`;
    }),
  ];
  return { machine, facts: facts.filter((sentence) => sentence !== "").join(" "), verdict: text("verdict") };
}

/** "" where the answer has no number. */
const said = (cell: Cell, words: (number: number) => string): string => (typeof cell === "number" ? words(cell) : "");
