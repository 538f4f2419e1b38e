import { numberText, quotedText } from "../../src/share/references";

test("a text and a number as a formula writes them", () => {
  expect(quotedText('an "elbow"')).toBe('"an "&CHAR(34)&"elbow"&CHAR(34)&""');
  expect([0, 1.5, -2, 1e-7, -1e21].map(numberText)).toEqual(["0", "1.5", "(-2)", "1E-7", "(-1E+21)"]);
});
