import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const load = createRequire(__filename);
const { withUsedMethods } = load("../../scripts/onlyUsedMethods.js") as {
  withUsedMethods: (code: string, called: readonly string[]) => string;
};

const LIBRARY = `function Library() {
  var two = 2;
  this.SI = 1;
  this.asked = function (x) { return this.through(x) + this.SI; };
  this.through = function (x) { return two * x; };
  this.unused = function () { return this.onlyByUnused(); };
  this.onlyByUnused = function () { return 0; };
}
module.exports = new Library();
`;

const run = (code: string): Record<string, unknown> => {
  const module: { exports: Record<string, unknown> } = { exports: {} };
  // eslint-disable-next-line @typescript-eslint/no-implied-eval, @typescript-eslint/no-unsafe-call -- the code is ours
  new Function("module", code)(module);
  return module.exports;
};

describe("a library whose unused methods are left out", () => {
  test("has what is called and what that calls, answers as before, and nothing else", () => {
    const left = run(withUsedMethods(LIBRARY, ["asked"]));
    expect(Object.keys(left)).toEqual(["SI", "asked", "through"]);
    expect((left.asked as (x: number) => number)(5)).toBe(11); // 2 x 5 + 1
  });

  test("is untouched where all is called", () => {
    expect(withUsedMethods(LIBRARY, ["asked", "unused"])).toBe(LIBRARY);
  });

  test("of psychrolib the notice of its licence stays", () => {
    const code = readFileSync(load.resolve("psychrolib"), "utf8");
    const left = withUsedMethods(code, ["GetStandardAtmPressure"]);
    expect(left.length).toBeLessThan(code.length / 2);
    expect(left).toContain("Licensed under the MIT License");
  });
});
