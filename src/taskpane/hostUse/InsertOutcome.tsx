import { Button } from "@fluentui/react-button";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { useLayoutEffect, useRef, type ReactElement } from "react";
import type { Inserting } from "./useInsert";

const useStyles = makeStyles({
  outcome: { margin: "4px 0 0" },
  asking: {
    margin: "4px 0 0",
    padding: "8px",
    borderLeft: `4px solid ${tokens.colorBrandStroke1}`,
    backgroundColor: tokens.colorNeutralBackground3,
  },
  question: { margin: "0 0 8px" },
  buttons: { display: "flex", flexWrap: "wrap", gap: "8px" },
});

/** What is announced of it; it stands where it always was, since a status that comes late may not be read out. */
export const announced = ({ state }: Inserting): string =>
  state.step === "told" ? state.sentence : state.step === "asking" ? `${state.at} is filled.` : "";

/** What became of writing, or the question whether a filled cell may be written over. */
export function InsertOutcome({
  inserting: { state, overwrite, leave },
}: {
  readonly inserting: Inserting;
}): ReactElement {
  const styles = useStyles();
  const question = useRef<HTMLDivElement>(null);
  const before = useRef<Element | null>(null);
  const asks = state.step === "asking";
  // as the question is drawn: a key that comes a little later must not go to the button that asked for it
  useLayoutEffect(() => {
    if (asks) {
      before.current = document.activeElement;
      question.current?.querySelector("button")?.focus(); // the first one changes nothing
    } else if (before.current instanceof HTMLElement) {
      before.current.focus();
      before.current = null;
    }
  }, [asks]);
  return (
    <>
      {state.step === "asking" && (
        <div ref={question} className={styles.asking} role="group" aria-label={`${state.at} is filled`}>
          <p className={styles.question}>{state.at} is filled. Write over it?</p>
          <div className={styles.buttons}>
            <Button size="small" onClick={leave}>
              Leave it
            </Button>
            <Button size="small" onClick={overwrite}>
              Write over {state.at}
            </Button>
          </div>
        </div>
      )}
      {state.step === "told" && <p className={styles.outcome}>{state.sentence}</p>}
    </>
  );
}
