import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useId, useState, type ReactElement } from "react";
import type { SheetHost } from "../../hosts/host";
import { sourceLine } from "../check/finding";
import { ExampleShown } from "./ExampleShown";
import { FunctionForm } from "./FunctionForm";
import type { FunctionGuide } from "./guide";
import type { FunctionMetadata, FunctionsFile } from "./metadata";

const useStyles = makeStyles({
  item: { borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  head: {
    display: "flex",
    flexDirection: "column",
    gap: "2px",
    width: "100%",
    minHeight: "44px",
    padding: "8px 4px",
    border: "none",
    background: "none",
    color: "inherit",
    font: "inherit",
    textAlign: "left",
    cursor: "pointer",
    ":hover": { backgroundColor: tokens.colorNeutralBackground1Hover },
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "-2px" },
  },
  name: { fontWeight: tokens.fontWeightSemibold },
  small: { fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  body: { padding: "4px 8px 12px", backgroundColor: tokens.colorNeutralBackground2 },
  list: { margin: 0 },
  term: { marginTop: "8px", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  fact: { margin: 0 },
  insert: { marginTop: "12px" },
});

interface FunctionItemProps {
  readonly guide: FunctionGuide;
  readonly metadata: FunctionMetadata;
  readonly file: FunctionsFile;
  readonly open: boolean;
  readonly host: SheetHost | null;
  readonly onToggle: () => void;
}

/** One function: what it gives; pressed, its maths, source, limits and example, and the form that writes it. */
export function FunctionItem({ guide, metadata, file, open, host, onToggle }: FunctionItemProps): ReactElement {
  const styles = useStyles();
  const id = useId();
  const [form, setForm] = useState(false);
  const facts: readonly [string, string][] = [
    ["formula", guide.maths],
    ["source", guide.source === "geometry" ? "Geometry" : sourceLine(guide.source)],
    ["limits", guide.limits],
  ];
  return (
    <li className={styles.item}>
      <button
        type="button"
        data-row
        className={styles.head}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={onToggle}
      >
        <span className={styles.name}>{metadata.name}</span>
        <span className={styles.small}>{metadata.description}</span>
      </button>
      {open && (
        <div id={id} className={styles.body}>
          <dl className={styles.list}>
            {facts.map(([term, fact]) => (
              <div key={term}>
                <dt className={styles.term}>{term}</dt>
                <dd className={styles.fact}>{fact}</dd>
              </div>
            ))}
          </dl>
          <ExampleShown guide={guide} metadata={metadata} />
          <Button
            className={styles.insert}
            appearance={form ? "secondary" : "primary"}
            aria-expanded={form}
            onClick={() => setForm(!form)}
          >
            {form ? "Close the form" : "Insert here …"}
          </Button>
          {form && <FunctionForm metadata={metadata} file={file} host={host} />}
        </div>
      )}
    </li>
  );
}
