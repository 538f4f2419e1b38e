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
  ["leak gate", ["GATELEAK", "LEAKGAINS", "SOLVE"]],
  ["SOLVE invented", ["SOLVE"]],
  ["vendor", ["CLAIM"]],
  ["no such thing", []],
])("%s finds %j", (search, names) => expect(found(search)).toEqual(names));

test("a function that functions.json does not have is not shown", () => {
  expect(findFunctions(tasks, [], "")).toEqual([]);
});

describe("what people say", () => {
  test.each([
    ["pressure drop", ["FRICTION", "RUNLOSS", "FITTINGLOSS", "DEVICELOSS"]],
    ["cyclone", ["DEVICELOSS", "BUDGET"]],
    ["static pressure", ["HOODSUCTION", "HOODAIRFLOW", "FANPRESSURE", "OPERATINGPOINT", "BUDGET"]],
    ["blast gates", ["GATELEAK", "SOLVE", "SCENARIOS"]],
    ["elbows", ["LOSSCOEFFICIENT", "FITTINGLOSS", "EQUIVLENGTH"]],
    ["horsepower", ["AIRPOWER", "CLAIM"]],
  ])("%s finds %j first", (search, names) => {
    const first = found(search).slice(0, names.length);
    expect([...first].sort()).toEqual([...names].sort());
  });
});

test.each([
  ["leak", "LEAK"],
  ["velocity", "VELOCITY"],
  ["friction", "FRICTION"],
  ["budget", "BUDGET"],
])("%s is first of all what is called so: %s", (search, name) => expect(found(search)[0]).toBe(name));
