import { Button } from "@fluentui/react-button";
import { Subtitle2 } from "@fluentui/react-text";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import { UnitsChoice } from "../build/UnitsChoice";
import { checksFile, firstInExcelFile, indexFile } from "../help/files";
import { HelpLink } from "../help/HelpLink";
import { TaskOutcome } from "../hostUse/TaskOutcome";
import { useTask } from "../hostUse/useTask";
import type { PageSurroundings } from "../office";
import { openDemo } from "../start/openDemo";
import { WayRow } from "../start/WayRow";
import { Heading } from "./Heading";
import type { PartsComing } from "./useLaterParts";
import { ViewComing } from "./ViewComing";
import type { UnitsProps, ViewProps } from "./viewProps";
import type { ViewName } from "./views";

const connection: Readonly<Record<PageSurroundings, string>> = {
  waiting: "Looking for Excel …",
  excel: "Connected to Excel.",
  local: "Beside the local sheet.",
  alone: "Running without a sheet: tables, functions and cautions need nothing else.",
};

const LACKS_FUNCTIONS =
  " The file of the cell functions could not be loaded: cells wait for it, and may show old numbers meanwhile. It is asked for again every few seconds.";

const ways: readonly { readonly view: ViewName; readonly button: string; readonly text: string }[] = [
  { view: "Cautions", button: "Read the cautions", text: "Before you work on a machine, a duct or the fan." },
  {
    view: "Tables",
    button: "Search the tables",
    text: "A roughness, a loss coefficient, the air that a machine asks for.",
  },
  { view: "Functions", button: "Choose a function", text: "By what you want to do; then put it into a cell." },
  { view: "Build", button: "Build a budget", text: "New sheets of your own, empty or with an example." },
  { view: "Check", button: "Check the open book", text: "What an experienced person would look at in it." },
  { view: "Share", button: "Share it", text: "Copies for people without these functions; #NAME? repaired." },
];

const useStyles = makeStyles({
  heading: { display: "block", margin: "20px 0 4px" },
  text: { margin: "0 0 8px" },
  ways: { listStyleType: "none", margin: 0, padding: 0, borderTop: `1px solid ${tokens.colorNeutralStroke2}` },
  status: { margin: "20px 0 0", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
});

interface StartViewProps extends ViewProps, UnitsProps, PartsComing {
  readonly where: PageSurroundings;
  readonly lacksFunctions: boolean;
  readonly shown: boolean;
}

/** What this is, the way to an example, what to do next, where the numbers come from. */
export function StartView(props: StartViewProps): ReactElement {
  const { where, host, lacksFunctions, shown, go, units, chooseUnits, parts, failed, ask } = props;
  const styles = useStyles();
  const tasking = useTask();
  const title = (text: string): ReactElement => (
    <Subtitle2 as="h2" className={styles.heading}>
      {text}
    </Subtitle2>
  );
  return (
    <>
      <Heading>Duct Ledger</Heading>
      {host?.kind !== "local" && ( // beside the local sheet the answer stands first
        <p className={styles.text}>
          Budgets the air of a small workshop's dust ducts, in the cells of your spreadsheet.
        </p>
      )}
      {host !== null && parts !== null && <parts.YourSystem host={host} shown={shown} go={go} />}
      {host !== null && failed && (
        <>
          {title("Your system")}
          <ViewComing failed={failed} ask={ask} />
        </>
      )}
      {title("An example")}
      <UnitsChoice legend="Units of the example" units={units} choose={chooseUnits} />
      <Button
        appearance="primary"
        disabledFocusable={tasking.state.running !== null || where === "waiting"}
        onClick={() => tasking.run("Opening the example", (watch) => openDemo(host, units, watch))}
      >
        Show me an example
      </Button>
      <TaskOutcome tasking={tasking} />

      {title("What to do")}
      <ul className={styles.ways}>
        {ways.map(({ view, button, text }) => (
          <WayRow key={view} title={button} text={text} follow={() => go(view)} />
        ))}
      </ul>

      {title("Where the numbers come from")}
      <p className={styles.text}>Every figure names where it comes from, or says that it is from memory.</p>
      {parts !== null && <parts.TablesCounted />}
      <p className={styles.text}>
        <HelpLink file={checksFile}>How the numbers are checked</HelpLink>
      </p>
      <p className={styles.text}>No table knows your own ducts: measure, mend and measure again.</p>

      {title("Units")}
      <p className={styles.text}>
        The last argument of a function is its units: "IP" (in, ft, cfm, fpm, in.w.g.), taken where you give none, or
        "SI" (mm, m, m³/h, m/s, Pa). The tables show both.
      </p>

      <p className={styles.text}>
        <HelpLink file={indexFile}>All help pages</HelpLink>
      </p>

      <p role="status" className={styles.status}>
        {connection[where]}
        {where === "excel" && lacksFunctions && LACKS_FUNCTIONS}
      </p>
      {where === "excel" && (
        <p className={styles.text}>
          Nobody has tried this in Excel yet.{" "}
          <HelpLink file={firstInExcelFile}>Ten minutes of yours would tell.</HelpLink>
        </p>
      )}
    </>
  );
}
