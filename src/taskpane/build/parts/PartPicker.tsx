import { Button } from "@fluentui/react-button";
import { Input } from "@fluentui/react-input";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { useState, type ReactElement } from "react";
import type { SheetHost } from "../../../hosts/host";
import { lossFamilies } from "../../../reference/lossFamilies";
import { sheetPrefix } from "../../../sheets/sheetPrefix";
import { TaskOutcome } from "../../hostUse/TaskOutcome";
import { useTask } from "../../hostUse/useTask";
import { asRead, cell } from "../asRead";
import { PartPictures } from "./PartPictures";
import { oneLess, oneMore, type Part, partsOf, stillToSay, textOfParts, usualWords } from "./partList";
import { selectedPart, type SelectedPart } from "./selectedPart";

const useStyles = makeStyles({
  text: { margin: "0 0 8px", overflowWrap: "anywhere" },
  list: { listStyleType: "none", margin: "0 0 8px", padding: 0 },
  item: { display: "flex", alignItems: "center", gap: "4px", marginBottom: "4px" },
  words: { flexGrow: 1, minWidth: 0 },
  count: { minWidth: "20px", textAlign: "center", fontVariantNumeric: "tabular-nums" },
  hint: { fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
});

interface PartPickerProps {
  readonly host: SheetHost;
  readonly part: SelectedPart;
}

/** What stands in the cell, what is added to it, and the button that writes what is shown; nothing is written before. */
export function PartPicker({ host, part }: PartPickerProps): ReactElement {
  const styles = useStyles();
  const tasking = useTask();
  const isList = part.column === "Fittings";
  const [parts, setParts] = useState<readonly Part[]>(
    isList ? partsOf(part.content) : part.content === "" ? [] : [{ words: part.content, count: 1 }],
  );
  const [hint, setHint] = useState("");
  const address = `${sheetPrefix(part.sheet)}${part.at}`;
  const text = textOfParts(parts);
  const isChanged =
    text !== textOfParts(isList ? partsOf(part.content) : [{ words: part.content, count: 1 }]) &&
    !(text === "" && part.content === "");

  const pick = (key: string): void => {
    const family = lossFamilies.find((one) => one.key === key)!;
    if (!isList) return setParts([{ words: key, count: 1 }]);
    const words = usualWords(family);
    setParts(oneMore(parts, words));
    setHint(stillToSay(family) === "" ? "" : `${words}: ${stillToSay(family)} behind the name.`);
  };
  const write = (): void =>
    tasking.run("Writing", async () => {
      const book = await host.readBook();
      const now = selectedPart(book, address);
      const { content, column, run, formula } = part;
      if (now?.content !== content || now.column !== column || now.run !== run || now.formula !== formula)
        return [`${address} has changed meanwhile: nothing was written. Select it again.`];
      const block = { sheet: part.sheet, at: part.at, rows: [[text === "" ? null : text]] };
      const outcome = await host.write([block], asRead(book, [block, cell(part.sheet, now.runAt)]));
      return [outcome.written ? `Written into ${address}.` : outcome.why];
    });
  const byFormula = part.formula === null ? "" : `, by the formula ${part.formula}`;
  const of = part.run === "" ? "" : ` of ${part.run}`;
  return (
    <>
      <p
        className={styles.text}
      >{`${part.column}${of}, ${address}: ${part.content === "" ? "blank" : part.content}${byFormula}`}</p>
      {isList && parts.length > 0 && (
        <ul className={styles.list} aria-label="Fittings of the cell">
          {parts.map(({ words, count }, index) => (
            <li key={index} className={styles.item}>
              <Input
                className={styles.words}
                aria-label={`Fitting ${index + 1}`}
                value={words}
                onChange={(_, { value }) =>
                  setParts(parts.map((one, place) => (place === index ? { ...one, words: value } : one)))
                }
              />
              <Button size="small" aria-label={`One ${words} less`} onClick={() => setParts(oneLess(parts, index))}>
                −
              </Button>
              <span className={styles.count}>{count}</span>
              <Button size="small" aria-label={`One ${words} more`} onClick={() => setParts(oneMore(parts, words))}>
                +
              </Button>
            </li>
          ))}
        </ul>
      )}
      {hint !== "" && <p className={styles.hint}>{hint}</p>}
      <p className={styles.text} role="status">
        {isChanged ? `Will be written: ${text === "" ? "nothing, a blank cell" : text}` : "Nothing is to be written."}
      </p>
      <Button appearance="primary" disabledFocusable={!isChanged || tasking.state.running !== null} onClick={write}>
        {writeWords(part)}
      </Button>
      <TaskOutcome tasking={tasking} />
      <PartPictures kind={isList ? "fitting" : "hood"} pick={pick} />
    </>
  );
}

/** A formula may show nothing, and what is written takes its place all the same. */
function writeWords({ at, content, formula }: SelectedPart): string {
  if (formula !== null) return `Write it over the formula in ${at}`;
  return content === "" ? `Write it into ${at}` : `Write it over what ${at} holds`;
}
