import { gateConditions } from "./gateConditions";
import { machinePorts } from "./hoods/machinePorts";
import { lossFamilies } from "./lossFamilies";
import { materials } from "./materials";
import type { Quantity } from "./quantities";
import { transport } from "./transport";

/** A column that a table of runs may have. */
export interface RunColumnRow {
  readonly name: string; // the header that people type; text in brackets after it is ignored
  readonly kind: "number" | "words"; // what mostly stands there; where it is a number, the header tells its unit
  readonly quantity: Quantity | null; // of the numbers that may stand there; null where only words may
  readonly needed?: true; // no table is one without it
  readonly meansARun?: true; // what stands in it is never a total below the table, so its row is a run that somebody began to type
  readonly leak?: true; // left blank where the same ducts are asked about without their leaks
  readonly forGainsAlone?: true; // no other function reads it
  readonly shown: Shown | null; // on the sheet Runs; null for what people add by hand
}

/** How a column looks on the sheet Runs. */
interface Shown {
  readonly width: number;
  readonly hint: string; // told where the header is selected
  readonly choices?: readonly string[];
  readonly strict?: true; // nothing but the choices; else a number, too, may stand in place of a name
}

const keysOf = (rows: readonly { readonly key: string }[]): string[] => rows.map(({ key }) => key);
/** What a shop owner looks for is a machine, not an end of duct. */
const machinesFirst = (keys: readonly string[]): string[] => [...new Set([...keysOf(machinePorts), ...keys])];
const gatesThatAre = (state: "open" | "shut"): string[] =>
  keysOf(gateConditions.filter((row) => row.state === state || row.state === "either"));

/**
 * The columns of a table of runs, in the order in which the sheet Runs has them. A table may have them in any order, and
 * whoever reads one finds them by their names.
 */
export const runColumns = [
  {
    name: "Run",
    kind: "words",
    quantity: null,
    needed: true,
    shown: {
      width: 14.5,
      hint: "A name of its own for each piece of duct between two junctions. A change of size begins a new run.",
    },
  },
  {
    name: "To",
    kind: "words",
    quantity: null,
    needed: true,
    shown: {
      width: 12,
      hint: "The run that it joins, spelled as there; fan for the last one, outside for what stands after the fan.",
    },
  },
  {
    name: "Airflow",
    kind: "number",
    quantity: "airflow",
    shown: {
      width: 8.5,
      hint: "What a hood should draw. Only hoods take an airflow; mains add up what joins them.",
    },
  },
  {
    name: "Diameter",
    kind: "number",
    quantity: "diameter",
    needed: true,
    shown: { width: 11.5, hint: "Inside diameter. A machine's port of another width is a run of its own, 0 long." },
  },
  {
    name: "Length",
    kind: "number",
    quantity: "length",
    shown: { width: 8.5, hint: "Length of pipe, without hose; 0 where there is none." },
  },
  {
    name: "Flex",
    kind: "number",
    quantity: "length",
    shown: {
      width: 6,
      hint: "Length of hose as it lies. A number: drawn out. Else say how, as in: 10 compressed 15%, or 10 as it hangs; smooth inside: 10 smooth-bore.",
    },
  },
  {
    name: "Hood",
    kind: "words",
    quantity: "ratio",
    meansARun: true,
    shown: {
      width: 18.5,
      hint: "How the air enters: a name from the table hoods, or its loss coefficient K. Only open ends have one.",
      choices: machinesFirst(keysOf(lossFamilies.filter((family) => family.kind === "hood"))),
    },
  },
  {
    name: "Fittings",
    kind: "words",
    quantity: "ratio",
    meansARun: true,
    shown: {
      width: 21.5,
      hint: "Names from the table fittings with r/D or angle and how many, between ; as in: elbow 1.5 x2; branch 30; gate. A branch costs by the airflows that meet; branch 30 plain by its angle alone. A bare number is a K.",
    },
  },
  { name: "K", kind: "number", quantity: "ratio", shown: null },
  {
    name: "Gate",
    kind: "words",
    quantity: null,
    shown: { width: 8.5, hint: "open or shut; blank where there is none.", choices: ["open", "shut"], strict: true },
  },
  {
    name: "Material",
    kind: "words",
    quantity: "diameter",
    shown: {
      width: 19,
      hint: "A name from the table materials, a roughness (in inches, or in mm), or smooth. Blank: galvanised steel.",
      choices: keysOf(materials),
    },
  },
  {
    name: "Device loss",
    kind: "number",
    quantity: "pressure",
    shown: {
      width: 11,
      hint: "Loss of a separator or filter at its rated airflow, in standard air. One that you read in other air: times standard density over that air's, but as read where the exponent is 1.",
    },
  },
  {
    name: "Device airflow",
    kind: "number",
    quantity: "airflow",
    shown: { width: 9.5, hint: "The airflow at which that loss was rated." },
  },
  {
    name: "Device exponent",
    kind: "number",
    quantity: "ratio",
    shown: { width: 11, hint: "2 for a separator, 1 for a filter. Blank: 2." },
  },
  {
    name: "Device clean loss",
    kind: "number",
    quantity: "pressure",
    forGainsAlone: true,
    shown: {
      width: 11,
      hint: "Loss when it is clean, where it is dirty now: what cleaning would give is then tried too.",
    },
  },
  {
    name: "Dust",
    kind: "words",
    quantity: null,
    shown: {
      width: 14,
      hint: "What it carries. As on the first sheet, unless you type another name from the table transport.",
      choices: keysOf(transport),
    },
  },
  {
    name: "Side",
    kind: "words",
    quantity: null,
    shown: {
      width: 12,
      hint: "suction, or discharge for what stands after the fan. Blank: suction, but discharge where To is outside.",
      choices: ["suction", "discharge"],
      strict: true,
    },
  },
  {
    name: "Leak",
    kind: "number",
    quantity: "openArea",
    leak: true,
    shown: {
      width: 8,
      hint: "An open area at the run's upstream end, always there: a bin's lid, a loose joint. Or a name from the table gates, such as loose collar.",
    },
  },
  {
    name: "Leak open",
    kind: "words",
    quantity: "openArea",
    leak: true,
    shown: {
      width: 18,
      hint: "What leaks while the gate is open: a gate's condition from the table gates (an estimate), or an area in the unit of the column Leak.",
      choices: gatesThatAre("open"),
    },
  },
  {
    name: "Leak shut",
    kind: "words",
    quantity: "openArea",
    leak: true,
    shown: {
      width: 18,
      hint: "What leaks while the gate is shut: a gate's condition from the table gates (an estimate), or an area in the unit of the column Leak.",
      choices: gatesThatAre("shut"),
    },
  },
  {
    name: "Port suction",
    kind: "number",
    quantity: "pressure",
    shown: {
      width: 10,
      hint: "In place of Hood: static suction that the machine takes at its port, in standard air, from its manual or measured in a duct of this diameter right behind it.",
    },
  },
  {
    name: "Port airflow",
    kind: "number",
    quantity: "airflow",
    shown: { width: 9.5, hint: "The airflow at which that suction was printed or measured." },
  },
] as const satisfies readonly RunColumnRow[];

export type RunColumn = (typeof runColumns)[number]["name"];

/** Those that the sheet Runs has. */
export type ShownRunColumn = Extract<(typeof runColumns)[number], { shown: object }>["name"];
