import { cfm, fpm, inches, inchesOfWater, millimetres } from "./asPrinted";
import type { Provenance, ReferenceRow } from "./schema";

/** Leak of a shut damper or joint: the nearest published relatives of a slide gate's leak. For display only. */
export interface ClosedDamperRow extends ReferenceRow {
  readonly faceVelocity: number | null; // [m/s] leak over face area (printed as cfm/ft2)
  readonly airflow: number | null; // [m3/s] leak of the whole damper
  readonly diameter: number | null; // [m]
  readonly pressure: number | null; // [Pa] at which it holds; null where the source's excerpt does not say
}

const ul555s: Provenance = {
  source: "ul555s",
  locator: "leakage class table",
  basis: "second-hand",
  checked: "2026-11-27",
};
const page: Provenance = {
  source: "roundDamperPage",
  locator: "leakage table",
  basis: "second-hand",
  checked: "2026-11-27",
};

/** Printed in cfm/ft² at 4, 6, 8, 10 and 12 in.w.g. */
const smokeClass = (name: string, leaks: readonly [number, number, number, number, number]): ClosedDamperRow[] =>
  leaks.map((leak, step) => {
    const pressure = 4 + 2 * step;
    return {
      key: `smoke damper class ${name.toLowerCase()} at ${pressure} in`,
      label: `Smoke damper, leakage class ${name}, at ${pressure} in.w.g.`,
      faceVelocity: fpm(leak),
      airflow: null,
      diameter: null,
      pressure: inchesOfWater(pressure),
      note: "Largest leak allowed. Grows about with the square root of the pressure.",
      ...ul555s,
    };
  });

/** Printed in cfm for a blade with a seal and for one with a sponge stop. */
const roundDamper = (size: number, seal: number, sponge: number): ClosedDamperRow[] =>
  [{ kind: "seal", leak: seal } as const, { kind: "sponge stop", leak: sponge } as const].map(({ kind, leak }) => ({
    key: `round damper ${size} in ${kind}`,
    label: `Round control damper, ${size} in, shut, with ${kind}`,
    faceVelocity: null,
    airflow: cfm(leak),
    diameter: inches(size),
    pressure: null,
    note: "The test pressure was not in the excerpt: no rating, only an order of magnitude.",
    ...page,
  }));

/** Smoke damper classes, round control dampers, and one bare joint. */
export const closedDampers: readonly ClosedDamperRow[] = [
  ...smokeClass("I", [8, 9.5, 11, 12.5, 14]),
  ...smokeClass("II", [20, 24, 28, 31.5, 35]),
  ...smokeClass("III", [80, 96, 112, 125, 140]),
  ...roundDamper(6, 1.41, 7.5),
  ...roundDamper(12, 2.85, 15),
  ...roundDamper(24, 5.65, 25),
  ...roundDamper(36, 8.5, 28),
  ...roundDamper(48, 11.3, 35),
  {
    key: "two unsealed flanges 500 mm",
    label: "Two round duct flanges of 500 mm, bolted, no seal, at 1000 Pa",
    faceVelocity: null,
    airflow: 0.3e-3,
    diameter: millimetres(500),
    pressure: 1000,
    note: "0.1 L/s per metre of flange. A relative of the loose collar, but bolted.",
    source: "flangeTest1984",
    locator: "test of December 1984",
    basis: "second-hand",
    checked: "2026-11-27",
  },
];
