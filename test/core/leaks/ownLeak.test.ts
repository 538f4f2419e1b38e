import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { openingLeak } from "../../../src/core/leaks/openingLeak";
import { ownLeak } from "../../../src/core/leaks/ownLeak";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const RUN = 'run "saw" (row 2)';
const leak = (area: number, arriving: number, suction: number, diameter = 0.1, density = 1.2): number =>
  ownLeak(RUN, area, arriving, suction, diameter, density);

/** The defining equation's right side, C_d A_l sqrt(2 (P + p_v(Q + L)) / rho), at a leak L. */
const driven = (
  found: number,
  area: number,
  arriving: number,
  suction: number,
  diameter: number,
  density: number,
): number => {
  const velocity = (arriving + found) / ((Math.PI / 4) * diameter ** 2);
  return 0.6 * area * Math.sqrt((2 * (suction + (density / 2) * velocity ** 2)) / density);
};

const suction = fc.double({ min: 1e-3, max: 10_000, noNaN: true });
const arriving = fc.double({ min: 0, max: 2, noNaN: true });
const share = fc.double({ min: 1e-6, max: 0.9, noNaN: true }); // of the duct's own area

describe("ownLeak", () => {
  // By hand: 500 mm2 in 0.1 m, 0.16 m3/s arriving, P 231.576 Pa, 1.2 kg/m3. Guess p_v 249.007 Pa (no leak):
  // L = 0.6 x 5e-4 x sqrt(2 x 480.583 / 1.2) = 3e-4 x 28.3015 = 0.00849044; V = 0.16849044 / 0.00785398 = 21.4529,
  // p_v = 276.135; L = 3e-4 x sqrt(507.711 / 0.6) = 0.00872678; p_v = 276.911; L = 3e-4 x sqrt(508.487 / 0.6) = 0.00873344;
  // p_v = 276.933; L = 3e-4 x sqrt(508.509 / 0.6) = 0.00873363; p_v = 276.933, and stays.
  test("of 500 mm2 behind a plain end with 0.16 m3/s is 0.00873363 m3/s", () => {
    expect(relative(leak(5e-4, 0.16, 231.576), 0.00873363)).toBeLessThan(1e-5);
  });

  test("put back into its defining equation, gives itself", () => {
    fc.assert(
      fc.property(share, arriving, suction, fc.double({ min: 0.05, max: 0.5, noNaN: true }), (part, flow, p, pipe) => {
        const area = part * (Math.PI / 4) * pipe ** 2;
        const found = leak(area, flow, p, pipe);
        expect(Math.abs(found - driven(found, area, flow, p, pipe, 1.2))).toBeLessThanOrEqual(1e-10 * found);
      }),
    );
  });

  test("in a huge duct, where the air hardly moves, is the leak through an opening", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 10_000, noNaN: true }), (p) => {
        expect(relative(leak(1e-4, 0.1, p, 20), openingLeak(1e-4, p, 0.6, 1.2))).toBeLessThan(1e-6);
      }),
    );
  });

  test("is at least the opening's, and grows with area, suction and the air that arrives", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 5e-3, noNaN: true }), arriving, suction, (area, flow, p) => {
        const here = leak(area, flow, p);
        expect(here).toBeGreaterThanOrEqual(openingLeak(area, p, 0.6, 1.2) * (1 - 1e-12));
        expect(leak(1.01 * area, flow, p + 1)).toBeGreaterThan(here);
        expect(leak(area, flow, p + 1)).toBeGreaterThan(here);
        expect(leak(area, flow + 0.01, p)).toBeGreaterThan(here);
      }),
    );
  });

  test("is nothing without an opening", () => {
    expect(leak(0, 0.5, 1000)).toBe(0);
    expect(leak(0, 0, -1000)).toBe(0); // behind the fan the duct presses: no square root of that
  });

  test("refuses an opening that, contracted, is exactly the duct", () => {
    const area = ((Math.PI / 4) * 0.1 * 0.1) / 0.6;
    expect(() => leak(area, 0.1, 100)).toThrow("must be smaller than the duct itself (area in m²); got 0.01308997");
  });

  // 0.6 x area = pi/4 x 0.1^2 at 0.0130900 m2
  test.each([0.01309, 0.02, Infinity, NaN])("refuses an opening of %d m2, as large as the duct", (area) => {
    const shown = Number.isFinite(area) ? String(area) : "a number that is not finite";
    expectRefusal(
      () => leak(area, 0.1, 100),
      DomainError,
      `Leak of ${RUN} must be smaller than the duct itself (area in m²); got ${shown}`,
    );
  });
});
