/** Whether a dust burns, or comes with sparks or hot metal: surely, perhaps (its name in the table covers several), or not. */
type Hazard = "yes" | "perhaps" | "no";

export interface DustHazard {
  readonly burns: Hazard;
  readonly sparks: Hazard;
}

/** What most dusts of the table do, wood first among them. */
export const BURNS: DustHazard = { burns: "yes", sparks: "no" };

const mayBurn: DustHazard = { burns: "perhaps", sparks: "no" };
const sparks: DustHazard = { burns: "no", sparks: "yes" };
const maySpark: DustHazard = { burns: "no", sparks: "perhaps" };
const either: DustHazard = { burns: "perhaps", sparks: "perhaps" };

/**
 * Names of the table "transport" that do otherwise, other spellings too, since one of them may say more than the row:
 * "metal turnings" and "wood blocks" are both heavy dust. Common practice, no source: read off the names themselves.
 */
export const otherHazards: Readonly<Record<string, DustHazard>> = {
  "abrasive dust branch": sparks,
  "grinding branch": sparks,
  "abrasive dust main": sparks,
  "grinding main": sparks,
  "metal turnings": sparks,
  "welding fume": sparks,
  "damp dust hsg258": maySpark,
  "large particles hsg258": maySpark,
  "average industrial dust": either,
  "industrial dust": either,
  "heavy dust": either,
  "process dust hsg258": either,
  "airborne dust": mayBurn,
  "fume hsg258": mayBurn,
  "gas hsg258": mayBurn,
  vapour: mayBurn,
  vapor: mayBurn,
  smoke: mayBurn,
  gas: mayBurn,
};

/** Parts of a machine's or a hood's name that tell of sparks, whatever dust is typed beside it. */
export const sparkWords = ["grind", "buff", "welding", "welder", "abrasive wheel", "sharpen", "plasma"] as const;

/** Machines that grind wood: their name tells of no sparks. */
export const woodGrinderWords = ["wood grind", "wood waste", "stump", "chip", "pallet"] as const;

/** Parts of the name of a woodworking machine, which makes no sparks by the hood that it borrows from a grinder. */
export const woodMachineWords = ["saw", "sand", "plan", "joint", "rout", "drum", "mould", "shaper", "lathe"] as const;
