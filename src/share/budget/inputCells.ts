import { SEPARATOR_EXPONENT } from "../../core/devices/deviceLoss";
import { neededColumns, quantityOfColumn } from "../../reference/columnsOfRuns";
import { DEFAULT_DUST } from "../../reference/transport";
import { EXIT, lossFamilies } from "../../reference/lossFamilies";
import { DEFAULT_MATERIAL, SMOOTH_HOSE } from "../../reference/materials";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import type { RunColumn } from "../../reference/runColumns";
import { STANDARD_DENSITY } from "../../core/air/constants";
import { numberText, quotedText } from "../references";
import type { BlockColumn, BlockPlace } from "./block";
import type { BudgetColumn, BudgetScalar, inputColumns } from "./blockNames";
import type { BudgetLookups } from "./lookups";
import { hoseLength, hoseLies, hoseTimes, hoseWords, isSmooth } from "./hoseCells";
import { numberOfWord, sparkName } from "./metalWords";
import type { RunsSource } from "./runsSource";
import { endsInTheOpen, troubleOf } from "./troubleCells";
import { isBlank, nameKey, numberOf, oneOfTwo, times, unlessNumber } from "./words";

export type Place = BlockPlace<BudgetColumn, BudgetScalar>;

type InputColumn = (typeof inputColumns)[number];

/** A cell's text for a formula with what stands for a blank in front of it; a column that is not there is that too. */
const optionalCell =
  (source: RunsSource, row: number) =>
  (column: RunColumn, blank: string, read: (cell: string) => string): string =>
    source.has(column) ? `IF(${isBlank(source.cell(column, row))},${blank},${read(source.cell(column, row))})` : blank;

