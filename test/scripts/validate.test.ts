import { verdict } from "../../scripts/validate";

test("a check that cannot be reached is said plainly, and is no good news", () => {
  const said =
    "Error: Unable to contact the manifest validation service.\nFetchError: request failed, reason: ENOTFOUND";
  expect(verdict(said, 0)).toEqual({
    text: "The online check could not be reached, so it has said nothing about this manifest. Our own rules need no internet: npm run check:manifest",
    isGood: false,
  });
});

test("else what it says is passed on, and its end decides", () => {
  expect(verdict("\nThe manifest is valid.\n", 0)).toEqual({ text: "The manifest is valid.", isGood: true });
  expect(verdict("The manifest is not valid.", 1)).toEqual({ text: "The manifest is not valid.", isGood: false });
  expect(verdict("\n", 1)).toEqual({ text: "the check ended with 1 and said nothing", isGood: false });
});
