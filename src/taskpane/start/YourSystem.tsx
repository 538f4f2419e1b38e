import { Button } from "@fluentui/react-button";
import { Subtitle2 } from "@fluentui/react-text";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { useState, type ReactElement } from "react";
import type { SheetHost } from "../../hosts/host";
import type { Finding } from "../check/finding";
import { DuctsShown } from "../check/picture/DuctsShown";
import type { Ducts } from "../check/picture/pictureOf";
import { roundedPressure, wholeAir } from "../check/picture/shortWords";
import { failureWords } from "../hostUse/words";
import type { ViewProps } from "../views/viewProps";
import { AloneTable } from "./AloneTable";
import type { NextStep, SystemSeen } from "./systemOf";
import { useSystem } from "./useSystem";

const useStyles = makeStyles({
  heading: { display: "block", margin: "20px 0 4px" },
  text: { margin: "0 0 8px" },
  small: { margin: "0 0 4px", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  steps: { margin: "0 0 8px", paddingLeft: "20px" },
  step: { padding: "0 0 8px" },
  line: { margin: "0 0 4px" },
});

interface YourSystemProps extends Pick<ViewProps, "go"> {
  readonly host: SheetHost;
  readonly shown: boolean;
}

/** The answer first: the owner's ducts as a tree, each machine alone, and what to do next. Nothing where the book has no ducts. */
export function YourSystem({ host, shown, go }: YourSystemProps): ReactElement | null {
  const styles = useStyles();
  const { system, status, isStale, show } = useSystem(host, shown);
  const [gone, setGone] = useState("");
  const asks = host.kind === "excel"; // reading a book takes Excel a while, so the user says when
  if (system === null && !asks) return status === "" ? null : <p role="status">{status}</p>;
  const goTo = ({ sheet, at }: Finding): void => {
    host.goTo(sheet, at).then(
      () => setGone(`Selected ${at} on the sheet ${sheet}.`),
      (error: unknown) => setGone(failureWords(error)),
    );
  };
  return (
    <>
      <Subtitle2 as="h2" className={styles.heading}>
        Your system
      </Subtitle2>
      {asks && (
        <>
          <p className={styles.text}>
            {isStale ? "Changed since." : "Your ducts as a tree, what each machine gets alone, and what to do next."}
          </p>
          <Button onClick={show}>{system === null ? "Show my system" : "Show it again"}</Button>
        </>
      )}
      <p role="status" className={styles.line}>
        {status}
      </p>
      {system !== null && <Shown system={system} goTo={goTo} toCheck={() => go("Check")} />}
      <p role="status" className={styles.line}>
        {gone}
      </p>
    </>
  );
}

interface ShownProps {
  readonly system: SystemSeen;
  readonly goTo: (finding: Finding) => void;
  readonly toCheck: () => void;
}

function Shown({ system: { which, ducts, alone, together, next, asTyped }, goTo, toCheck }: ShownProps): ReactElement {
  const styles = useStyles();
  const title = (text: string): ReactElement => (
    <Subtitle2 as="h2" className={styles.heading}>
      {text}
    </Subtitle2>
  );
  return (
    <>
      {which !== "" && <p className={styles.text}>{which}</p>}
      {asTyped && (
        <p className={styles.text}>
          Here the ducts and the fan are as typed. The sheets go by what your readings make of them, so their numbers
          differ.
        </p>
      )}
      {typeof ducts === "string" ? (
        <p className={styles.text}>{ducts}</p>
      ) : (
        <>
          <p className={styles.text}>{fanWords(ducts)}</p>
          <DuctsShown runs={ducts.runs} system={ducts.system} />
          <p className={styles.small}>
            Thicker: a wider pipe. Broken: dust settles (air behind a device is taken to be clean). Grey: shut.
          </p>
        </>
      )}
      {alone !== "" && title("Each machine alone")}
      {typeof alone === "string" || typeof ducts === "string" ? (
        <p className={styles.text}>{typeof alone === "string" ? alone : ""}</p>
      ) : (
        <AloneTable machines={alone} system={ducts.system} />
      )}
      {together !== "" && <p className={styles.text}>{together}</p>}
      {title("What to do next")}
      {next.length === 0 ? (
        <p className={styles.text}>Check finds nothing. That is no proof: a reading in the duct decides.</p>
      ) : (
        <ol className={styles.steps} aria-label="What to do next">
          {next.map((step, i) => (
            <Step key={i} step={step} goTo={goTo} />
          ))}
        </ol>
      )}
      <Button size="small" onClick={toCheck}>
        All that Check finds
      </Button>
    </>
  );
}

function Step({
  step: { finding, more },
  goTo,
}: {
  readonly step: NextStep;
  readonly goTo: ShownProps["goTo"];
}): ReactElement {
  // prettier-ignore
  const styles = useStyles();
  const rest = more === 0 ? "" : more === 1 ? " One more like it." : ` ${more} more like it.`;
  return (
    <li className={styles.step}>
      <p className={styles.line}>
        {finding.what}
        {rest}
      </p>
      <Button size="small" onClick={() => goTo(finding)}>
        Go to {finding.sheet}, {finding.at}
      </Button>
    </li>
  );
}

/** "With the gates as on Flow the fan moves 1,344 cfm at 6.1 in.w.g." */
function fanWords({ works, system, gatesOf }: Ducts): string {
  if (works === null) return "No fan's curve yet, so these are the airflows that the hoods ask for.";
  const gates = gatesOf === null ? "of the runs table" : `as on ${gatesOf}`;
  return `With the gates ${gates} the fan moves ${wholeAir(works.x, system)} at ${roundedPressure(works.y, system)}`;
}
