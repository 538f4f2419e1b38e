import { allColumns, columnsForGainsAlone } from "../../../src/reference/columnsOfRuns";
import type { RunColumn } from "../../../src/reference/runColumns";
import type { CellValue } from "../../../src/sheets/workbook";
import { lots } from "../../support/lots";

/** What BUDGET reads. */
const HEADER = allColumns.filter((column) => !columnsForGainsAlone.includes(column));

type Row = Partial<Record<RunColumn, CellValue>>;

/** A runs table drawn by lot from a seed, the same on every machine, its rows in no order: trees with leaks, shut gates and hoods that ask for nothing. */
export function seededTable(seed: number, count: number, units: "IP" | "SI"): CellValue[][] {
  const lot = lots(seed);
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(lot() * items.length)]!;
  const [inch, foot, cfm, gauge, squareInch] = units === "IP" ? [1, 1, 1, 1, 1] : [25.4, 0.3, 1.7, 249, 645];
  const joins = Array.from({ length: count }, (_, run) =>
    run === 0 ? -1 : lot() < 0.5 ? run - 1 : Math.floor(lot() * run),
  );
  const joined = new Set(joins);
  const rows = joins.map((to, run): Row => {
    const end = !joined.has(run);
    const device = pick([null, null, 1]);
    return {
      Run: `Run ${run}`,
      To: to < 0 ? "Fan" : `run ${to}`,
      Diameter: (3 + lot() * 5) * inch,
      Length: pick([null, lot() * 20 * foot]),
      Material: pick([null, "galvanised steel", "Hose", 0.01 * inch]),
      Flex: end ? pick([null, 3 * foot, "2 compressed 12%", "1.5 Smooth-bore as it hangs", "2 corrugated"]) : 0,
      Fittings: pick([
        null,
        "elbow 1.5 x2; branch 30",
        "elbow 2; 0.3",
        0.25,
        "branch 45; 0.1",
        "wye 90 plain; branch",
        "lateral 75 x2",
      ]),
      K: pick([null, 0.1]),
      Hood: end ? pick([null, "flanged end", 0.5, "Grinder hood"]) : null,
      Airflow: end ? pick([400 * cfm, 300 * cfm, 0, null]) : pick([null, null, 50 * cfm]),
      Gate: pick(["open", "open", "open", null, "SHUT"]),
      Leak: pick([null, null, 0.5 * squareInch]),
      "Leak open": pick([null, "open bare slot", 0.2 * squareInch]),
      "Leak shut": pick([null, "shut packed"]),
      "Device loss": device === null ? null : device * gauge,
      "Device airflow": device === null ? null : 800 * cfm,
      "Device exponent": device === null ? null : pick([null, 1, 1.7]),
      Dust: pick([null, null, "wood chips", "dry dust", "grinding main", "heavy dust", "vapour", "metal turnings"]),
    };
  });
  rows.push({
    Run: "tip",
    Diameter: (6 + lot() * 5) * inch,
    Fittings: pick([null, "exit", "0.3; outlet x2"]),
    Side: "discharge",
  });
  rows.push({
    Run: "chimney",
    To: pick(["outside", "tip"]),
    Diameter: 9 * inch,
    Length: 5 * foot,
    Fittings: "elbow 2",
    Leak: squareInch,
    "Device loss": gauge,
    "Device airflow": 1000 * cfm,
    "Device exponent": 1,
    Side: "discharge",
  });
  for (let last = rows.length - 1; last > 0; last--) {
    const other = Math.floor(lot() * (last + 1));
    [rows[last], rows[other]] = [rows[other]!, rows[last]!];
  }
  rows.splice(Math.floor(lot() * rows.length), 0, {}); // a blank row
  return [[...HEADER], ...rows.map((row) => HEADER.map((column) => row[column] ?? null))];
}

/** A tree that holds each hard case once: nested mains, a shut main over open hoods, an idle leaking arm, equal paths, names with signs. */
export const hardTable: CellValue[][] = [
  ["Run", "To", "Diameter", "Length (of it)", "Hood", "Airflow", "Gate", "Leak"],
  ["saw*", "MAIN-one", 100, 3, "plain end", 600, "open", 50],
  ["2", "main one", 100, 3, "plain end", 600, "open", 50],
  ["main one", "trunk", 150, 4, null, null, null, null],
  ["idle arm", "trunk", 100, 2, null, null, null, 80],
  ["leaking end", "idle arm", 100, 2, "flanged end", null, "shut", 100],
  ["closed main", "trunk", 120, 2, null, null, "shut", 30],
  ["behind it", "closed main", 100, 2, "flanged end", 500, "open", 40],
  ["trunk", "fan", 200, 5, null, null, null, 10],
];
