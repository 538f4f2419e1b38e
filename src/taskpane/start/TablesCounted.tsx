import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import { TABLES_DATE, referenceTables } from "../../reference";
import { provenanceOf } from "../tables/provenance";

const rows = referenceTables.flatMap((table) => table.rows);
const weak = rows.filter((row) => provenanceOf(row).weakness !== "").length;

const useStyles = makeStyles({ text: { margin: "0 0 8px" }, date: { whiteSpace: "nowrap" } });

/** How much stands in the tables, and how much of it is weak. */
export function TablesCounted(): ReactElement {
  const styles = useStyles();
  return (
    <p className={styles.text}>
      From {referenceTables.length} tables with {rows.length} rows, as of{" "}
      <span className={styles.date}>{TABLES_DATE}</span>. Each row names its source and the place in it. {weak} rows are
      marked “from memory” or “common practice”: check those before you rely on them.
    </p>
  );
}
