import { usedEntries } from "../../../src/share/translate/usedEntries";
import { sampleBook } from "../sampleBooks";

const used = (text: string) => usedEntries(sampleBook({ S: { rows: [[text]] } })).entries;

test.each([
  ["elbow 1.7", ["elbow 1.7"]],
  ["Elbow-1.7 x2; branch 33° ", ["elbow 1.7", "branch 33"]],
  ["elbow 1,7x12\nBRANCH 33 × 3", ["elbow 1.7", "branch 33"]],
  ["elbow 1.7 x 2;elbow 1.7 x3; elbow 1.7", ["elbow 1.7"]],
  ["elbow x2 in a row", ["elbow x2 in a row"]], // a count stands at the end
  ["0.4; saw; 2 elbows", []],
])("the entries in %j, without counts, as plain names are spelt", (text, entries) =>
  expect(used(text)).toEqual(entries),
);

test("a list of 400 characters is read, a longer text is none", () => {
  const list = (length: number): string => "elbow 1.7;".padEnd(length, "x");
  expect(used(list(400))).toEqual(["elbow 1.7"]);
  expect(used(list(401))).toEqual([]);
});

test("they are found in what is typed, in what a cell shows and in the texts of formulas", () => {
  const book = sampleBook({
    S: {
      rows: [[1.7, true, null]],
      formulas: { A3: { code: '=DUCT.FITTINGLOSS(400,4,"elbow 1.7")', shows: [["elbow 1.8"]] } },
      with: { cells: [{ at: "B9", value: "elbow 1.9" }] },
    },
  });
  expect([...usedEntries(book).entries].sort()).toEqual(["elbow 1.7", "elbow 1.8", "elbow 1.9"]);
});
