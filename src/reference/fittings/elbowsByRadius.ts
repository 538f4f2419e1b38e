import { byAngle, byShape } from "../points";
import type { LossFamily, Provenance, ShapeAxis } from "../schema";

const smacna: Provenance = { source: "smacna4th", locator: "Table A-7, p A.15", basis: "read", checked: "2026-11-27" };
const smacnaMemory: Provenance = {
  source: "smacna4thMemory",
  locator: "Table A-7, p A.15",
  basis: "from memory",
  checked: null,
};
const ashrae: Provenance = {
  source: "ashrae2009si",
  locator: "p 21.26 to 21.27, fitting CD3-12",
  basis: "read",
  checked: "2026-11-27",
};
const ashraeCopy: Provenance = { ...ashrae, source: "ashrae2009copy", basis: "second-hand", checked: "2026-11-28" };
const manual: Provenance = {
  source: "ventilationManual",
  locator: "table 6",
  basis: "second-hand",
  checked: "2026-11-27",
};
const half: Provenance = { ...manual, locator: "table 6: half the value for 90 degrees" };
const acgih: Provenance = {
  source: "acgihMemory",
  locator: "elbow losses, to about the 20th edition",
  basis: "from memory",
  checked: null,
};

const drain: Provenance = {
  source: "commonPractice",
  locator: "short and long-sweep drain elbows, estimate",
  basis: "common practice",
  checked: null,
};

const flexBend: Provenance = {
  source: "flexBendAbstract",
  locator: "K about 2.0 for 90 and 1.25 for 45 degrees, r/D 1 and 1.5",
  basis: "second-hand",
  checked: "2026-11-28",
};
const wideBend: Provenance = {
  source: "commonPractice",
  locator: "wide bends of hose, estimate",
  basis: "common practice",
  checked: null,
};

const radius: ShapeAxis = { name: "r/D", quantity: "ratio", usual: 1.5 };
const turn = { name: "turn", usual: 90 } as const;

