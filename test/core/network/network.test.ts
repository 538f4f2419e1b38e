import { cutOff, type Run, runWith } from "../../../src/core/network/network";
import { buildNetwork } from "../../../src/core/network/tree";
import { makeRun } from "../../support/runs";

test("a shut gate cuts off every run above it, however far, and neither itself nor its neighbours", () => {
  const network = buildNetwork([
    makeRun("main", "fan"),
    { ...makeRun("gated", "main"), gate: "shut" },
    makeRun("middle", "gated"),
    makeRun("saw", "middle"),
    makeRun("sander", "main"),
  ]);
  expect(cutOff(network)).toEqual([false, false, true, true, false]);
});

test("it cuts off what joins it in whichever row it stands, and never the discharge side", () => {
  const network = buildNetwork([
    makeRun("gated", "main", { gate: "shut" }),
    makeRun("saw", "gated"),
    makeRun("main", "fan"),
    makeRun("chimney", "", { side: "discharge" }),
  ]);
  expect(cutOff(network)).toEqual([false, true, false, false]);
});

test("a run with something of it changed keeps all else, and its properties stand in one order however they stood", () => {
  const device = { ratedLoss: 500, ratedAirflow: 0.5, exponent: 2 };
  const run = makeRun("saw", "main", { hood: 0.5, leakArea: 1e-4, branch: { angle: 30, plain: false }, device });
  const other = runWith(run, { leakArea: 0, hood: null });
  expect(other).toEqual({ ...run, leakArea: 0, hood: null });
  const turned = Object.fromEntries(Object.entries(run).reverse()) as unknown as Run;
  expect(Object.keys(runWith(turned, {}))).toEqual(Object.keys(other));
});
