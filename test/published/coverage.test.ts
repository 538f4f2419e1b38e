import { publishedGroups } from "./data";
import { notComputed } from "./notComputed";
import { EXACTLY, HALF_LAST_DIGIT } from "./row";

const rows = publishedGroups.flatMap((group) => group.rows);
const left = notComputed.flatMap(({ ids }) => ids);

/** Rows with a reason instead of a check. May only fall: lower it when one is computed. */
const LEFT_OVER = 108;

/** Rows that may differ by more than their last digit. May only fall. */
const WIDENED = 101;

describe("the published rows", () => {
  test("stand once each", () => {
    const ids = [...rows.map(({ id }) => id), ...left];
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test("are computed, but for a list that only shrinks", () => {
    expect(left).toHaveLength(LEFT_OVER);
    expect(notComputed.filter(({ reason }) => !/^[A-Z].*\.$/.test(reason))).toEqual([]);
  });

  test("agree to the last digit, but for a number of rows that only falls, each with its reason", () => {
    const margins = rows.flatMap(({ tolerance }) =>
      tolerance === EXACTLY || tolerance === HALF_LAST_DIGIT ? [] : [tolerance],
    );
    expect(margins).toHaveLength(WIDENED);
    expect(margins.filter(({ why }) => !/^[A-Z].{20,}\.$/.test(why))).toEqual([]);
  });

  test("are printed as numbers and name their source", () => {
    expect(rows.filter(({ printed }) => !/^-?\d+(\.\d+)?$/.test(printed))).toEqual([]);
    expect(rows.filter(({ source, what }) => source === "" || what === "")).toEqual([]);
  });
});
