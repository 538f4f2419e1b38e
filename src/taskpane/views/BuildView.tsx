import { Button } from "@fluentui/react-button";
import { Checkbox } from "@fluentui/react-checkbox";
import { Radio, RadioGroup } from "@fluentui/react-radio";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import { useState, type ReactElement } from "react";
import { Choice } from "../build/Choice";
import { addedWords } from "../build/outcomeWords";
import { sheetWords, usualChoice } from "../build/sheetWords";
import { ChooseParts } from "../build/parts/ChooseParts";
import { TakeLeaks } from "../build/leaks/TakeLeaks";
import { ChooseSizes } from "../build/sizes/ChooseSizes";
import { UnitsChoice } from "../build/UnitsChoice";
import { TaskOutcome } from "../hostUse/TaskOutcome";
import { useTask } from "../hostUse/useTask";
import { NO_SHEET } from "../hostUse/words";
import { Heading } from "./Heading";
import { ShortCautions } from "./ShortCautions";
import type { UnitsProps, ViewProps } from "./viewProps";
import { type SheetKey, sheetKeys, usualNames } from "../../sheets/sheetKeys";

const useStyles = makeStyles({
  name: { fontWeight: tokens.fontWeightSemibold },
  text: { margin: "0 0 12px" },
  buttons: { display: "flex", flexWrap: "wrap", gap: "8px" },
});

const TASK = "Adding sheets";

/** Adds the sheets of a budget to the open workbook. */
export function BuildView({ host, go, units, chooseUnits }: ViewProps & UnitsProps): ReactElement {
  const styles = useStyles();
  const tasking = useTask();
  const [contents, setContents] = useState<"empty" | "example">("empty");
  const [chosen, setChosen] = useState<readonly SheetKey[]>(usualChoice);
  const sheets = sheetKeys.filter((key) => chosen.includes(key));

  const add = (): void =>
    tasking.run(TASK, async (watch) => {
      if (host === null) return [NO_SHEET];
      if (sheets.length === 0) return ["Choose at least one sheet."];
      return addedWords(await host.addSheets({ units, sheets, contents }, watch));
    });
  return (
    <>
      <Heading>Build a budget</Heading>
      <p className={styles.text}>
        Adds new sheets to the open workbook and changes none that is there. Sheets that the chosen ones lean on come
        along.
      </p>
      <UnitsChoice legend="Units" units={units} choose={chooseUnits} />
      <Choice legend="Contents">
        <RadioGroup
          value={contents}
          onChange={(_, { value }) => setContents(value as "empty" | "example")}
          aria-label="Contents"
        >
          <Radio value="empty" label="Empty, for your own shop" />
          <Radio value="example" label="An invented example to try things on" />
        </RadioGroup>
      </Choice>
      <Choice legend="Sheets">
        {sheetKeys.map((key) => (
          <div key={key}>
            <Checkbox
              checked={chosen.includes(key)}
              onChange={(_, { checked }) =>
                setChosen(checked === true ? [...chosen, key] : chosen.filter((one) => one !== key))
              }
              label={
                <>
                  <span className={styles.name}>{usualNames[key]}</span>: {sheetWords[key]}
                </>
              }
            />
          </div>
        ))}
      </Choice>
      <div className={styles.buttons}>
        <Button appearance="primary" disabledFocusable={tasking.state.running !== null} onClick={add}>
          Add {sheets.length === 1 ? "1 sheet" : `${sheets.length} sheets`}
        </Button>
        <Button onClick={() => setChosen(chosen.length === sheetKeys.length ? usualChoice : sheetKeys)}>
          {chosen.length === sheetKeys.length ? "Only the usual ones" : "Choose all"}
        </Button>
      </div>
      <TaskOutcome tasking={tasking} />
      <ChooseParts host={host} />
      <ChooseSizes host={host} />
      <TakeLeaks host={host} />
      <ShortCautions keys={["no measurement", "codes decide"]} goToCautions={() => go("Cautions")} />
    </>
  );
}
