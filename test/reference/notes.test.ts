/** The list of notes: each is said in one place, and known again by its mark alone. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { laterNoteWords } from "../../src/reference/laterNoteWords";
import { BETWEEN_NOTES, noteWords } from "../../src/reference/noteWords";
import { joinNotes, markOf, type NoteKey, notesIn, piecesOfNote, sayNote } from "../../src/reference/notes";

const notes = Object.entries<{ readonly mark?: string; readonly words: string }>(noteWords);
const marks = notes.flatMap(([key, { mark }]) => (mark === undefined ? [] : [[key, mark] as const]));
/** What a note says whatever its values are. */
const fixedWords = (key: string): string =>
  piecesOfNote(key as NoteKey)
    .map((piece) => ("words" in piece ? piece.words : "\n"))
    .join("");

test.each(marks)("the mark of %s stands in no other note", (key, mark) => {
  const told = notes.filter(([other]) => fixedWords(other).toLowerCase().includes(mark.toLowerCase()));
  expect(told.map(([other]) => other)).toEqual([key]);
});

test.each(marks)(
  "the mark of %s can be looked for in a formula: no wildcard, no quote, none of the words between notes",
  (_, mark) => {
    expect(mark).toMatch(/^[a-z: ]+$/);
    expect(mark).not.toContain(BETWEEN_NOTES);
  },
);

test.each(notes)("%s is one sentence or part of one, begun in lower case, without a full stop", (key) => {
  expect(fixedWords(key)).toMatch(/^[\s,a-z]/);
  expect(fixedWords(key)).not.toMatch(/\.$/);
});

test.each(marks)("%s says its mark once", (key) => {
  expect(noteWords[key as NoteKey].words.split("{mark}").length).toBe(2);
});

test("a note says its values where they belong", () => {
  expect(sayNote("settles", { dust: "wood dust", velocity: "3937 fpm" })).toBe(
    'dust settles: "wood dust" needs 3937 fpm',
  );
  expect(sayNote("gateShut")).toBe("gate shut: only its leak flows");
  expect(sayNote("leaky", { percent: 12 })).toBe("its leak carries 12 % of its air");
});

test("the notes of a cell are found again, also one that nobody knows", () => {
  const cell = joinNotes([sayNote("settles", { dust: "d", velocity: "1 m/s" }), "typed by hand", sayNote("cutOff")]);
  expect(cell).toBe('dust settles: "d" needs 1 m/s; typed by hand; a shut gate cuts it off');
  expect(notesIn(cell)).toEqual([
    { key: "settles", words: 'dust settles: "d" needs 1 m/s' },
    { key: null, words: "typed by hand" },
    { key: "cutOff", words: "a shut gate cuts it off" },
  ]);
  expect(notesIn("")).toEqual([]);
  expect(markOf("short")).toBe("the hood gets");
});

test("none outside the functions asks for a note that only functions of later files have", () => {
  const src = path.resolve(__dirname, "../../src");
  const asked = readdirSync(src, { recursive: true, encoding: "utf8" })
    .filter((file) => /\.tsx?$/.test(file) && !/^(functions|reference)\//.test(file))
    .flatMap((file) =>
      [...readFileSync(path.join(src, file), "utf8").matchAll(ASKS)].map(([, asks, is]) => asks ?? is!),
    );
  expect(asked).toContain("worksTogether");
  expect(asked.filter((key) => key in laterNoteWords)).toEqual([]);
});

/** As a sheet, a copy or the pane asks for one. */
const ASKS = /(?:sayNote|piecesOfNote|markOf|saysNote|countOfNote|noteFormula|one|says)\("(\w+)"|key === "(\w+)"/g;
