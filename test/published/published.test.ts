import { publishedGroups } from "./data";
import { allowed } from "./row";

describe.each(publishedGroups)("published $title", ({ rows }) => {
  test.each(rows)("$id: $what is $printed $unit", (row) => {
    expect(Math.abs(row.compute() - Number(row.printed))).toBeLessThanOrEqual(allowed(row));
  });
});
