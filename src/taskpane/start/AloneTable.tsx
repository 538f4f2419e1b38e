import { tokens } from "@fluentui/react-theme";
import { makeStyles, mergeClasses } from "@griffel/react";
import { Fragment, type ReactElement } from "react";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import { grouped, shortVelocity } from "../check/picture/shortWords";
import type { MachineAlone } from "./eachAlone";

const useStyles = makeStyles({
  table: { borderCollapse: "collapse", width: "100%", margin: "4px 0 8px" },
  head: {
    padding: "0 0 4px 8px",
    textAlign: "right",
    verticalAlign: "bottom",
    fontSize: tokens.fontSizeBase200,
    fontWeight: tokens.fontWeightRegular,
    color: tokens.colorNeutralForeground2,
    overflowWrap: "normal",
    borderBottom: `1px solid ${tokens.colorNeutralStroke1}`,
  },
  words: { textAlign: "left", paddingLeft: 0, width: "36%" },
  name: { padding: "6px 0 0", textAlign: "left", verticalAlign: "top", fontWeight: tokens.fontWeightSemibold },
  number: {
    padding: "6px 0 0 8px",
    textAlign: "right",
    verticalAlign: "top",
    whiteSpace: "nowrap",
    fontVariantNumeric: "tabular-nums",
  },
  bad: { color: tokens.colorPaletteDarkOrangeForeground1, fontWeight: tokens.fontWeightSemibold },
  advice: {
    padding: "2px 0 6px",
    fontSize: tokens.fontSizeBase200,
    color: tokens.colorNeutralForeground2,
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
});

interface AloneTableProps {
  readonly machines: readonly MachineAlone[];
  readonly system: UnitSystem;
}

/** What each machine gets with every other gate shut, and below it what to do. */
export function AloneTable({ machines, system }: AloneTableProps): ReactElement {
  const styles = useStyles();
  const [airflow, velocity] = [unitOf("airflow", system).label, unitOf("velocity", system).label];
  const head = (words: string, unit: string, isWords = false): ReactElement => (
    <th scope="col" className={mergeClasses(styles.head, isWords && styles.words)}>
      {words}
      {unit !== "" && <br />}
      {unit}
    </th>
  );
  return (
    <table className={styles.table} aria-label="Each machine alone">
      <thead>
        <tr>
          {head("Machine", "", true)}
          {head("Gets", airflow)}
          {head("Wants", airflow)}
          {head("Its duct", velocity)}
          {head("Dust", "")}
        </tr>
      </thead>
      <tbody>
        {machines.map(({ machine, gets, wants, isShort, velocity: speed, settlesIn, advice }) => (
          <Fragment key={machine}>
            <tr>
              <th scope="row" className={styles.name}>
                {machine}
              </th>
              <td className={mergeClasses(styles.number, isShort && styles.bad)}>
                {gets === null ? "" : grouped(gets)}
              </td>
              <td className={styles.number}>{wants === null ? "–" : grouped(wants)}</td>
              <td className={styles.number}>{speed === null ? "" : shortVelocity(speed, system)}</td>
              <td className={mergeClasses(styles.number, settlesIn.length > 0 && styles.bad)}>
                {gets === null ? "" : settlesIn.length > 0 ? "settles" : "moves"}
              </td>
            </tr>
            <tr>
              <td colSpan={5} className={styles.advice}>
                {settlesIn.length > 0 && `Dust settles in ${settlesIn.join(", ")}. `}
                {advice}
              </td>
            </tr>
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}
