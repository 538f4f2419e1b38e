import { Button, Subtitle2, makeStyles, tokens } from "@fluentui/react-components";
import type { ReactElement } from "react";
import { TABLES_DATE, referenceTables } from "../../reference";
import { TaskOutcome } from "../hostUse/TaskOutcome";
import { useTask } from "../hostUse/useTask";
import type { Surroundings } from "../office";
import { openDemo } from "../start/openDemo";
import { provenanceOf } from "../tables/provenance";
import { Heading } from "./Heading";
import type { ViewProps } from "./viewProps";
import type { ViewName } from "./views";

const rows = referenceTables.flatMap((table) => table.rows);
const weak = rows.filter((row) => provenanceOf(row).weakness !== "").length;

const connection: Readonly<Record<Surroundings, string>> = {
  waiting: "Looking for Excel …",
  excel: "Connected to Excel.",
  local: "Beside the local sheet.",
  alone: "Running without a sheet: tables, functions and cautions need nothing else.",
};

const ways: readonly { readonly view: ViewName; readonly button: string; readonly text: string }[] = [
  { view: "Cautions", button: "Read the cautions", text: "before you work on a machine, a duct or the fan." },
  { view: "Tables", button: "Search the tables", text: "for a roughness, a loss coefficient, the air of a machine." },
  { view: "Functions", button: "Choose a function", text: "by what you want to do, and put it into a cell." },
  { view: "Build", button: "Build a budget", text: "of your own, empty or with an example." },
  { view: "Check", button: "Check the open book", text: "for what an experienced person would see." },
  { view: "Share", button: "Share it", text: "with people who have no functions, and repair #NAME?." },
];

const useStyles = makeStyles({
  heading: { display: "block", margin: "20px 0 4px" },
  text: { margin: "0 0 8px" },
  demo: { marginTop: "4px" },
  ways: { listStyleType: "none", margin: 0, padding: 0 },
  way: { display: "flex", flexDirection: "column", alignItems: "flex-start", gap: "2px", marginBottom: "10px" },
  date: { whiteSpace: "nowrap" },
  status: { margin: "20px 0 0", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
});

/** What this is, the way to an example, what to do next, where the numbers come from. */
export function StartView({ where, host, go }: ViewProps & { readonly where: Surroundings }): ReactElement {
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
      <p className={styles.text}>Budgets the air of a small workshop's dust ducts, in the cells of your spreadsheet.</p>
      <p className={styles.text}>Every figure names where it comes from, or says that it is from memory.</p>
      <Button
        appearance="primary"
        className={styles.demo}
        disabledFocusable={tasking.state.running !== null || where === "waiting"}
        onClick={() => tasking.run("Opening the example", (watch) => openDemo(host, watch))}
      >
        Show me an example
      </Button>
      <TaskOutcome tasking={tasking} />

      {title("What to do")}
      <ul className={styles.ways}>
        {ways.map(({ view, button, text }) => (
          <li key={view} className={styles.way}>
            <Button size="small" onClick={() => go(view)}>
              {button}
            </Button>
            <span>{text}</span>
          </li>
        ))}
      </ul>

      {title("Where the numbers come from")}
      <p className={styles.text}>
        From {referenceTables.length} tables with {rows.length} rows, as of{" "}
        <span className={styles.date}>{TABLES_DATE}</span>. Each row names its source and the place in it. {weak} rows
        are marked “from memory” or “common practice”: check those before you rely on them.
      </p>
      <p className={styles.text}>No table knows your own ducts: measure, mend and measure again.</p>

      {title("Units")}
      <p className={styles.text}>
        The last argument of a function is its units: "IP" (in, ft, cfm, fpm, in.w.g.), taken where you give none, or
        "SI" (mm, m, m³/h, m/s, Pa). The tables show both.
      </p>

      <p role="status" className={styles.status}>
        {connection[where]}
      </p>
    </>
  );
}
