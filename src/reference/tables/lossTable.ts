import { elbowAngleMultiplier } from "../fittings/elbowAngleMultiplier";
import { mitreReynoldsMultiplier } from "../fittings/mitreReynoldsMultiplier";
import { lossFamilies } from "../lossFamilies";
import type { LossFamily, LossPoint, Provenance } from "../schema";
import { both, number, provenanceCells, type ReferenceTable, referenceTable, text } from "./referenceTable";

/** One printed value of a loss table, with all that a person needs to read it. */
interface LossRow extends Provenance {
  readonly key: string;
  readonly label: string;
  readonly also: string;
  readonly axis: string;
  readonly ratio: number | null;
  readonly diameter: number | null; // [m]
  readonly angle: number | null; // [degrees]
  readonly coefficient: number;
  readonly counts: string;
  readonly port?: LossFamily["port"];
  readonly note: string;
}

const COUNTS: Readonly<Record<LossFamily["rule"], string>> = {
  table: "K",
  elbow: "K at 90 degrees",
  expansion: "share lost of 1 - ratio²",
};

/** The point's name as a person types it: "elbow smooth 1.5", "elbow stamped 100 mm 45". */
function pointName(family: LossFamily, { shape, angle }: LossPoint): string {
  const inMillimetres = Number(((shape ?? 0) * 1000).toPrecision(6));
  const size = shape === null ? "" : family.shape?.quantity === "diameter" ? ` ${inMillimetres} mm` : ` ${shape}`;
  const turn = angle === null ? "" : family.rule === "expansion" ? ` at ${angle} degrees` : ` ${angle}`;
  return `${family.key}${size}${turn}`;
}

const byShapeThenAngle = (a: LossPoint, b: LossPoint): number =>
  (a.shape ?? 0) - (b.shape ?? 0) || (a.angle ?? 0) - (b.angle ?? 0);

function familyRows(family: LossFamily): LossRow[] {
  const byDiameter = family.shape?.quantity === "diameter";
  return [...family.points].sort(byShapeThenAngle).map((point) => ({
    ...point,
    key: pointName(family, point),
    label: family.label,
    also: family.aliases.join(", "),
    axis: [family.shape?.name, family.angle?.name].filter((name) => name !== undefined).join("; "),
    ratio: byDiameter ? null : point.shape,
    diameter: byDiameter ? point.shape : null,
    counts: COUNTS[family.rule],
    ...(family.port === undefined ? {} : { port: family.port }),
    note: family.note,
  }));
}

const multiplier = (
  name: string,
  label: string,
  axis: string,
  counts: string,
  at: number,
  value: number,
  from: Provenance,
): LossRow => ({
  source: from.source,
  locator: from.locator,
  basis: from.basis,
  checked: from.checked,
  key: `${name} ${at}`,
  label,
  also: "",
  axis,
  ratio: axis === "turn" ? null : at,
  diameter: null,
  angle: axis === "turn" ? at : null,
  coefficient: value,
  counts,
  note: "",
});

const multipliers: readonly LossRow[] = [
  ...elbowAngleMultiplier.map((row) =>
    multiplier(
      "elbow angle multiplier",
      "Elbow of another turn",
      "turn",
      "times K at 90 degrees",
      row.angle,
      row.value,
      row,
    ),
  ),
  ...mitreReynoldsMultiplier.map((row) =>
    multiplier(
      "mitre Reynolds multiplier",
      "Mitre in slow air, applied where the airflow is known",
      "Reynolds number",
      "times K of the mitre",
      row.reynolds,
      row.value,
      row,
    ),
  ),
];

/** Velocity pressure of standard air (0.075 lb/ft³) at 20 m/s [Pa]: manuals print what a machine asks for at that velocity. */
const AT_20 = (1.201384 / 2) * 20 ** 2;

/** What manuals print beside a machine's port, and how far such ports lie apart. */
const ofHoods = [
  both<LossRow>("static suction at 20 m/s", "pressure", (row) => (1 + row.coefficient) * AT_20),
  number<LossRow>("low", "", (row) => row.port?.low ?? null),
  number<LossRow>("high", "", (row) => row.port?.high ?? null),
];

/** One row per printed point, so that each keeps its own source. */
export function lossTable(name: string, title: string, kind: LossFamily["kind"]): ReferenceTable {
  const rows = lossFamilies.filter((family) => family.kind === kind).flatMap(familyRows);
  return referenceTable<LossRow>(
    name,
    title,
    kind === "fitting" ? [...rows, ...multipliers] : rows,
    [
      text("key", (row) => row.key),
      text("label", (row) => row.label),
      text("also", (row) => row.also),
      text("axes", (row) => row.axis),
      number("shape", "", (row) => row.ratio),
      both("diameter", "diameter", (row) => row.diameter),
      number("angle", "degrees", (row) => row.angle),
      number("coefficient", "", (row) => row.coefficient),
      ...(kind === "hood" ? ofHoods : []),
      text("counts as", (row) => row.counts),
      text("note", (row) => row.note),
    ],
    provenanceCells,
  );
}
