import { makeStyles, tokens } from "@fluentui/react-components";
import { useState, type ReactElement, type ReactNode } from "react";
import type { ReferenceTable } from "../../reference";
import { CopyableValue } from "./CopyableValue";
import { provenanceOf } from "./provenance";
import type { Row } from "./search";
import { display, valuesOf } from "./values";

const useStyles = makeStyles({
  details: { padding: "4px 4px 12px", backgroundColor: tokens.colorNeutralBackground2 },
  list: { margin: 0 },
  name: { marginTop: "8px", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  cell: { margin: "0 0 2px" },
  // At the foot of the window as long as the details reach below it, so that it is seen wherever the button was.
  status: { position: "sticky", bottom: 0, margin: 0, backgroundColor: tokens.colorNeutralBackground2 },
});

interface RowDetailsProps {
  readonly id: string;
  readonly table: ReferenceTable;
  readonly row: Row;
}

/** Every column of a row; its numbers and the key, which formulas take, can be copied. */
export function RowDetails({ id, table, row }: RowDetailsProps): ReactElement {
  const styles = useStyles();
  const [copied, setCopied] = useState({ id: "", word: "", sentence: "" });
  const { basis, weakness, source, where } = provenanceOf(row);
  const item = (name: string, cells: readonly ReactNode[]): ReactElement => (
    <div key={name}>
      <dt className={styles.name}>{name}</dt>
      {cells.map((cell, i) => (
        <dd key={i} className={styles.cell}>
          {cell}
        </dd>
      ))}
    </div>
  );
  return (
    <div id={id} className={styles.details}>
      <dl className={styles.list}>
        {valuesOf(table, row).map(({ name, parts }) =>
          item(
            name,
            parts.map(({ cell, unit }) => {
              const text = display(cell);
              if (typeof cell !== "number" && name !== "key") return text;
              const id = `${name} ${unit}`;
              return (
                <CopyableValue
                  value={{ name, text, unit }}
                  word={copied.id === id ? copied.word : "Copy"}
                  tell={(outcome) => setCopied({ id, ...outcome })}
                />
              );
            }),
          ),
        )}
        {item("how it is known", [weakness === "" ? basis : `${basis}: weak, check it before you rely on it`])}
        {item("source", [source])}
        {item("where in it", [where])}
      </dl>
      <p role="status" className={styles.status}>
        {copied.sentence}
      </p>
    </div>
  );
}
