import { goingOn } from "../../../src/hosts/local/goingOn";

const words = ["main A", "main", "Lathe", "fan"];

test.each([
  ["ma", ["main A", "main"]],
  ["LA", ["Lathe"]],
  ["main ", ["main A"]],
])("%s is gone on with", (begun, offered) => {
  expect(goingOn(begun, words)).toEqual(offered);
});

test.each(["", "main", "MAIN", "lathe", "x"])(
  "nothing goes on as %p: it is a whole word, or the beginning of none",
  (begun) => {
    expect(goingOn(begun, words)).toEqual([]);
  },
);
