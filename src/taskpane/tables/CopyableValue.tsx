import { Button, makeStyles } from "@fluentui/react-components";
import { useRef, type ReactElement } from "react";
import { copyText } from "./copyText";

const useStyles = makeStyles({
  line: { display: "flex", alignItems: "center", gap: "8px" },
  text: { flexGrow: 1, minWidth: 0 },
  button: { flexShrink: 0 },
});

interface CopyableValueProps {
  readonly value: { readonly name: string; readonly text: string; readonly unit: string };
  readonly word: string; // on the button: what it does, or has just done
  readonly tell: (outcome: { word: string; sentence: string }) => void;
}

/** A value and the button that copies it, without its unit, as a cell takes it. */
export function CopyableValue({ value: { name, text, unit }, word, tell }: CopyableValueProps): ReactElement {
  const styles = useStyles();
  const shown = useRef<HTMLSpanElement>(null);
  const copy = async (): Promise<void> => {
    if (await copyText(text, navigator.clipboard)) return tell({ word: "Copied", sentence: `Copied ${text}.` });
    if (shown.current !== null) window.getSelection()?.selectAllChildren(shown.current);
    const sentence = `Copying is not allowed here. ${text} is selected: press Ctrl+C (on a Mac, Command+C).`;
    tell({ word: "Selected", sentence });
  };
  return (
    <div className={styles.line}>
      <span className={styles.text}>
        <span ref={shown}>{text}</span>
        {unit !== "" && ` ${unit}`}
      </span>
      <Button
        size="small"
        className={styles.button}
        onClick={() => void copy()}
        aria-label={`${word} ${name} ${text} ${unit}`.trim()}
      >
        {word}
      </Button>
    </div>
  );
}
