import { supplyPower } from "../../../src/core/claims/supply";
import { DomainError } from "../../../src/core/errors";
import { expectRefusal } from "../../support/coreRefusal";

describe("supplyPower", () => {
  // By hand: 230 x 10 = 2300 W; on three phases 400 x 10 x 1.7320508 = 6928.2032 W.
  test("230 V and 10 A give 2300 W, 400 V and 10 A on three phases 6928.2 W", () => {
    expect(supplyPower(230, 10, 1)).toBe(2300);
    expect(supplyPower(400, 10, 3)).toBeCloseTo(6928.2032, 3);
  });

  test("refuses a supply that is none", () => {
    expectRefusal(() => supplyPower(0, 10, 1), DomainError, "volts must be above 0 V; got 0");
    expectRefusal(() => supplyPower(230, -1, 1), DomainError, "amps must be above 0 A; got -1");
  });
});
