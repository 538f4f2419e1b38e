import { Button } from "@fluentui/react-button";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import { cautions } from "../../reference/cautions";

const useStyles = makeStyles({
  box: {
    margin: "16px 0 0",
    padding: "8px 12px",
    borderLeft: `4px solid ${tokens.colorBrandStroke1}`,
    backgroundColor: tokens.colorNeutralBackground2,
  },
  line: { margin: "0 0 6px" },
  label: { fontWeight: tokens.fontWeightSemibold },
});

interface ShortCautionsProps {
  readonly keys: readonly string[];
  readonly goToCautions: () => void;
  readonly of?: string; // what they are for, where a view shows more than one such box
}

/** The cautions that matter for the task at hand, and the way to all of them. */
export function ShortCautions({ keys, goToCautions, of = "this" }: ShortCautionsProps): ReactElement {
  const styles = useStyles();
  return (
    <section className={styles.box} aria-label={`Cautions for ${of}`}>
      {cautions
        .filter(({ key }) => keys.includes(key))
        .map(({ key, label, text }) => (
          <p key={key} className={styles.line}>
            <span className={styles.label}>{label}.</span> {text}
          </p>
        ))}
      <Button size="small" onClick={goToCautions}>
        All cautions
      </Button>
    </section>
  );
}
