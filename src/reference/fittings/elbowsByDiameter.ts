import { byMillimetres, byShape } from "../points";
import type { LossFamily, Provenance, ShapeAxis } from "../schema";
import { inches } from "../asPrinted";

const ashrae = (fitting: string): Provenance => ({
  source: "ashrae2009si",
  locator: `p 21.26 to 21.27, fitting ${fitting}`,
  basis: "read",
  checked: "2026-11-27",
});
/** Cells of the same table that could not be read. */
const remembered = (fitting: string): Provenance => ({
  ...ashrae(fitting),
  basis: "from memory",
  checked: null,
});
/** The I-P edition prints whole inches where this one rounds to millimetres: its last column reaches a little further. */
const lastInch = (fitting: string): Provenance => ({
  ...remembered(fitting),
  locator: `fitting ${fitting}, last column of the I-P edition`,
});

const diameter: ShapeAxis = { name: "diameter", quantity: "diameter", usual: null };

/** Round elbows whose printed coefficient goes by the duct's diameter, at one radius and one turn per row. */
export const elbowsByDiameter: readonly LossFamily[] = [
  {
    key: "elbow stamped",
    aliases: ["elbow die-stamped", "stamped elbow"],
    kind: "fitting",
    label: "Round elbow, die-stamped, r/D 1.5",
    note: "75 to 254 mm, turns of 45 to 90 degrees. In small ducts it lies above elbow smooth at r/D 1.5.",
    shape: diameter,
    angle: { name: "turn", usual: 90 },
    rule: "table",
    points: [
      ...byMillimetres(
        ashrae("CD3-3"),
        [
          [75, 0.18],
          [100, 0.13],
          [125, 0.1],
          [180, 0.07],
          [200, 0.07],
          [230, 0.07],
        ],
        45,
      ),
      ...byShape(lastInch("CD3-3"), [[inches(10), 0.07]], 45),
      ...byMillimetres(
        ashrae("CD3-1"),
        [
          [75, 0.3],
          [100, 0.21],
          [125, 0.16],
          [180, 0.12],
          [200, 0.11],
          [230, 0.11],
        ],
        90,
      ),
      ...byShape(lastInch("CD3-1"), [[inches(10), 0.11]], 90),
    ],
  },
  {
    key: "elbow pleated",
    aliases: ["pleated elbow"],
    kind: "fitting",
    label: "Round elbow, pleated, r/D 1.5",
    note: "100 to 406 mm, turns of 45 to 90 degrees.",
    shape: diameter,
    angle: { name: "turn", usual: 90 },
    rule: "table",
    points: [
      ...byMillimetres(remembered("CD3-7"), [[100, 0.34]], 45),
      ...byMillimetres(
        ashrae("CD3-7"),
        [
          [150, 0.26],
          [200, 0.21],
          [250, 0.17],
        ],
        45,
      ),
      ...byMillimetres(remembered("CD3-7"), [[300, 0.16]], 45),
      ...byMillimetres(
        ashrae("CD3-7"),
        [
          [350, 0.15],
          [400, 0.15],
        ],
        45,
      ),
      ...byShape(lastInch("CD3-7"), [[inches(16), 0.15]], 45),
      ...byMillimetres(
        ashrae("CD3-5"),
        [
          [100, 0.57],
          [150, 0.43],
          [200, 0.34],
        ],
        90,
      ),
      ...byMillimetres(remembered("CD3-5"), [[250, 0.28]], 90),
      ...byMillimetres(
        ashrae("CD3-5"),
        [
          [300, 0.26],
          [350, 0.25],
          [400, 0.25],
        ],
        90,
      ),
      ...byShape(lastInch("CD3-5"), [[inches(16), 0.25]], 90),
    ],
  },
  {
    key: "elbow gored",
    aliases: ["elbow 5-gore", "gored elbow"],
    kind: "fitting",
    label: "Round elbow, gored, r/D 1.5: 5 gores at 90 degrees, 3 gores at 60 and 45",
    note: "75 to 1500 mm. In ducts under about 200 mm it lies well above elbow 5-piece, which does not go by diameter.",
    shape: diameter,
    angle: { name: "turn", usual: 90 },
    rule: "table",
    points: [
      ...byMillimetres(
        ashrae("CD3-14"),
        [
          [75, 0.31],
          [150, 0.17],
          [230, 0.13],
          [380, 0.11],
          [450, 0.09],
          [530, 0.08],
          [690, 0.07],
          [750, 0.07],
          [1500, 0.07],
        ],
        45,
      ),
      ...byMillimetres(
        remembered("CD3-14"),
        [
          [300, 0.11],
          [600, 0.08],
        ],
        45,
      ),
      ...byMillimetres(
        ashrae("CD3-13"),
        [
          [75, 0.4],
          [150, 0.21],
          [300, 0.14],
          [380, 0.12],
          [450, 0.12],
          [600, 0.1],
          [690, 0.09],
          [750, 0.09],
        ],
        60,
      ),
      ...byMillimetres(
        ashrae("CD3-9"),
        [
          [75, 0.51],
          [230, 0.21],
          [300, 0.18],
          [380, 0.16],
          [530, 0.14],
          [600, 0.13],
          [690, 0.12],
          [1500, 0.12],
        ],
        90,
      ),
      ...byMillimetres(
        remembered("CD3-9"),
        [
          [150, 0.28],
          [450, 0.15],
          [750, 0.12],
        ],
        90,
      ),
    ],
  },
  {
    key: "elbow 7-gore",
    aliases: ["elbow seven-gore"],
    kind: "fitting",
    label: "Round elbow of 90 degrees, 7 gores, r/D 2.5",
    note: "75 to 1500 mm; 90 degrees only.",
    shape: diameter,
    angle: null,
    rule: "table",
    points: byMillimetres(ashrae("CD3-10"), [
      [75, 0.16],
      [150, 0.12],
      [300, 0.08],
      [380, 0.07],
      [450, 0.06],
      [1500, 0.03],
    ]),
  },
];
