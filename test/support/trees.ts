import fc from "fast-check";
import type { Run } from "../../src/core/network/network";
import { makeRun } from "./runs";

const decimal = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Nothing, or a share a person could mean: no 1e-310. */
const upTo = (max: number) => fc.oneof(fc.constant(0), decimal(1e-6 * max, max));

const facts = fc.record({
  diameter: decimal(0.08, 0.3),
  length: upTo(10),
  hoseLength: upTo(2),
  coefficient: upTo(2),
  roughness: upTo(0.001),
  leakArea: upTo(2e-4),
  hood: fc.oneof(fc.constant(null), upTo(2)),
  wantedAirflow: fc.oneof(fc.constant(0), decimal(0.02, 0.3)),
  gate: fc.constantFrom<Run["gate"]>("none", "open", "shut"),
  device: fc.oneof(fc.constant(null), fc.constant({ ratedLoss: 200, ratedAirflow: 0.3, exponent: 2 })),
  branch: fc.oneof(fc.constant(null), fc.record({ angle: decimal(10, 90), plain: fc.boolean() })),
  place: fc.nat(), // which of the runs before it the run joins
});

/**
 * Trees of one to fourteen runs in random order. Hoods, their airflows and gates stand at the ends only; half of the
 * ends ask for air.
 */
const drawn: fc.Arbitrary<Run[]> = fc.array(facts, { minLength: 1, maxLength: 14 }).chain((list) => {
  const joins = list.map(({ place }, index) => (index === 0 ? null : place % index));
  const runs = list.map((given, index) => {
    const isEnd = !joins.includes(index);
    const parent = joins[index];
    return makeRun(`r${index}`, parent == null ? "fan" : `r${parent}`, {
      ...given,
      branch: parent == null ? null : given.branch,
      ...(isEnd ? {} : { hood: null, wantedAirflow: 0, gate: "none" }),
    });
  });
  return fc.shuffledSubarray(runs, { minLength: runs.length });
});

const plainly = (branch: Run["branch"]): Run["branch"] => branch && { ...branch, plain: true };

/** Random trees whose junctions cost by angle alone, so that more air anywhere never helps air elsewhere. */
export const trees: fc.Arbitrary<Run[]> = drawn.map((runs) =>
  runs.map((run) => ({ ...run, branch: plainly(run.branch) })),
);

/** Random trees whose junctions cost by airflows, no run wider than the one that it joins, every entry and run with a loss. */
export const meetingTrees: fc.Arbitrary<Run[]> = drawn.map((runs) => {
  const widest = (run: Run): number => Math.max(run.diameter, ...runs.filter(({ to }) => to === run.name).map(widest));
  return runs.map((run) => ({ ...run, coefficient: run.coefficient + 0.05, diameter: widest(run), hood: run.hood === null ? null : Math.max(run.hood, 0.4) })); // prettier-ignore
});

/** The same trees without any leak. */
export const tightTrees: fc.Arbitrary<Run[]> = trees.map((runs) => runs.map((run) => ({ ...run, leakArea: 0 })));
