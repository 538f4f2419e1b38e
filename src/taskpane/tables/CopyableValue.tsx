import { Button, makeStyles } from "@fluentui/react-components";
import { useRef, type ReactElement } from "react";
import { copyText } from "./copyText";

const useStyles = makeStyles({
  line: { display: "flex", alignItems: "center", gap: "8px" },
  text: { flexGrow: 1, minWidth: 0 },
  button: { flexShrink: 0 },
});

interface CopyableValueProps {
  readonly name: string;
  readonly text: string;
  readonly unit: string;
  readonly tell: (outcome: string) => void;
}

/** A value and the button that copies it, without its unit, as a cell takes it. */
export function CopyableValue({ name, text, unit, tell }: CopyableValueProps): ReactElement {
  const styles = useStyles();
  const value = useRef<HTMLSpanElement>(null);
  const copy = async (): Promise<void> => {
    if (await copyText(text, navigator.clipboard)) return tell(`Copied ${text}.`);
    if (value.current !== null) window.getSelection()?.selectAllChildren(value.current);
    tell(`Copying is not allowed here. ${text} is selected: press Ctrl+C (on a Mac, Command+C).`);
  };
  return (
    <div className={styles.line}>
      <span className={styles.text}>
        <span ref={value}>{text}</span>
        {unit !== "" && ` ${unit}`}
      </span>
      <Button
        size="small"
        className={styles.button}
        onClick={() => void copy()}
        aria-label={`Copy ${name} ${text} ${unit}`.trim()}
      >
        Copy
      </Button>
    </div>
  );
}
