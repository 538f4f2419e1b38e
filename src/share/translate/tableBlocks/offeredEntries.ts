import { DomainError } from "../../../core/errors";
import { PLAIN } from "../../../core/fittings/fittingList";
import { lossCoefficient } from "../../../core/fittings/lossCoefficient";
import { valuesBehind } from "../../../core/fittings/valuesBehind";
import { plain } from "../../../core/naming/findNamed";
import { BRANCH, lossFamilies } from "../../../reference/lossFamilies";
import type { LossFamily, Provenance } from "../../../reference/schema";
import { itemAt } from "../../../reference/itemAt";

/** One entry of a list of fittings, without its count. */
export interface Entry {
  readonly text: string; // as plain names are spelt
  readonly family: LossFamily;
  readonly coefficient: number | null;
  readonly item: DiameterItem | null; // set where the K goes by the duct's own diameter
  readonly from: readonly Provenance[]; // the printed values that it rests on
  readonly branchAt: number | null; // [degrees] of a branch; below 0 where it is plain
}

/** A fitting at one angle whose K goes by the duct's diameter. */
export interface DiameterItem {
  readonly name: string;
  readonly family: LossFamily;
  readonly angle: number | null; // null: the usual one
}

export const diameterItemOf = (family: LossFamily, angle: number | null): DiameterItem => ({
  name: angle === null ? family.key : `${family.key} ${angle}`,
  family,
  angle,
});

/** An entry whose K its text gives. */
export const byItself = (text: string, family: LossFamily, { shape, angle }: Form, plainly = false): Entry => ({
  text,
  family,
  branchAt: family.key === BRANCH ? (plainly ? -1 : 1) * (angle ?? family.angle?.usual ?? NaN) : null,
  coefficient: lossCoefficient(family, shape, angle),
  item: null,
  from: valuesBehind(family, shape, angle),
});

/** An entry whose K goes by the duct's diameter; its points stand in a table of their own, each with its source. */
export const byDiameter = (text: string, family: LossFamily, angle: number | null): Entry => ({
  text,
  family,
  coefficient: null,
  item: diameterItemOf(family, angle),
  from: [],
  branchAt: null,
});

const TURNS = [30, 45, 60, 90]; // degrees of the elbows that people bend

let offered: readonly Entry[] | null = null; // the same for every copy

/** Every entry that a list is likely to hold: each name alone, at each printed shape and angle, elbows at the usual turns. */
export const offeredEntries = (): readonly Entry[] => (offered ??= allOffered());

const allOffered = (): readonly Entry[] =>
  lossFamilies.flatMap((family) =>
    [family.key, ...family.aliases].flatMap((name, index) =>
      formsOf(family, index === 0).flatMap((form) => entry(family, plain(name), form)),
    ),
  );

export interface Form {
  readonly shape: number | null;
  readonly angle: number | null;
}

function formsOf(family: LossFamily, isKey: boolean): readonly Form[] {
  const shapes = distinct(family.points.map(({ shape }) => shape));
  const angles = family.rule === "elbow" ? TURNS : distinct(family.points.map(({ angle }) => angle));
  const alone: Form = { shape: null, angle: null };
  if (family.shape === null || family.shape.quantity === "diameter")
    return [alone, ...(family.angle === null ? [] : angles.map((angle) => ({ shape: null, angle })))];
  const byShape = shapes.map((shape) => ({ shape, angle: null }));
  const crossed = family.angle !== null && (isKey || family.rule === "elbow");
  return [alone, ...byShape, ...(crossed ? shapes.flatMap((shape) => angles.map((angle) => ({ shape, angle }))) : [])];
}

const distinct = (values: readonly (number | null)[]): number[] => [
  ...new Set(values.filter((value): value is number => value !== null)),
];

/** The entry of a form, or nothing where its K is refused: outside the printed points, or no usual shape. */
function entry(family: LossFamily, name: string, { shape, angle }: Form): Entry[] {
  const text = [name, shape, angle].filter((part) => part !== null).join(" ");
  return unlessRefused<Entry>(() => {
    if (family.shape?.quantity !== "diameter") return branchForms(text, family, { shape, angle });
    lossCoefficient(family, itemAt(family.points, 0).shape, angle);
    return [byDiameter(text, family, angle)];
  });
}

/** A branch also as one whose K goes by its angle alone. */
const branchForms = (text: string, family: LossFamily, form: Form): Entry[] => [
  byItself(text, family, form),
  ...(family.key === BRANCH ? [byItself(`${text} ${PLAIN}`, family, form, true)] : []),
];

/** What is made, or nothing where the core refuses it. */
export function unlessRefused<Made>(make: () => Made[]): Made[] {
  try {
    return make();
  } catch (error) {
    if (error instanceof DomainError) return [];
    throw error;
  }
}
