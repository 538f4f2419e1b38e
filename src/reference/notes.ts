import { BETWEEN_NOTES, noteWords } from "./noteWords";

export type NoteKey = keyof typeof noteWords;

/** A note that readers know again. */
export type MarkedNote = { [Key in NoteKey]: (typeof noteWords)[Key] extends { mark: string } ? Key : never }[NoteKey];

type HolesIn<Words extends string> = Words extends `${string}{${infer Hole}}${infer Rest}`
  ? Exclude<Hole, "mark"> | HolesIn<Rest>
  : never;

type HolesOf<Key extends NoteKey> = HolesIn<(typeof noteWords)[Key]["words"]>;

/** The values that a note tells, where it tells any. */
type ValuesOf<Key extends NoteKey> = [HolesOf<Key>] extends [never]
  ? []
  : [values: Readonly<Record<HolesOf<Key>, string | number>>];

/** The words by which a reader knows a note. */
export const markOf = (key: MarkedNote): string => noteWords[key].mark;

/** A note's sentence in pieces: words, and the values between them. */
export function piecesOfNote(key: NoteKey): ({ readonly words: string } | { readonly value: string })[] {
  const note: { readonly mark?: string; readonly words: string } = noteWords[key];
  return note.words
    .replace("{mark}", note.mark ?? "")
    .split(/(\{\w+\})/)
    .filter((piece) => piece !== "")
    .map((piece) => (/^\{\w+\}$/.test(piece) ? { value: piece.slice(1, -1) } : { words: piece }));
}

/** A note as the cell says it. */
export function sayNote<Key extends NoteKey>(key: Key, ...values: ValuesOf<Key>): string {
  const given: Readonly<Record<string, string | number>> = values[0] ?? {};
  const pieces = known.get(key) ?? piecesOfNote(key);
  known.set(key, pieces);
  return pieces.map((piece) => ("words" in piece ? piece.words : String(given[piece.value]))).join("");
}

const known = new Map<NoteKey, ReturnType<typeof piecesOfNote>>();

/** The notes of one cell as it says them, one after the other. */
export const joinNotes = (notes: readonly string[]): string => notes.join(BETWEEN_NOTES);

/** The notes that a cell says: each in its words, with its meaning where it has a mark. */
export function notesIn(cell: string): { readonly key: MarkedNote | null; readonly words: string }[] {
  return cell
    .split(BETWEEN_NOTES)
    .filter((words) => words !== "")
    .map((words) => ({ key: marked.find((key) => words.includes(markOf(key))) ?? null, words }));
}

const marked = (Object.keys(noteWords) as NoteKey[]).filter((key): key is MarkedNote => "mark" in noteWords[key]);
