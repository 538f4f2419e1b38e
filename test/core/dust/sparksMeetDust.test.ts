import fc from "fast-check";
import { sparksMeetDust } from "../../../src/core/dust/sparksMeetDust";
import type { DustHazard } from "../../../src/reference/dustHazards";

const wood: DustHazard = { burns: "yes", sparks: "no" };
const grinding: DustHazard = { burns: "no", sparks: "yes" };
const byName: DustHazard = { burns: "no", sparks: "perhaps" };
const either: DustHazard = { burns: "perhaps", sparks: "perhaps" };
const vapour: DustHazard = { burns: "perhaps", sparks: "no" };
const none: DustHazard = { burns: "no", sparks: "no" };

const MAIN = 2;
/** Two hoods on one main. */
const onMain = (first: DustHazard, second: DustHazard) => sparksMeetDust([first, second, none], [MAIN, MAIN, -1])[MAIN];

describe("sparks and a dust that burns on one main", () => {
  test("meet there, and nowhere else", () => {
    expect(sparksMeetDust([grinding, wood, none], [MAIN, MAIN, -1])).toEqual([
      null,
      null,
      { certain: true, sparks: 0, burns: 1 },
    ]);
    expect(onMain(wood, grinding)).toEqual({ certain: true, sparks: 1, burns: 0 });
  });

  test.each([
    ["sparks by a machine's name", byName, wood, { certain: false, sparks: 0, burns: 1 }],
    ["a dust that may be metal", either, wood, { certain: false, sparks: 0, burns: 1 }],
    ["a dust that may be wood", grinding, either, { certain: false, sparks: 0, burns: 1 }],
    ["vapour", grinding, vapour, { certain: false, sparks: 0, burns: 1 }],
  ])("perhaps: %s", (_, first, second, meeting) => expect(onMain(first, second)).toEqual(meeting));

  test.each([
    ["wood and wood", wood, wood],
    ["grinding and grinding", grinding, grinding],
    ["two that are each perhaps both", either, either],
    ["vapour and wood", vapour, wood],
    ["a grinder by name and vapour", byName, vapour],
    ["nothing", none, none],
  ])("none: %s", (_, first, second) => expect(onMain(first, second)).toBeNull());

  test("are told once, where they first meet, and again where a likely one becomes certain", () => {
    // saw 0 and a grinder by name 1 on main 2; a grinder by its dust 3 joins 2's main 4; 4 joins 5, the last
    const own = [wood, byName, none, grinding, none, none];
    const [, , first, , second, last] = sparksMeetDust(own, [2, 2, 4, 4, 5, -1]);
    expect(first).toEqual({ certain: false, sparks: 1, burns: 0 });
    expect(second).toEqual({ certain: true, sparks: 3, burns: 0 });
    expect(last).toBeNull();
  });

  test("meet in the main itself where its own dust is the other", () => {
    expect(sparksMeetDust([grinding, wood], [1, -1])).toEqual([null, { certain: true, sparks: 0, burns: 1 }]);
  });

  test("no answer for a loop, and no endless one", () => {
    expect(sparksMeetDust([wood, grinding], [1, 0])).toEqual([null, null]);
  });
});

// Law: in any tree the last run lies below all, so something is told if and only if both are somewhere in the tree.
test("nothing is missed: if both are anywhere above the last run, some run says so for certain", () => {
  const tree = fc.array(fc.tuple(fc.constantFrom(wood, grinding, none), fc.nat()), { minLength: 1, maxLength: 30 });
  fc.assert(
    fc.property(tree, (runs) => {
      const own = runs.map(([dust]) => dust);
      const joins = runs.map(([, to], run) =>
        run === runs.length - 1 ? -1 : run + 1 + (to % (runs.length - 1 - run)),
      );
      const told = sparksMeetDust(own, joins).some((meeting) => meeting?.certain === true);
      expect(told).toBe(own.includes(wood) && own.includes(grinding));
    }),
  );
});
