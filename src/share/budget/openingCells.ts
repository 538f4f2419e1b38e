import { STANDARD_DENSITY } from "../../core/air/constants";
import type { RunColumn } from "../../reference/runColumns";
import { numberText } from "../references";
import type { ColumnCells } from "./blockNames";
import type { RunsReader } from "./runsReader";
import { isBlank, oneOfTwo } from "./words";

/** Where air comes in: the hood and what it wants, its gate, its leaks. */
export function openingCells(
  reader: RunsReader,
): ColumnCells<"hood" | "wanted" | "gate" | "leakAlways" | "leakOpen" | "leakShut" | "leakArea"> {
  const { place, source, lookups, unlessNumber, used, optional, numbers } = reader;
  return {
    hood: {
      heading: "K of hood, -1 none",
      formula: (row) => {
        const named = optional(row, "Hood", "-1", (cell) => unlessNumber(cell, "Hood", lookups.hood(cell)));
        return used(row, portK(reader, row, named));
      },
    },
    wanted: { heading: "Airflow wanted (m³/s)", formula: numbers("Airflow") },
    gate: {
      heading: "Gate: 1 open, 2 shut",
      formula: (row) => used(row, source.has("Gate") ? oneOfTwo(source.cell("Gate", row), "open", "shut", 0) : "0"),
    },
    leakAlways: { heading: "Leak area, always (m²)", formula: (row) => used(row, leakArea(reader, "Leak", row)) },
    leakOpen: { heading: "more while open", formula: (row) => used(row, leakArea(reader, "Leak open", row)) },
    leakShut: { heading: "more while shut", formula: (row) => used(row, leakArea(reader, "Leak shut", row)) },
    leakArea: {
      heading: "Leak area (m²)",
      formula: (row) => {
        const [always, open, shut, gate] = (["leakAlways", "leakOpen", "leakShut", "gate"] as const).map((column) =>
          place.cell(column, row),
        );
        return `${always}+IF(${gate}=1,${open},IF(${gate}=2,${shut},0))`;
      },
    },
  };
}

/** K of a machine's port from its static suction at an airflow, in standard air; what the column Hood says where there is none. */
function portK({ place, source, inSI }: RunsReader, row: number, named: string): string {
  if (!source.has("Port suction") || !source.has("Port airflow")) return named;
  const [suction, airflow] = [source.cell("Port suction", row), source.cell("Port airflow", row)];
  const number = (cell: string, column: RunColumn): string => `(${inSI(cell, column)})`;
  const velocity = `(${number(airflow, "Port airflow")}/(PI()/4*${place.cell("diameter", row)}^2))`;
  const k = `${number(suction, "Port suction")}/(${numberText(STANDARD_DENSITY)}/2*${velocity}^2)-1`;
  const alone = source.has("Hood") ? isBlank(source.cell("Hood", row)) : "TRUE";
  const measured = `IF(AND(${alone},NOT(${isBlank(suction)}),NOT(${isBlank(airflow)})),${k},NA())`;
  return `IF(AND(${isBlank(suction)},${isBlank(airflow)}),${named},IF(${measured}>=0,${measured},NA()))`;
}

const leakArea = (
  { place, lookups, unlessNumber, optional }: RunsReader,
  column: "Leak" | "Leak open" | "Leak shut",
  row: number,
): string =>
  optional(row, column, "0", (cell) =>
    unlessNumber(cell, column, lookups.gateOpening(cell, place.cell("diameter", row))),
  );
