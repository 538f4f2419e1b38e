import type { CautionRow } from "../schema";

interface CautionTopic {
  readonly key: CautionRow["topic"];
  readonly aliases: readonly string[]; // words that a person may look under
}

/** The topics of the cautions, in the order in which a day's work meets them, with the words that lead to each. */
export const cautionTopics: readonly CautionTopic[] = [
  {
    key: "machines",
    aliases: ["machine", "fan", "wheel", "blade", "guard", "inlet", "over-speed", "speed", "power off", "lockout"],
  },
  {
    key: "health",
    aliases: ["lungs", "breathing", "respirator", "mask", "cancer", "limits", "exposure", "noise", "hearing"],
  },
  {
    key: "explosion",
    aliases: [
      ...["fire", "explosions", "explosive", "combustible dust", "spark", "sparks", "ember", "embers", "smouldering"],
      ...["smoldering", "smoke", "metal", "aluminium", "aluminum", "grinder", "grinding", "welding", "extinguisher"],
      ...["venting", "isolation", "solvent", "solvents", "vapour", "vapours", "vapor", "paint", "patch"],
    ],
  },
  {
    key: "electrical",
    aliases: [
      ...["static", "static electricity", "earthing", "grounding", "bonding", "shock", "wiring", "electricity"],
      ...["motor", "switch", "plastic", "pvc"],
    ],
  },
  {
    key: "air",
    aliases: [
      ...["carbon monoxide", "co", "flue", "chimney", "stove", "boiler", "water heater", "draught", "draft"],
      ...["make-up air", "fresh air", "recirculation", "outside"],
    ],
  },
  {
    key: "work",
    aliases: [
      ...["ladder", "ladders", "height", "roof", "wall", "walls", "cutting", "asbestos", "lead", "compressed air"],
      ...["emptying", "bag", "bags", "bin", "bins", "gloves"],
    ],
  },
  { key: "numbers", aliases: ["estimate", "estimates", "reading", "readings", "measuring", "meter", "capture"] },
  { key: "law", aliases: ["code", "codes", "rule", "rules", "permit", "standards", "licence", "license"] },
];
