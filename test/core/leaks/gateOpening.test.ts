import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { gateOpening } from "../../../src/core/leaks/gateOpening";
import { findNamed } from "../../../src/core/naming/findNamed";
import { gateConditions } from "../../../src/reference/gateConditions";
import type { GateConditionRow } from "../../../src/reference/schema";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const bareSlot = findNamed(gateConditions, "open bare slot")!;

describe("gateOpening", () => {
  // A slot of 3/16 in across a gate of 6 in: 0.1875 x 6 = 1.125 in2 = 725.805 mm2
  test("of a bare slot across a 6 in gate is nine eighths of a square inch", () => {
    expect(relative(gateOpening(bareSlot, 6 * 0.0254), 1.125 * 0.0254 ** 2)).toBeLessThan(1e-12);
  });

  // A rim of 4 in with a gap of 0.5 mm: pi x 101.6 x 0.5 = 159.593 mm2
  test("of a blade off its seat is the gap along the whole rim", () => {
    const wrongSide = findNamed(gateConditions, "shut wrong side")!;
    expect(relative(gateOpening(wrongSide, 0.1016), 159.593e-6)).toBeLessThan(1e-5);
  });

  test("goes with the diameter, and is smaller than the gate itself", () => {
    fc.assert(
      fc.property(
        fc.constantFrom<GateConditionRow>(...gateConditions),
        fc.double({ min: 0.03, max: 1, noNaN: true }),
        (row, gate) => {
          expect(relative(gateOpening(row, 2 * gate), 2 * gateOpening(row, gate))).toBeLessThan(1e-12);
          expect(gateOpening(row, gate)).toBeLessThan((Math.PI / 4) * gate ** 2);
        },
      ),
    );
  });

  test.each([
    [0, "diameter must be above 0 m; got 0"],
    [-0.1, "diameter must be above 0 m; got -0.1"],
    [NaN, "diameter must be above 0 and at most 20 m; got a number that is not finite"],
  ])("refuses a gate of %d m", (gate, message) => {
    expectRefusal(() => gateOpening(bareSlot, gate), DomainError, message);
  });
});
