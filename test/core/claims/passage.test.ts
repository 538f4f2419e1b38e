import fc from "fast-check";
import { mostThrough, type Passage, passageLoss } from "../../../src/core/claims/passage";
import { DomainError } from "../../../src/core/errors";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";
import { lawRuns } from "../../support/lawRuns";

const bareEnd: Passage = { diameter: 0.1, length: 0, roughness: 0.001, entry: 0.93, density: 1.2 };
const hose: Passage = { ...bareEnd, length: 3 };
const passages = fc.record({
  diameter: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
  length: fc.double({ min: 0, max: 20, noNaN: true }),
  roughness: fc.double({ min: 0, max: 0.003, noNaN: true }),
  entry: fc.double({ min: 0.03, max: 2, noNaN: true }),
  density: fc.double({ min: 0.9, max: 1.3, noNaN: true }),
});
const pressures = fc.double({ min: 10, max: 10_000, noNaN: true });

describe("passageLoss", () => {
  // By hand: 0.2 m3/s in 0.1 m is 25.46479 m/s, 389.0733 Pa of velocity pressure at 1.2 kg/m3; times 0.93 is 361.8382 Pa.
  test("of a bare end is its entry loss: 361.8382 Pa", () => {
    expect(relative(passageLoss(0.2, bareEnd), 361.8382)).toBeLessThan(1e-6);
  });

  // By hand: rough flow at e/D 0.01: f = (2 log10(370))^-2 = 0.037904; 389.0733 x (0.93 + 0.037904 x 30) = 804.258 Pa. At
  // Re 168,000 Colebrook's f lies a little above it, about 0.9 %, the loss 0.5 %.
  test("of a hose lies a little above that of fully rough flow: 804.258 Pa", () => {
    expect(passageLoss(0.2, hose)).toBeGreaterThan(804.258);
    expect(passageLoss(0.2, hose)).toBeLessThan(804.258 * 1.01);
  });
});

describe("mostThrough", () => {
  // By hand: V = sqrt(2 x 1000 / (0.93 x 1.2)) = 42.33338 m/s through 0.007853982 m2 is 0.3324856 m3/s.
  test("through a bare end: 1000 Pa draw 0.3324856 m³/s", () => {
    expect(relative(mostThrough(1000, bareEnd), 0.3324856)).toBeLessThan(1e-6);
  });

  // Six times thinner air, 0.2 kg/m3, moves sqrt(6) times as fast: 0.3324856 x 2.4494897 = 0.8144201 m3/s.
  test("through a bare end in the thinnest air: 1000 Pa draw 0.8144201 m³/s", () => {
    expect(relative(mostThrough(1000, { ...bareEnd, density: 0.2 }), 0.8144201)).toBeLessThan(1e-6);
  });

  test("takes the whole pressure, and more pressure draws more", () => {
    fc.assert(
      fc.property(pressures, passages, (pressure, passage) => {
        const airflow = mostThrough(pressure, passage);
        expect(relative(passageLoss(airflow, passage), pressure)).toBeLessThan(1e-9);
        expect(mostThrough(1.1 * pressure, passage)).toBeGreaterThan(airflow);
        expect(mostThrough(pressure, { ...passage, length: passage.length + 1 })).toBeLessThan(airflow);
      }),
      lawRuns(200),
    );
  });

  test.each([
    ["pressure must be above 0 Pa; got 0", 0, bareEnd],
    ["entry must be above 0; got 0", 100, { ...bareEnd, entry: 0 }],
    ["entry must be above 0; got -1", 100, { ...bareEnd, entry: -1 }],
    ["length must be at least 0 m; got -1", 100, { ...bareEnd, length: -1 }],
    ["diameter must be above 0 m; got 0", 100, { ...bareEnd, diameter: 0 }],
  ])("refuses, and says why: %s", (message, pressure, passage) => {
    expectRefusal(() => mostThrough(pressure, passage), DomainError, message);
  });
});
