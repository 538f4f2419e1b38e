import type { Limits } from "../errors";

/** Angles at which a branch is computed: those of the printed losses by angle alone. [degrees] */
export const BRANCH_ANGLES: Limits = { atLeast: 10, atMost: 90 };

/** A duct that meets others. */
export interface MeetingDuct {
  readonly area: number; // [m2]
  readonly angle: number | null; // [degrees] between its axis and the main's; null where it runs straight on
}

/** What one of the ducts that meet brings and loses. */
interface Leg {
  readonly resistance: number; // [Pa s2/m6] of its own duct: p_v = R Q^2
  readonly momentum: number; // [Pa s2/m6] what its air pushes along the main: 2 cos(angle) rho Q^2 / (2 A A_main)
  readonly isBranch: boolean;
  readonly lessened: number; // [-] share of the printed factor that a wide branch has: 0 none of it, 1 all
  readonly turned: number; // [-] of a straight duct: what a branch at more than 60 degrees spares it, 0.45 at 90
}

/** Ducts that meet in a main. */
export interface Junction {
  readonly resistance: number; // [Pa s2/m6] of the main
  readonly legs: readonly Leg[];
}

/** The loss of one leg and how it changes, the three taken as if they could change apart. */
export interface LegLoss {
  loss: number; // [Pa] of total pressure, from the leg into the main; below 0 where the others draw its air along
  byOwn: number; // [Pa s/m3] with the leg's airflow
  byMain: number; // [Pa s/m3] with the main's airflow
  byPush: number; // [-] with what all legs push
}

export const WIDE = 0.35; // [-] area of a branch over the main's, above which the factor is not 1
export const FACTOR = 0.9; // [-] of such a branch when it brings nothing
export const LEAST_FACTOR = 0.55; // [-] and when it brings much; printed for more than 0.4 of the air, reached here at 0.389
export const TURNED = 0.45; // [-] 2 y - y^2 of the balance less the printed 1.55 y - y^2
export const [TURNS_FROM, TURNS_ALL] = [60, 90]; // [degrees]

/**
 * The geometry of a junction, with the air's density.
 *
 * @param mainArea [m2] above 0, of the duct that carries all of it on
 * @param meeting the ducts that meet, whether air flows in them or not; one wider than the main counts as wide as it, since it
 *   must narrow to it first
 * @param density [kg/m3]
 * @returns what `legLoss` needs
 * @source crane410 equations 2-35 to 2-37, factor C; that it applies by how wide the straight duct is, and between the printed angles: house
 */
export function junctionOf(mainArea: number, meeting: readonly MeetingDuct[], density: number): Junction {
  const widthOf = ({ area }: MeetingDuct): number => Math.min(area, mainArea);
  let [straightArea, branchArea, turning] = [0, 0, 0];
  for (const duct of meeting) {
    if (duct.angle === null) straightArea += widthOf(duct);
    else branchArea += widthOf(duct);
  }
  for (const duct of meeting) if (duct.angle !== null) turning += (turnedBy(duct.angle) * widthOf(duct)) / branchArea;
  return {
    resistance: density / (2 * mainArea * mainArea),
    legs: meeting.map((duct) => {
      const [area, { angle }] = [widthOf(duct), duct];
      return {
        resistance: density / (2 * area * area),
        momentum: (along(angle) * density) / (area * mainArea),
        isBranch: angle !== null,
        lessened: angle === null || area <= WIDE * mainArea ? 0 : within01(1 - (mainArea - straightArea) / area),
        turned: angle === null ? TURNED * turning : 0,
      };
    }),
  };
}

const within01 = (value: number): number => Math.min(Math.max(value, 0), 1);
const turnedBy = (angle: number): number => within01((angle - TURNS_FROM) / (TURNS_ALL - TURNS_FROM));
/** The cosine; of a right angle exactly 0. */
const along = (angle: number | null): number => (angle === null ? 1 : Math.sin(((90 - angle) * Math.PI) / 180));

/**
 * What all legs push along the main: 2 sum cos(angle) rho Q^2 / (2 A A_main). Air that runs backwards pushes nothing.
 *
 * @returns [Pa]
 * @source crane410
 */
export const pushOf = ({ legs }: Junction, airflows: ArrayLike<number>): number =>
  legs.reduce((sum, { momentum }, place) => sum + momentum * Math.max(airflows[place]!, 0) ** 2, 0);

/**
 * Loss of total pressure from one of the ducts that meet into the main, by their airflows and areas: the balance of momentum
 * of converging streams.
 *
 *     branch:   C (p_v main + p_v own - push),  push = sum 2 cos(angle) (Q_i/Q_main)^2 (A_main/A_i) p_v main
 *     straight: p_v main + p_v own - push - t y p_v main
 *
 * C is 1 for a branch of up to 0.35 of the main's area; for a wider one beside a straight duct as wide as the main it is
 * 0.9 (1 - y), at least 0.55, with y the branch's share of the air. The narrower the straight duct, the less of that
 * counts, down to C = 1 where the ducts that meet have the main's area together. t is 0.45 for a branch at 90 degrees and
 * nothing up to 60.
 *
 * @param junction its geometry
 * @param place of the leg
 * @param own [m3/s] its airflow; below 0 where it runs backwards
 * @param main [m3/s] all that arrives
 * @param push [Pa] as `pushOf` has it
 * @param law where they are written; new when left out
 * @returns [Pa] and its slopes; 0 where nothing arrives in the main
 * @source crane410 equations 2-35 to 2-37, in which the straight duct is as wide as the main; other widths by the same balance
 */
export function legLoss(
  junction: Junction,
  place: number,
  own: number,
  main: number,
  push: number,
  law: LegLoss = { loss: 0, byOwn: 0, byMain: 0, byPush: 0 },
): LegLoss {
  const { resistance, isBranch, lessened, turned } = junction.legs[place]!;
  const carried = Math.max(main, 0);
  const balance = junction.resistance * carried * carried + resistance * own * Math.abs(own) - push;
  const balanceByOwn = 2 * resistance * Math.abs(own);
  const balanceByMain = 2 * junction.resistance * carried;
  if (!isBranch) {
    const spared = turned * junction.resistance;
    law.loss = balance - spared * carried * (carried - own);
    law.byOwn = balanceByOwn + spared * carried;
    law.byMain = balanceByMain - spared * (2 * carried - own);
    law.byPush = -1;
    return law;
  }
  const share = carried > 0 ? within01(own / carried) : 0;
  const printed = Math.max(FACTOR * (1 - share), LEAST_FACTOR);
  const factor = 1 + lessened * (printed - 1);
  const slope = share > 0 && printed > LEAST_FACTOR ? (-lessened * FACTOR * balance) / carried : 0;
  law.loss = factor * balance;
  law.byOwn = factor * balanceByOwn + slope;
  law.byMain = factor * balanceByMain - slope * share;
  law.byPush = -factor;
  return law;
}
