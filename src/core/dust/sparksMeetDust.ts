import type { DustHazard } from "../../reference/dustHazards";
import { itemAt } from "../../reference/itemAt";

/** A run in which sparks and something that burns meet, and from which runs they come. */
export interface Meeting {
  readonly certain: boolean; // false where one of the two is only likely by its name
  readonly sparks: number; // a run that brings sparks, by its place
  readonly burns: number; // a run that brings what burns
}

type Kind = "burns" | "sparks" | "mayBurn" | "maySpark";

/** By kind a run that brings it; none where the kind is missing. */
type Carried = Partial<Record<Kind, number>>;

/**
 * Where sparks or metal first meet a dust that burns. Open and shut gates make no difference: what one machine leaves in
 * a duct, another can light on another day. Two names that only might be the one and the other are no meeting.
 *
 * @param own what each run brings
 * @param joins the place of the run that each joins, below 0 where it joins none
 * @returns for each run its meeting; null where there is none or where a run that joins it has the like already
 * @source commonPractice
 */
export function sparksMeetDust(own: readonly DustHazard[], joins: readonly number[]): (Meeting | null)[] {
  const waiting = own.map(() => 0);
  for (const to of joins) if (to >= 0) waiting[to]! += 1;
  const carried = own.map(carriedBy);
  const before = own.map(() => 0); // how sure the meetings are in the runs that join
  const found: (Meeting | null)[] = own.map(() => null);
  const ready = own.flatMap((_, run) => (waiting[run] === 0 ? [run] : []));
  // A loop never gets ready: BUDGET refuses it.
  for (let run = ready.pop(); run !== undefined; run = ready.pop()) {
    const meeting = meetingIn(itemAt(carried, run));
    const sure = meeting === null ? 0 : meeting.certain ? 2 : 1;
    if (sure > itemAt(before, run)) found[run] = meeting;
    const to = itemAt(joins, run);
    if (to < 0) continue;
    carried[to] = { ...carried[to], ...carried[run] }; // a machine is named rather than its main
    before[to] = Math.max(itemAt(before, to), sure);
    waiting[to]! -= 1;
    if (waiting[to] === 0) ready.push(to);
  }
  return found;
}

function carriedBy({ burns, sparks }: DustHazard, run: number): Carried {
  return {
    ...(burns === "yes" && { burns: run }),
    ...(sparks === "yes" && { sparks: run }),
    ...(burns === "perhaps" && { mayBurn: run }),
    ...(sparks === "perhaps" && { maySpark: run }),
  };
}

function meetingIn({ burns, sparks, mayBurn, maySpark }: Carried): Meeting | null {
  if (burns !== undefined && sparks !== undefined) return { certain: true, sparks, burns };
  if (burns !== undefined && maySpark !== undefined) return { certain: false, sparks: maySpark, burns };
  if (sparks !== undefined && mayBurn !== undefined) return { certain: false, sparks, burns: mayBurn };
  return null;
}
