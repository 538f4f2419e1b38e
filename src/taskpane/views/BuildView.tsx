import { Button, Checkbox, Radio, RadioGroup, makeStyles, tokens } from "@fluentui/react-components";
import { useState, type ReactElement } from "react";
import type { UnitSystem } from "../../reference/quantities";
import { sheetKeys, usualNames, type SheetKey } from "../../sheets/book/frame";
import { addedWords } from "../build/outcomeWords";
import { sheetWords, usualChoice } from "../build/sheetWords";
import { TaskOutcome } from "../hostUse/TaskOutcome";
import { useTask } from "../hostUse/useTask";
import { NO_SHEET } from "../hostUse/words";
import { Heading } from "./Heading";
import { ShortCautions } from "./ShortCautions";
import type { ViewProps } from "./viewProps";

const useStyles = makeStyles({
  group: { border: "none", margin: "0 0 12px", padding: 0, minWidth: 0 },
  legend: { padding: 0, fontWeight: tokens.fontWeightSemibold },
  text: { margin: "0 0 12px" },
  buttons: { display: "flex", flexWrap: "wrap", gap: "8px" },
});

const TASK = "Adding sheets";

/** Adds the sheets of a budget to the open workbook. */
export function BuildView({ host, go }: ViewProps): ReactElement {
  const styles = useStyles();
  const tasking = useTask();
  const [units, setUnits] = useState<UnitSystem>("IP");
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
      <fieldset className={styles.group}>
        <legend className={styles.legend}>Units</legend>
        <RadioGroup value={units} onChange={(_, { value }) => setUnits(value as UnitSystem)} aria-label="Units">
          <Radio value="IP" label="Inch-pound: in, ft, cfm, fpm, in.w.g." />
          <Radio value="SI" label="SI: mm, m, m³/h, m/s, Pa" />
        </RadioGroup>
      </fieldset>
      <fieldset className={styles.group}>
        <legend className={styles.legend}>Contents</legend>
        <RadioGroup
          value={contents}
          onChange={(_, { value }) => setContents(value as "empty" | "example")}
          aria-label="Contents"
        >
          <Radio value="empty" label="Empty, for your own shop" />
          <Radio value="example" label="An invented example to try things on" />
        </RadioGroup>
      </fieldset>
      <fieldset className={styles.group}>
        <legend className={styles.legend}>Sheets</legend>
        {sheetKeys.map((key) => (
          <div key={key}>
            <Checkbox
              checked={chosen.includes(key)}
              onChange={(_, { checked }) =>
                setChosen(checked === true ? [...chosen, key] : chosen.filter((one) => one !== key))
              }
              label={`${usualNames[key]}: ${sheetWords[key]}`}
            />
          </div>
        ))}
      </fieldset>
      <div className={styles.buttons}>
        <Button appearance="primary" disabledFocusable={tasking.state.running !== null} onClick={add}>
          Add {sheets.length === 1 ? "1 sheet" : `${sheets.length} sheets`}
        </Button>
        <Button onClick={() => setChosen(chosen.length === sheetKeys.length ? usualChoice : sheetKeys)}>
          {chosen.length === sheetKeys.length ? "Only the usual ones" : "Choose all"}
        </Button>
      </div>
      <TaskOutcome tasking={tasking} />
      <ShortCautions keys={["no measurement", "codes decide"]} goToCautions={() => go("Cautions")} />
    </>
  );
}
