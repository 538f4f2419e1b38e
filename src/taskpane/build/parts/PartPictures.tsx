import { SearchBox } from "@fluentui/react-search";
import { makeStyles } from "@griffel/react";
import { useState, type ReactElement } from "react";
import { machinePorts } from "../../../reference/hoods/machinePorts";
import { lossFamilies } from "../../../reference/lossFamilies";
import type { LossFamily } from "../../../reference/schema";
import { useRowStyles } from "../../rows/rowStyles";
import { stepFocus } from "../../stepFocus";
import { FittingSketch } from "../../tables/sketches/FittingSketch";
import { fold } from "../../tables/words";

const useStyles = makeStyles({
  search: { maxWidth: "none", margin: "8px 0 4px" },
  list: { listStyleType: "none", margin: 0, padding: 0, maxHeight: "360px", overflowY: "auto" },
  label: { fontWeight: 600 },
});

/** A shop owner looks for a machine before an end of duct. */
const offered = (kind: LossFamily["kind"]): readonly LossFamily[] =>
  kind === "fitting"
    ? lossFamilies.filter((family) => family.kind === kind)
    : [...new Set([...machinePorts, ...lossFamilies.filter((family) => family.kind === kind)])];

const isMeant = ({ key, label, aliases }: LossFamily, words: string): boolean =>
  fold(words)
    .split(/\s+/)
    .every((word) => fold([key, label, ...aliases].join(" ")).includes(word));

interface PartPicturesProps {
  readonly kind: LossFamily["kind"];
  readonly pick: (key: string) => void;
}

/** Every fitting or hood with its drawing; pressed, it goes into what will be written. */
export function PartPictures({ kind, pick }: PartPicturesProps): ReactElement {
  const rows = useRowStyles();
  const styles = useStyles();
  const [search, setSearch] = useState("");
  const name = kind === "fitting" ? "Add a fitting" : "Choose a hood";
  return (
    <div onKeyDown={(event) => stepFocus(event, "input[type=search], [data-row]", ["ArrowUp", "ArrowDown"])}>
      <SearchBox
        className={styles.search}
        aria-label={`${name}: search`}
        placeholder={name}
        value={search}
        onChange={(_, { value }) => setSearch(value)}
      />
      <ul className={styles.list} aria-label={name}>
        {offered(kind)
          .filter((family) => isMeant(family, search))
          .map(({ key, label }) => (
            <li key={key} className={rows.item}>
              <button type="button" data-row className={rows.head} onClick={() => pick(key)}>
                <span className={rows.words}>
                  <span className={styles.label}>{label}</span>
                  <span className={rows.small}>{key}</span>
                </span>
                <FittingSketch family={key} />
              </button>
            </li>
          ))}
      </ul>
    </div>
  );
}