/** Round elbows whose printed coefficient goes by the centreline radius over the diameter. */
export const elbowsByRadius: readonly LossFamily[] = [
  {
    key: "elbow 4-piece",
    // Plain "elbow" means this one, a judgement: at r/D 1.5 it has 0.27, a smooth one 0.15, one of 3 pieces 0.34.
    aliases: ["elbow", "elbow four-piece", "elbow segmented", "segmented elbow"],
    kind: "fitting",
    label: "Round elbow of 4 pieces",
    note: "Plain elbow means this one, our choice: more than a smooth one, less than one of 3 pieces. A filled sheet after the 22nd edition of the ACGIH manual has the same.",
    shape: radius,
    angle: turn,
    rule: "elbow",
    points: byShape(smacna, [
      [0.75, 0.5],
      [1, 0.37],
      [1.5, 0.27],
      [2, 0.24],
    ]),
  },
  {
    key: "elbow 5-piece",
    aliases: ["elbow five-piece"],
    kind: "fitting",
    label: "Round elbow of 5 pieces",
    note: "By r/D; ASHRAE's table by diameter (elbow gored) gives more in small ducts.",
    shape: radius,
    angle: turn,
    rule: "elbow",
    points: byShape(smacna, [
      [0.75, 0.46],
      [1, 0.33],
      [1.5, 0.24],
      [2, 0.19],
    ]),
  },
  {
    key: "elbow 3-piece",
    aliases: ["elbow three-piece", "elbow 3-gore"],
    kind: "fitting",
    label: "Round elbow of 3 pieces",
    note: "The value at r/D 0.5 comes from another book, whose text leaves its row uncertain.",
    shape: radius,
    angle: turn,
    rule: "elbow",
    points: [
      ...byShape({ ...smacna, locator: "Table A-7, p A.15, row assignment uncertain" }, [[0.5, 0.98]]),
      ...byShape(ashrae, [
        [0.75, 0.54],
        [1, 0.42],
      ]),
      ...byShape(ashraeCopy, [[1.5, 0.34]]),
      ...byShape(ashrae, [[2, 0.33]]),
    ],
  },
  {
    key: "elbow adjustable",
    aliases: ["adjustable elbow"],
    kind: "fitting",
    label: "Round elbow whose gores turn on each other, as stock elbows are",
    note: "Taken as an elbow of 3 pieces at r/D 1, where such elbows mostly lie: an estimate, no table of them was found. Its turning joints leak; seal them. Up to 1.0.0 the name meant elbow 4-piece at r/D 1.5.",
    shape: { ...radius, usual: 1 },
    angle: turn,
    rule: "elbow",
    points: byShape(
      { source: "commonPractice", locator: "as elbow 3-piece", basis: "common practice", checked: null },
      [
        [0.75, 0.54],
        [1, 0.42],
        [1.5, 0.34],
        [2, 0.33],
      ],
    ),
  },
  {
    key: "elbow drain",
    aliases: ["drain elbow", "elbow pvc", "pvc elbow"],
    kind: "fitting",
    label: "Short drain or sewer elbow of plastic, r/D about 1",
    note: "An estimate, 0.3 to 0.5 at 90 degrees: smooth inside, but a short bend, a step in each socket. Plastic charges with dust: see the cautions.",
    shape: null,
    angle: turn,
    rule: "table",
    points: byAngle(drain, [
      [22.5, 0.12],
      [45, 0.22],
      [90, 0.4],
    ]),
  },
  {
    key: "elbow drain long",
    aliases: ["long sweep elbow", "drain elbow long sweep"],
    kind: "fitting",
    label: "Long-sweep drain elbow of plastic, r/D about 1.5",
    note: "An estimate, 0.2 to 0.3 at 90 degrees: smooth inside, with a step in each socket.",
    shape: null,
    angle: turn,
    rule: "table",
    points: byAngle(drain, [
      [22.5, 0.08],
      [45, 0.15],
      [90, 0.25],
    ]),
  },
  {
    key: "hose bend",
    aliases: ["bend of hose", "flex bend", "hose elbow"],
    kind: "fitting",
    label: "Bend of a hose, beyond what its straight length costs",
    note: "Tests of ventilation hose at r/D 1 and 1.5 found about 2.0 at 90 and 1.25 at 45 degrees (an abstract); wider bends are estimates. Count the hose's length in Flex as well.",
    shape: { name: "r/D", quantity: "ratio", usual: 1.25 },
    angle: turn,
    rule: "table",
    points: [
      ...byShape(flexBend, [[1.25, 1.25]], 45),
      ...byShape(
        wideBend,
        [
          [3, 0.5],
          [6, 0.25],
        ],
        45,
      ),
      ...byShape(flexBend, [[1.25, 2]], 90),
      ...byShape(
        wideBend,
        [
          [3, 0.9],
          [6, 0.45],
        ],
        90,
      ),
    ],
  },
  {
    key: "elbow smooth",
    aliases: ["smooth elbow", "elbow pressed", "elbow long radius", "elbow molded", "elbow moulded"],
    kind: "fitting",
    label: "Round elbow, smooth or die-stamped",
    note: "Disagrees with elbow smooth manual (0.17 at r/D 1.5) and elbow older manual (0.39). The values at r/D 1 and 2.5 are from memory.",
    shape: radius,
    angle: turn,
    rule: "elbow",
    points: [
      ...byShape(smacna, [
        [0.5, 0.71],
        [0.75, 0.33],
      ]),
      ...byShape(smacnaMemory, [[1, 0.22]]),
      ...byShape(smacna, [
        [1.5, 0.15],
        [2, 0.13],
      ]),
      ...byShape(smacnaMemory, [[2.5, 0.12]]),
    ],
  },
  {
    key: "elbow smooth manual",
    aliases: ["smooth elbow manual"],
    kind: "fitting",
    label: "Round elbow, smooth, another manual",
    note: "Disagrees with elbow smooth by 0.02 to 0.05. Its manual takes half for 45 degrees.",
    shape: radius,
    angle: turn,
    rule: "table",
    points: [
      ...byShape(
        half,
        [
          [0.75, 0.19],
          [1, 0.13],
          [2, 0.075],
        ],
        45,
      ),
      ...byShape({ ...half, checked: null }, [[1.5, 0.085]], 45),
      ...byShape(
        manual,
        [
          [0.75, 0.38],
          [1, 0.26],
          [2, 0.15],
        ],
        90,
      ),
      ...byShape({ ...manual, checked: null }, [[1.5, 0.17]], 90),
    ],
  },
  {
    key: "elbow older manual",
    aliases: [],
    kind: "fitting",
    label: "Round elbow, older exhaust manual",
    note: "Used to about 1988, the highest of all: 0.39 at r/D 1.5, later 0.15 to 0.27. The last value lies above the one before, as remembered.",
    shape: radius,
    angle: turn,
    rule: "elbow",
    points: byShape(acgih, [
      [1.25, 0.55],
      [1.5, 0.39],
      [1.75, 0.32],
      [2, 0.27],
      [2.25, 0.26],
      [2.5, 0.22],
      [2.75, 0.26],
    ]),
  },
];
