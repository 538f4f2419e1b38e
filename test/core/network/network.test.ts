import { isEnd } from "../../../src/core/network/network";
import { buildNetwork } from "../../../src/core/network/tree";
import { makeRun } from "../../support/runs";

test("a run that nothing joins is an end", () => {
  const network = buildNetwork([makeRun("main", "fan"), makeRun("saw", "main"), makeRun("sander", "main")]);
  expect([0, 1, 2].map((run) => isEnd(network, run))).toEqual([false, true, true]);
});
