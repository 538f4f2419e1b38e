import { runColumns } from "../../../src/reference/runColumns";
import type { CellValue } from "../../../src/sheets/workbook";
import { lots } from "../../support/lots";

/** What BUDGET reads; only GAINS asks for a device's loss when clean. */
const HEADER = runColumns.filter((column) => column !== "Device clean loss");

/** A runs table drawn by lot from a seed, the same on every machine, its rows in no order: trees with leaks, shut gates and hoods that ask for nothing. */
export function seededTable(seed: number, count: number, units: "IP" | "SI"): CellValue[][] {
  const lot = lots(seed);
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(lot() * items.length)]!;
  const [inch, foot, cfm, gauge, squareInch] = units === "IP" ? [1, 1, 1, 1, 1] : [25.4, 0.3, 1.7, 249, 645];
  const joins = Array.from({ length: count }, (_, run) =>
    run === 0 ? -1 : lot() < 0.5 ? run - 1 : Math.floor(lot() * run),
  );
  const joined = new Set(joins);
  const rows = joins.map((to, run): CellValue[] => {
    const end = !joined.has(run);
    const device = pick([null, null, 1]);
    return [
      `Run ${run}`,
      to < 0 ? "Fan" : `run ${to}`,
      (3 + lot() * 5) * inch,
      pick([null, lot() * 20 * foot]),
      pick([null, "galvanised steel", "Hose", 0.01 * inch]),
      end ? pick([null, 3 * foot]) : 0,
      pick([null, "elbow 1.5 x2; branch 30", "elbow 2; 0.3", 0.25]),
      pick([null, 0.1]),
      end ? pick([null, "flanged end", 0.5]) : null,
      end ? pick([400 * cfm, 300 * cfm, 0, null]) : pick([null, null, 50 * cfm]),
      pick(["open", "open", "open", null, "SHUT"]),
      pick([null, null, 0.5 * squareInch]),
      pick([null, "open bare slot", 0.2 * squareInch]),
      pick([null, "shut packed"]),
      device === null ? null : device * gauge,
      device === null ? null : 800 * cfm,
      device === null ? null : pick([null, 1, 1.7]),
      null,
      pick([null, "wood chips", "dry dust"]),
    ];
  });
  const chimney: CellValue[] = [
    "chimney",
    "outside",
    9 * inch,
    5 * foot,
    null,
    null,
    "elbow 2",
    null,
    null,
    null,
    null,
    squareInch,
  ];
  rows.push([...chimney, null, null, gauge, 1000 * cfm, 1, "discharge", null]);
  for (let last = rows.length - 1; last > 0; last--) {
    const other = Math.floor(lot() * (last + 1));
    [rows[last], rows[other]] = [rows[other]!, rows[last]!];
  }
  rows.splice(Math.floor(lot() * rows.length), 0, new Array<CellValue>(HEADER.length).fill(null));
  return [[...HEADER], ...rows];
}

/** A tree that holds each hard case once: nested mains, a shut main over open hoods, an idle leaking arm, equal paths, names with signs. */
export const hardTable: CellValue[][] = [
  ["Run", "To", "Diameter (in)", "Length (ft)", "Hood", "Airflow (cfm)", "Gate", "Leak"],
  ["saw*", "MAIN-one", 100, 3, "plain end", 600, "open", 50],
  ["2", "main one", 100, 3, "plain end", 600, "open", 50],
  ["main one", "trunk", 150, 4, null, null, null, null],
  ["idle arm", "trunk", 100, 2, null, null, null, 80],
  ["leaking end", "idle arm", 100, 2, "flanged end", null, "shut", 100],
  ["closed main", "trunk", 120, 2, null, null, "shut", 30],
  ["behind it", "closed main", 100, 2, "flanged end", 500, "open", 40],
  ["trunk", "fan", 200, 5, null, null, null, 10],
];
