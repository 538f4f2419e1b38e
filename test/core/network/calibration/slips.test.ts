import { judge } from "../../../../src/core/network/calibration/slips";
import { drawnShop, model, normals, PLANS, spoiledShops, toldBy } from "../../../support/measuredShop";

const of = model();

describe("slips", () => {
  test.each([
    [10, 1],
    [0.1, 2],
    [4, 4],
  ])("a reading %d times as large is found, and no other accused: plan %d", (factor, plan) => {
    for (const { wrong, readings } of spoiledShops(model(0), factor, plan, 3)) {
      const { slips, fit } = judge(of, readings, toldBy(of));
      expect(slips.map((slip) => slip.readings)).toEqual([[wrong]]);
      expect(slips[0]!.instead).toEqual([]);
      expect(Math.abs(Math.log(slips[0]!.factor / factor))).toBeLessThan(4 * slips[0]!.deviation);
      expect(fit.readings).toHaveLength(readings.length - 1);
    }
  });

  test("readings without a slip are all kept", () => {
    const { readings } = drawnShop(model(0), PLANS[4]!, normals(6));
    const { slips, fit } = judge(of, readings, toldBy(of));
    expect(slips).toEqual([]);
    expect(fit.readings).toEqual(readings);
  });

  test("a meter whose every airflow is off is accused as one, where suctions speak against it", () => {
    const { readings } = drawnShop(model(0), PLANS[5]!, normals(8));
    const wrong = readings.map((one) => (one.meter < 0 ? one : { ...one, value: 4 * one.value }));
    const { slips } = judge(of, wrong, toldBy(of));
    expect(slips.map(({ kind }) => kind)).toEqual(["meter"]);
    expect(slips[0]!.readings).toEqual(wrong.filter(({ meter }) => meter >= 0));
    expect(Math.abs(slips[0]!.factor / 4 - 1)).toBeLessThan(0.2);
  });

  test("both airflows at one hood, read with a wrong area", () => {
    const { readings } = drawnShop(model(0), PLANS[4]!, normals(12));
    const wrong = readings.map((one) => (one.what === "airflow" && one.run === 1 ? { ...one, value: 10 * one.value } : one)); // prettier-ignore
    const { slips } = judge(of, wrong, toldBy(of));
    expect(slips.flatMap((slip) => slip.readings)).toEqual(wrong.filter(({ what, run }) => what === "airflow" && run === 1)); // prettier-ignore
  });

  test("a single reading that the table can't explain is set aside, and the table is left as it is", () => {
    const { readings } = drawnShop(model(0), PLANS[0]!, normals(1));
    const alone = { ...readings[0]!, value: readings[0]!.value * 10 };
    const { slips, fit } = judge(of, [alone], toldBy(of));
    expect(slips.map((slip) => slip.readings)).toEqual([[alone]]);
    expect([...fit.state.logarithms].every((one) => one === 0)).toBe(true);
  });
});
