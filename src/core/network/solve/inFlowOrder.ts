import type { Network } from "../network";

/**
 * The same network with its runs sorted along the flow, so that a sweep walks through memory from one end to the other. How a tree
 * is sorted is kept: what is tried in it (gates, sizes, one run changed) leaves it the same tree.
 *
 * @returns the sorted network, and where each of its runs stands in the original
 * @source house
 */
export function inFlowOrder(network: Network): { sorted: Network; places: readonly number[] } {
  const tree = trees.get(network.order) ?? sortedTree(network);
  const runs = tree.places.map((original) => network.runs[original]!);
  return { sorted: { ...tree.joined, runs }, places: tree.places };
}

interface SortedTree {
  readonly joined: Omit<Network, "runs">;
  readonly places: readonly number[];
}

const trees = new WeakMap<Network["order"], SortedTree>();

function sortedTree(network: Network): SortedTree {
  const places = network.order.concat(network.discharge);
  const sortedPlace = new Int32Array(places.length);
  for (let place = 0; place < places.length; place++) sortedPlace[places[place]!] = place;
  const moved = (original: number): number => (original < 0 ? -1 : sortedPlace[original]!);
  const movedAll = (originals: readonly number[]): readonly number[] =>
    originals.length === 0 ? originals : originals.map(moved);
  const joined = {
    joins: places.map((original) => moved(network.joins[original]!)),
    joining: places.map((original) => movedAll(network.joining[original]!)),
    order: network.order.map((_, place) => place),
    last: moved(network.last),
    discharge: movedAll(network.discharge),
    outlet: moved(network.outlet),
    exit: moved(network.exit),
  };
  const tree = { joined, places };
  trees.set(network.order, tree);
  return tree;
}
