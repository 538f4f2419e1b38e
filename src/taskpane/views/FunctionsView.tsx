import { Button } from "@fluentui/react-button";
import { Label } from "@fluentui/react-label";
import { SearchBox } from "@fluentui/react-search";
import { Subtitle2 } from "@fluentui/react-text";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { useEffect, useId, useState, type ReactElement } from "react";
import { FunctionItem } from "../functions/FunctionItem";
import { findFunctions } from "../functions/findFunctions";
import type { FunctionsFile } from "../../hosts/functionsFile";
import { loadMetadata } from "../functions/metadata";
import { tasks } from "../../functions/tasks";
import { stepFocus } from "../stepFocus";
import { Heading } from "./Heading";
import { ShortCautions } from "./ShortCautions";
import type { ViewProps } from "./viewProps";

const useStyles = makeStyles({
  field: { display: "flex", flexDirection: "column", gap: "4px", marginBottom: "12px" },
  search: { maxWidth: "none" },
  count: { margin: "0 0 4px" },
  task: { display: "block", margin: "16px 0 4px" },
  list: { listStyleType: "none", margin: 0, padding: 0, borderTop: `1px solid ${tokens.colorNeutralStroke2}` },
});

/** Every function by what one wants to do, with the form that puts it into a cell. */
export function FunctionsView({ host, go, shown }: ViewProps & { readonly shown: boolean }): ReactElement {
  const styles = useStyles();
  const id = useId();
  const [file, setFile] = useState<FunctionsFile | null>(null);
  const [failed, setFailed] = useState(false);
  const [search, setSearch] = useState("");
  const [open, setOpen] = useState("");
  const load = (): void => {
    setFailed(false);
    loadMetadata().then(setFile, () => setFailed(true));
  };
  useEffect(() => {
    if (shown && file === null) load();
  }, [shown, file]);

  const found = file === null ? [] : findFunctions(tasks, file.functions, search);
  const number = found.reduce((sum, { functions }) => sum + functions.length, 0);
  const outcome =
    number === 0 ? "No function has all of these words." : number === 1 ? "1 function" : `${number} functions`;
  return (
    <div onKeyDown={(event) => stepFocus(event, "input[type=search], [data-row]", ["ArrowUp", "ArrowDown"])}>
      <Heading>Functions</Heading>
      <div className={styles.field}>
        <Label htmlFor={`${id}-search`}>Search functions</Label>
        <SearchBox
          id={`${id}-search`}
          className={styles.search}
          value={search}
          onChange={(_, { value }) => setSearch(value)}
        />
      </div>
      <p role="status" className={styles.count}>
        {failed
          ? "The list of functions could not be loaded."
          : file === null
            ? "Loading the list of functions …"
            : outcome}
      </p>
      {failed && <Button onClick={load}>Try again</Button>}
      {file !== null &&
        found.map(({ title, functions }) => (
          <section key={title} aria-label={title}>
            <Subtitle2 as="h2" className={styles.task}>
              {title}
            </Subtitle2>
            <ul className={styles.list}>
              {functions.map(({ guide, metadata }) => (
                <FunctionItem
                  key={guide.name}
                  guide={guide}
                  metadata={metadata}
                  file={file}
                  host={host}
                  goToCautions={() => go("Cautions")}
                  open={open === guide.name}
                  onToggle={() => setOpen(open === guide.name ? "" : guide.name)}
                />
              ))}
            </ul>
          </section>
        ))}
      <ShortCautions keys={["no measurement", "capture"]} goToCautions={() => go("Cautions")} />
    </div>
  );
}
