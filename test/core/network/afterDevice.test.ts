import { afterDevice } from "../../../src/core/network/afterDevice";
import { buildNetwork } from "../../../src/core/network/tree";
import { makeRun } from "../../support/runs";

test("a device cleans the air of its own run and of those that get all of theirs through one, until a hood joins from aside", () => {
  const device = { ratedLoss: 100, ratedAirflow: 1, exponent: 2 };
  const runs = [
    makeRun("saw", "spark trap"),
    makeRun("spark trap", "stub", { device }),
    makeRun("stub", "main"),
    makeRun("sander", "main"),
    makeRun("main", "fan"),
    makeRun("filter", "outside", { side: "discharge", device }),
  ];
  expect(afterDevice(buildNetwork(runs))).toEqual([false, true, true, false, false, false]);
});
