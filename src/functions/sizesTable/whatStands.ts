import { bleeds } from "../../core/network/sizes/bleeds";
import type { ChosenSizes } from "../../core/network/sizes/chooseSizes";
import { clashes } from "../../core/network/sizes/clashes";
import { itemAt } from "../../reference/itemAt";
import { sayNote } from "../../reference/notes";
import { gateWith } from "../flowTable/hoodGates";
import type { SizesCells } from "./sizesRow";
import type { Task, Wish } from "./sizeTaskOf";

const MOST_CLASHES = 3; // that are told one by one

/** One decimal, never said too well. */
export const roundedDown = (percent: number): number => Math.floor(10 * percent) / 10;

/**
 * What stands against an answer: scenarios that cannot be had at once, and which gate left open in which of them would free most.
 *
 * @param most runs solved at which each of the two stops
 */
export function whatStands(
  { task, gates, withOpen }: Task,
  { taken }: ChosenSizes,
  { scenarios, times }: Wish,
  most: number,
): SizesCells[] {
  // prettier-ignore
  const nameOf = (place: number): string => itemAt(scenarios, place).name;
  const percentOf = (share: number): number => Math.max(0, roundedDown(100 * share * times));
  const { clashes: all, isWhole } = clashes(task, [taken], most);
  const wanted = Number((100 * times).toPrecision(6));
  const told = all.slice(0, MOST_CLASHES).map(({ scenarios: [one, other], share }): SizesCells => {
    const percent = percentOf(share);
    return other === undefined
      ? { run: "by itself", need: sayNote("sizesNotAlone", { one: nameOf(one!), wanted, percent }), share: percent }
      : { run: "clash", need: sayNote("sizesClash", { one: nameOf(one!), other: nameOf(other), wanted, percent }), share: percent }; // prettier-ignore
  });
  const more = all.length - told.length;
  if (more > 0) told.push({ run: "clash", need: sayNote("sizesMoreClash", { count: more }) });
  if (!isWhole) told.push({ run: "clash", need: sayNote("sizesUntried") });
  const freed = bleeds(task, taken, gates, withOpen, most);
  if (freed === null) return told;
  const left = freed.left.map(({ scenario, gate }) => {
    const { runs, joins } = itemAt(task.scenarios, scenario).network;
    const along: string[] = [];
    for (let next = itemAt(joins, gate); next >= 0; next = itemAt(joins, next))
      if (itemAt(runs, next).gate === "shut") along.push(itemAt(runs, next).name);
    return sayNote("sizesLeftOpen", { gate: gateWith(itemAt(runs, gate).name, along), scenario: nameOf(scenario) });
  });
  const percent = percentOf(freed.found.judged.share);
  return [...told, { run: "left open", price: freed.found.judged.cost, need: sayNote("sizesBleed", { gates: left.join(" and "), percent }), share: percent }]; // prettier-ignore
}
