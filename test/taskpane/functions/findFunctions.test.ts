import { findFunctions } from "../../../src/taskpane/functions/findFunctions";
import { tasks } from "../../../src/functions/tasks";

const known = tasks.flatMap(({ functions }) =>
  functions.map(({ name }) => ({ id: name, name, description: `What ${name} gives, in cfm.`, parameters: [] })),
);
const found = (search: string) =>
  findFunctions(tasks, known, search).flatMap(({ functions }) => functions.map(({ guide }) => guide.name));

test("no words find every function once", () => {
  expect(new Set(found("")).size).toBe(known.length);
  expect(found("")).toHaveLength(known.length);
});

test.each([
  ["leak gate", ["GATELEAK"]],
  ["SOLVE invented", ["SOLVE"]],
  ["vendor", ["CLAIM"]],
  ["no such thing", []],
])("%s finds %j", (search, names) => expect(found(search)).toEqual(names));

test("a function that functions.json does not have is not shown", () => {
  expect(findFunctions(tasks, [], "")).toEqual([]);
});
