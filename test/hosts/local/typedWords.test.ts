import { typedWords } from "../../../src/hosts/local/typedWords";

test.each([
  ["1.200", "1.200 counts as 1.2, not as 1200. "],
  ["1,200", "1,200 counts as 1200, not as 1.2. "],
  [" -12.500", "-12.500 counts as -12.5, not as -12500. "],
  ["3,5", "3,5 is no number here: type 3.5. "],
  ["0,125", "0,125 is no number here: type 0.125. "],
  ["1200", ""],
  ["0.125", ""],
  ["1,200,000", ""],
  ["elbow 1,5", ""],
  ["=SUM(1,2)", ""],
  ["", ""],
])("while %j is typed the line says %j", (typed, words) => expect(typedWords(typed)).toBe(words));
