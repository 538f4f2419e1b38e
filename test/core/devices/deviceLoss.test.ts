import fc from "fast-check";
import { deviceAirFactor, deviceLoss, SEPARATOR_EXPONENT } from "../../../src/core/devices/deviceLoss";
import { DomainError } from "../../../src/core/errors";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const positive = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
const exponent = fc.double({ min: 0.5, max: 2.5, noNaN: true });

describe("deviceLoss", () => {
  test("of a separator goes with the square: 2 at 800, so 0.5 at 400", () => {
    expect(SEPARATOR_EXPONENT).toBe(2);
    expect(deviceLoss(400, 2, 800, SEPARATOR_EXPONENT)).toBe(0.5);
  });

  test("of a filter medium goes with the airflow: 2 at 800, so 1 at 400", () => {
    expect(deviceLoss(400, 2, 800, 1)).toBe(1);
  });

  test("is the rated loss at the rated airflow and nothing without air", () => {
    fc.assert(
      fc.property(positive, positive, exponent, (loss, airflow, m) => {
        expect(deviceLoss(airflow, loss, airflow, m)).toBe(loss);
        expect(deviceLoss(0, loss, airflow, m)).toBe(0);
      }),
    );
  });

  test("rated at another point of its own curve, is the same device", () => {
    fc.assert(
      fc.property(positive, positive, positive, exponent, (airflow, loss, rated, m) => {
        const elsewhere = deviceLoss(3 * rated, loss, rated, m);
        expect(
          relative(deviceLoss(airflow, elsewhere, 3 * rated, m), deviceLoss(airflow, loss, rated, m)),
        ).toBeLessThan(1e-11);
      }),
    );
  });

  test.each([
    [-1, 2, 800, 2, "airflow must be at least 0; got -1"],
    [NaN, 2, 800, 2, "airflow must be at least 0; got a number that is not finite"],
    [400, -2, 800, 2, "ratedloss must be at least 0; got -2"],
    [400, 2, 0, 2, "ratedairflow must be above 0; got 0"],
    [400, 2, 800, 0.4, "exponent must be from 0.5 to 2.5; got 0.4"],
    [400, 2, 800, 3, "exponent must be from 0.5 to 2.5; got 3"],
  ])("refuses %d, %d, %d, %d", (airflow, loss, rated, m, message) => {
    expectRefusal(() => deviceLoss(airflow, loss, rated, m), DomainError, message);
  });
});

describe("a device in other air than it was rated in", () => {
  // 5000 ft: 0.0624 lb/ft3 against 0.075 at sea level, 0.832. A separator of 2.5 in.w.g. loses 2.08 there.
  test("of exponent 2 goes with density, of exponent 1 stays, and between them in between", () => {
    const thin = 0.832 * 1.201384595;
    expect(2.5 * deviceAirFactor(thin, 2)).toBeCloseTo(2.08, 6);
    expect(deviceAirFactor(thin, 1)).toBe(1);
    expect(deviceAirFactor(thin, 1.5)).toBeCloseTo(Math.sqrt(0.832), 6);
    expect([deviceAirFactor(thin, 0.5), deviceAirFactor(thin, 2.5)]).toEqual([1, deviceAirFactor(thin, 2)]);
  });

  test("refuses air without density", () => {
    expectRefusal(() => deviceAirFactor(0, 2), DomainError, "density must be above 0 kg/m³; got 0");
  });
});
