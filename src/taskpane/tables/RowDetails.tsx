import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { useState, type ReactElement, type ReactNode } from "react";
import type { Insertion, SheetHost } from "../../hosts/host";
import type { ReferenceTable } from "../../reference";
import { FormulaLine } from "../functions/FormulaLine";
import { tableFile } from "../help/files";
import { HelpLink } from "../help/HelpLink";
import { Announced } from "../hostUse/Announced";
import { announced, InsertOutcome } from "../hostUse/InsertOutcome";
import { useInsert } from "../hostUse/useInsert";
import { termWords } from "../rows/termWords";
import { provenanceOf } from "./provenance";
import { readyFormula, sourcedFormula } from "./readyFormula";
import { useCopy } from "./useCopy";
import { display, type Row } from "./values";
import { ValueLine } from "./ValueLine";
import { valuesInWords } from "./wording";

const useStyles = makeStyles({
  details: { padding: "0 8px 12px", backgroundColor: tokens.colorNeutralBackground2 },
  list: { margin: 0 },
  name: { marginTop: "8px", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  cell: { margin: "0 0 2px" },
});

interface RowDetailsProps {
  readonly id: string;
  readonly table: ReferenceTable;
  readonly row: Row;
  readonly host: SheetHost | null;
}

/** Every column of a row; its numbers and the key, which formulas take, can be copied or put into the selected cell. */
export function RowDetails({ id, table, row, host }: RowDetailsProps): ReactElement {
  const styles = useStyles();
  const copying = useCopy();
  const inserting = useInsert(host);
  const [line, setLine] = useState(""); // whose button was pressed last: what became of it stands below that line
  const insert = (from: string, content: Insertion): void => {
    setLine(from);
    inserting.insert(content);
  };
  const outcome = (of: string): ReactNode => line === of && <InsertOutcome inserting={inserting} />;
  const { basis, weakness, source, where } = provenanceOf(row);
  const formulas = [
    ["as a formula", readyFormula(table, row)],
    ["as a formula, with its source in the next cell", sourcedFormula(table, row)],
  ] as const;
  const item = (name: string, cells: readonly ReactNode[]): ReactElement => (
    <div key={name}>
      <dt className={styles.name}>{termWords(name)}</dt>
      {cells.map((cell, i) => (
        <dd key={i} className={styles.cell}>
          {cell}
        </dd>
      ))}
    </div>
  );
  return (
    <div id={id} className={styles.details}>
      <dl className={styles.list}>
        {valuesInWords(table, row).map(({ name, parts }) =>
          item(
            name,
            parts.map(({ cell, unit }) =>
              cell === null || (typeof cell === "string" && name !== "key") ? (
                display(cell)
              ) : (
                <>
                  <ValueLine
                    value={{ name, text: display(cell), unit }}
                    copying={copying}
                    insert={() => insert(`${name} ${unit}`, { value: cell })}
                  />
                  {outcome(`${name} ${unit}`)}
                </>
              ),
            ),
          ),
        )}
        {formulas.map(
          ([name, formula]) =>
            formula !== null &&
            item(name, [
              <>
                <FormulaLine formula={formula} copying={copying} insert={() => insert(formula, { formula })} />
                {outcome(formula)}
              </>,
            ]),
        )}
        {item("how it is known", [weakness === "" ? basis : `${basis}: weak, check it before you rely on it`])}
        {item("source", [source])}
        {item("where in it", [where])}
        {item("table", [
          <>
            {table.title} · <HelpLink file={tableFile(table.name)} of={`the table ${table.title}`} />
          </>,
        ])}
      </dl>
      <Announced sentence={copying.sentence} />
      <Announced sentence={announced(inserting)} />
    </div>
  );
}
