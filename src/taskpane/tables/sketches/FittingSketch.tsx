import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import { sketchOf } from "./sketchOf";

// A drawing is not recoloured where the person has forced colours, so it takes theirs itself.
const FORCED = "@media (forced-colors: active)";

const useStyles = makeStyles({
  sketch: { flexShrink: 0, width: "72px", height: "44px", fill: "none", strokeWidth: "2px" },
  lines: {
    stroke: tokens.colorNeutralForeground2,
    strokeLinejoin: "round",
    strokeLinecap: "round",
    [FORCED]: { stroke: "CanvasText" },
  },
  air: {
    stroke: tokens.colorBrandForeground1,
    strokeLinejoin: "round",
    strokeLinecap: "round",
    [FORCED]: { stroke: "Highlight" },
  },
});

/** What a fitting looks like; the words beside it say the same, so screen readers pass over it. */
export function FittingSketch({ family }: { readonly family: string }): ReactElement | null {
  const styles = useStyles();
  const sketch = sketchOf(family);
  if (sketch === null) return null;
  return (
    <svg className={styles.sketch} viewBox="0 0 72 44" aria-hidden="true" focusable="false">
      <path className={styles.lines} d={sketch.lines} />
      <path className={styles.air} d={sketch.air} />
    </svg>
  );
}
