import type { SourceId } from "./sources";

/**
 * How far a row can be trusted.
 * read: seen as printed in the named source (no row was measured off a curve). second-hand: seen in a copy or quotation of it.
 * from memory: known from the trade's literature, not seen. common practice: no source; an estimate to be measured.
 * not read: the source is named, the place where its figure would stand was not seen.
 */
export type Basis = "read" | "second-hand" | "from memory" | "common practice" | "not read";

/** What every row of every table says about itself. */
export interface Provenance {
  readonly source: SourceId;
  readonly locator: string; // table, page or example in the source
  readonly basis: Basis;
  /**
   * Date on which the row's figures were compared, one by one, with the list of figures that had been taken down from the
   * sources. It says that nothing was mistyped since; it does not say that the page itself was opened again. A weak row has
   * none: a memory cannot be held against a page.
   */
  readonly checked: string | null;
}

export interface ReferenceRow extends Provenance {
  readonly key: string; // stable: sheets store it, so never rename or reuse
  readonly label: string; // our words
  readonly note?: string; // one sentence: when it holds, what disagrees with it
}

/** A row that nobody has seen in print is shown as weak wherever it is shown. */
export const isWeak = ({ basis }: Pick<Provenance, "basis">): boolean => basis !== "read" && basis !== "second-hand";

/** Wall roughness of a duct material. */
export interface RoughnessRow extends ReferenceRow {
  readonly aliases: readonly string[]; // other spellings a person may type
  readonly roughness: number; // [m] the value used when the name is given
  readonly low: number; // [m] printed range; equal to roughness where one value is printed
  readonly high: number; // [m]
}

/** One printed loss coefficient of a family of fittings or hoods. */
export interface LossPoint extends Provenance {
  readonly shape: number | null; // on the family's shape axis; a diameter is in [m]
  readonly angle: number | null; // [degrees]
  readonly coefficient: number; // [-] times velocity pressure
}

/**
 * A family of fittings or hood entries: one name, up to two axes, its printed points.
 * The coefficient between points is linear in each axis; outside them it is refused.
 */
export interface LossFamily {
  readonly key: string; // what a person types, lower case: "elbow smooth"
  readonly aliases: readonly string[];
  readonly kind: "fitting" | "hood";
  readonly label: string; // our words: "Round elbow, smooth"
  readonly note: string; // when to use it, which velocity pressure, what disagrees
  readonly shape: ShapeAxis | null;
  readonly angle: AngleAxis | null;
  readonly rule: LossRule;
  readonly port?: PortRange; // of a machine's own port
  readonly points: readonly LossPoint[];
}

/** Between which coefficients the ports of such machines lie, as far as known. */
interface PortRange {
  readonly low: number;
  readonly high: number;
}

export interface ShapeAxis {
  readonly name: string; // "r/D", "area ratio", "diameter"
  readonly quantity: "ratio" | "diameter"; // a diameter is [m] in the points; the duct's own one serves where none is given
  readonly usual: number | null; // taken when the shape is left out; null = must be given
}

export interface AngleAxis {
  readonly name: string; // "turn", "included angle", "angle between the axes"
  readonly usual: number | null; // [degrees]
}

/**
 * table: the points are the coefficients.
 * elbow: the points are for a turn of 90 degrees; the printed multiplier of the angle applies (elbowAngleMultiplier).
 * expansion: the points are the share lost of (1 - ratio^2), ratio = small area / large area, on the smaller duct's velocity
 *   pressure; never more than an abrupt expansion's (1 - ratio)^2.
 */
type LossRule = "table" | "elbow" | "expansion";

/** Smallest velocity that keeps a material moving. */
export interface TransportRow extends ReferenceRow {
  readonly aliases: readonly string[];
  readonly low: number; // [m/s] below it the material settles
  readonly high: number | null; // [m/s] above it nothing is gained
}

/** Airflow asked for at a machine. */
export interface MachineRow extends ReferenceRow {
  readonly airflow: number; // [m3/s]
  readonly airflowHigh: number | null; // [m3/s] upper end where a range is given
  readonly port: number | null; // [m] diameter of the port the source names
}

/** Seam leakage: airflow per duct surface = coefficient * p^0.65. */
export interface LeakageClassRow extends ReferenceRow {
  readonly aliases: readonly string[];
  readonly system: "CL" | "EN";
  readonly value: number; // CL: cfm/100 ft2 at 1 in.w.g.; EN: L/(s m2) per Pa^0.65
}

/** Estimated opening of a slide gate in a named condition. Always an estimate of common practice: measure yours. */
export interface GateConditionRow extends ReferenceRow {
  readonly aliases: readonly string[];
  readonly state: "open" | "shut" | "either";
  readonly gap: number; // [m] width of the opening
  readonly lengthPerDiameter: number; // [-] length of the opening / gate diameter
}

/** Air-to-cloth ratio or pressure drop of a dust filter or separator. */
export interface FilterRow extends ReferenceRow {
  readonly quantity: "face velocity" | "pressure drop" | "efficiency" | "coefficient" | "use";
  readonly low: number | null; // [m/s], [Pa], [-]
  readonly high: number | null;
}

/** Loss of a separator, filter or other device at the airflow that it is rated for. */
export interface DeviceRow extends ReferenceRow {
  readonly low: number; // [Pa]
  readonly high: number; // [Pa]
  readonly exponent: number; // [-] m of (Q / Q0)^m
}

/** An exposure limit for wood dust. */
export interface ExposureRow extends ReferenceRow {
  readonly region: string;
  readonly fraction: "total" | "inhalable" | "respirable" | "not stated";
  readonly limit: number | null; // [kg/m3]; null where no number was read
  readonly since: string; // date or year as printed
  /** Where the limit changes on a known date both rows name it, so that they stay true on the day after. */
  readonly inForce: "yes" | "no" | "disputed" | "recommendation" | "not verified" | `${"from" | "until"} ${string}`;
}

/** A fact about fire, explosion, carcinogenicity, siting or law. */
export interface HazardRow extends ReferenceRow {
  readonly topic:
    "carcinogen" | "explosion" | "siting" | "design" | "scope" | "control" | "noise" | "lockout" | "limit";
  readonly fact: string; // our words, with the number and its unit
  readonly date: string; // of the source
}

/** Stock duct diameters. */
export interface TradeSizeRow extends ReferenceRow {
  readonly series: "inch" | "EN 1506" | "metric stock" | "drain pipe";
  readonly additional: boolean; // a second choice of the standard, not in every stock
  readonly diameter: number; // [m]
}

/** A caution, shown where the task is. */
export interface CautionRow extends ReferenceRow {
  readonly topic: "machines" | "health" | "explosion" | "electrical" | "air" | "work" | "numbers" | "law";
  readonly text: string; // one or two sentences, our words
}