/** What each row of the runs table says, in SI, in the table's own order. */
export function inputCells(
  place: Place,
  source: RunsSource,
  lookups: BudgetLookups,
  system: UnitSystem,
  strides: number,
): BlockColumn<BudgetColumn>[] {
  const factorOf = (column: RunColumn): number => unitOf(quantityOfColumn(column), system).factor;
  const used = (row: number, formula: string, unused = "0"): string =>
    `IF(${place.cell("used", row)}>0,${formula},${unused})`;
  const number =
    (column: RunColumn, blank = "0") =>
    (row: number) =>
      used(
        row,
        optionalCell(source, row)(column, blank, (cell) => times(numberOf(cell), factorOf(column))),
      );
  const columns: Record<InputColumn, { heading: string; edge?: number; formula: (row: number) => string }> = {
    used: {
      heading: "Row, where used",
      formula: (row) =>
        `IF(AND(${neededColumns.map((column) => isBlank(source.cell(column, row))).join(",")}),0,${row})`,
    },
    name: { heading: "Run", formula: (row) => used(row, nameOf(source.cell("Run", row)), '""') },
    key: { heading: "Run, to compare", formula: (row) => used(row, nameKey(source.cell("Run", row)), '""') },
    toKey: {
      heading: "To, to compare",
      formula: (row) => used(row, optionalCell(source, row)("To", '"r:"', nameKey), '""'),
    },
    side: {
      heading: "Side: 1 suction, 2 discharge",
      formula: (row) =>
        used(row, source.has("Side") ? oneOfTwo(source.cell("Side", row), "suction", "discharge", 1) : "1"),
    },
    into: {
      heading: "Joins row",
      formula: (row) =>
        `IF(${place.cell("side", row)}=1,IF(${place.cell("toKey", row)}="r:fan",0,MATCH(${place.cell("toKey", row)},${place.all("key")},0)),0)`,
    },
    diameter: {
      heading: "Diameter (m)",
      formula: (row) => used(row, times(numberOf(source.cell("Diameter", row)), factorOf("Diameter"))),
    },
    length: { heading: "Length (m)", formula: number("Length") },
    hose: {
      heading: "Hose (m)",
      formula: (row) =>
        used(
          row,
          optionalCell(source, row)("Flex", "0", (cell) => times(`(${hoseLength(cell)})`, factorOf("Flex"))),
        ),
    },
    hoseWords: {
      heading: "Hose, in words",
      formula: (row) => used(row, source.has("Flex") ? hoseWords(source.cell("Flex", row)) : '""', '""'),
    },
    hoseLies: { heading: "how it lies", formula: (row) => hoseLies(place.cell("hoseWords", row)) },
    hoseTimes: {
      heading: "costs so many times",
      formula: (row) => used(row, hoseTimes(place.cell("hoseLies", row), place.cell("diameter", row)), "1"),
    },
    hoseWall: {
      heading: "Its roughness (m)",
      formula: (row) =>
        `IF(${isSmooth(place.cell("hoseWords", row))},${lookups.usualRoughness(SMOOTH_HOSE)},${place.scalar("hoseRoughness")})`,
    },
    roughness: {
      heading: "Roughness (m)",
      formula: (row) =>
        used(
          row,
          optionalCell(source, row)("Material", lookups.usualRoughness(DEFAULT_MATERIAL), (cell) =>
            unlessNumber(cell, lookups.roughness(cell), factorOf("Material")),
          ),
        ),
    },
    fittingList: {
      heading: "Fittings, 0 none",
      formula: (row) =>
        used(
          row,
          optionalCell(source, row)("Fittings", "0", (cell) => cell),
        ),
    },
    coefficient: {
      heading: "K of fittings",
      formula: (row) => {
        const further = optionalCell(source, row)("K", "0", numberOf);
        if (!source.has("Fittings")) return used(row, further);
        const fittings = lookups.fittings(place.onOtherSheets.cell("fittingList", row), source.cell("Diameter", row));
        return used(row, `${fittings}+${further}`);
      },
    },
    exitK: {
      heading: "K of an exit named",
      formula: (row) =>
        used(row, source.has("Fittings") ? `IF(${namesExit(place.cell("fittingList", row))},${lookups.exit},0)` : "0"),
    },
    begins: {
      heading: "1: no run goes to it, after the fan",
      formula: (row) =>
        `IF(${place.cell("side", row)}=2,IF(COUNTIFS(${place.all("toKey")},${place.cell("key", row)},${place.all("side")},2)=0,1,0),0)`,
    },
    leaves: {
      heading: "1: the air leaves it",
      formula: (row) => `IF(${place.cell("side", row)}=2,IF(${endsInTheOpen(place.cell("toKey", row))},1,0),0)`,
    },
    hood: {
      heading: "K of hood, -1 none",
      formula: (row) => {
        const named = optionalCell(source, row)("Hood", "-1", (cell) =>
          unlessNumber(cell, lookups.hood(cell), factorOf("Hood")),
        );
        return used(row, portK(place, source, row, named, factorOf));
      },
    },
    wanted: { heading: "Airflow wanted (m³/s)", formula: number("Airflow") },
    gate: {
      heading: "Gate: 1 open, 2 shut",
      formula: (row) => used(row, source.has("Gate") ? oneOfTwo(source.cell("Gate", row), "open", "shut", 0) : "0"),
    },
    leakArea: {
      heading: "Leak area (m²)",
      formula: (row) => used(row, leakArea(place, source, lookups, row, factorOf)),
    },
    deviceLoss: { heading: "Device loss (Pa)", formula: number("Device loss") },
    deviceAirflow: { heading: "at airflow (m³/s)", formula: number("Device airflow") },
    deviceExponent: { heading: "Exponent", formula: number("Device exponent", String(SEPARATOR_EXPONENT)) },
    dustKey: dustColumn("Dust", "key", '""'),
    dustLow: dustColumn("settles under (m/s)", "low", "0"),
    dustHigh: dustColumn("too fast over (m/s)", "high", "0"),
    brings: {
      heading: "Burns or sparks, by its dust; -1 none typed",
      formula: (row) =>
        used(
          row,
          optionalCell(source, row)("Dust", "-1", (cell) => numberOfWord(lookups.dust(cell).hazard)),
          "-1",
        ),
    },
    sparkName: {
      heading: "Sparks, by its name",
      formula: (row) =>
        used(row, sparkName(place.cell("key", row), source.has("Hood") ? nameKey(source.cell("Hood", row)) : null)),
    },
    far: {
      heading: "Runs to the fan",
      edge: -9,
      formula: (row) =>
        `IF(${place.cell("used", row)}=0,-2,IF(${place.cell("side", row)}=1,${place.cell(`steps${strides}`, row)},-1))`,
    },
    rank: {
      heading: "Order of the flow",
      formula: (row) =>
        `COUNTIF(${place.all("far")},">"&${place.cell("far", row)})+COUNTIF(${place.above("far", row + 1)},${place.cell("far", row)})`,
    },
    trouble: { heading: "Trouble", formula: (row) => used(row, troubleOf(place, source, strides, row), '""') },
    kind: {
      heading: "Answer's row: 1 run, 2 fan",
      formula: (row) =>
        `IF(${place.scalar("ok")}=0,0,IF(${row}<=${place.scalar("last")},IF(${place.cell("used", row)}>0,1,0),IF(${row}=${place.scalar("last")}+1,2,0)))`,
    },
  };
  const strideColumns = Array.from({ length: strides + 1 }, (_, stride) => strideCells(place, stride)).flat();
  return [
    ...Object.entries(columns).map(([name, column]) => ({ name: name as InputColumn, ...column })),
    ...strideColumns,
  ];

  function dustColumn(heading: string, part: "key" | "low" | "high", unused: string) {
    const read = (cell: string): string => lookups.dust(cell)[part];
    return {
      heading,
      formula: (row: number) =>
        used(row, optionalCell(source, row)("Dust", read(quotedText(DEFAULT_DUST)), read), unused),
    };
  }
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

/** A name without its outer blanks; what is no name is an error. */
const nameOf = (cell: string): string =>
  `IF(OR(${isBlank(cell)},ISLOGICAL(${cell})),NA(),IF(OR(LEFT(${cell},1)=" ",RIGHT(${cell},1)=" "),TRIM(${cell}),${cell}&""))`;

/** K of a machine's port from its static suction at an airflow, in standard air; what the column Hood says where there is none. */
function portK(
  place: Place,
  source: RunsSource,
  row: number,
  named: string,
  factorOf: (column: RunColumn) => number,
): string {
  if (!source.has("Port suction") || !source.has("Port airflow")) return named;
  const [suction, airflow] = (["Port suction", "Port airflow"] as const).map((column) => source.cell(column, row));
  const inSI = (cell: string, column: RunColumn): string => `(${times(numberOf(cell), factorOf(column))})`;
  const velocity = `(${inSI(airflow!, "Port airflow")}/(PI()/4*${place.cell("diameter", row)}^2))`;
  const k = `${inSI(suction!, "Port suction")}/(${numberText(STANDARD_DENSITY)}/2*${velocity}^2)-1`;
  const alone = source.has("Hood") ? isBlank(source.cell("Hood", row)) : "TRUE";
  const measured = `IF(AND(${alone},NOT(${isBlank(suction!)}),NOT(${isBlank(airflow!)})),${k},NA())`;
  return `IF(AND(${isBlank(suction!)},${isBlank(airflow!)}),${named},IF(${measured}>=0,${measured},NA()))`;
}

/** Always there, and more while the gate is open or shut. */
function leakArea(
  place: Place,
  source: RunsSource,
  lookups: BudgetLookups,
  row: number,
  factorOf: (column: RunColumn) => number,
): string {
  const part = (column: RunColumn): string =>
    optionalCell(source, row)(column, "0", (cell) =>
      unlessNumber(cell, lookups.gateOpening(cell, place.cell("diameter", row)), factorOf(column)),
    );
  const gate = place.cell("gate", row);
  return `${part("Leak")}+IF(${gate}=1,${part("Leak open")},IF(${gate}=2,${part("Leak shut")},0))`;
}

/** Each stride is twice the one before it, so that any way to the fan takes few of them; a loop never arrives. */
function strideCells(place: Place, stride: number): BlockColumn<BudgetColumn>[] {
  const [reach, steps] = [`reach${stride}`, `steps${stride}`] as const;
  if (stride === 0) {
    return [
      { name: reach, heading: "Next row", formula: (row) => place.cell("into", row) },
      { name: steps, heading: "runs on", formula: (row) => `IF(${place.cell("into", row)}>0,1,0)` },
    ];
  }
  const [reachBefore, stepsBefore] = [`reach${stride - 1}`, `steps${stride - 1}`] as const;
  const onward = (column: BudgetColumn, row: number): string => {
    const from = place.cell(reachBefore, row);
    return `IF(${from}=0,0,INDEX(${place.all(column)},${from}))`;
  };
  return [
    { name: reach, heading: "Row reached", formula: (row) => onward(reachBefore, row) },
    {
      name: steps,
      heading: "runs on",
      formula: (row) => `${place.cell(stepsBefore, row)}+${onward(stepsBefore, row)}`,
    },
  ];
}
