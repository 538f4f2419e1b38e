import "../../support/customFunctions";
import { toMatrix } from "../../../src/functions/cells";
import { type Change, changesAlong, sealedLeak, shutGate } from "../../../src/functions/flowTable/changes";
import { readRuns } from "../../../src/functions/runsTable/readRuns";
import type { UnitSystem } from "../../../src/reference/quantities";
import { type Row, table } from "../../support/tables";

/** A run at which nothing can be bettered: the largest stock size, the best entry, neither hose nor fitting, device nor leak. */
const best: Row = { Run: "saw", To: "fan", Diameter: 48, Hood: "bell mouth" };
const other: Row = { ...best, Run: "lathe", To: "saw" };

/** What the changes type into the row of "saw", in words and cells. The row above it shows that each edit names its own row. */
function edits(facts: Row, system: UnitSystem, of: (runs: unknown[][], system: UnitSystem) => Change[]): unknown[] {
  const runs = table([other, { ...best, ...facts }]);
  return of(runs, system).map(({ entry, words, edits: cells }) => {
    expect(entry.run.name).toBe("saw");
    expect(new Set(cells.map(({ row }) => row))).toEqual(new Set([1]));
    return [words, Object.fromEntries(cells.map(({ column, cell }) => [column, cell]))];
  });
}

const sawIn = (runs: unknown[][], system: UnitSystem) => readRuns(runs, system).runs[1]!;
const along = (facts: Row, system: UnitSystem = "IP") =>
  edits(facts, system, (runs) => changesAlong(toMatrix(runs), sawIn(runs, system), system));
const sealed = (facts: Row) => edits(facts, "IP", (runs) => sealedLeak(toMatrix(runs), sawIn(runs, "IP")));
const shut = (facts: Row) => edits(facts, "IP", (runs) => shutGate(sawIn(runs, "IP")));

test("a run at which nothing can be bettered has no change to try", () => {
  expect(along({})).toEqual([]);
  expect(sealed({})).toEqual([]);
  expect(shut({})).toEqual([]);
});

