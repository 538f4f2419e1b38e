import { failureWords } from "../../../src/taskpane/hostUse/words";

test.each([
  ["an error", new Error("the sheet is gone."), "It did not work: the sheet is gone."],
  ["an error of the page around the pane", { message: "the sheet is gone" }, "It did not work: the sheet is gone."],
  ["an error without words", new Error(""), "It did not work: the sheet did not answer."],
  ["nothing", undefined, "It did not work: the sheet did not answer."],
  ["a word", "oh", "It did not work: the sheet did not answer."],
])("%s becomes one sentence", (_, thrown, words) => expect(failureWords(thrown)).toBe(words));
