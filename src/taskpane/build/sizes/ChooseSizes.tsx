import { Button } from "@fluentui/react-button";
import { Subtitle2 } from "@fluentui/react-text";
import { tokens } from "@fluentui/react-theme";
import { makeStyles, mergeClasses } from "@griffel/react";
import { type ReactElement, useEffect, useState } from "react";
import type { SearchedSoFar } from "../../../core/network/sizes/chooseSizes";
import type { SheetHost, Watch } from "../../../hosts/host";
import type { RangeRef } from "../../../sheets/rangeRef";
import { sizesFile } from "../../help/files";
import { HelpLink } from "../../help/HelpLink";
import { TaskOutcome } from "../../hostUse/TaskOutcome";
import { useChanges } from "../../hostUse/useChanges";
import { useTask } from "../../hostUse/useTask";
import { ANOTHER_BOOK, count, NO_SHEET } from "../../hostUse/words";
import { asRead } from "../asRead";
import { newDiameters } from "./newDiameters";
import { mostSolved, searchSizes } from "./searchSizes";
import { landmarks, sizesAsked } from "./sizesAsked";
import { type NewSize, sizesFound, timeWords } from "./sizesFound";
import { sizesToWrite } from "./sizesToWrite";

const useStyles = makeStyles({
  heading: { display: "block", margin: "20px 0 4px" },
  text: { margin: "0 0 8px" },
  buttons: { display: "flex", flexWrap: "wrap", gap: "8px" },
  table: { borderCollapse: "collapse", margin: "0 0 8px" },
  cell: { textAlign: "right", padding: "2px 12px 2px 0", borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  name: { textAlign: "left", fontWeight: "inherit" },
});

interface Offer {
  readonly runs: RangeRef;
  readonly watched: readonly string[]; // what it rests on
  readonly changes: readonly NewSize[];
  readonly meets: boolean;
}

const USUAL =
  "No set of open gates is typed, so it is for the usual ones: each machine alone and any two (where more than eight have a gate, each alone).";

const CHANGED_SINCE =
  "The ducts, the fan or what is asked have changed since it was searched, so nothing was written: choose sizes again.";

const startWorker = (): Worker => new Worker(new URL("./sizesWorker.ts", import.meta.url));

/** Chooses the diameters of all runs for the sets of gates on the sheet Sizes, and writes them into the runs table when told to. */
export function ChooseSizes({ host }: { readonly host: SheetHost | null }): ReactElement {
  const styles = useStyles();
  const tasking = useTask();
  const [offer, setOffer] = useState<Offer | null>(null);
  const [asking, setAsking] = useState(false);
  const busy = tasking.state.running !== null;
  const isAsked = busy || tasking.state.outcome.length > 0;
  const { drawn, now } = useChanges(isAsked ? host : null);
  const { forget } = tasking;
  useEffect(() => {
    setOffer(null); // it was for the book before
    setAsking(false);
    forget();
  }, [drawn.books, forget]);

  const search = async (watch: Watch): Promise<readonly string[]> => {
    setOffer(null);
    setAsking(false);
    if (host === null) return [NO_SHEET];
    const { books } = now();
    const asked = sizesAsked(await host.readBook());
    if ("why" in asked) return [asked.why];
    const hear = (far: SearchedSoFar): void => watch.progress(far.work, mostSolved(asked.args), progressWords(far));
    const answer = await searchSizes(asked.args, { hear, signal: watch.signal }, startWorker);
    if ("error" in answer) return [`The ducts cannot be sized: ${answer.message || answer.error}.`];
    if (now().books !== books) return [ANOTHER_BOOK];
    const { outcome, changes, meets } = sizesFound(answer.rows);
    const book = await host.readBook();
    const blocks = sizesToWrite(book, asked, answer.rows, outcome, timeWords(new Date()));
    const written = "why" in blocks ? { written: false as const, why: blocks.why } : await host.write(blocks, asRead(book, [...blocks, ...landmarks(blocks)])); // prettier-ignore
    if (changes.length > 0) setOffer({ runs: asked.runs, watched: asked.watched, changes, meets });
    return [
      ...(asked.usual ? [USUAL] : []),
      ...outcome,
      written.written ? `The sheet ${asked.sheet} has it, run by run.` : `It is not on the sheet: ${written.why}`,
      ...(changes.length === 0 ? ["Every diameter is the chosen one already."] : []),
    ];
  };

  const use = ({ runs, watched, changes }: Offer): void =>
    tasking.run("Writing the sizes", async () => {
      if (host === null) return [NO_SHEET];
      const book = await host.readBook();
      const asked = sizesAsked(book);
      if ("why" in asked) return [asked.why];
      if (asked.watched.join("\n") !== watched.join("\n")) return [CHANGED_SINCE];
      const found = newDiameters(book, runs, changes);
      if ("why" in found) return [found.why];
      const outcome = await host.write(found.blocks, asRead(book, [...found.blocks, ...found.names]));
      if (!outcome.written) return [outcome.why];
      setOffer(null);
      setAsking(false);
      return [
        `${count(changes.length, "diameter was", "diameters were")} written into the sheet ${runs.sheet}. One undo takes them back${host.kind === "excel" ? " where your Excel undoes what add-ins do" : ""}.`,
        "The sheet Sizes says now that the ducts have changed since: they have, to what it chose.",
      ];
    });

  return (
    <section aria-label="Choose sizes">
      <Subtitle2 as="h2" className={styles.heading}>
        Choose sizes
      </Subtitle2>
      <p className={styles.text}>
        Chooses every diameter from what can be bought, so that each set of open gates on the sheet Sizes works (with
        none typed there or on Flow, each machine alone and any two), for the least pipe. It takes some seconds; the
        sheet can be used meanwhile. Nothing of yours is changed before you say so.{" "}
        <HelpLink file={sizesFile}>How it searches, and what it does not know</HelpLink>
      </p>
      <Button disabledFocusable={busy} onClick={() => tasking.run("Searching sizes", search)}>
        Choose sizes
      </Button>
      <TaskOutcome tasking={tasking} />
      {offer !== null && !busy && (
        <>
          <table className={styles.table}>
            <thead>
              <tr>
                <th className={mergeClasses(styles.cell, styles.name)}>Run</th>
                <th className={styles.cell}>Now</th>
                <th className={styles.cell}>Chosen</th>
              </tr>
            </thead>
            <tbody>
              {offer.changes.map(({ run, now, buy }) => (
                <tr key={run}>
                  <th scope="row" className={mergeClasses(styles.cell, styles.name)}>
                    {run}
                  </th>
                  <td className={styles.cell}>{now}</td>
                  <td className={styles.cell}>{buy}</td>
                </tr>
              ))}
            </tbody>
          </table>
          {asking ? (
            <div role="group" aria-label="Write the chosen sizes?">
              <p className={styles.text}>
                {`This changes ${count(offer.changes.length, "cell", "cells")} of the sheet ${offer.runs.sheet}.`}
                {offer.meets ? "" : " These sizes do not meet every need with its margin: see above."}
              </p>
              <div className={styles.buttons}>
                <Button appearance="primary" onClick={() => use(offer)}>
                  Write them
                </Button>
                <Button onClick={() => setAsking(false)}>Leave it as it is</Button>
              </div>
            </div>
          ) : (
            <Button onClick={() => setAsking(true)}>Use these sizes …</Button>
          )}
        </>
      )}
    </section>
  );
}

const progressWords = ({ best }: SearchedSoFar): string =>
  best === null
    ? "Searching; runs solved"
    : `Best so far: price ${Number(best.cost.toPrecision(4))}, the worst need, with its margin, met to ${Math.floor(100 * Math.min(1, best.share))} %; runs solved`;
