import type { Network } from "../network";
import { itemAt } from "../../../reference/itemAt";

/**
 * The same network with its runs sorted along the flow, so that a sweep walks through memory from one end to the other.
 *
 * @returns the sorted network, and where each of its runs stands in the original
 * @source house
 */
export function inFlowOrder(network: Network): { sorted: Network; places: readonly number[] } {
  const places = [...network.order, ...network.discharge];
  const sortedPlace = new Int32Array(network.runs.length);
  places.forEach((original, place) => {
    sortedPlace[original] = place;
  });
  const moved = (original: number): number => (original < 0 ? -1 : itemAt(sortedPlace, original));
  const sorted: Network = {
    runs: places.map((original) => itemAt(network.runs, original)),
    joins: places.map((original) => moved(itemAt(network.joins, original))),
    joining: places.map((original) => itemAt(network.joining, original).map(moved)),
    order: network.order.map(moved),
    last: moved(network.last),
    discharge: network.discharge.map(moved),
    outlet: moved(network.outlet),
    exit: moved(network.exit),
  };
  return { sorted, places };
}
