import "../../support/customFunctions";
import { DomainError } from "../../../src/core/errors";
import type { Run } from "../../../src/core/network/network";
import { type Change, changesAlong, sealedLeak, shutGate } from "../../../src/functions/flowTable/changes";
import type { UnitSystem } from "../../../src/reference/quantities";
import { runsOf } from "../../support/runsOf";
import type { Row } from "../../support/tables";

/** A run at which nothing can be bettered: the largest stock size, the best entry, neither hose nor fitting, device nor leak. */
const best: Row = { Run: "saw", To: "fan", Diameter: 48, Hood: "bell mouth" };

const sawWith = (facts: Row, system: UnitSystem) => runsOf([{ ...best, ...facts }], system).runs[0]!;

/** Each change in words, and what the row would say if somebody had typed the change into it. */
type Typed = [words: string, facts: Row];

/** That these changes, and no others, make of the row what typing them would: every value of the run, to 12 figures. */
function expectChanges(changes: readonly Change[], facts: Row, typed: readonly Typed[], system: UnitSystem): void {
  expect(changes.map(({ words }) => words)).toEqual(typed.map(([words]) => words));
  for (const [index, { run }] of changes.entries())
    expect(figures(run())).toEqual(figures(sawWith({ ...facts, ...typed[index]![1] }, system).run));
}

const figures = (run: Run): unknown =>
  JSON.parse(JSON.stringify(run), (_, value: unknown) =>
    typeof value === "number" ? Number(value.toPrecision(12)) : value,
  );

const along = (facts: Row, typed: readonly Typed[], system: UnitSystem = "IP") =>
  expectChanges(changesAlong(sawWith(facts, system), true, system), facts, typed, system);
const sealed = (facts: Row, typed: readonly Typed[]) =>
  expectChanges(sealedLeak(sawWith(facts, "IP")), facts, typed, "IP");
const shut = (facts: Row, typed: readonly Typed[]) => expectChanges(shutGate(sawWith(facts, "IP")), facts, typed, "IP");

test("a run at which nothing can be bettered has no change to try", () => {
  along({}, []);
  sealed({}, []);
  shut({}, []);
});

describe("changes along the way of a hood's air", () => {
  test("hose becomes pipe of the same length", () => {
    along({ Length: 10, Flex: 6 }, [["hose replaced by smooth pipe", { Length: 16, Flex: null }]]);
    along({ Diameter: 1250, Flex: 2 }, [["hose replaced by smooth pipe", { Length: 2, Flex: null }]], "SI");
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
    along({ Diameter }, [[words, { Diameter: next }]], system);
  });

  test("a larger run has the losses and the leak that go with its diameter", () => {
    const facts = {
      Diameter: 4,
      Fittings: "elbow stamped; 0.2",
      K: 0.1,
      Gate: "open",
      "Leak open": "open flapped slot",
    };
    along(facts, [["one size larger, 4.5 in", { Diameter: 4.5 }]]);
  });

  // Stamped elbows are printed from 3 to 10 in.
  test("a larger size at which a fitting has no value is refused when it is tried", () => {
    const [larger] = changesAlong(sawWith({ Diameter: 10, Fittings: "elbow stamped" }, "IP"), true, "IP");
    expect(larger!.words).toBe("one size larger, 11 in");
    expect(larger!.run).toThrow(DomainError);
  });

  test.each([
    [48, "IP"],
    [60, "IP"],
    [1250, "SI"],
  ] as const)("a diameter of %p (%s) has no larger one", (Diameter, system) => {
    along({ Diameter }, [], system);
  });

  // Printed radii: four-piece 0.75, 1, 1.5, 2; smooth 0.5, 0.75, 1, 1.5, 2, 2.5. Without a radius 1.5 is meant.
  test.each([
    ["elbow 4-piece 0.75", "elbow 4-piece 1 x1"],
    ["elbow 4-piece 0.8", "elbow 4-piece 1 x1"],
    ["elbow 4-piece", "elbow 4-piece 2 x1"],
    ["elbow smooth 2 x3", "elbow smooth 2.5 x3"],
    ["elbow smooth 1 45", "elbow smooth 1.5 45 x1"],
    ["elbow smooth 2.5; elbow smooth 0.5", "elbow smooth 2.5 x1; elbow smooth 0.75 x1"],
    ["branch 45; 0.3 x2; tee; elbow smooth 1", "branch 45 x1; 0.3 x2; tee of a project sheet x1; elbow smooth 1.5 x1"],
    ["elbow stamped 4 in; elbow smooth 1", "elbow stamped 101.6 mm x1; elbow smooth 1.5 x1"],
  ])('elbows of "%s" get the next printed radius, the rest is kept', (Fittings, eased) => {
    along({ Fittings }, [["elbows of the next longer radius", { Fittings: eased }]]);
  });

  test.each(["elbow smooth 2.5", "elbow 4-piece 2 x2", "elbow stamped 4 in", "elbow smooth manual 1", "branch 45", "0.4", 0.4])(
    "%p has no longer radius",
    (Fittings) => along({ Fittings }, []),
  ); // prettier-ignore

  test("a filter is cleaned where its clean loss stands below its present one", () => {
    const device = { "Device loss": 3, "Device airflow": 800 };
    along({ ...device, "Device clean loss": 1 }, [["filter cleaned to its rated loss", { "Device loss": 1 }]]);
    along({ ...device, "Device clean loss": -1 }, []);
    along({ ...device, "Device clean loss": 3 }, []);
    along({ ...device, "Device clean loss": 4 }, []);
    along(device, []);
    along({ "Device clean loss": 1 }, []);
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
    along({ Hood }, [[`entry improved to ${better}`, { Hood: better }]]);
  });

  test("an entry is bettered at an open end only", () => {
    expect(changesAlong(sawWith({ Hood: null }, "IP"), false, "IP")).toEqual([]);
  });

  test.each(["bell mouth", 0.12, 0.04])("an entry of %p cannot be bettered", (Hood) => {
    along({ Hood }, []);
  });

  test("all of them stand side by side, each alone in its change", () => {
    along({ Diameter: 4, Flex: 3, Hood: "plain end", Fittings: "elbow smooth 1" }, [
      ["hose replaced by smooth pipe", { Length: 3, Flex: null }],
      ["one size larger, 4.5 in", { Diameter: 4.5 }],
      ["elbows of the next longer radius", { Fittings: "elbow smooth 1.5 x1" }],
      ["entry improved to flanged end", { Hood: "flanged end" }],
    ]);
  });
});

describe("changes elsewhere", () => {
  test("a leak is sealed in each column in which it was typed, and in no other", () => {
    sealed({ Leak: 1 }, [["leak sealed", { Leak: null }]]);
    sealed({ Gate: "open", Leak: 1, "Leak open": 2, "Leak shut": 3 }, [
      ["leak sealed", { Leak: null, "Leak open": null, "Leak shut": null }],
    ]);
    sealed({ Gate: "shut", "Leak shut": "shut packed" }, [["leak sealed", { "Leak shut": null }]]);
  });

  test("a leak that the gate's place leaves out is none", () => {
    sealed({ Gate: "shut", "Leak open": 2 }, []);
    sealed({ "Leak open": 2, "Leak shut": 2 }, []);
  });

  test("an open gate can be shut; a shut one, and a run without, cannot", () => {
    shut({ Gate: "open" }, [["gate there shut", { Gate: "shut" }]]);
    shut({ Gate: "open", "Leak open": 1, "Leak shut": 2 }, [["gate there shut", { Gate: "shut" }]]);
    shut({ Gate: "shut" }, []);
    shut({}, []);
  });
});
