import { type FanCurve, fanCurve } from "../../src/core/fan/fanCurve";
import type { Run } from "../../src/core/network/network";
import { makeRun } from "./runs";
import { lots } from "./lots";

export interface SeededTree {
  readonly runs: readonly Run[];
  readonly curve: FanCurve; // two points, so a straight line
}

/**
 * A duct system drawn by lot from a seed, the same on every machine: `count` suction runs and, for every other seed, a
 * chimney. Half of the runs go on from the one before, so that there are long paths as well as wide junctions. Diameters
 * grow with the open hoods upstream. Of the ends about one in seven is shut tight, and one in seven shut and leaking.
 *
 * @param losses K only, or pipe, hose and K together
 * @param meet whether two of three runs join by a branch, of which every fifth is plain
 */
export function seededTree(
  seed: number,
  count: number,
  losses: "K only" | "with friction",
  meet: "plainly" | "by airflows" = "plainly",
): SeededTree {
  const random = lots(seed);
  const branch = meet === "plainly" ? () => null : branches(lots(seed + 0.5));
  const between = (low: number, high: number): number => low + (high - low) * random();
  const joins = Array.from({ length: count }, (_, index) =>
    index === 0 ? -1 : random() < 0.5 ? index - 1 : Math.floor(random() * index),
  );
  const joined = new Set(joins);
  const kinds = joins.map((_, index) => {
    const lot = random();
    if (joined.has(index)) return "inner";
    if (index === count - 1 || lot > 2 / 7) return "hood";
    return lot > 1 / 7 ? "tight" : "leaking";
  });
  const hoods = kinds.map((kind): number => (kind === "hood" ? 1 : 0));
  for (let index = count - 1; index > 0; index--) hoods[joins[index]!]! += hoods[index]!;
  const friction = losses === "with friction";
  const runs = kinds.map((kind, index): Run => {
    const end = kind !== "inner";
    return makeRun(`r${index}`, index === 0 ? "fan" : `r${joins[index]!}`, {
      diameter: 0.1 * between(0.9, 1.2) * Math.max(1, hoods[index]!) ** 0.5,
      coefficient: between(0.05, 0.5),
      length: friction ? between(0.5, 6) : 0,
      roughness: friction ? between(9e-5, 3e-4) : 0,
      hoseLength: friction && end ? between(0.2, 1.5) : 0,
      hood: kind === "hood" ? between(0.3, 2) : null,
      gate: end ? (kind === "hood" ? "open" : "shut") : "none",
      branch: index === 0 ? null : branch(),
      leakArea: kind === "leaking" ? between(2e-5, 5e-4) : 0,
      device: index === 0 ? { ratedLoss: 300, ratedAirflow: 0.1 * hoods[0]!, exponent: 2 } : null,
    });
  });
  const size = runs[0]!.diameter;
  const chimney = makeRun("chimney", "", {
    side: "discharge",
    diameter: size,
    coefficient: 1,
    length: friction ? 3 : 0,
  });
  const curve = fanCurve([
    { airflow: 0, pressure: 2500 },
    { airflow: 0.12 * hoods[0]!, pressure: 0 },
  ]);
  return { runs: seed % 2 === 0 ? [...runs, chimney] : runs, curve };
}

const branches = (random: () => number) => (): Run["branch"] =>
  random() < 1 / 3 ? null : { angle: 15 + 75 * random(), plain: random() < 0.2 };
