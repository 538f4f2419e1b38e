import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import { helpAddress } from "./files";

const useStyles = makeStyles({
  link: {
    color: tokens.colorBrandForegroundLink,
    ":hover": { color: tokens.colorBrandForegroundLinkHover },
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "2px" },
  },
});

interface HelpLinkProps {
  readonly file: string;
  readonly children?: string;
  readonly of?: string; // what the page is about, for those who hear the link alone
}

/** A link to a page of the help. It opens outside the pane, which keeps what one has typed. */
export function HelpLink({ file, children = "Help page", of }: HelpLinkProps): ReactElement {
  const styles = useStyles();
  return (
    <a
      className={styles.link}
      href={helpAddress(file)}
      target="_blank"
      rel="noopener noreferrer"
      aria-label={of === undefined ? undefined : `${children} of ${of}`}
    >
      {children}
    </a>
  );
}
