import { Button, Subtitle2, makeStyles, tokens } from "@fluentui/react-components";
import type { ReactElement, ReactNode } from "react";
import { TABLES_DATE, referenceTables } from "../../reference";
import type { Surroundings } from "../office";
import { provenanceOf } from "../tables/provenance";
import { Heading } from "./Heading";
import type { ViewName } from "./views";

const rows = referenceTables.flatMap((table) => table.rows);
const weak = rows.filter((row) => provenanceOf(row).weakness !== "").length;

const connection: Readonly<Record<Surroundings, string>> = {
  waiting: "Looking for Excel …",
  excel: "Connected to Excel.",
  local: "Beside the local sheet.",
  alone: "Running without Excel: the tables and cautions need nothing else.",
};

const useStyles = makeStyles({
  heading: { display: "block", margin: "20px 0 4px" },
  text: { margin: "0 0 8px" },
  steps: { margin: 0, paddingLeft: "20px" },
  step: { marginBottom: "12px" },
  button: { display: "block", marginTop: "6px" },
  formula: { fontFamily: tokens.fontFamilyMonospace, whiteSpace: "nowrap" },
  date: { whiteSpace: "nowrap" },
  status: { margin: "20px 0 0", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
});

interface StartViewProps {
  readonly where: Surroundings;
  readonly go: (view: ViewName) => void;
}

/** What this is, what to do first, where the numbers come from and in which units. */
export function StartView({ where, go }: StartViewProps): ReactElement {
  const styles = useStyles();
  const title = (text: string): ReactElement => (
    <Subtitle2 as="h2" className={styles.heading}>
      {text}
    </Subtitle2>
  );
  const step = (text: ReactNode, button?: ReactNode): ReactElement => (
    <li className={styles.step}>
      {text}
      {button}
    </li>
  );
  const goTo = (view: ViewName, text: string): ReactElement => (
    <Button className={styles.button} onClick={() => go(view)}>
      {text}
    </Button>
  );
  return (
    <>
      <Heading>Duct Ledger</Heading>
      <p className={styles.text}>Budgets the air of a small workshop's dust ducts, in the cells of your spreadsheet.</p>
      <p className={styles.text}>Every figure names where it comes from, or says that it is from memory.</p>

      {title("What to do first")}
      <ol className={styles.steps}>
        {step(
          "Read the cautions before you work on a machine, a duct or the fan.",
          goTo("Cautions", "Read the cautions"),
        )}
        {where === "local" &&
          step("In the demo, change the airflow of a hood and watch the budget and its notes follow.")}
        {step(
          <>
            In a cell, type <code className={styles.formula}>=DUCT.</code> and choose a function: its arguments and
            units are explained while you type. <code className={styles.formula}>DUCT.BUDGET</code> takes a whole table
            of runs.
          </>,
        )}
        {step(
          "Look up a roughness, a loss coefficient or the air that a machine needs.",
          goTo("Tables", "Search the tables"),
        )}
      </ol>

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
