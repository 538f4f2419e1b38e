import { notesIn, piecesOfNote } from "../../reference/notes";

/** The runs that a verdict of TOGETHER names as too slow for their dust. */
export function tooSlowIn(verdict: string): string[] {
  const [first] = piecesOfNote("tooSlow");
  const words = first !== undefined && "words" in first ? first.words : "";
  const note = notesIn(verdict).find((one) => one.words.startsWith(words));
  return note === undefined ? [] : note.words.slice(words.length).split(", ");
}