describe("changes along the way of a hood's air", () => {
  test("hose becomes pipe of the same length", () => {
    expect(along({ Length: 10, Flex: 6 })).toEqual([["hose replaced by smooth pipe", { Length: 16, Flex: null }]]);
    const [[words, cells]] = along({ Diameter: 1250, Flex: 2 }, "SI") as [[string, object]];
    expect([words, cells]).toEqual(["hose replaced by smooth pipe", { Length: 2, Flex: null }]);
  });

  // Stock sizes: half inches up to 6 in, then whole ones; EN 1506's first choice, from which 150 and 300 mm are left out.
  test.each<[number, UnitSystem, number, string]>([
    [4, "IP", 4.5, "one size larger, 4.5 in"],
    [4.2, "IP", 4.5, "one size larger, 4.5 in"],
    [6, "IP", 7, "one size larger, 7 in"],
    [125, "SI", 160, "one size larger, 160 mm"],
    [250, "SI", 315, "one size larger, 315 mm"],
    [1000, "SI", 1250, "one size larger, 1250 mm"],
  ])("a diameter of %p (%s) becomes %p, the next stock size", (Diameter, system, next, words) => {
    expect(along({ Diameter }, system)).toEqual([[words, { Diameter: next }]]);
  });

  test.each([
    [48, "IP"],
    [60, "IP"],
    [1250, "SI"],
  ] as const)("a diameter of %p (%s) has no larger one", (Diameter, system) => {
    expect(along({ Diameter }, system)).toEqual([]);
  });

  // Printed radii: four-piece 0.75, 1, 1.5, 2; smooth 0.5, 0.75, 1, 1.5, 2, 2.5. Without a radius 1.5 is meant.
  test.each([
    ["elbow 4-piece 0.75", "elbow 4-piece 1 x1"],
    ["elbow 4-piece 0.8", "elbow 4-piece 1 x1"],
    ["elbow 4-piece", "elbow 4-piece 2 x1"],
    ["elbow smooth 2 x3", "elbow smooth 2.5 x3"],
    ["elbow smooth 1 45", "elbow smooth 1.5 45 x1"],
    ["elbow smooth 2.5; elbow smooth 0.5", "elbow smooth 2.5 x1; elbow smooth 0.75 x1"],
    ["branch 45; 0.3 x2; tee; elbow smooth 1", "branch 45 x1; 0.3 x2; tee x1; elbow smooth 1.5 x1"],
    ["elbow stamped 4 in; elbow smooth 1", "elbow stamped 101.6 mm x1; elbow smooth 1.5 x1"],
  ])('elbows of "%s" get the next printed radius, the rest is kept', (Fittings, eased) => {
    expect(along({ Fittings })).toEqual([["elbows of the next longer radius", { Fittings: eased }]]);
  });

  test.each(["elbow smooth 2.5", "elbow 4-piece 2 x2", "elbow stamped 4 in", "elbow smooth manual 1", "branch 45", "0.4", 0.4])(
    "%p has no longer radius",
    (Fittings) => expect(along({ Fittings })).toEqual([]),
  ); // prettier-ignore

  test("a filter is cleaned where its clean loss stands below its present one", () => {
    const device = { "Device loss": 3, "Device airflow": 800 };
    expect(along({ ...device, "Device clean loss": 1 })).toEqual([
      ["filter cleaned to its rated loss", { "Device loss": 1 }],
    ]);
    expect(along({ ...device, "Device clean loss": 3 })).toEqual([]);
    expect(along({ ...device, "Device clean loss": 4 })).toEqual([]);
    expect(along(device)).toEqual([]);
    expect(along({ "Device clean loss": 1 })).toEqual([]);
  });

  // K: plain end 0.93, flanged end 0.5, bell mouth 0.12 at r/D 0.1.
  test.each([
    ["plain end", "flanged end"],
    [null, "flanged end"],
    [0.51, "flanged end"],
    ["flanged end", "bell mouth"],
    [0.5, "bell mouth"],
    [0.13, "bell mouth"],
  ])("an entry of %p becomes a %s", (Hood, better) => {
    expect(along({ Hood })).toEqual([[`entry improved to ${better}`, { Hood: better }]]);
  });

  test.each(["bell mouth", 0.12, 0.04])("an entry of %p cannot be bettered", (Hood) => {
    expect(along({ Hood })).toEqual([]);
  });

  test("all of them stand side by side, each alone in its change", () => {
    const all = along({ Diameter: 4, Flex: 3, Hood: "plain end", Fittings: "elbow smooth 1" });
    expect(all).toEqual([
      ["hose replaced by smooth pipe", { Length: 3, Flex: null }],
      ["one size larger, 4.5 in", { Diameter: 4.5 }],
      ["elbows of the next longer radius", { Fittings: "elbow smooth 1.5 x1" }],
      ["entry improved to flanged end", { Hood: "flanged end" }],
    ]);
  });
});

describe("changes elsewhere", () => {
  test("a leak is sealed in each column in which it was typed, and in no other", () => {
    expect(sealed({ Leak: 1 })).toEqual([["leak sealed", { Leak: null }]]);
    expect(sealed({ Gate: "open", Leak: 1, "Leak open": 2, "Leak shut": 3 })).toEqual([
      ["leak sealed", { Leak: null, "Leak open": null, "Leak shut": null }],
    ]);
    expect(sealed({ Gate: "shut", "Leak shut": "shut packed" })).toEqual([["leak sealed", { "Leak shut": null }]]);
  });

  test("a leak that the gate's place leaves out is none", () => {
    expect(sealed({ Gate: "shut", "Leak open": 2 })).toEqual([]);
    expect(sealed({ "Leak open": 2, "Leak shut": 2 })).toEqual([]);
  });

  test("an open gate can be shut; a shut one, and a run without, cannot", () => {
    expect(shut({ Gate: "open" })).toEqual([["gate there shut", { Gate: "shut" }]]);
    expect(shut({ Gate: "shut" })).toEqual([]);
    expect(shut({})).toEqual([]);
  });
});
