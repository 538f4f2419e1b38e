import { tasks } from "../../../src/functions/tasks";
import { cautions } from "../../../src/reference/cautions";

const guides = tasks.flatMap(({ functions }) => functions);
const of = (name: string): readonly string[] => guides.find((guide) => guide.name === name)!.cautions ?? [];

test("a guide names cautions that there are", () => {
  const keys = cautions.map(({ key }) => key);
  const named = guides.flatMap((guide) => guide.cautions ?? []);
  expect(named.length).toBeGreaterThan(30);
  expect(named.filter((key) => !keys.includes(key))).toEqual([]);
});

test.each([
  ["FANLAW", "wheel over-speed"],
  ["CLAIM", "wheel over-speed"],
  ["BUDGET", "metal with wood"],
  ["SOLVE", "flue draught"],
  ["TRAVERSE", "power off"],
  ["LEAKAREA", "power off"],
  ["GATELEAK", "tape and card"],
  ["DEVICELOSS", "smouldering bin"],
  ["RUNLOSS", "plastic static"],
])("the form of %s brings the caution %j", (name, key) => expect(of(name)).toContain(key));
