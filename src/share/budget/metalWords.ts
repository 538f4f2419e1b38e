import { hazardOf } from "../../core/dust/dustOfRun";
import { BURNS, type DustHazard, sparkWords, woodGrinderWords, woodMachineWords } from "../../reference/dustHazards";
import { quotedText } from "../references";

/** How many runs bring what, in one number that adds up along the flow: three digits for each of four kinds. */
export const KINDS = { burns: 1, sparks: 1e3, mayBurn: 1e6, maySpark: 1e9 } as const;
export const ROOM = 1000; // more runs than a copied table has

/** What a dust brings, as the copy's table of dusts says it in a word, and as a number. */
const hazardWords: readonly (readonly [word: string, hazard: DustHazard])[] = [
  ["burns", { burns: "yes", sparks: "no" }],
  ["sparks", { burns: "no", sparks: "yes" }],
  ["may burn", { burns: "perhaps", sparks: "no" }],
  ["may spark", { burns: "no", sparks: "perhaps" }],
  ["either", { burns: "perhaps", sparks: "perhaps" }],
];

const numberOf = ({ burns, sparks }: DustHazard): number =>
  (burns === "yes" ? KINDS.burns : burns === "perhaps" ? KINDS.mayBurn : 0) +
  (sparks === "yes" ? KINDS.sparks : sparks === "perhaps" ? KINDS.maySpark : 0);

export const hazardWord = (name: string): string => {
  const { burns, sparks } = hazardOf(name);
  return hazardWords.find(([, hazard]) => hazard.burns === burns && hazard.sparks === sparks)![0];
};

/** The number of a dust whose word stands there; 0 for any other word. */
export const numberOfWord = (word: string): string =>
  hazardWords.reduceRight((rest, [one, hazard]) => `IF(${word}="${one}",${numberOf(hazard)},${rest})`, "0");

/** What an open end brings that names no dust. */
export const USUAL = String(numberOf(BURNS));

/** 1 where a run's name, or the hood of a run that is named for nothing else, tells of sparks. */
export function sparkName(name: string, hood: string | null): string {
  const has = (text: string, words: readonly string[]): string =>
    `(${words.map((word) => `ISNUMBER(SEARCH(${quotedText(word)},${text}))`).join("+")}>0)`;
  const byHood = hood === null ? "0" : `IF(${has(name, woodMachineWords)},0,IF(${has(hood, sparkWords)},1,0))`;
  return `IF(${has(name, woodGrinderWords)},0,IF(${has(name, sparkWords)},1,${byHood}))`;
}
