import { foundIn } from "../../../support/books";

const RULE = "A fan's curve rises";

const found = (...points: (readonly [number, number])[]) =>
  foundIn({ Fan: { rows: [["Airflow (cfm)", "Fan static pressure (in.w.g.)"], ...points] } }).filter(
    ({ rule }) => rule === RULE,
  );

describe("a fan's curve that rises by more than half of its greatest pressure", () => {
  test("is told where points of an older curve were left below", () => {
    const what = "It rises from 2 in.w.g. at 1,500 cfm to 8.2 in.w.g. at 1,600 cfm.";
    const mixed = found([0, 11], [500, 9], [1500, 2], [1600, 8.2], [2400, 3.2]);
    expect(mixed).toEqual([{ rule: RULE, what, sheet: "Fan", at: "B5" }]);
  });

  test("is told where one column was sorted without the other, in either order of the rows", () => {
    const what = "It rises from 3.2 in.w.g. at 0 cfm to 9.6 in.w.g. at 1,600 cfm.";
    expect(found([0, 3.2], [800, 7.3], [1600, 9.6], [2400, 11.2])).toMatchObject([{ what, at: "B4" }]);
    expect(found([2400, 11.2], [1600, 9.6], [800, 7.3], [0, 3.2])).toMatchObject([{ what, at: "B3" }]);
  });

  test("is told where it had fallen below six tenths of its first pressure and steps up again, however little", () => {
    const what = "It rises from 3.6 in.w.g. at 1,500 cfm to 7.3 in.w.g. at 1,800 cfm.";
    expect(found([0, 10], [800, 7.6], [1500, 3.6], [1800, 7.3], [2400, 3.2])).toMatchObject([{ what, at: "B5" }]);
    expect(found([0, 10], [800, 5.9], [1500, 6.15])).toHaveLength(1);
    expect(found([0, 10], [800, 5.9], [1500, 6.05])).toEqual([]); // half a tenth is how the print was read
    expect(found([0, 10], [800, 6.1], [1500, 7.3])).toEqual([]);
  });

  test("is none where it falls, has a hump or a dip, or rises by half", () => {
    expect(found([0, 11.2], [1200, 9.6], [2400, 3.2])).toEqual([]);
    expect(found([2400, 3.2], [1200, 9.6], [0, 11.2])).toEqual([]);
    expect(found([0, 8], [600, 10], [1200, 9], [2400, 3])).toEqual([]);
    expect(found([0, 10], [600, 6], [1200, 8], [2400, 0])).toEqual([]);
    expect(found([0, 5], [600, 10], [2400, 3])).toEqual([]);
  });
});
