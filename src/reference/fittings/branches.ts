import { alone, byAngle } from "../points";
import type { LossFamily, Provenance } from "../schema";

const acgih: Provenance = {
  source: "acgihMemory",
  locator: "branch entry loss, single-factor table",
  basis: "from memory",
  checked: null,
};
const sheet: Provenance = {
  source: "practitionerSheet1995",
  locator: "entry loss, each segment",
  basis: "read",
  checked: "2026-11-27",
};

/** The key of the fitting by which a run joins another. */
export const BRANCH = "branch";

/** Where a branch joins the main. */
export const branches: readonly LossFamily[] = [
  {
    key: BRANCH,
    aliases: ["branch entry", "wye", "lateral", "y-branch"],
    kind: "fitting",
    label: "Branch entry, the branch's own loss",
    note: "On the branch's velocity pressure. Only the value at 45 degrees was read, in a filled sheet; all others are from memory, and no air ratio enters. Where it joins, BUDGET and SOLVE go by airflows and sizes, as JUNCTIONLOSS does, unless plain stands behind it.",
    shape: null,
    angle: { name: "angle between the axes", usual: 45 },
    rule: "table",
    points: [
      ...byAngle(acgih, [
        [10, 0.06],
        [15, 0.09],
        [20, 0.12],
        [25, 0.15],
        [30, 0.18],
        [35, 0.21],
        [40, 0.25],
      ]),
      ...byAngle(sheet, [[45, 0.28]]),
      ...byAngle(acgih, [
        [50, 0.32],
        [60, 0.44],
        [90, 1],
      ]),
    ],
  },
  {
    key: "tee of a project sheet",
    aliases: ["tee", "tee branch", "t-piece"], // its key up to 1.0.0 was "tee"
    kind: "fitting",
    label: "Tee, main with side flow, geometry not told",
    note: "As one project sheet used it, 17.41 Pa at 5.50 m/s, without sizes, flows or leg. branch 90 says what it is.",
    shape: null,
    angle: null,
    rule: "table",
    points: [alone({ source: "projectSheet", locator: "tee row", basis: "read", checked: "2026-11-27" }, 0.96)],
  },
];
