import { byAngle } from "../points";
import type { LossFamily, Provenance } from "../schema";

const smacna: Provenance = { source: "smacna4th", locator: "Table A-7, p A.15", basis: "read", checked: "2026-11-27" };
const smacnaMemory: Provenance = {
  source: "smacna4thMemory",
  locator: "Table A-7, p A.15",
  basis: "from memory",
  checked: null,
};

/** The family whose loss goes by the Reynolds number too. */
export const MITRE = "mitre";

/** Elbows with one sharp corner. */
export const mitres: readonly LossFamily[] = [
  {
    key: MITRE,
    aliases: ["miter", "mitre elbow", "miter elbow", "mitred elbow", "mitered elbow"],
    kind: "fitting",
    label: "Round elbow with one sharp corner",
    note: "As printed for a Reynolds number of 140 000 and over (about 4100 fpm in a 4 in duct). Where the airflow is known, slower air loses up to 1.4 times as much, by the printed multipliers; LOSSCOEFFICIENT gives K as printed. The values at 45 and 90 degrees are from memory.",
    shape: null,
    angle: { name: "turn", usual: 90 },
    rule: "table",
    points: [
      ...byAngle(smacna, [
        [20, 0.08],
        [30, 0.16],
      ]),
      ...byAngle(smacnaMemory, [[45, 0.34]]),
      ...byAngle(smacna, [
        [60, 0.55],
        [75, 0.81],
      ]),
      ...byAngle(smacnaMemory, [[90, 1.2]]),
    ],
  },
];
