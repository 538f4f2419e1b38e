import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement, ReactNode } from "react";
import { type UnitSystem, unitOf } from "../../../reference/quantities";
import { shownValue } from "../../functions/resultWords";
import type { FanPicture } from "./pictureOf";

const FORCED = "@media (forced-colors: active)";

const useStyles = makeStyles({
  key: { listStyleType: "none", margin: "4px 0 8px", padding: 0, fontSize: tokens.fontSizeBase200 },
  line: { display: "flex", gap: "8px", marginBottom: "2px" },
  mark: { flexShrink: 0, width: "28px", height: "16px", strokeWidth: "2px", fill: "none" },
  fan: { stroke: tokens.colorBrandForeground1, [FORCED]: { stroke: "Highlight" } },
  ducts: { stroke: tokens.colorNeutralForeground2, [FORCED]: { stroke: "CanvasText" } },
  works: {
    fill: tokens.colorBrandForeground1,
    stroke: tokens.colorNeutralForeground1,
    strokeWidth: "1px",
    [FORCED]: { fill: "Highlight", stroke: "CanvasText" },
  },
  scenario: { stroke: tokens.colorNeutralForeground1, strokeWidth: "1px", [FORCED]: { stroke: "CanvasText" } },
});

interface FanKeyProps {
  readonly fan: FanPicture;
  readonly system: UnitSystem;
}

/** What each mark of the fan's chart is, with the numbers of the points. */
export function FanKey({ fan: { works, scenarios }, system }: FanKeyProps): ReactElement {
  const styles = useStyles();
  const airflow = (x: number): string => `${shownValue(Math.round(x))} ${unitOf("airflow", system).label}`;
  const pressure = `${Number(works.y.toPrecision(3))} ${unitOf("pressure", system).label}`;
  const inOrder = [...scenarios].sort((one, other) => one.point.x - other.point.x);
  const line = (mark: ReactNode, words: string): ReactElement => (
    <li className={styles.line}>
      <svg className={styles.mark} viewBox="0 0 28 16" aria-hidden="true" focusable="false">
        {mark}
      </svg>
      <span>{words}</span>
    </li>
  );
  return (
    <ul className={styles.key} aria-label="What the marks mean">
      {line(<path className={styles.fan} d="M0 8 H28" />, "The fan")}
      {line(<path className={styles.ducts} d="M0 8 H28" strokeDasharray="6 4" />, "The ducts, leaks included")}
      {line(
        <circle className={styles.works} cx="14" cy="8" r="5" />,
        `Where it works now: ${airflow(works.x)} at ${pressure}`,
      )}
      {inOrder.length > 0 &&
        line(
          <path className={styles.scenario} d="M14 3 L19 12 H9 Z" />,
          `The scenarios of the sheet, from the left: ${inOrder.map(({ name, point }) => `${name} ${airflow(point.x)}`).join("; ")}`,
        )}
    </ul>
  );
}
