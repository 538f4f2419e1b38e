import type { LossFamily } from "../../../reference/schema";

/** One fitting of a cell's list, as typed, and how many there are of it. */
export interface Part {
  readonly words: string;
  readonly count: number;
}

/** The fittings of a cell, one by one; what no function reads is kept as it stands. */
export const partsOf = (text: string): Part[] =>
  text
    .split(";")
    .map((part) => part.trim())
    .filter((part) => part !== "")
    .map((part) => {
      const times = /^(.*\S)\s+x\s*(\d+)$/i.exec(part);
      return times === null ? { words: part, count: 1 } : { words: times[1]!, count: Number(times[2]) };
    });

export const textOfParts = (parts: readonly Part[]): string =>
  parts.map(({ words, count }) => (count === 1 ? words : `${words} x${count}`)).join("; ");

/** One more of a fitting: of the one that is there already, or as the last one. */
export function oneMore(parts: readonly Part[], words: string): Part[] {
  const place = parts.findIndex((part) => part.words.toLowerCase() === words.toLowerCase());
  if (place < 0) return [...parts, { words, count: 1 }];
  return parts.map((part, index) => (index === place ? { ...part, count: part.count + 1 } : part));
}

/** One less of a fitting; the last one goes. */
export const oneLess = (parts: readonly Part[], place: number): Part[] =>
  parts.flatMap((part, index) =>
    index !== place ? [part] : part.count > 1 ? [{ ...part, count: part.count - 1 }] : [],
  );

/** What a cell takes for a fitting: its name, with the usual shape or angle, so that one sees what is counted. */
export function usualWords({ key, shape, angle }: LossFamily): string {
  if (shape !== null) return shape.usual === null ? key : `${key} ${shape.usual}`;
  return angle === null || angle.usual === null || angle.name === "turn" ? key : `${key} ${angle.usual}`;
}

/** What has to be typed behind the name of a fitting; empty where its name says enough. */
export const stillToSay = ({ shape }: LossFamily): string =>
  shape === null || shape.usual !== null || shape.quantity === "diameter" ? "" : `say its ${shape.name}`;
