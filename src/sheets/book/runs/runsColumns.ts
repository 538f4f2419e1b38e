import type { Quantity } from "../../../reference/quantities";
import type { RunColumn } from "../layout";

interface Column {
  readonly quantity?: Quantity; // its unit stands in the header
  readonly width: number;
  readonly note: string; // told where the header is selected
}

/** What each column of the runs table takes. */
export const runsColumns: Readonly<Record<RunColumn, Column>> = {
  Run: {
    width: 18,
    note: "A name of its own for each piece of duct between two junctions. A change of size begins a new run.",
  },
  To: {
    width: 13,
    note: "The run that it joins, spelled as there; fan for the last one, outside for what stands after the fan.",
  },
  Airflow: {
    quantity: "airflow",
    width: 9,
    note: "What a hood should draw. Only hoods take an airflow; mains add up what joins them.",
  },
  Diameter: { quantity: "diameter", width: 11, note: "Inside diameter." },
  Length: { quantity: "length", width: 8.5, note: "Length of pipe, without hose." },
  Flex: { quantity: "length", width: 7, note: "Length of hose, drawn out." },
  Hood: {
    width: 14,
    note: "How the air enters: a name from the table hoods, or its loss coefficient K. Only open ends have one.",
  },
  Fittings: {
    width: 22,
    note: "Names from the table fittings, with r/D or angle and how many, between ; such as: elbow 1.5 x2; branch 30. Others: elbow 5-piece 1.5, elbow smooth 2, tee, mitre 90, gate, contraction, expansion, exit, weather cap. A bare number is a K.",
  },
  Gate: {
    width: 8.5,
    note: "open or shut; blank where there is none.",
  },
  Material: {
    width: 19,
    note: "A name from the table materials, or a roughness (in inches, or in mm). Blank: galvanised steel.",
  },
  "Device loss": { quantity: "pressure", width: 11, note: "Loss of a separator or filter at its rated airflow." },
  "Device airflow": { quantity: "airflow", width: 9.5, note: "The airflow at which that loss was rated." },
  "Device exponent": { width: 11, note: "2 for a separator, 1 for a filter. Blank: 2." },
  "Device clean loss": {
    quantity: "pressure",
    width: 11,
    note: "Loss when it is clean, where it is dirty now: what cleaning would give is then tried too.",
  },
  Dust: {
    width: 14,
    note: "What it carries. As on the first sheet, unless you type another name from the table transport.",
  },
  Side: { width: 12, note: "suction, or discharge for what stands after the fan. Blank: suction." },
  Leak: {
    quantity: "openArea",
    width: 8,
    note: "An open area at the run's upstream end, always there: a bin's lid, a loose joint. Or a name from the table gates, such as loose collar.",
  },
  "Leak open": {
    width: 18,
    note: "What leaks while the gate is open: a gate's condition from the table gates (an estimate), or an area in the unit of the column Leak.",
  },
  "Leak shut": {
    width: 18,
    note: "What leaks while the gate is shut: a gate's condition from the table gates (an estimate), or an area in the unit of the column Leak.",
  },
};
