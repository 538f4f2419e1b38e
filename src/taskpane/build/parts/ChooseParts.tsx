import { Button } from "@fluentui/react-button";
import { Subtitle2 } from "@fluentui/react-text";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import type { SheetHost } from "../../../hosts/host";
import { PartPicker } from "./PartPicker";
import { useSelectedPart } from "./useSelectedPart";

const useStyles = makeStyles({
  heading: { display: "block", margin: "20px 0 4px" },
  text: { margin: "0 0 8px" },
  show: { marginBottom: "8px" },
});

/** The fittings or the hood of the run whose cell is selected, chosen by pictures. */
export function ChooseParts({ host }: { readonly host: SheetHost | null }): ReactElement {
  const styles = useStyles();
  const { part, show, said } = useSelectedPart(host);
  return (
    <section aria-label="Fittings and hoods by picture">
      <Subtitle2 as="h2" className={styles.heading}>
        Fittings and hoods by picture
      </Subtitle2>
      {show !== null && (
        <Button className={styles.show} onClick={show}>
          Show the selected cell
        </Button>
      )}
      {part === null || host === null ? (
        <p className={styles.text} role="status">
          {said ||
            "Select a cell under Fittings or Hood on the sheet Runs: what it takes stands here then, with pictures."}
        </p>
      ) : (
        <PartPicker key={`${part.sheet}!${part.at} ${part.content} ${part.formula}`} host={host} part={part} />
      )}
    </section>
  );
}
