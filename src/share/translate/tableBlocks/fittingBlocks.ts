import { beginsWithName, parseFittingList } from "../../../core/fittings/fittingList";
import { lossCoefficient } from "../../../core/fittings/lossCoefficient";
import { valuesBehind } from "../../../core/fittings/valuesBehind";
import { MITRE } from "../../../reference/fittings/mitres";
import { BRANCH, lossFamilies } from "../../../reference/lossFamilies";
import type { LossFamily } from "../../../reference/schema";
import { plain } from "../../../core/naming/findNamed";
import { fromSI, type UnitSystem, unitOf } from "../../../reference/quantities";
import type { BlockNeeds, TableBlock } from "./block";
import { type Line, lineBlock, type PrintedPoint } from "./lineBlock";
import { byDiameter, byItself, type DiameterItem, type Entry, offeredEntries, unlessRefused } from "./offeredEntries";
import { TRUST, trustCells } from "./trust";

/** The column that has a branch's angle, below 0 where it is plain. */
export const BRANCH_AT = "branch at (degrees; below 0: plain)";

/** The columns that go by the duct's diameter and by the air: few entries fill one, and those stand first. */
export const BY_DIAMETER = "goes by diameter as";
export const SLOW_AIR = "more in slow air";

/** The entries that a list of fittings may hold, each with its K, or the item whose K goes by the duct's diameter. */
export function entryBlock(kind: "hood" | "any", system: UnitSystem, tables: BlockNeeds): TableBlock {
  const all = entriesOf(kind, system, tables);
  const head = kind === "hood" ? all : all.filter(hasMore);
  const entries = kind === "hood" ? all : [...head, ...all.filter((entry) => !hasMore(entry))];
  const unit = unitOf("diameter", system).label;
  return {
    title:
      kind === "hood"
        ? `Hood entries: coefficient K (${unit} where a diameter is meant)`
        : `Fittings and hood entries: coefficient K (${unit} where a diameter is meant); columns C to E count in its first rows alone`,
    columns: ["entry", "K", BY_DIAMETER, ...(kind === "any" ? [SLOW_AIR, BRANCH_AT] : []), ...TRUST],
    inputs: true,
    headRows: head.length,
    rows: entries.map(({ text, family, coefficient, item, from, branchAt }) => [
      text,
      coefficient,
      item === null ? null : item.name,
      ...(kind === "any" ? [isMitre(family) ? "yes" : null, branchAt] : []),
      ...trustCells(from),
    ]),
  };
}

const isMitre = ({ key }: LossFamily): boolean => key === MITRE;

const hasMore = ({ family, item, branchAt }: Entry): boolean => isMitre(family) || item !== null || branchAt !== null;

function entriesOf(kind: "hood" | "any", system: UnitSystem, { used }: BlockNeeds): readonly Entry[] {
  const offered = offeredEntries().filter(({ family }) => kind === "any" || family.kind === kind);
  const known = new Set(offered.map(({ text }) => text));
  const others = used.flatMap((text) => (known.has(text) ? [] : usedEntry(text, kind, system)));
  return [...offered, ...others];
}

/** An entry as someone typed it; nothing where the functions refuse it, so that the formula rightly finds nothing either. */
const usedEntry = (text: string, kind: "hood" | "any", system: UnitSystem): Entry[] =>
  unlessRefused<Entry>(() => {
    if (!beginsWithName(text, kind)) return [];
    const [item] = parseFittingList("entry", text, unitOf("diameter", system).factor, kind);
    if (item === undefined || item.family === null) return [];
    const { family, shape, angle, plain } = item;
    if (shape === null && family.shape?.quantity === "diameter") return [byDiameter(text, family, angle)];
    return [byItself(text, family, { shape, angle }, plain)];
  });

/** The points of every item whose K goes by the duct's diameter, then of those whose K goes by the number behind their name. */
export function diameterItemBlock(system: UnitSystem, tables: BlockNeeds): TableBlock {
  const items = new Map<string, DiameterItem>();
  for (const { item } of entriesOf("any", system, tables)) if (item !== null) items.set(item.name, item);
  const unit = unitOf("diameter", system);
  const byDiameters = [...items.values()].map((item) => ({
    name: item.name,
    points: pointsOf(item).map((point) => ({ ...point, at: Number(fromSI(point.at, unit).toPrecision(12)) })),
  }));
  const title = `Fittings that go by the duct's diameter, ${unit.label}; then those that go by the number behind their name`;
  return lineBlock(title, [...byDiameters, ...numberedLines()]);
}

/** The line on which a number behind a branch's name, its angle, is read. */
export const BRANCH_LINE = plain(BRANCH);

/**
 * Fittings and hood entries whose K is a line over the number behind their name. An expansion's is a curve, a mitre's goes by the
 * air as well, and a diameter has its own table: those are looked up as they are listed, or not at all.
 */
const numberedFamilies: readonly LossFamily[] = lossFamilies.filter(
  ({ key, shape, angle, rule }) =>
    key !== MITRE && rule !== "expansion" && (shape === null ? angle !== null : shape.quantity === "ratio"),
);

const numberedLines = (): Line[] =>
  numberedFamilies.map((family) => ({ name: plain(family.key), points: numberedPoints(family) }));

/** Every name behind which such a number may stand, with the line that it is read on. */
export const lineNameBlock = (): TableBlock => ({
  title: "Fittings that go by the number behind their name: the line of each name",
  columns: ["name", "line"],
  inputs: false,
  rows: numberedFamilies.flatMap(({ key, aliases }) => [key, ...aliases].map((name) => [plain(name), plain(key)])),
});

/** K at each number that is printed, from small to large. */
function numberedPoints(family: LossFamily): PrintedPoint[] {
  const isShape = family.shape !== null;
  const printed = family.points.map(({ shape, angle }) => (isShape ? shape : angle)).filter((at) => at !== null);
  return [...new Set(printed)]
    .sort((one, other) => one - other)
    .flatMap((at) => {
      const [shape, angle] = isShape ? [at, null] : [null, at];
      return unlessRefused(() => [
        { at, value: lossCoefficient(family, shape, angle), from: valuesBehind(family, shape, angle) },
      ]);
    });
}

/** K at each printed diameter [m] that has this angle, from small to large. */
function pointsOf({ family, angle }: DiameterItem): PrintedPoint[] {
  const shapes = [...new Set(family.points.map(({ shape }) => shape!))].sort((a, b) => a - b);
  return shapes.flatMap((at) =>
    unlessRefused(() => [{ at, value: lossCoefficient(family, at, angle), from: valuesBehind(family, at, angle) }]),
  );
}
