/** A refusal begins with the name of the argument that it means, as the function's own description gives it: people look for that word. */
import "../support/customFunctions";
import { traverse } from "../../src/functions/measuring/traverse";
import { exampleArguments, signed } from "../support/cellFunctions";
import { refusal } from "../support/refusal";

const each = signed.flatMap((declared) =>
  declared.names.map((argument, index) => ({ ...declared, argument, at: declared.first + index })),
);

test.each(each)("$name names $argument when it is TRUE", (row) => {
  const { call, argument, at } = row;
  const given = exampleArguments(row).map((value, index) => (index === at ? [[true]] : value));
  const { code, message } = refusal(() => call(...given));
  expect(code).toBe("#VALUE!");
  expect(message).toMatch(new RegExp(`^${argument} must be .+; got TRUE$`));
});

test.each(["readings", "kind", "density"])("TRAVERSE names %s when it is TRUE", (argument) => {
  const good = { readings: 4000, kind: "velocity", density: 0.075 };
  const given = Object.values({ ...good, [argument]: true }).map((value) => [[value]]);
  const [readings, kind, density] = given as unknown as [unknown[][], unknown[][], unknown[][]];
  const { code, message } = refusal(() => traverse(readings, kind, density));
  expect(code).toBe("#VALUE!");
  expect(message).toMatch(new RegExp(`^(row 1, column 1 of )?${argument} must be .+; got TRUE$`));
});
