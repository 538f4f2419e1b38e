import { Button } from "@fluentui/react-button";
import { Subtitle2 } from "@fluentui/react-text";
import { makeStyles } from "@griffel/react";
import { type ReactElement, type ReactNode, useState } from "react";
import type { CopyKind, CopyOpening, SheetHost, Watch } from "../../hosts/host";
import { copiedWords, repairedWords, revivedWords } from "../build/outcomeWords";
import { TaskOutcome } from "../hostUse/TaskOutcome";
import { useTask } from "../hostUse/useTask";
import { NO_SHEET } from "../hostUse/words";
import { Heading } from "./Heading";
import { SaveFile } from "./SaveFile";
import { ShortCautions } from "./ShortCautions";
import type { ViewProps } from "./viewProps";

const useStyles = makeStyles({
  heading: { display: "block", margin: "20px 0 4px" },
  text: { margin: "0 0 8px" },
});

interface Done {
  readonly words: readonly string[];
  readonly file?: CopyOpening["file"] | undefined; // to be saved where the host did not open it
}

type Work = (host: SheetHost, watch: Watch) => Promise<Done>;

const copied =
  (kind: CopyKind): Work =>
  async (host, watch) => {
    const outcome = await host.shareCopy(kind, watch);
    return { words: copiedWords(outcome), file: outcome.made ? outcome.opening?.file : undefined };
  };

interface Action {
  readonly title: string;
  readonly text: string;
  readonly button: string;
  readonly name: string; // while it runs
  readonly work: Work;
}

const actions: readonly Action[] = [
  {
    title: "A copy for the club",
    text: "A new workbook of plain formulas, which recalculates without these functions. Its first sheet says in which programs that was tried, what had to stay a number, and why.",
    button: "Make a club copy",
    name: "Making the club copy",
    work: copied("formulas"),
  },
  {
    title: "A copy of values",
    text: "A new workbook of numbers and words alone: for printing, or for somebody who should change nothing.",
    button: "Make a copy of values",
    name: "Making the copy of values",
    work: copied("values"),
  },
  {
    title: "Repair",
    text: "A formula shows #NAME? if it was calculated while these functions were missing, and now and then stays at #BUSY!. This enters such formulas again and leaves values and formats alone.",
    button: "Repair #NAME?",
    name: "Repairing",
    work: async (host, watch) => ({ words: repairedWords(await host.repair(watch)) }),
  },
  {
    title: "Revive a club copy",
    text: "Turns a club copy that is open back into a live budget, with the inputs as they stand in it.",
    button: "Revive this copy",
    name: "Reviving the copy",
    work: async (host, watch) => ({ words: revivedWords(await host.revive(watch)) }),
  },
];

/** Copies for people without the functions, and the ways back. */
export function ShareView({ host, go }: ViewProps): ReactElement {
  return (
    <>
      <Heading>Share</Heading>
      {actions.map((action) => (
        <ShareAction key={action.title} action={action} host={host} />
      ))}
      <ShortCautions keys={["no measurement", "codes decide"]} goToCautions={() => go("Cautions")} />
    </>
  );
}

function ShareAction({ action, host }: { readonly action: Action; readonly host: SheetHost | null }): ReactNode {
  const styles = useStyles();
  const tasking = useTask();
  const [file, setFile] = useState<Done["file"]>();
  const work = async (watch: Watch): Promise<readonly string[]> => {
    setFile(undefined); // an earlier copy must not be saved as this one
    if (host === null) return [NO_SHEET];
    const done = await action.work(host, watch);
    setFile(done.file);
    return done.words;
  };
  return (
    <section aria-label={action.title}>
      <Subtitle2 as="h2" className={styles.heading}>
        {action.title}
      </Subtitle2>
      <p className={styles.text}>{action.text}</p>
      <Button disabledFocusable={tasking.state.running !== null} onClick={() => tasking.run(action.name, work)}>
        {action.button}
      </Button>
      <TaskOutcome tasking={tasking} />
      {file !== undefined && <SaveFile {...file} />}
    </section>
  );
}
