import { Button } from "@fluentui/react-button";
import { Label } from "@fluentui/react-label";
import { SearchBox } from "@fluentui/react-search";
import { Select } from "@fluentui/react-select";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { useEffect, useId, useMemo, useRef, useState, type ReactElement } from "react";
import { referenceTables } from "../../reference";
import type { UnitSystem } from "../../reference/quantities";
import { tableFile } from "../help/files";
import { HelpLink } from "../help/HelpLink";
import { stepFocus } from "../stepFocus";
import { ResultRow } from "../tables/ResultRow";
import { entriesOf, find } from "../tables/search";
import { Heading } from "./Heading";
import type { SheetHost } from "../../hosts/host";

const entries = entriesOf(referenceTables);
const AT_A_TIME = 40;
const ALL = "";

const useStyles = makeStyles({
  field: { display: "flex", flexDirection: "column", gap: "4px", marginBottom: "12px" },
  search: { maxWidth: "none" },
  hint: { fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  found: { display: "flex", justifyContent: "space-between", gap: "12px", marginBottom: "4px" },
  count: { margin: 0, fontWeight: tokens.fontWeightSemibold },
  results: { listStyleType: "none", margin: 0, padding: 0, borderTop: `1px solid ${tokens.colorNeutralStroke2}` },
  more: { marginTop: "12px" },
});

interface TablesViewProps {
  readonly host: SheetHost | null;
  readonly units: UnitSystem;
}

/** The reference tables: choose one or search them all, open a row to see everything that is known of it. */
export function TablesView({ host, units }: TablesViewProps): ReactElement {
  const styles = useStyles();
  const id = useId();
  const [tableName, setTableName] = useState(ALL);
  const [search, setSearch] = useState("");
  const [shown, setShown] = useState(AT_A_TIME);
  const [open, setOpen] = useState<unknown>(null);
  const list = useRef<HTMLUListElement>(null);

  const chosen = referenceTables.find(({ name }) => name === tableName);
  const inTable = useMemo(() => entries.filter(({ table }) => [ALL, table.name].includes(tableName)), [tableName]);
  const found = useMemo(() => find(inTable, search, units), [inTable, search, units]);
  useEffect(() => setShown(AT_A_TIME), [found]);
  useEffect(() => {
    if (shown > AT_A_TIME) list.current?.querySelectorAll<HTMLElement>("[data-row]")[shown - AT_A_TIME]?.focus();
  }, [shown]);

  const count = found.length === 1 ? "1 row" : `${found.length} rows`;
  const outcome = found.length === 0 ? "No row has all of these words: try fewer, or a part of a word." : count;
  return (
    <div onKeyDown={(event) => stepFocus(event, "input[type=search], [data-row]", ["ArrowUp", "ArrowDown"])}>
      <Heading>Reference tables</Heading>
      <div className={styles.field}>
        <Label htmlFor={`${id}-table`}>Table</Label>
        <Select id={`${id}-table`} value={tableName} onChange={(_, { value }) => setTableName(value)}>
          <option value={ALL}>All tables ({entries.length} rows)</option>
          {referenceTables.map(({ name, title }) => (
            <option key={name} value={name}>
              {title}
            </option>
          ))}
        </Select>
      </div>
      <div className={styles.field}>
        <Label htmlFor={`${id}-search`}>Search</Label>
        <SearchBox
          id={`${id}-search`}
          className={styles.search}
          value={search}
          onChange={(_, { value }) => setSearch(value)}
          aria-describedby={`${id}-hint`}
        />
        <span id={`${id}-hint`} className={styles.hint}>
          Words and numbers, such as “350 cfm”; a row must have all of them.
        </span>
      </div>
      <div className={styles.found}>
        <p role="status" className={styles.count}>
          {outcome}
        </p>
        {chosen !== undefined && <HelpLink file={tableFile(chosen.name)} of={`the table ${chosen.title}`} />}
      </div>
      {found.length > 0 && (
        <ul ref={list} className={styles.results} aria-label="Rows">
          {found.slice(0, shown).map((entry) => (
            <ResultRow
              key={entry.id}
              entry={entry}
              open={open === entry}
              among={chosen === undefined}
              host={host}
              system={units}
              onToggle={() => setOpen(open === entry ? null : entry)}
            />
          ))}
        </ul>
      )}
      {found.length > shown && (
        <Button className={styles.more} onClick={() => setShown(shown + AT_A_TIME)}>
          Show {Math.min(AT_A_TIME, found.length - shown)} more of {found.length - shown}
        </Button>
      )}
    </div>
  );
}
