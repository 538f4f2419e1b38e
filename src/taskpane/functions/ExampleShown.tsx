import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { useEffect, useMemo, useState, type ReactElement } from "react";
import type { FunctionAnswer } from "./callFunction";
import { exampleCall, filledUp } from "./exampleCall";
import type { FunctionGuide } from "../../functions/guide";
import type { FunctionMetadata } from "../../hosts/functionsFile";
import { unitIn } from "./metadata";
import { calculate } from "./pageWorker";
import { ResultTable } from "./ResultTable";
import { isTable, resultWords } from "./resultWords";
import { itemAt } from "../../reference/itemAt";

const useStyles = makeStyles({
  term: { margin: "8px 0 0", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  text: { margin: 0 },
  formula: { fontFamily: tokens.fontFamilyMonospace, fontSize: tokens.fontSizeBase200, overflowWrap: "anywhere" },
  result: { margin: "2px 0 0", fontWeight: tokens.fontWeightSemibold },
});

interface ExampleShownProps {
  readonly guide: FunctionGuide;
  readonly metadata: FunctionMetadata;
}

/** An example: what it asks, the tables it takes, its formula, and its result, computed while you look. */
export function ExampleShown({ guide, metadata }: ExampleShownProps): ReactElement {
  const styles = useStyles();
  const call = useMemo(() => exampleCall(guide.name, guide.example), [guide]);
  const [answer, setAnswer] = useState<FunctionAnswer | null>(null);
  useEffect(() => {
    let wanted = true;
    void calculate({ id: metadata.id, args: filledUp(call.args, metadata.parameters.length) }).then(
      (fresh) => wanted && setAnswer(fresh),
    );
    return () => {
      wanted = false;
    };
  }, [call, metadata]);
  return (
    <>
      <p className={styles.term}>Example</p>
      <p className={styles.text}>{guide.example.asks}</p>
      {call.tables.map(({ range, rows }) => (
        <ResultTable
          key={range}
          label={`Cells ${range} of the example`}
          rows={rows}
          headed={typeof itemAt(rows, 0)[1] === "string"}
        />
      ))}
      <p className={styles.text}>
        <code className={styles.formula}>{call.formula}</code>
      </p>
      <p className={styles.result}>
        {answer === null ? "…" : `gives ${resultWords(answer, unitIn(metadata.description, "IP"))}`}
      </p>
      {answer !== null && isTable(answer) && (
        <ResultTable
          label="Result of the example"
          rows={answer.rows}
          headed={typeof answer.rows[0]?.[1] === "string"}
        />
      )}
    </>
  );
}
