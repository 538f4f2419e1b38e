import { Button } from "@fluentui/react-button";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { useState, type ReactElement } from "react";
import { findingsIn } from "../check/findingsIn";
import type { Finding } from "../check/finding";
import { byReason } from "../check/byReason";
import { FindingGroupItem } from "../check/FindingGroupItem";
import { type Picture, pictureOf } from "../check/picture/pictureOf";
import { restsOn } from "../check/named/restsOn";
import { PictureShown } from "../check/picture/PictureShown";
import { whichRuns } from "../check/runs";
import { seenIn } from "../check/seenIn";
import { calculate } from "../functions/pageWorker";
import { type Moment, useChanges } from "../hostUse/useChanges";
import { count, failureWords, NO_SHEET } from "../hostUse/words";
import { Heading } from "./Heading";
import { ShortCautions } from "./ShortCautions";
import type { ViewProps } from "./viewProps";

const useStyles = makeStyles({
  text: { margin: "0 0 12px" },
  status: { margin: "12px 0 4px", fontWeight: tokens.fontWeightSemibold, minHeight: "20px" },
  list: { listStyleType: "none", margin: 0, padding: 0 },
  line: { margin: "4px 0", minHeight: "20px" },
});

interface Checked {
  readonly at: Moment;
  readonly findings: readonly Finding[];
  readonly restsOn: string; // values that nobody has seen in print, as a sentence; "" where there are none
  readonly which: string; // table of runs the picture is of, where there are several
  readonly picture: Picture | string;
}

/** Reads the open book and lists what an experienced person would see, with a picture of the fan and the ducts. */
export function CheckView({ host, go }: ViewProps): ReactElement {
  const styles = useStyles();
  const [found, setFound] = useState<Checked | null>(null);
  const [status, setStatus] = useState("");
  const [gone, setGone] = useState("");
  const [isAsked, setAsked] = useState(false); // until then nobody needs to know what changes
  const { drawn, now } = useChanges(isAsked ? host : null);
  // What was found in another book is no help with this one: its places may hold something else here.
  const isOther = found !== null && found.at.books !== drawn.books;
  const checked = isOther ? null : found;

  const check = async (): Promise<void> => {
    if (host === null) return setStatus(NO_SHEET);
    setAsked(true);
    if (isOther) setFound(null);
    setStatus("Reading the book …");
    const at = now();
    try {
      const seen = seenIn(await host.readBook());
      const findings = findingsIn(seen);
      const picture = await pictureOf(seen, calculate);
      setFound({ at, findings, restsOn: restsOn(seen), which: whichRuns(seen.runs), picture });
      setGone("");
      setStatus(
        findings.length === 0
          ? "Nothing found. That is no proof: a reading in the duct decides."
          : count(findings.length, "thing to look at.", "things to look at."),
      );
    } catch (error) {
      setStatus(failureWords(error));
    }
  };
  const goTo = async ({ sheet, at }: Finding): Promise<void> => {
    try {
      await host?.goTo(sheet, at);
      setGone(`Selected ${at} on the sheet ${sheet}.`);
    } catch (error) {
      setGone(failureWords(error));
    }
  };
  return (
    <>
      <Heading>Check</Heading>
      <p className={styles.text}>
        Reads the open book, wherever its tables stand, and lists what an experienced person would look at.
      </p>
      <Button appearance="primary" onClick={() => void check()}>
        {checked === null ? "Check the open book" : "Check again"}
      </Button>
      <p role="status" className={styles.status}>
        {isOther ? "Another book is open now, and has not been checked." : status}
      </p>
      {checked !== null && checked.at.changes !== drawn.changes && (
        <p className={styles.line}>Something has been changed since: check again.</p>
      )}
      {checked !== null && (
        <>
          <p role="status" className={styles.line}>
            {gone}
          </p>
          <ul className={styles.list} aria-label="Findings">
            {byReason(checked.findings).map((group, i) => (
              <FindingGroupItem key={i} group={group} goTo={(finding) => void goTo(finding)} />
            ))}
          </ul>
          {checked.restsOn !== "" && <p className={styles.text}>{checked.restsOn}</p>}
          {checked.which !== "" && <p className={styles.text}>{checked.which}</p>}
          {typeof checked.picture === "string" ? (
            <p className={styles.text}>{checked.picture}</p>
          ) : (
            <PictureShown picture={checked.picture} />
          )}
        </>
      )}
      <ShortCautions keys={["power off", "no measurement"]} goToCautions={() => go("Cautions")} />
    </>
  );
}
