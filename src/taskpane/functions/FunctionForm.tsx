import { Button } from "@fluentui/react-button";
import { Input } from "@fluentui/react-input";
import { Label } from "@fluentui/react-label";
import { Select } from "@fluentui/react-select";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { useId, useMemo, useState, type ReactElement } from "react";
import type { SheetHost } from "../../hosts/host";
import { Announced } from "../hostUse/Announced";
import { announced, InsertOutcome } from "../hostUse/InsertOutcome";
import { useInsert } from "../hostUse/useInsert";
import { useSelection } from "../hostUse/useSelection";
import { useCopy } from "../tables/useCopy";
import { FormulaLine } from "./FormulaLine";
import type { FunctionMetadata, FunctionsFile, ParameterMetadata } from "../../hosts/functionsFile";
import { unitsOfBook } from "../check/namedCells";
import { seenIn } from "../check/seenIn";
import { choicesOf, unitIn } from "./metadata";
import { unitsMeant } from "./ofTheBook";
import { ResultTable } from "./ResultTable";
import { isTable, resultWords } from "./resultWords";
import { suggestedRange } from "./suggestedRange";
import { formulaText, readInTwoWays } from "./typed";
import { useLiveResult } from "./useLiveResult";

const useStyles = makeStyles({
  form: { display: "flex", flexDirection: "column", gap: "12px" },
  field: { display: "flex", flexDirection: "column", gap: "2px" },
  line: { display: "flex", alignItems: "center", gap: "8px" },
  input: { flexGrow: 1, minWidth: 0 },
  unit: { flexShrink: 0, minWidth: "40px" },
  hint: { fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  take: { alignSelf: "flex-start" },
  result: { margin: 0, fontWeight: tokens.fontWeightSemibold },
});

interface FunctionFormProps {
  readonly metadata: FunctionMetadata;
  readonly file: FunctionsFile;
  readonly host: SheetHost | null;
}

/** The arguments with their units, the result while one types, and the button that writes the formula. */
export function FunctionForm({ metadata, file, host }: FunctionFormProps): ReactElement {
  const styles = useStyles();
  const id = useId();
  const copying = useCopy();
  const inserting = useInsert(host);
  const selection = useSelection(host);
  const [current, setCurrent] = useState(metadata.parameters[0]?.name); // the field that takes what one selects in the sheet
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({});
  const { given, typed, answer, book } = useLiveResult(metadata, texts, host);
  const seen = useMemo(() => (book === null ? null : seenIn(book)), [book]);
  const system = unitsMeant(given.units, book);
  const ownUnits = book === null ? null : unitsOfBook(book);
  const formula = formulaText(metadata.name, typed);
  const set = (name: string, text: string): void => setTexts({ ...texts, [name]: text });

  const field = (parameter: ParameterMetadata): ReactElement => {
    const { name, description, optional } = parameter;
    const choices = choicesOf(file, parameter);
    const fieldId = `${id}-${name}`;
    const shared = {
      id: fieldId,
      value: given[name] ?? "",
      "aria-describedby": `${fieldId}-hint`,
      onFocus: () => setCurrent(name),
    };
    const range = suggestedRange(name, seen);
    return (
      <div key={name} className={styles.field}>
        <Label htmlFor={fieldId}>{optional === true ? `${name} (may be left out)` : name}</Label>
        <div className={styles.line}>
          {choices === null ? (
            <Input {...shared} className={styles.input} onChange={(_, { value }) => set(name, value)} />
          ) : (
            <Select {...shared} className={styles.input} onChange={(_, { value }) => set(name, value)}>
              <option value="">left out</option>
              {name === "units" && ownUnits !== null && (
                <option value="units">units: as in this book, {ownUnits}</option>
              )}
              {choices.map(({ stringValue, tooltip }) => (
                <option key={stringValue} value={stringValue}>
                  {stringValue}: {tooltip}
                </option>
              ))}
            </Select>
          )}
          {choices === null && unitIn(description, system) !== "" && (
            <span className={styles.unit}>{unitIn(description, system)}</span>
          )}
        </div>
        {choices === null && current === name && selection !== null && ![given[name], range].includes(selection) && (
          <Button size="small" className={styles.take} tabIndex={-1} onClick={() => set(name, selection)}>
            Take what is selected: {selection}
          </Button>
        )}
        {range !== null && (
          <Button size="small" className={styles.take} onClick={() => set(name, range)}>
            Take {range}
          </Button>
        )}
        <span id={`${fieldId}-hint`} className={styles.hint}>
          <strong>{readInTwoWays(given[name] ?? "")}</strong>
          {description}
        </span>
      </div>
    );
  };
  return (
    <form
      className={styles.form}
      aria-label={`Arguments of ${metadata.name}`}
      onSubmit={(event) => event.preventDefault()}
    >
      <span className={styles.hint}>
        Numbers, words, or cells such as B4 or Runs!B8:S48: type them, or select them in the sheet.
      </span>
      {metadata.parameters.map(field)}
      <p role="status" className={styles.result}>
        {typeof answer === "string" ? answer : `Gives ${resultWords(answer, unitIn(metadata.description, system))}`}
      </p>
      {typeof answer !== "string" && isTable(answer) && (
        <ResultTable
          label={`Result of ${metadata.name}`}
          rows={answer.rows}
          headed={typeof answer.rows[0]?.[1] === "string"}
        />
      )}
      <FormulaLine formula={formula} copying={copying} insert={() => inserting.insert({ formula })} main />
      <InsertOutcome inserting={inserting} />
      <Announced sentence={copying.sentence} />
      <Announced sentence={announced(inserting)} />
    </form>
  );
}
