import { dustOfRun, hazardOf } from "../../../src/core/dust/dustOfRun";
import { otherHazards } from "../../../src/reference/dustHazards";
import { transport } from "../../../src/reference/transport";
import { typed } from "../../reference/allRows";

const hood = { name: "some machine", hood: "flanged end", dust: null, isEnd: true };

// Whoever adds a dust to the table says here what it does: one that sparks must not pass for one that burns.
const BURNING = [
  ...["dry dust", "dry powder", "light shavings", "fine light dust", "wood flour", "fine dust", "wood blocks"],
  ...["wet sawdust", "heavy moist waste", "hog waste", "wood waste", "light dust hsg258", "sawdust hsg258"],
  ...["wood shavings hsg258", "wood chips", "chips", "planer chips", "moist chips", "wood dust", "sawdust", "wood"],
  ...["wood dust acgih", "wood dust us", "wood dust en 12779", "wood dust osha"],
];

test("every name of the table of dusts is judged, and none besides", () => {
  const names = transport.flatMap(({ key, aliases }) => [key, ...aliases]).map(typed);
  expect([...Object.keys(otherHazards), ...BURNING].sort()).toEqual([...new Set(names)].sort());
  for (const name of BURNING) expect(hazardOf(name)).toEqual({ burns: "yes", sparks: "no" });
});

describe("what a run brings into the duct", () => {
  test.each([
    ["wood dust", "yes", "no"],
    ["Planer-Chips", "yes", "no"],
    ["abrasive dust branch", "no", "yes"],
    ["welding fume", "no", "yes"],
    ["metal turnings", "no", "yes"],
    ["wood blocks", "yes", "no"],
    ["heavy dust", "perhaps", "perhaps"],
    ["vapour", "perhaps", "no"],
  ])("by its dust: %s burns: %s, sparks: %s", (dust, burns, sparks) => {
    expect(dustOfRun({ ...hood, dust })).toEqual({ burns, sparks });
    expect(dustOfRun({ ...hood, dust, isEnd: false })).toEqual({ burns, sparks });
  });

  test("an open end without a dust brings wood dust, as BUDGET takes it; a main without one brings nothing itself", () => {
    expect(dustOfRun(hood)).toEqual({ burns: "yes", sparks: "no" });
    expect(dustOfRun({ ...hood, isEnd: false })).toEqual({ burns: "no", sparks: "no" });
  });

  test.each([
    ["bench grinder", "flanged end"],
    ["Grinding corner", ""],
    ["buffing wheel", "0.6"],
    ["welding table", "plain end"],
    ["saw sharpener", "flanged end"],
    ["planer knife grinder", "flanged end"],
    ["corner", "grinder hood"],
    ["corner", "Buffer-Hood tapered"],
  ])("%s with the hood %j may bring sparks, though wood dust is typed for all", (name, entry) => {
    for (const dust of [null, "wood dust"])
      expect(dustOfRun({ ...hood, name, hood: entry, dust })).toEqual({ burns: "no", sparks: "perhaps" });
  });

  test.each([
    ["stump grinder", "flanged end"],
    ["wood grinder", "flanged end"],
    ["disc sander", "grinder hood"],
    ["welded branch", "flanged end"],
    ["drum sander", "grinder hood tapered"],
  ])("%s with the hood %j brings wood dust", (name, entry) =>
    expect(dustOfRun({ ...hood, name, hood: entry })).toEqual({ burns: "yes", sparks: "no" }),
  );

  test("a main's name tells nothing, and a dust that is typed as sparks stays certain", () => {
    expect(dustOfRun({ ...hood, name: "grinder main", isEnd: false })).toEqual({ burns: "no", sparks: "no" });
    expect(dustOfRun({ ...hood, name: "grinder", dust: "grinding branch" })).toEqual({ burns: "no", sparks: "yes" });
  });
});
