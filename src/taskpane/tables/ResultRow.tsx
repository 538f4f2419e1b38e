import { Badge } from "@fluentui/react-badge";
import { tokens } from "@fluentui/react-theme";
import { makeStyles, mergeClasses } from "@griffel/react";
import { useId, type ReactElement } from "react";
import type { SheetHost } from "../../hosts/host";
import type { UnitSystem } from "../../reference/quantities";
import { Chevron } from "../rows/Chevron";
import { useRowStyles } from "../rows/rowStyles";
import { glance } from "./glance";
import { provenanceOf } from "./provenance";
import { familyOf } from "./readyFormula";
import { RowDetails } from "./RowDetails";
import type { Entry } from "./search";
import { FittingSketch } from "./sketches/FittingSketch";
import { display } from "./values";
import { fold } from "./words";

const useStyles = makeStyles({
  label: { fontWeight: tokens.fontWeightSemibold },
  values: { display: "flex", flexWrap: "wrap", columnGap: "12px" },
});

interface ResultRowProps {
  readonly entry: Entry;
  readonly open: boolean;
  readonly among: boolean; // among rows of other tables, so that its own has to be named
  readonly host: SheetHost | null;
  readonly system: UnitSystem; // whose values come first
  readonly onToggle: () => void;
}

/** One found row: its label, values and weakness; pressed, all that the table says of it. */
export function ResultRow({
  entry: { table, row },
  open,
  among,
  host,
  system,
  onToggle,
}: ResultRowProps): ReactElement {
  const rows = useRowStyles();
  const styles = useStyles();
  const id = useId();
  const [key = "", label = ""] = row.map(display);
  const { weakness, source } = provenanceOf(row);
  const family = table.name === "fittings" || table.name === "hoods" ? familyOf(row)?.key : undefined;
  return (
    <li className={rows.item}>
      <button
        type="button"
        data-row
        className={mergeClasses(rows.head, open && rows.open)}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={onToggle}
      >
        <span className={rows.words}>
          <span className={styles.label}>{label}</span>
          {!fold(label).includes(fold(key)) && <span className={rows.small}>{key}</span>}
          <span className={styles.values}>
            {glance(table, row, system).map(({ name, text }) => (
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
          <span className={rows.small}>
            {among && `${table.title} · `}
            {source}
          </span>
        </span>
        {family !== undefined && <FittingSketch family={family} />}
        <Chevron points={open ? "up" : "down"} />
      </button>
      {open && <RowDetails id={id} table={table} row={row} host={host} />}
    </li>
  );
}
