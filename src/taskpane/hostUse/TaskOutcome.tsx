import { Button } from "@fluentui/react-button";
import { ProgressBar } from "@fluentui/react-progress";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import type { Tasking } from "./useTask";

const useStyles = makeStyles({
  outcome: { margin: "8px 0 0" },
  sentence: { margin: "0 0 4px", whiteSpace: "pre-line" },
  running: { display: "flex", flexDirection: "column", gap: "8px", margin: "12px 0 0" },
  cancel: { alignSelf: "flex-start" },
  told: {
    padding: "8px",
    borderLeft: `4px solid ${tokens.colorBrandStroke1}`,
    backgroundColor: tokens.colorNeutralBackground2,
  },
});

/** How far a long action is, with the button that cancels it, and what it said in the end. */
export function TaskOutcome({ tasking: { state, cancel } }: { readonly tasking: Tasking }): ReactElement {
  const styles = useStyles();
  const { running, done, of, what, outcome } = state;
  return (
    <>
      {running !== null && (
        <div className={styles.running}>
          <ProgressBar aria-label={running} {...(of > 0 ? { value: done, max: of } : {})} />
          <Button className={styles.cancel} onClick={cancel}>
            Cancel
          </Button>
        </div>
      )}
      <div role="status" className={styles.outcome}>
        {running !== null && <p className={styles.sentence}>{of > 0 ? `${what} (${done} of ${of})` : what}</p>}
        {outcome.length > 0 && (
          <div className={styles.told}>
            {outcome.map((sentence, i) => (
              <p key={i} className={styles.sentence}>
                {sentence}
              </p>
            ))}
          </div>
        )}
      </div>
    </>
  );
}
