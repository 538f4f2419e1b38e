import { Badge, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useId, type ReactElement } from "react";
import type { SheetHost } from "../../hosts/host";
import { glance } from "./glance";
import { provenanceOf } from "./provenance";
import { familyOf } from "./readyFormula";
import { RowDetails } from "./RowDetails";
import type { Entry } from "./search";
import { FittingSketch } from "./sketches/FittingSketch";
import { display } from "./values";
import { fold } from "./words";

const useStyles = makeStyles({
  item: { borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  summary: {
    display: "flex",
    alignItems: "flex-start",
    gap: "8px",
    width: "100%",
    minHeight: "44px",
    padding: "8px 4px",
    border: "none",
    background: "none",
    color: "inherit",
    font: "inherit",
    textAlign: "left",
    overflowWrap: "anywhere",
    cursor: "pointer",
    ":hover": { backgroundColor: tokens.colorNeutralBackground1Hover },
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "-2px" },
  },
  open: { backgroundColor: tokens.colorNeutralBackground2 },
  words: { display: "flex", flexDirection: "column", gap: "2px", flexGrow: 1, minWidth: 0 },
  label: { fontWeight: tokens.fontWeightSemibold },
  values: { display: "flex", flexWrap: "wrap", columnGap: "12px" },
  small: { fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
});

interface ResultRowProps {
  readonly entry: Entry;
  readonly open: boolean;
  readonly host: SheetHost | null;
  readonly onToggle: () => void;
}

/** One found row: its label, values and weakness; pressed, all that the table says of it. */
export function ResultRow({ entry: { table, row }, open, host, onToggle }: ResultRowProps): ReactElement {
  const styles = useStyles();
  const id = useId();
  const [key = "", label = ""] = row.map(display);
  const { weakness, source } = provenanceOf(row);
  const family = table.name === "fittings" || table.name === "hoods" ? familyOf(row)?.key : undefined;
  return (
    <li className={styles.item}>
      <button
        type="button"
        data-row
        className={mergeClasses(styles.summary, open && styles.open)}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={onToggle}
      >
        <span className={styles.words}>
          <span className={styles.label}>{label}</span>
          {!fold(label).includes(fold(key)) && <span className={styles.small}>{key}</span>}
          <span className={styles.values}>
            {glance(table, row).map(({ name, text }) => (
              <span key={name}>
                {name}: {text}
              </span>
            ))}
          </span>
          {weakness !== "" && (
            <span>
              <Badge appearance="outline" color="important">
                {weakness}
              </Badge>
            </span>
          )}
          <span className={styles.small}>
            {table.title} · {source}
          </span>
        </span>
        {family !== undefined && <FittingSketch family={family} />}
      </button>
      {open && <RowDetails id={id} table={table} row={row} host={host} />}
    </li>
  );
}
