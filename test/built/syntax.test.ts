import { syntaxFaults } from "../../scripts/syntax";
import { dist } from "./loadBundle";

test("no script of ours holds what the oldest Safari that docs/in-excel.md names would not run", () => {
  expect(syntaxFaults(dist)).toEqual([]);
});
