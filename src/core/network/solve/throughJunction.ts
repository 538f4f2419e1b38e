import { legLoss } from "../../fittings/junction";
import { type LegLine, legLines } from "../junction/legLines";
import type { Meeting } from "../junction/meeting";
import { type Elements, STILL } from "./elements";
import { AIRFLOW, ARRIVING_OFFSET, ARRIVING_RATE, DOWN_OFFSET, DOWN_RATE, LOSS, MISSED, SUCTION } from "./rows";

/**
 * From Q by the pressure before the junction, of each run that joins, to Q by the junction's own suction.
 *
 * @param elements the network with its state
 * @param meeting the junction
 * @param at where the row begins of the run that they join; how far the losses are missed is left there
 * @source house
 */
export function throughJunction({ rows, starts, kind, crossing }: Elements, meeting: Meeting, at: number): void {
  const { junction, factors } = meeting;
  const { legs, lines, law } = crossing;
  let carried = 0;
  let push = 0;
  for (let place = 0; place < meeting.legs.length; place++) {
    const own = rows[starts[meeting.legs[place]!]! + AIRFLOW]!;
    carried += own;
    push += junction.legs[place]!.momentum * Math.max(own, 0) * Math.max(own, 0);
  }
  let pushConstant = push;
  let count = 0;
  for (let place = 0; place < meeting.legs.length; place++) {
    const index = meeting.legs[place]!;
    if (kind[index] === STILL) continue;
    const from = starts[index]!;
    const own = rows[from + AIRFLOW]!;
    legLoss(junction, place, own, carried, push, law);
    const factor = factors[place]!;
    const loss = factor * law.loss;
    const leg = legs[count++]!;
    leg.offset = rows[from + DOWN_OFFSET]!;
    leg.rate = rows[from + DOWN_RATE]!;
    leg.byOwn = factor * law.byOwn;
    leg.byMain = factor * law.byMain;
    leg.byPush = factor * law.byPush;
    leg.constant = loss - leg.byOwn * own - leg.byMain * carried - leg.byPush * push;
    leg.pushes = 2 * junction.legs[place]!.momentum * Math.max(own, 0);
    pushConstant -= leg.pushes * own;
    const missed = rows[at + SUCTION]! - loss - rows[from + SUCTION]! - rows[from + LOSS]!;
    rows[at + MISSED] = Math.max(rows[at + MISSED]!, Math.abs(missed));
  }
  legLines(legs, pushConstant, lines, count);
  if (!(rateOf(lines, count) > 0)) {
    // Far from the answer, ducts that help each other along may seem to draw less the more the fan does, and a step by that
    // leads nowhere: then each goes by its own air alone.
    let place = 0;
    for (const index of meeting.legs) {
      if (kind[index] === STILL) continue;
      const leg = legs[place++]!;
      const own = rows[starts[index]! + AIRFLOW]!;
      const loss = leg.constant + leg.byOwn * own + leg.byMain * carried + leg.byPush * push;
      leg.byOwn = Math.max(leg.byOwn, 0);
      leg.constant = loss - leg.byOwn * own;
      leg.byMain = leg.byPush = 0;
    }
    legLines(legs, 0, lines, count);
  }
  let place = 0;
  for (let leg = 0; leg < meeting.legs.length; leg++) {
    const index = meeting.legs[leg]!;
    if (kind[index] === STILL) continue;
    const from = starts[index]!;
    const { offset, rate } = lines[place++]!;
    rows[from + DOWN_OFFSET] = offset;
    rows[from + DOWN_RATE] = rate;
    rows[at + ARRIVING_OFFSET]! += offset;
    rows[at + ARRIVING_RATE]! += rate;
  }
}

function rateOf(lines: readonly LegLine[], count: number): number {
  let sum = 0;
  for (let place = 0; place < count; place++) sum += lines[place]!.rate;
  return sum;
}
