/** Each example in a docstring of the core is computed. Their values are worked by hand, and as exact as they are written. */
import fs from "node:fs";
import path from "node:path";
import { halfLastDigit } from "../support/printed";

const CORE = path.join(__dirname, "../../src/core");

const examples = fs
  .readdirSync(CORE, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts"))
  .flatMap((file) =>
    [...fs.readFileSync(path.join(CORE, file), "utf8").matchAll(/@example (.+) \/\/ => (\S+)$/gm)].map(
      ([, call, value]) => ({ file, call: call!, value: value! }),
    ),
  );

test("there are examples to look at", () => expect(examples.length).toBeGreaterThanOrEqual(20));

test.each(examples)("$call is $value", ({ file, call, value }) => {
  const parts = /^(\w+)\((.*)\)$/.exec(call)!;
  const [, name, args] = parts;
  const computed = jest.requireActual<Record<string, (...args: unknown[]) => number>>(path.join(CORE, file))[name!]!;
  const answer = computed(...(JSON.parse(`[${args!}]`) as unknown[]));
  expect(Math.abs(answer - Number(value))).toBeLessThanOrEqual(halfLastDigit(value) * (1 + 1e-9));
});
