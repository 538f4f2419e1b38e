import { cutOff } from "../../../src/core/network/network";
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
