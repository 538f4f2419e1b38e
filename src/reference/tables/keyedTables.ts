import { cautions } from "../cautions";
import { type ClosedDamperRow, closedDampers } from "../closedDampers";
import { devices } from "../devices";
import { exposureLimits } from "../exposureLimits";
import { filters } from "../filters";
import { gateConditions } from "../gateConditions";
import { hazards } from "../hazards";
import { leakageClasses } from "../leakageClasses";
import { machines } from "../machines";
import { materials } from "../materials";
import { fromSI, type Quantity, type UnitSystem, unitOf } from "../quantities";
import type {
  CautionRow,
  DeviceRow,
  ExposureRow,
  FilterRow,
  GateConditionRow,
  HazardRow,
  LeakageClassRow,
  MachineRow,
  RoughnessRow,
  TradeSizeRow,
  TransportRow,
} from "../schema";
import { tradeSizes } from "../tradeSizes";
import { transport } from "../transport";
import { aliases, both, type Field, keyedTable, number, text } from "./referenceTable";

export const materialTable = keyedTable<RoughnessRow>("materials", "Wall roughness of duct materials", materials, [
  aliases,
  both("roughness", "diameter", (row) => row.roughness),
  both("low", "diameter", (row) => row.low),
  both("high", "diameter", (row) => row.high),
]);

export const transportTable = keyedTable<TransportRow>("transport", "Velocities that keep a dust moving", transport, [
  aliases,
  both("low", "velocity", (row) => row.low),
  both("high", "velocity", (row) => row.high),
]);

export const machineTable = keyedTable<MachineRow>("machines", "Airflow asked for at machines", machines, [
  both("airflow", "airflow", (row) => row.airflow),
  both("airflow high", "airflow", (row) => row.airflowHigh),
  both("port", "diameter", (row) => row.port),
]);

export const leakageTable = keyedTable<LeakageClassRow>("leakage", "Seam leakage classes", leakageClasses, [
  aliases,
  text("system", (row) => row.system),
  number("class", "cfm per 100 ft² at 1 in.w.g.", (row) => (row.system === "CL" ? row.value : null)),
  number("coefficient", "L/(s m²) per Pa^0.65", (row) => (row.system === "EN" ? row.value : null)),
]);

export const gateTable = keyedTable<GateConditionRow>("gates", "Leak of slide gates, estimates", gateConditions, [
  aliases,
  text("state", (row) => row.state),
  both("gap", "diameter", (row) => row.gap),
  number("length / diameter", "", (row) => row.lengthPerDiameter),
]);

export const damperTable = keyedTable<ClosedDamperRow>("dampers", "Leak of shut dampers and joints", closedDampers, [
  both("leak over face area", "velocity", (row) => row.faceVelocity),
  both("leak", "airflow", (row) => row.airflow),
  both("diameter", "diameter", (row) => row.diameter),
  both("pressure", "pressure", (row) => row.pressure),
]);

const FILTER_QUANTITIES: Readonly<Record<FilterRow["quantity"], Quantity>> = {
  "face velocity": "velocity",
  "pressure drop": "pressure",
  efficiency: "ratio",
  coefficient: "ratio",
  use: "ratio",
};

/** A filter's rows differ in kind: low, high and their unit, once per system. */
const filterRange = (system: UnitSystem): Field<FilterRow> => ({
  columns: ["low", "high", "unit"].map((name) => ({ name, unit: system === "SI" ? "SI" : "I-P" })),
  cells: (row) => {
    const unit = unitOf(FILTER_QUANTITIES[row.quantity], system);
    const shown = (value: number | null) => (value === null ? null : Number(fromSI(value, unit).toPrecision(6)));
    return [shown(row.low), shown(row.high), unit.label];
  },
});

export const filterTable = keyedTable<FilterRow>("filters", "Filters and cyclones", filters, [
  text("quantity", (row) => row.quantity),
  filterRange("SI"),
  filterRange("IP"),
]);

export const deviceTable = keyedTable<DeviceRow>("devices", "Losses of separators and filters", devices, [
  both("low", "pressure", (row) => row.low),
  both("high", "pressure", (row) => row.high),
  number("exponent", "", (row) => row.exponent),
]);

export const exposureTable = keyedTable<ExposureRow>("exposure", "Exposure limits of wood dust", exposureLimits, [
  text("region", (row) => row.region),
  text("fraction", (row) => row.fraction),
  number("limit", "mg/m³", (row) => (row.limit === null ? null : row.limit * 1e6)),
  text("since", (row) => row.since),
  text("in force", (row) => row.inForce),
]);

export const hazardTable = keyedTable<HazardRow>("hazards", "Health, explosion, siting and law", hazards, [
  text("topic", (row) => row.topic),
  text("fact", (row) => row.fact),
  text("date", (row) => row.date),
]);

export const tradeSizeTable = keyedTable<TradeSizeRow>("trade sizes", "Stock diameters", tradeSizes, [
  text("series", (row) => row.series),
  both("diameter", "diameter", (row) => row.diameter),
]);

export const cautionTable = keyedTable<CautionRow>("cautions", "Cautions", cautions, [
  text("topic", (row) => row.topic),
  text("caution", (row) => row.text),
]);
