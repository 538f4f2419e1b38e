import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import { type UnitSystem, unitOf } from "../../../reference/quantities";
import { shownValue } from "../../functions/resultWords";
import type { PictureRun } from "./runsOfPicture";
import { roundedVelocity, wholeAir } from "./shortWords";
import { itemAt } from "../../../reference/itemAt";

const WIDTH = 288;
const ROW = 38;
const STEP = 16; // of a junction to the right, or less where many follow one another, so that the words have room
const MOST_INDENT = 64;
const DUCT = 34; // length of a drawn piece

// A drawing is not recoloured where the person has forced colours, so it takes theirs itself.
const FORCED = "@media (forced-colors: active)";
const ink = { [FORCED]: { fill: "CanvasText" } };
const stroke = { fill: "none", [FORCED]: { stroke: "CanvasText" } };

const useStyles = makeStyles({
  tree: { display: "block", width: "100%", maxWidth: "340px", fill: tokens.colorNeutralForeground1, ...ink },
  name: { fontSize: "12px", fontWeight: tokens.fontWeightSemibold },
  text: { fontSize: "11px", fill: tokens.colorNeutralForeground2, ...ink },
  duct: { stroke: tokens.colorBrandStroke1, ...stroke },
  slow: { stroke: tokens.colorPaletteDarkOrangeForeground1, strokeDasharray: "4 3", ...stroke },
  shut: { stroke: tokens.colorNeutralStroke1, fill: "none", [FORCED]: { stroke: "GrayText" } },
  join: { stroke: tokens.colorNeutralStroke1, strokeWidth: "1px", ...stroke },
});

interface DuctTreeProps {
  readonly runs: readonly PictureRun[];
  readonly system: UnitSystem;
}

/** The ducts from the fan outwards, thicker where the pipe is wider, broken where dust settles. */
export function DuctTree({ runs, system }: DuctTreeProps): ReactElement {
  const styles = useStyles();
  const widest = Math.max(...runs.map(({ diameter }) => diameter ?? 0), 1);
  const middle = (index: number): number => index * ROW + ROW / 2;
  const step = Math.min(STEP, MOST_INDENT / Math.max(1, ...runs.map(({ depth }) => depth)));
  const left = ({ depth }: PictureRun): number => 6 + depth * step;
  return (
    <svg
      className={styles.tree}
      viewBox={`0 0 ${WIDTH} ${Math.max(1, runs.length) * ROW}`}
      role="img"
      aria-label="Tree of the ducts from the fan outwards; the table below has the same numbers"
    >
      {runs.map((run, index) => {
        const parent = runs.findIndex(({ name }) => name === run.joins);
        const [x, y] = [left(run), middle(index)];
        const look = run.shut ? styles.shut : run.settles ? styles.slow : styles.duct;
        return (
          <g key={run.name}>
            {parent >= 0 && (
              <path
                className={styles.join}
                d={`M${left(itemAt(runs, parent)) + 4} ${middle(parent) + 6} V${y} H${x}`}
              />
            )}
            <path className={look} strokeWidth={2 + (7 * (run.diameter ?? 0)) / widest} d={`M${x} ${y} h${DUCT}`} />
            <text className={styles.name} x={x + DUCT + 8} y={y - 3}>
              {shortened(run.name, x)}
            </text>
            <text className={styles.text} x={x + DUCT + 8} y={y + 11}>
              {runWords(run, system)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

/** "4 in, 400 cfm, 4,584 fpm", and in words what the broken or grey line means. */
export function runWords({ diameter, airflow, velocity, settles, shut }: PictureRun, system: UnitSystem): string {
  const flows = [
    airflow === null ? "" : wholeAir(airflow, system),
    velocity === null ? "" : roundedVelocity(velocity, system),
    settles ? "settles" : "",
  ];
  const size = diameter === null ? "" : `${shownValue(diameter)} ${unitOf("diameter", system).label}`;
  return [size, ...(shut ? ["shut"] : flows)].filter((part) => part !== "").join(", ");
}

/** What fits beside the drawn piece; the table has the whole name. */
function shortened(name: string, x: number): string {
  const fits = Math.floor((WIDTH - x - DUCT - 8) / 7);
  return name.length <= fits ? name : `${name.slice(0, fits - 1)}…`;
}
