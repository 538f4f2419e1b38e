import { Button, Subtitle2, makeStyles } from "@fluentui/react-components";
import type { ReactElement, ReactNode } from "react";
import type { SheetHost, Watch } from "../../hosts/host";
import { copiedWords, repairedWords, revivedWords } from "../build/outcomeWords";
import { TaskOutcome } from "../hostUse/TaskOutcome";
import { useTask } from "../hostUse/useTask";
import { NO_SHEET } from "../hostUse/words";
import { Heading } from "./Heading";
import { ShortCautions } from "./ShortCautions";
import type { ViewProps } from "./viewProps";

const useStyles = makeStyles({
  heading: { display: "block", margin: "20px 0 4px" },
  text: { margin: "0 0 8px" },
});

type Work = (host: SheetHost, watch: Watch) => Promise<readonly string[]>;

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
    work: async (host, watch) => copiedWords(await host.shareCopy("formulas", watch), host.kind),
  },
  {
    title: "A copy of values",
    text: "A new workbook of numbers and words alone: for printing, or for somebody who should change nothing.",
    button: "Make a copy of values",
    name: "Making the copy of values",
    work: async (host, watch) => copiedWords(await host.shareCopy("values", watch), host.kind),
  },
  {
    title: "Repair",
    text: "A formula shows #NAME? if it was calculated while these functions were missing. This enters such formulas again and leaves values and formats alone.",
    button: "Repair #NAME?",
    name: "Repairing",
    work: async (host, watch) => repairedWords(await host.repair(watch)),
  },
  {
    title: "Revive a club copy",
    text: "Turns a club copy that is open back into a live budget, with the inputs as they stand in it.",
    button: "Revive this copy",
    name: "Reviving the copy",
    work: async (host, watch) => revivedWords(await host.revive(watch)),
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
  const start = (): void =>
    tasking.run(action.name, async (watch) => (host === null ? [NO_SHEET] : action.work(host, watch)));
  return (
    <section aria-label={action.title}>
      <Subtitle2 as="h2" className={styles.heading}>
        {action.title}
      </Subtitle2>
      <p className={styles.text}>{action.text}</p>
      <Button disabledFocusable={tasking.state.running !== null} onClick={start}>
        {action.button}
      </Button>
      <TaskOutcome tasking={tasking} />
    </section>
  );
}
