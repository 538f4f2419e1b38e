import { Button } from "@fluentui/react-button";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import type { Copying } from "../tables/useCopy";

const useStyles = makeStyles({
  formula: {
    display: "block",
    padding: "4px 8px",
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    backgroundColor: tokens.colorNeutralBackground3,
    overflowWrap: "anywhere",
  },
  help: { margin: 0 },
  buttons: { display: "flex", flexWrap: "wrap", gap: "8px", marginTop: "4px" },
});

interface FormulaLineProps {
  readonly formula: string;
  readonly copying: Copying;
  readonly insert: (() => void) | null;
  readonly main?: boolean; // whether to insert it is what one came for
}

/** A formula as one types it, with the buttons that copy it and put it into the selected cell. */
export function FormulaLine({ formula, copying, insert, main = false }: FormulaLineProps): ReactElement {
  const styles = useStyles();
  const word = copying.wordOf(formula);
  const help = copying.helpFor(formula);
  return (
    <div>
      <code ref={copying.refOf(formula)} className={styles.formula}>
        {formula}
      </code>
      <div className={styles.buttons}>
        <Button
          size="small"
          onClick={() => copying.copy(formula, formula)}
          aria-label={`${word} the formula ${formula}`}
        >
          {word}
        </Button>
        {insert !== null && (
          <Button
            size="small"
            appearance={main ? "primary" : "secondary"}
            onClick={insert}
            aria-label={`Insert the formula ${formula}`}
          >
            Insert
          </Button>
        )}
      </div>
      {help !== "" && <p className={styles.help}>{help}</p>}
    </div>
  );
}
