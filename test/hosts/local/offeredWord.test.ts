import { offeredWord } from "../../../src/hosts/local/offeredWord";

const words = ["planer port of old", "planer port", "open, plain", "open", "0.5 rounded"];

test.each([
  ["pl", { word: "planer port", place: 1 }],
  ["Open", { word: "open, plain", place: 2 }], // the grid closes its list where a whole word stands there
  ["0.5", { word: "0.5 rounded", place: 4 }],
])("what begins as %s is gone on with", (typed, offered) => {
  expect(offeredWord(typed, words)).toEqual(offered);
});

test.each(["", " ", "port", "ppt", "12", "0.50", "planer port of old"])("nothing is offered for %p", (typed) => {
  expect(offeredWord(typed, words)).toBeNull();
});
