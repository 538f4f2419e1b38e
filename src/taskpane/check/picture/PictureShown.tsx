import { Subtitle2 } from "@fluentui/react-text";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { lazy, Suspense, type ReactElement } from "react";
import { ResultTable } from "../../functions/ResultTable";
import { DuctsShown } from "./DuctsShown";
import { FanKey } from "./FanKey";
import { fanRows } from "./pictureTables";
import type { Picture } from "./pictureOf";

const FanChart = lazy(() => import("./FanChart"));

const useStyles = makeStyles({
  heading: { display: "block", margin: "20px 0 4px" },
  text: { margin: "0 0 8px", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  numbers: {
    cursor: "pointer",
    margin: "4px 0",
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
});

/** The fan against the ducts, and the ducts with their velocities, each with the same numbers as a table. */
export function PictureShown({ picture }: { readonly picture: Picture }): ReactElement {
  const styles = useStyles();
  const { fan, runs, system } = picture;
  return (
    <>
      <Subtitle2 as="h2" className={styles.heading}>
        Fan and ducts
      </Subtitle2>
      {fan === null ? (
        <p className={styles.text}>
          The book has no fan curve, so the velocities below are those that the hoods ask for.
        </p>
      ) : (
        <>
          <Suspense fallback={<p className={styles.text}>Drawing …</p>}>
            <FanChart fan={fan} system={system} />
          </Suspense>
          <FanKey fan={fan} system={system} />
          <details>
            {/* Excel moves the focus itself, and its list of what can have it knows no summary */}
            <summary className={styles.numbers} tabIndex={0}>
              The same as a table
            </summary>
            <ResultTable label="Fan and ducts in numbers" rows={fanRows(fan, system)} headed />
          </details>
        </>
      )}
      <Subtitle2 as="h2" className={styles.heading}>
        Velocities
      </Subtitle2>
      <p className={styles.text}>
        From the fan outwards; a thicker line is a wider pipe. Broken: too slow, so that dust settles; air in or behind
        a device is taken to be clean. Grey: shut.
      </p>
      <DuctsShown runs={runs} system={system} />
    </>
  );
}
