import { Badge, Button, makeStyles, tokens } from "@fluentui/react-components";
import type { ReactElement } from "react";
import type { Finding } from "./finding";

const useStyles = makeStyles({
  item: { padding: "10px 0", borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  what: { margin: "4px 0", fontWeight: tokens.fontWeightSemibold },
  why: { margin: "0 0 4px" },
  source: { margin: "0 0 6px", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
});

interface FindingItemProps {
  readonly finding: Finding;
  readonly goTo: () => void;
}

/** One finding: what it is, why it matters, the source, and the way to its cell. */
export function FindingItem({ finding: { rule, what, why, source, sheet, at }, goTo }: FindingItemProps): ReactElement {
  const styles = useStyles();
  return (
    <li className={styles.item}>
      <Badge appearance="outline" color="important">
        {rule}
      </Badge>
      <p className={styles.what}>{what}</p>
      <p className={styles.why}>{why}</p>
      <p className={styles.source}>Source: {source}</p>
      <Button size="small" onClick={goTo}>
        Go to {sheet}, {at}
      </Button>
    </li>
  );
}
