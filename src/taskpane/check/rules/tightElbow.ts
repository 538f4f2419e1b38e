import { type FittingItem, parseFittingList } from "../../../core/fittings/fittingList";
import { lossCoefficient } from "../../../core/fittings/lossCoefficient";
import { valuesBehind } from "../../../core/fittings/valuesBehind";
import { cite } from "../../../reference/citation";
import type { LossFamily } from "../../../reference/schema";
import type { CheckRule } from "../finding";

const USUAL = 1.5; // r/D from which an elbow counts as long enough

/** Elbows that turn in less than one and a half diameters, and corners without a radius. */
export const tightElbow: CheckRule = ({ runs: tables }) =>
  tables.flatMap(({ sheet, runs }) =>
    runs.flatMap((run) =>
      elbowsOf(run.fittings).flatMap(({ family, shape, angle, count }) => {
        const sharp = family.key === "mitre";
        const radius = sharp ? null : (shape ?? family.shape?.usual ?? USUAL);
        if (radius !== null && radius >= USUAL) return [];
        const coefficient = known(() => lossCoefficient(family, shape, angle));
        const better = sharp ? null : known(() => lossCoefficient(family, USUAL, angle));
        const numbers =
          coefficient === null
            ? ""
            : ` (K ${brief(coefficient)}${better === null ? "" : `, at ${USUAL} it is ${brief(better)}`})`;
        const many = count > 1 ? `${count} elbows` : "an elbow";
        return [
          {
            rule: "Tight elbow",
            what: `${run.name} has ${many} ${radius === null ? "with a sharp corner" : `of r/D ${radius}`}${numbers}.`,
            why: "A tight turn costs pressure, and chips strike its back. A longer radius loses less.",
            source: cite(...(known(() => valuesBehind(family, shape, angle)) ?? family.points.slice(0, 1))),
            sheet,
            at: run.at("Fittings"),
          },
        ];
      }),
    ),
  );

/** The elbows of a list; a list that the functions refuse has none, since they say so in the cell. */
function elbowsOf(fittings: string): Elbow[] {
  const items = known(() => parseFittingList("fittings", fittings, 1, "any")) ?? [];
  return items.flatMap(({ family, ...item }) =>
    family !== null && (family.shape?.name === "r/D" || family.key === "mitre") && family.kind === "fitting"
      ? [{ ...item, family }]
      : [],
  );
}

type Elbow = FittingItem & { readonly family: LossFamily };

function known<Value>(compute: () => Value): Value | null {
  try {
    return compute();
  } catch {
    return null;
  }
}

const brief = (value: number): number => Number(value.toPrecision(2));
