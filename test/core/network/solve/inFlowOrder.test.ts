import fc from "fast-check";
import { inFlowOrder } from "../../../../src/core/network/solve/inFlowOrder";
import { buildNetwork } from "../../../../src/core/network/tree";
import { trees } from "../../../support/trees";

test("the sorted network is the same tree under other numbers, each run after all that join it", () => {
  fc.assert(
    fc.property(trees, (runs) => {
      const network = buildNetwork(runs);
      const { sorted, places } = inFlowOrder(network);
      expect([...places].sort((a, b) => a - b)).toEqual(runs.map((_, index) => index));
      sorted.order.forEach((place, position) => expect(place).toBe(position));
      expect(places[sorted.last]).toBe(network.last);
      places.forEach((original, place) => {
        expect(sorted.runs[place]).toBe(network.runs[original]);
        const to = sorted.joins[place]!;
        expect(to < 0 ? -1 : places[to]).toBe(network.joins[original]);
        expect(sorted.joining[place]!.map((other) => places[other])).toEqual(network.joining[original]);
      });
    }),
    { numRuns: 40 },
  );
});
