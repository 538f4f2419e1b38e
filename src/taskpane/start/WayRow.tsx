import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import { Chevron } from "../rows/Chevron";
import { useRowStyles } from "../rows/rowStyles";

const useStyles = makeStyles({ title: { fontWeight: tokens.fontWeightSemibold } });

interface WayRowProps {
  readonly title: string;
  readonly text: string;
  readonly follow: () => void;
}

/** A way into a view: the whole row is its button. */
export function WayRow({ title, text, follow }: WayRowProps): ReactElement {
  const rows = useRowStyles();
  const styles = useStyles();
  return (
    <li className={rows.item}>
      <button type="button" className={rows.head} onClick={follow}>
        <span className={rows.words}>
          <span className={styles.title}>{title}</span>
          <span className={rows.small}>{text}</span>
        </span>
        <Chevron points="onward" />
      </button>
    </li>
  );
}
