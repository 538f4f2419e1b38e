import { hazardOf } from "../../core/dust/dustOfRun";
import { BURNS, type DustHazard, sparkWords, woodGrinderWords, woodMachineWords } from "../../reference/dustHazards";
import { quotedText } from "../references";
import type { Place } from "./inputCells";

/** How many runs bring what, in one number that adds up along the flow: three digits for each of four kinds. */
const KINDS = { burns: 1, sparks: 1e3, mayBurn: 1e6, maySpark: 1e9 } as const;
const ROOM = 1000; // more runs than a copied table has

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

export const wordOf = (name: string): string => {
  const { burns, sparks } = hazardOf(name);
  return hazardWords.find(([, hazard]) => hazard.burns === burns && hazard.sparks === sparks)![0];
};

/** The number of a dust whose word stands there; 0 for any other word. */
export const numberOfWord = (word: string): string =>
  hazardWords.reduceRight((rest, [one, hazard]) => `IF(${word}="${one}",${numberOf(hazard)},${rest})`, "0");

/** What an open end brings that names no dust. */
const USUAL = String(numberOf(BURNS));

/** 1 where a run's name, or the hood of a run that is named for nothing else, tells of sparks. */
export function sparkName(name: string, hood: string | null): string {
  const has = (text: string, words: readonly string[]): string =>
    `(${words.map((word) => `ISNUMBER(SEARCH(${quotedText(word)},${text}))`).join("+")}>0)`;
  const byHood = hood === null ? "0" : `IF(${has(name, woodMachineWords)},0,IF(${has(hood, sparkWords)},1,0))`;
  return `IF(${has(name, woodGrinderWords)},0,IF(${has(name, sparkWords)},1,${byHood}))`;
}

const held = (sum: string, kind: keyof typeof KINDS): string => `MOD(INT(${sum}/${KINDS[kind]}),${ROOM})>0`;

/** What comes into a run of its own; `brings` is below 0 where no dust is typed. */
export function ownDust(place: Place, row: number): string {
  const input = (column: "brings" | "sparkName"): string => `INDEX(${place.all(column)},${place.cell("source", row)})`;
  const brings = input("brings");
  const end = `IF(AND(${input("sparkName")}=1,NOT(${held(`MAX(0,${brings})`, "sparks")})),${KINDS.maySpark},IF(${brings}<0,${USUAL},${brings}))`;
  return `IF(${place.cell("joining", row)}=0,${end},MAX(0,${brings}))`;
}

/** 2 where sparks meet what burns in a run, 1 where they may, 0 where not. */
export function metIn(place: Place, row: number): string {
  const sum = place.cell("dusts", row);
  const [burns, sparks, mayBurn, maySpark] = (["burns", "sparks", "mayBurn", "maySpark"] as const).map((kind) =>
    held(sum, kind),
  );
  return `IF(AND(${burns},${sparks}),2,IF(OR(AND(${burns},${maySpark}),AND(${sparks},${mayBurn})),1,0))`;
}

/** The most of that in the runs that join. */
export const metBefore = (place: Place, row: number): string =>
  `SUMPRODUCT(MAX((${place.above("next", row)}=${place.cell("own", row)})*${place.above("met", row)}))`;
