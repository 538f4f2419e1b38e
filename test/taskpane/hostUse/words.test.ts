import { failureWords, writtenWords } from "../../../src/taskpane/hostUse/words";

test.each([
  ["an error", new Error("the sheet is gone."), "It did not work: the sheet is gone."],
  ["an error of the page around the pane", { message: "the sheet is gone" }, "It did not work: the sheet is gone."],
  ["an error without words", new Error(""), "It did not work: the sheet did not answer."],
  ["nothing", undefined, "It did not work: the sheet did not answer."],
  ["a word", "oh", "It did not work: the sheet did not answer."],
])("%s becomes one sentence", (_, thrown, words) => expect(failureWords(thrown)).toBe(words));

test("what stands as a text in its cell is not told as written and done", () => {
  expect(writtenWords({ written: true, at: "B4", isBlocked: false, isText: true })).toBe(
    "Written into B4, but that cell is formatted as text: it holds the letters, and no sum takes them. Give it the number format General, then insert again.",
  );
});
