import { SEPARATOR_EXPONENT } from "../../core/devices/deviceLoss";
import { EXIT, lossFamilies } from "../../reference/lossFamilies";
import type { ColumnCells } from "./blockNames";
import type { RunsReader } from "./runsReader";

/** What a run loses beside its walls: fittings, further coefficients and a device. */
export function lossCells({
  typedDiameter,
  place,
  source,
  lookups,
  used,
  optional,
  numbers,
}: RunsReader): ColumnCells<
  | "fittingList"
  | "wrongEntry"
  | "coefficient"
  | "mitreK"
  | "branchNamed"
  | "branchAt"
  | "exitK"
  | "deviceLoss"
  | "deviceAirflow"
  | "deviceExponent"
> {
  const branchOf = (row: number): { readonly angle: string; readonly k: string } =>
    lookups.branch(place.onOtherSheets.cell("fittingList", row), typedDiameter(row));
  return {
    fittingList: {
      heading: "Fittings, 0 none",
      formula: (row) =>
        used(
          row,
          optional(row, "Fittings", "0", (cell) => cell),
        ),
    },
    wrongEntry: {
      heading: "First entry that is none",
      formula: (row) =>
        source.has("Fittings")
          ? lookups.wrongEntry(place.onOtherSheets.cell("fittingList", row), typedDiameter(row))
          : '""',
    },
    coefficient: {
      heading: "K of fittings",
      formula: (row) => {
        const further = optional(row, "K", "0", (cell) => `(0+${cell})`);
        if (!source.has("Fittings")) return used(row, further);
        const fittings = lookups.fittings(place.onOtherSheets.cell("fittingList", row), typedDiameter(row));
        const { k } = branchOf(row);
        return used(row, `${fittings}+${further}-IF(${place.cell("branchAt", row)}>0,${k},0)`);
      },
    },
    mitreK: {
      heading: "of which mitres",
      formula: (row) =>
        used(
          row,
          source.has("Fittings")
            ? lookups.mitres(place.onOtherSheets.cell("fittingList", row), typedDiameter(row))
            : "0",
        ),
    },
    branchNamed: {
      heading: "Branch named at (degrees; below 0: plain)",
      formula: (row) => used(row, source.has("Fittings") ? branchOf(row).angle : "0"),
    },
    branchAt: {
      heading: "of them by which it joins a run",
      formula: (row) => {
        const joins = `AND(${place.cell("side", row)}=1,${place.cell("toKey", row)}<>"r:fan")`;
        return used(row, `IF(${joins},${place.cell("branchNamed", row)},0)`);
      },
    },
    exitK: {
      heading: "K of an exit named",
      formula: (row) =>
        used(row, source.has("Fittings") ? `IF(${namesExit(place.cell("fittingList", row))},${lookups.exit},0)` : "0"),
    },
    deviceLoss: { heading: "Device loss (Pa)", formula: numbers("Device loss") },
    deviceAirflow: { heading: "at airflow (m³/s)", formula: numbers("Device airflow") },
    deviceExponent: { heading: "Exponent", formula: numbers("Device exponent", String(SEPARATOR_EXPONENT)) },
  };
}

/** Whether one entry of a list of fittings is an exit, by any of its names and however often. */
function namesExit(list: string): string {
  const entries = `";"&SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(LOWER(${list}),CHAR(10),";"),"-",""),"_","")," ","")&";"`;
  const { key, aliases } = lossFamilies.find((family) => family.key === EXIT)!;
  const found = [key, ...aliases]
    .map((name) => name.replace(/ /g, ""))
    .flatMap((name) => [";", "x", "×"].map((behind) => `ISNUMBER(FIND(";${name}${behind}",${entries}))`));
  return `OR(${found.join(",")})`;
}
