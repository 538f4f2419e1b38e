import { Button } from "@fluentui/react-button";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import type { Copying } from "./useCopy";

const useStyles = makeStyles({
  line: { display: "flex", alignItems: "center", flexWrap: "wrap", gap: "4px 8px", minHeight: "28px" },
  text: { flexGrow: 1, minWidth: 0 },
  buttons: { display: "flex", gap: "8px", marginLeft: "auto" }, // they go to a line of their own together
  help: { margin: 0 },
  button: { flexShrink: 0, minWidth: "48px" },
});

interface ValueLineProps {
  readonly value: { readonly name: string; readonly text: string; readonly unit: string };
  readonly copying: Copying;
  readonly insert: (() => void) | null; // null where a cell has no use for it
}

/** A value with the buttons that copy it and put it into the selected cell, without its unit, as a cell takes it. */
export function ValueLine({ value: { name, text, unit }, copying, insert }: ValueLineProps): ReactElement {
  const styles = useStyles();
  const id = `${name} ${unit}`;
  const word = copying.wordOf(id);
  const spoken = `${name} ${text} ${unit}`.trim();
  const help = copying.helpFor(id);
  return (
    <>
      <div className={styles.line}>
        <span className={styles.text}>
          <span ref={copying.refOf(id)}>{text}</span>
          {unit !== "" && ` ${unit}`}
        </span>
        <span className={styles.buttons}>
          <Button
            size="small"
            className={styles.button}
            onClick={() => copying.copy(id, text)}
            aria-label={`${word} ${spoken}`}
          >
            {word}
          </Button>
          {insert !== null && (
            <Button size="small" className={styles.button} onClick={insert} aria-label={`Insert ${spoken}`}>
              Insert
            </Button>
          )}
        </span>
      </div>
      {help !== "" && <p className={styles.help}>{help}</p>}
    </>
  );
}
