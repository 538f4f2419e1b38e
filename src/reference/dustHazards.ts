/** Whether a dust burns, or comes with sparks or hot metal: surely, perhaps (its name in the table covers several), or not. */
type Hazard = "yes" | "perhaps" | "no";

export interface DustHazard {
  readonly burns: Hazard;
  readonly sparks: Hazard;
}

const burns: DustHazard = { burns: "yes", sparks: "no" };
const mayBurn: DustHazard = { burns: "perhaps", sparks: "no" };
const sparks: DustHazard = { burns: "no", sparks: "yes" };
const maySpark: DustHazard = { burns: "no", sparks: "perhaps" };
const either: DustHazard = { burns: "perhaps", sparks: "perhaps" };

/**
 * What each name of the table "transport" stands for, other spellings too, since one of them may say more than the row:
 * "metal turnings" and "wood blocks" are both heavy dust. Common practice, no source: read off the names themselves.
 */
export const dustHazards: Readonly<Record<string, DustHazard>> = {
  "abrasive dust branch": sparks,
  "grinding branch": sparks,
  "abrasive dust main": sparks,
  "grinding main": sparks,
  "airborne dust": mayBurn,
  "average industrial dust": either,
  "industrial dust": either,
  "damp dust hsg258": maySpark,
  "large particles hsg258": maySpark,
  "dry dust": burns,
  "dry powder": burns,
  "light shavings": burns,
  "fine light dust": burns,
  "wood flour": burns,
  "fine dust": burns,
  "fume hsg258": mayBurn,
  "gas hsg258": mayBurn,
  "heavy dust": either,
  "wood blocks": burns,
  "wet sawdust": burns,
  "metal turnings": sparks,
  "heavy moist waste": burns,
  "hog waste": burns,
  "wood waste": burns,
  "light dust hsg258": burns,
  "sawdust hsg258": burns,
  "process dust hsg258": either,
  "wood shavings hsg258": burns,
  vapour: mayBurn,
  vapor: mayBurn,
  smoke: mayBurn,
  gas: mayBurn,
  "welding fume": sparks,
  "wood chips": burns,
  chips: burns,
  "planer chips": burns,
  "moist chips": burns,
  "wood dust": burns,
  sawdust: burns,
  wood: burns,
  "wood dust acgih": burns,
  "wood dust us": burns,
  "wood dust en 12779": burns,
  "wood dust osha": burns,
};

/** Parts of a machine's or a hood's name that tell of sparks, whatever dust is typed beside it. */
export const sparkWords = ["grind", "buff", "welding", "welder", "abrasive wheel", "sharpen", "plasma"] as const;

/** Machines that grind wood: their name tells of no sparks. */
export const woodGrinderWords = ["wood grind", "wood waste", "stump", "chip", "pallet"] as const;

/** Parts of the name of a woodworking machine, which makes no sparks by the hood that it borrows from a grinder. */
export const woodMachineWords = ["saw", "sand", "plan", "joint", "rout", "drum", "mould", "shaper", "lathe"] as const;
