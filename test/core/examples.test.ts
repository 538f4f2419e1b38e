/** Each example in a docstring of the core is computed. Their values are worked by hand, and as exact as they are written. */
import fs from "node:fs";
import path from "node:path";
import { halfLastDigit } from "../support/printed";

const CORE = path.join(__dirname, "../../src/core");

const lines = fs
  .readdirSync(CORE, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts"))
  .flatMap((file) =>
    [...fs.readFileSync(path.join(CORE, file), "utf8").matchAll(/@example\b(.*)$/gm)].map(([, line]) => ({
      file,
      line: line!,
    })),
  );
const examples = lines.flatMap(({ file, line }) => {
  const [, call, value] = /^ (.+) \/\/ => (\S+)$/.exec(line) ?? [];
  return call === undefined || value === undefined ? [] : [{ file, call, value }];
});

test("there are examples to look at, and each is a call with its value", () => {
  expect(lines.length).toBeGreaterThanOrEqual(20);
  expect(examples.length).toBe(lines.length);
});

test.each(examples)("$call is $value", ({ file, call, value }) => {
  const parts = /^(\w+)\((.*)\)$/.exec(call)!;
  const [, name, args] = parts;
  const computed = jest.requireActual<Record<string, (...args: unknown[]) => number>>(path.join(CORE, file))[name!]!;
  const answer = computed(...(JSON.parse(`[${args!}]`) as unknown[]));
  expect(Math.abs(answer - Number(value))).toBeLessThanOrEqual(halfLastDigit(value) * (1 + 1e-9));
});
