import { Badge } from "@fluentui/react-badge";
import { Button } from "@fluentui/react-button";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import type { FindingGroup } from "./byReason";
import type { Finding } from "./finding";

const useStyles = makeStyles({
  item: { padding: "12px 0", borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  list: { listStyleType: "none", margin: 0, padding: 0 },
  what: { margin: "6px 0 4px", fontWeight: tokens.fontWeightSemibold },
  why: { margin: "8px 0 4px" },
  source: { margin: 0, fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
});

interface FindingGroupProps {
  readonly group: FindingGroup;
  readonly goTo: (finding: Finding) => void;
}

/** Findings of one kind, each with the way to its cell; why they matter and the source once for all. */
export function FindingGroupItem({ group: { rule, why, source, findings }, goTo }: FindingGroupProps): ReactElement {
  const styles = useStyles();
  return (
    <li className={styles.item}>
      <Badge appearance="outline" color="important">
        {rule}
      </Badge>
      <ul className={styles.list}>
        {findings.map((finding, i) => (
          <li key={i}>
            <p className={styles.what}>{finding.what}</p>
            <Button size="small" onClick={() => goTo(finding)}>
              Go to {finding.sheet}, {finding.at}
            </Button>
          </li>
        ))}
      </ul>
      <p className={styles.why}>{why}</p>
      <p className={styles.source}>Source: {source}</p>
    </li>
  );
}
