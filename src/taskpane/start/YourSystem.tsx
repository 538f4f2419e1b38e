import { Button, Subtitle2, makeStyles, tokens } from "@fluentui/react-components";
import { useEffect, useState, type ReactElement } from "react";
import type { SheetHost } from "../../hosts/host";
import type { Finding } from "../check/finding";
import { DuctTree } from "../check/picture/DuctTree";
import { seenIn } from "../check/seenIn";
import { calculate } from "../functions/pageWorker";
import { failureWords } from "../hostUse/words";
import type { ViewProps } from "../views/viewProps";
import { type SystemSeen, systemOf } from "./systemOf";

const useStyles = makeStyles({
  heading: { display: "block", margin: "20px 0 4px" },
  text: { margin: "0 0 8px" },
  small: { margin: "0 0 4px", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  list: { listStyleType: "none", margin: "0 0 8px", padding: 0 },
  item: { padding: "6px 0", borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  name: { fontWeight: tokens.fontWeightSemibold },
  line: { margin: "0 0 4px" },
});

interface YourSystemProps extends Pick<ViewProps, "go"> {
  readonly host: SheetHost;
}

/** The answer first: the owner's ducts as a tree, each machine alone, and what to do next. */
export function YourSystem({ host, go }: YourSystemProps): ReactElement {
  const styles = useStyles();
  const [system, setSystem] = useState<SystemSeen | null>(null);
  const [status, setStatus] = useState("");
  useEffect(
    () =>
      system === null
        ? undefined
        : host.follow(() => setStatus("Something has been selected or changed since: show it again after a change.")),
    [host, system],
  );
  const show = async (): Promise<void> => {
    setStatus("Reading the book …");
    try {
      setSystem(await systemOf(seenIn(await host.readBook()), calculate));
      setStatus("");
    } catch (error) {
      setStatus(failureWords(error));
    }
  };
  const goTo = ({ sheet, at }: Finding): void => {
    host.goTo(sheet, at).catch((error: unknown) => setStatus(failureWords(error)));
  };
  const title = (text: string): ReactElement => (
    <Subtitle2 as="h2" className={styles.heading}>
      {text}
    </Subtitle2>
  );
  return (
    <>
      {title("Your system")}
      <p className={styles.text}>Your ducts as a tree, what each machine gets alone, and what to do next.</p>
      <Button onClick={() => void show()}>{system === null ? "Show my system" : "Show it again"}</Button>
      <p role="status" className={styles.line}>
        {status}
      </p>
      {system !== null && (
        <>
          {typeof system.picture === "string" ? (
            <p className={styles.text}>{system.picture}</p>
          ) : (
            <>
              <p className={styles.small}>
                With the gates as they are. Thicker: a wider pipe. Broken: dust settles. Grey: shut.
              </p>
              <DuctTree runs={system.picture.runs} system={system.picture.system} />
            </>
          )}
          {title("Each machine alone")}
          {typeof system.alone === "string" ? (
            <p className={styles.text}>{system.alone}</p>
          ) : (
            <ul className={styles.list} aria-label="Each machine alone">
              {system.alone.map(({ machine, facts, verdict }) => (
                <li key={machine} className={styles.item}>
                  <p className={styles.line}>
                    <span className={styles.name}>{machine}:</span> {verdict}
                  </p>
                  <p className={styles.small}>{facts}</p>
                </li>
              ))}
            </ul>
          )}
          {title("What to do next")}
          {system.next.length === 0 ? (
            <p className={styles.text}>Check finds nothing. That is no proof: a reading in the duct decides.</p>
          ) : (
            <>
              <ul className={styles.list} aria-label="What to do next">
                {system.next.map((finding, i) => (
                  <li key={i} className={styles.item}>
                    <p className={styles.line}>{finding.what}</p>
                    <Button size="small" onClick={() => goTo(finding)}>
                      Go to {finding.sheet}, {finding.at}
                    </Button>
                  </li>
                ))}
              </ul>
              <Button onClick={() => go("Check")}>All that Check finds</Button>
            </>
          )}
        </>
      )}
    </>
  );
}
