import { type UnitSystem, unitOf } from "../../../reference/quantities";
import type { Cell } from "../../functions/callFunction";
import type { FanPicture } from "./pictureOf";
import type { PictureRun } from "./runsOfPicture";

/** The points of the fan's picture: where it works first, then the scenarios, then both lines. */
export function fanRows({ works, scenarios, curve, ducts }: FanPicture, system: UnitSystem): Cell[][] {
  const row =
    (what: string) =>
    (point: { x: number; y: number }): Cell[] => [what, point.x, point.y];
  return [
    ["What", `Airflow (${unitOf("airflow", system).label})`, `Pressure (${unitOf("pressure", system).label})`],
    row("works here")(works),
    ...scenarios.map(({ name, point }) => row(`scenario ${name}`)(point)),
    ...ducts.map(row("ducts")),
    ...curve.map(row("fan")),
  ];
}

/** The runs of the tree, with the run before each in words, since a table has no branches. */
export const treeRows = (runs: readonly PictureRun[], system: UnitSystem): Cell[][] => [
  [
    "Run",
    "Junctions to the fan",
    `Diameter (${unitOf("diameter", system).label})`,
    `Airflow (${unitOf("airflow", system).label})`,
    `Velocity (${unitOf("velocity", system).label})`,
    "Dust",
  ],
  ...runs.map(({ name, depth, diameter, airflow, velocity, settles, shut }): Cell[] => [
    name,
    depth,
    diameter,
    airflow,
    velocity,
    shut ? "shut" : settles ? "settles" : "moves",
  ]),
];
