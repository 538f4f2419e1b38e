import { Title3 } from "@fluentui/react-text";
import { makeStyles } from "@griffel/react";
import type { ReactElement, ReactNode } from "react";

const useStyles = makeStyles({ heading: { display: "block", margin: "0 0 12px" } });

/** The title of a view. */
export function Heading({ children }: { readonly children: ReactNode }): ReactElement {
  const styles = useStyles();
  return (
    <Title3 as="h1" className={styles.heading}>
      {children}
    </Title3>
  );
}
