import { Button } from "@fluentui/react-button";
import { Subtitle2 } from "@fluentui/react-text";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { type ReactElement, useEffect, useState } from "react";
import type { SheetHost } from "../../../hosts/host";
import { TaskOutcome } from "../../hostUse/TaskOutcome";
import { useChanges } from "../../hostUse/useChanges";
import { useTask } from "../../hostUse/useTask";
import { NO_SHEET } from "../../hostUse/words";
import { leaksRead, leakToWrite, type ReadLeak } from "./leaksRead";

const useStyles = makeStyles({
  heading: { display: "block", margin: "20px 0 4px" },
  text: { margin: "0 0 8px" },
  list: { listStyleType: "none", margin: "0 0 8px", padding: 0 },
  item: { padding: "6px 0", borderBottom: `1px solid ${tokens.colorNeutralStroke2}`, overflowWrap: "anywhere" },
  buttons: { display: "flex", flexWrap: "wrap", gap: "8px", marginTop: "4px" },
});

/** Takes a reading of the leak log as the leak of its run in the runs table, when told to. */
export function TakeLeaks({ host }: { readonly host: SheetHost | null }): ReactElement {
  const styles = useStyles();
  const tasking = useTask();
  const [leaks, setLeaks] = useState<readonly ReadLeak[]>([]);
  const [asking, setAsking] = useState<ReadLeak | null>(null);
  const busy = tasking.state.running !== null;
  const isAsked = busy || tasking.state.outcome.length > 0;
  const { drawn } = useChanges(isAsked ? host : null);
  const { forget } = tasking;
  useEffect(() => {
    setLeaks([]); // they were those of the book before
    setAsking(null);
    forget();
  }, [drawn.books, forget]);

  const read = (): void =>
    tasking.run("Reading the leak log", async () => {
      setLeaks([]);
      setAsking(null);
      if (host === null) return [NO_SHEET];
      const found = leaksRead(await host.readBook());
      if ("why" in found) return [found.why];
      setLeaks(found.leaks);
      return [`Readings of the sheet ${found.from}, for the sheet ${found.into}.`];
    });

  const write = (leak: ReadLeak): void =>
    tasking.run("Writing the leak", async () => {
      if (host === null) return [NO_SHEET];
      const found = leakToWrite(await host.readBook(), leak);
      if ("why" in found) return [found.why];
      const { block, still } = found;
      const outcome = await host.write([block], still);
      if (!outcome.written) return [outcome.why];
      setLeaks([]);
      setAsking(null);
      return [
        `The leak of ${leak.run} stands in ${block.at} of the sheet ${block.sheet}. One undo takes it back${host.kind === "excel" ? " where your Excel undoes what add-ins do" : ""}.`,
      ];
    });

  return (
    <section aria-label="Measured leaks into Runs">
      <Subtitle2 as="h2" className={styles.heading}>
        Measured leaks into Runs
      </Subtitle2>
      <p className={styles.text}>
        Takes a reading of the log on the sheet Leaks as the leak of the run that it names: its leak area, after mending
        where that was read. Nothing is changed before you say so.
      </p>
      <Button disabledFocusable={busy} onClick={read}>
        Read the leak log
      </Button>
      <TaskOutcome tasking={tasking} />
      <ul className={styles.list}>
        {leaks.map((leak, place) => (
          <li key={place} className={styles.item}>
            {`${leak.run}: `}
            {"why" in leak ? (
              `${leak.why}.`
            ) : (
              <>
                {`${leak.area} ${leak.when}; now ${leak.now === null ? "blank" : String(leak.now)} under ${leak.column}.`}
                {asking === leak ? (
                  <div role="group" aria-label={`Write the leak of ${leak.run}?`} className={styles.buttons}>
                    <Button appearance="primary" disabledFocusable={busy} onClick={() => write(leak)}>
                      {`Write it into ${leak.at} of ${leak.sheet}`}
                    </Button>
                    <Button onClick={() => setAsking(null)}>Leave it as it is</Button>
                  </div>
                ) : (
                  <div className={styles.buttons}>
                    <Button disabledFocusable={busy} onClick={() => setAsking(leak)}>
                      {`Take this reading as the leak of ${leak.run} …`}
                    </Button>
                  </div>
                )}
              </>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
