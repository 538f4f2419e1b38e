import { markFixed, noteBefore, unmarked, withFixedNote, withRefusal } from "../../src/share/marks";
import { styles } from "../../src/sheets/styles";

test("a fixed number is slanted, on a tint where it has no fill of its own, and the mark comes off again", () => {
  expect(markFixed(undefined)).toEqual({ ...styles.result, italic: true, fill: "#ece9f3" });
  expect(markFixed("total")).toEqual({ ...styles.total, italic: true, fill: "#ece9f3" });
  expect(markFixed("input")).toEqual({ ...styles.input, italic: true });
  expect(unmarked(markFixed("total"))).toEqual(styles.total);
  expect(unmarked(markFixed("input"))).toEqual(styles.input);
});

test("a tint that a file wrote in capitals comes off, other looks stay", () => {
  expect(unmarked({ ink: "#000000", italic: true, fill: "#ECE9F3", bold: true })).toEqual({
    ink: "#000000",
    bold: true,
  });
  expect(unmarked({ ink: "#ece9f3" })).toEqual({ ink: "#ece9f3" });
  expect([unmarked("total"), unmarked(undefined)]).toEqual(["total", undefined]);
});

test("the copy's sentence stands behind what the note said, and goes again", () => {
  const [bare, own] = [withFixedNote<{ note?: string }>({}, "why."), withFixedNote({ note: "mine" }, "why.")];
  expect([bare.note, own.note]).toEqual(["Fixed in this copy: why.", "mine\nFixed in this copy: why."]);
  expect([bare.note, own.note, "mine", "two\nlines\n", undefined].map(noteBefore)).toEqual([
    undefined,
    "mine",
    "mine",
    "two\nlines\n",
    undefined,
  ]);
});

test("what was refused when the copy was made stands behind the note as well, and goes again with the other", () => {
  const note = { note: "mine" };
  expect(withRefusal(note, "")).toBe(note);
  expect(withRefusal<{ note?: string }>({}, "count must be a number.").note).toBe(
    "Refused when this copy was made: count must be a number.",
  );
  const both = withFixedNote(withRefusal(note, "no."), "why.");
  expect(both.note).toBe("mine\nRefused when this copy was made: no.\nFixed in this copy: why.");
  expect([both.note, withRefusal(note, "no.").note].map(noteBefore)).toEqual(["mine", "mine"]);
});
