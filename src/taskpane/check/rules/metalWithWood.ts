import { dustOfRun } from "../../../core/dust/dustOfRun";
import { type Meeting, sparksMeetDust } from "../../../core/dust/sparksMeetDust";
import { plain, rowOf } from "../../../core/naming/findNamed";
import { cautions } from "../../../reference/cautions";
import { type Finding, practice, type CheckRule } from "../finding";
import type { BookRuns } from "../runs";
import { itemAt } from "../../../reference/itemAt";

/** Grinding sparks or metal on a duct that carries dust that burns: found at the run in which both first meet. */
export const metalWithWood: CheckRule = ({ runs }) => runs.flatMap(inTable);

function inTable({ sheet, runs }: BookRuns): Finding[] {
  const suction = runs.filter(({ discharge }) => !discharge);
  const places = new Map(suction.map(({ name }, place) => [plain(name), place]));
  const joins = suction.map(({ to }) => places.get(plain(to)) ?? -1);
  const own = suction.map(({ name, hood, ownDust, dust }, place) => {
    const isEnd = !joins.includes(place);
    return dustOfRun({ name, hood, dust: ownDust ?? (isEnd ? dust.key : null), isEnd });
  });
  const said = (place: number): string => {
    const { name, ownDust, dust } = itemAt(suction, place);
    return `${name} ("${ownDust ?? dust.key}")`;
  };
  const words = ({ certain, sparks, burns }: Meeting): string =>
    certain
      ? `carries grinding or metal dust of ${said(sparks)} and dust that burns of ${said(burns)}`
      : `may carry sparks or metal of ${said(sparks)} with dust that burns of ${said(burns)}, by their names`;
  return sparksMeetDust(own, joins).flatMap((meeting, place): Finding[] =>
    meeting === null
      ? []
      : [
          {
            rule: "Metal with wood",
            what: `${itemAt(suction, place).name} ${words(meeting)}.`,
            why: rowOf(cautions, "metal with wood").text,
            source: practice,
            sheet,
            at: itemAt(suction, place).at("Run"),
          },
        ],
  );
}
