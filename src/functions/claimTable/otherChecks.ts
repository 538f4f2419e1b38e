import { judgeFaceVelocity } from "../../core/claims/judge";
import { findNamed } from "../../core/naming/findNamed";
import { cite } from "../../reference/citation";
import { filters } from "../../reference/filters";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import type { FilterRow, Provenance } from "../../reference/schema";
import { inUnit } from "../runsTable/inUnit";
import { type ClaimRow, judgedRow, untoldRow } from "./claimRow";
import type { Facts } from "./factNames";

const practice: Provenance = {
  source: "commonPractice",
  locator: "what a data sheet must say",
  basis: "common practice",
  checked: null,
};

const filter = (key: string): FilterRow => findNamed(filters, key)!;
const [cloth, pulse] = [filter("shaker sawdust"), filter("pulse jet sawdust")];
const [anyCloth, anyPulse] = [filter("shaker"), filter("pulse jet")];

/** Air through each area of filter, against what filters are laid out for. */
export function faceVelocity(facts: Facts, system: UnitSystem): ClaimRow[] {
  const { airflow, "filter area": area } = facts;
  if (airflow === undefined || area === undefined) return [];
  const unit = unitOf("velocity", system);
  const end = (value: number | null): string => String(Number(fromSI(value!, unit).toPrecision(3)));
  const why = `Q/A; filters are laid out for ${inUnit(cloth.high!, "velocity", system)} of sawdust on a shaken cloth (any dust ${end(anyCloth.low)} to ${end(anyCloth.high)}) and ${end(pulse.high)} with pulse-jet cleaning (${end(anyPulse.low)} to ${end(anyPulse.high)}), all from memory; faster air blinds the cloth and drives fine dust through.`;
  const judged = judgeFaceVelocity(airflow, area, cloth.high!);
  return [judgedRow("Filter face velocity", judged, "velocity", system, why, cite(cloth, pulse, anyCloth))];
}

/** A pore size alone is no efficiency. */
export function filterRating({ "filter rating": rating }: Facts): ClaimRow[] {
  if (rating === undefined) return [];
  const says = /%|\bpercent\b|\b(iso|en|din|merv|ashrae|hepa)\b/i.test(String(rating));
  const why = says
    ? "It can be judged only beside its test report: standard, dust, air speed and share caught at each size."
    : "A size in micrometres says nothing without the share of dust caught at that size and the test standard.";
  return [untoldRow("Filter rating", rating, why, cite(practice))];
}

/** A level alone is no loudness. */
export function soundLevel({ sound }: Facts): ClaimRow[] {
  if (sound === undefined) return [];
  const why =
    "A level in dB says little without the distance, the room and the load at which it was taken: in the open it falls by 6 dB with each doubling of the distance.";
  return [untoldRow("Sound", sound, why, cite(practice))];
}
