import { tasks } from "../../src/functions/tasks";
import { cellFunctions } from "../support/cellFunctions";

test("the pane and the help show every function once, with the guide of its own file", () => {
  const shown = tasks.flatMap(({ functions }) => functions);
  const declared = cellFunctions.map(({ name, guide }) => ({ name, ...guide }));
  const byName = (a: { name: string }, b: { name: string }): number => (a.name < b.name ? -1 : 1);
  expect([...shown].sort(byName)).toEqual([...declared].sort(byName));
});

test.each(cellFunctions)("the file of $name is named for it and says all of it", ({ call, guide }) => {
  expect(call).toBeInstanceOf(Function);
  expect(guide.example.asks).not.toBe("");
});
