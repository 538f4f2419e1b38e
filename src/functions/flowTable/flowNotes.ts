import { ENOUGH_AIR } from "../../reference/noteLimits";
import { BLOWS_OUT } from "../../reference/noteWords";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { inWords } from "../../reference/inWords";
import { leakNotes, speedNotes } from "../runsTable/notes";
import type { TableRun } from "../runsTable/readRun";

/** What one run does, in SI. */
export interface RunFlow {
  readonly airflow: number; // [m3/s]
  readonly leak: number; // [m3/s]
  readonly velocity: number; // [m/s]
  readonly fed: boolean; // an open hood or pipe end lets air into it
  readonly end: boolean; // it is an open hood or pipe end itself
  readonly beyondShut: boolean; // a shut gate stands between it and the fan
}

/** What an owner needs to know of a run, in a few words. */
export function flowNotes({ run, dust }: TableRun, flow: RunFlow, system: UnitSystem): string {
  if (run.side === "discharge") return run.leakArea > 0 ? sayNote("blowsDustOut") : "";
  if (run.gate === "shut") return sayNote("gateShut");
  if (flow.beyondShut) return sayNote("cutOff");
  if (!flow.fed) return sayNote(flow.airflow > 0 ? "onlyLeaksFlow" : "nothingFlows");
  const notes = speedNotes(dust, flow.velocity, system);
  const atHood = flow.airflow - flow.leak;
  // rounding can leave a hood that nothing is asked of a trace below nothing: it is short of nothing
  if (flow.end && run.wantedAirflow > 0 && atHood < ENOUGH_AIR * run.wantedAirflow) {
    const share = shareSaid(atHood / run.wantedAirflow);
    notes.push(sayNote("short", { share, airflow: inWords(run.wantedAirflow, "airflow", system) }));
  }
  return joinNotes([...notes, ...leakNotes(flow.leak, flow.airflow)]);
}

/** A share of what a hood wants, as a note says it. */
export function shareSaid(share: number): string {
  const percent = Math.round(share * 100);
  return percent < 0 ? BLOWS_OUT : `${percent} %`;
}
