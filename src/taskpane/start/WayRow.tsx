import { makeStyles, tokens } from "@fluentui/react-components";
import { useId, type ReactElement } from "react";
import { Chevron } from "../rows/Chevron";
import { useRowStyles } from "../rows/rowStyles";

const useStyles = makeStyles({ title: { fontWeight: tokens.fontWeightSemibold } });

interface WayRowProps {
  readonly title: string;
  readonly text: string;
  readonly follow: () => void;
}

/** A way into a view: the whole row is its button, called by its title and described by its text. */
export function WayRow({ title, text, follow }: WayRowProps): ReactElement {
  const rows = useRowStyles();
  const styles = useStyles();
  const id = useId();
  return (
    <li className={rows.item}>
      <button
        type="button"
        className={rows.head}
        aria-labelledby={`${id}-title`}
        aria-describedby={`${id}-text`}
        onClick={follow}
      >
        <span className={rows.words}>
          <span id={`${id}-title`} className={styles.title}>
            {title}
          </span>
          <span id={`${id}-text`} className={rows.small}>
            {text}
          </span>
        </span>
        <Chevron points="onward" />
      </button>
    </li>
  );
}
