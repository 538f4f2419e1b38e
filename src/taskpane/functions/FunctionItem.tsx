import { Button } from "@fluentui/react-button";
import { tokens } from "@fluentui/react-theme";
import { makeStyles, mergeClasses } from "@griffel/react";
import { useId, useState, type ReactElement } from "react";
import type { SheetHost } from "../../hosts/host";
import { functionFile } from "../help/files";
import { HelpLink } from "../help/HelpLink";
import { Chevron } from "../rows/Chevron";
import { useRowStyles } from "../rows/rowStyles";
import { termWords } from "../rows/termWords";
import { ShortCautions } from "../views/ShortCautions";
import { ExampleShown } from "./ExampleShown";
import { FunctionForm } from "./FunctionForm";
import { sourceOfGuide } from "./sourceOfGuide";
import type { FunctionGuide } from "../../functions/guide";
import type { FunctionMetadata, FunctionsFile } from "../../hosts/functionsFile";

const useStyles = makeStyles({
  name: { fontWeight: tokens.fontWeightSemibold },
  body: { padding: "0 8px 12px", backgroundColor: tokens.colorNeutralBackground2 },
  list: { margin: 0 },
  term: { marginTop: "8px", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  fact: { margin: 0 },
  // The link follows the form, which has a line to itself: from the button, Tab leads into the form.
  doing: { display: "flex", flexWrap: "wrap", alignItems: "center", gap: "12px", marginTop: "12px" },
  form: { flexBasis: "100%" },
});

interface FunctionItemProps {
  readonly guide: FunctionGuide;
  readonly metadata: FunctionMetadata;
  readonly file: FunctionsFile;
  readonly open: boolean;
  readonly host: SheetHost | null;
  readonly onToggle: () => void;
  readonly goToCautions: () => void;
}

/** One function: what it gives; pressed, its maths, source, limits and example, and the form that writes it. */
export function FunctionItem({
  guide,
  metadata,
  file,
  open,
  host,
  onToggle,
  goToCautions,
}: FunctionItemProps): ReactElement {
  const rows = useRowStyles();
  const styles = useStyles();
  const id = useId();
  const [form, setForm] = useState(false);
  const facts: readonly [string, string][] = [
    ["formula", guide.maths],
    ["source", sourceOfGuide(guide)],
    ["limits", guide.limits],
  ];
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
          <span className={styles.name}>{metadata.name}</span>
          <span className={rows.small}>{metadata.description}</span>
        </span>
        <Chevron points={open ? "up" : "down"} />
      </button>
      {open && (
        <div id={id} className={styles.body}>
          <dl className={styles.list}>
            {facts.map(([term, fact]) => (
              <div key={term}>
                <dt className={styles.term}>{termWords(term)}</dt>
                <dd className={styles.fact}>{fact}</dd>
              </div>
            ))}
          </dl>
          <ExampleShown guide={guide} metadata={metadata} />
          <div className={styles.doing}>
            <Button appearance={form ? "secondary" : "primary"} aria-expanded={form} onClick={() => setForm(!form)}>
              {form ? "Close the form" : "Insert here …"}
            </Button>
            {form && (
              <div className={styles.form}>
                {guide.cautions !== undefined && (
                  <ShortCautions keys={guide.cautions} goToCautions={goToCautions} of={guide.name} />
                )}
                <FunctionForm metadata={metadata} file={file} host={host} />
              </div>
            )}
            <HelpLink file={functionFile(metadata.name)} of={metadata.name} />
            {guide.page !== undefined && <HelpLink file={guide.page.file}>{guide.page.title}</HelpLink>}
          </div>
        </div>
      )}
    </li>
  );
}
