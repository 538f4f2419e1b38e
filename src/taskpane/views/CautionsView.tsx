import { Badge } from "@fluentui/react-badge";
import { Subtitle2 } from "@fluentui/react-text";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import { cautions } from "../../reference/cautions";
import { isWeak, type CautionRow } from "../../reference/schema";
import { sources } from "../../reference/sources";
import { cautionsFile } from "../help/files";
import { HelpLink } from "../help/HelpLink";
import { Heading } from "./Heading";

const topics: Readonly<Record<CautionRow["topic"], string>> = {
  machines: "At the machine and the fan",
  health: "Your lungs and ears",
  explosion: "Fire and explosion",
  electrical: "Static and earthing",
  air: "Air sent back into the room",
  work: "Working on the ducts",
  numbers: "What a number can't do",
  law: "Law and who decides",
};

const useStyles = makeStyles({
  first: {
    margin: "0 0 16px",
    padding: "8px 12px",
    borderLeft: `4px solid ${tokens.colorBrandStroke1}`,
    backgroundColor: tokens.colorNeutralBackground2,
    fontWeight: tokens.fontWeightSemibold,
  },
  help: { margin: 0 },
  topic: { display: "block", margin: "20px 0 4px" },
  list: { listStyleType: "none", margin: 0, padding: 0 },
  caution: { padding: "8px 0", borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  label: { margin: 0, fontWeight: tokens.fontWeightSemibold },
  text: { margin: "2px 0 4px" },
  source: { margin: 0, fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
});

/** Every caution with its source, by topic. */
export function CautionsView(): ReactElement {
  const styles = useStyles();
  const topicsInUse = [...new Set(cautions.map(({ topic }) => topic))];
  return (
    <>
      <Heading>Cautions</Heading>
      <p className={styles.first}>
        Before you reach in: cut the power, then wait until the blade and the fan wheel stand still.
      </p>
      <p className={styles.help}>
        <HelpLink file={cautionsFile} of="the cautions" />
      </p>
      {topicsInUse.map((topic) => (
        <section key={topic} aria-label={topics[topic]}>
          <Subtitle2 as="h2" className={styles.topic}>
            {topics[topic]}
          </Subtitle2>
          <ul className={styles.list}>
            {cautions
              .filter((row) => row.topic === topic)
              .map((row) => (
                <li key={row.key} className={styles.caution}>
                  <p className={styles.label}>{row.label}</p>
                  <p className={styles.text}>{row.text}</p>
                  {isWeak(row) && (
                    <Badge appearance="outline" color="important">
                      {row.basis}
                    </Badge>
                  )}
                  <p className={styles.source}>
                    {sources[row.source].title}
                    {row.basis !== "common practice" && `, ${row.locator}`}
                  </p>
                </li>
              ))}
          </ul>
        </section>
      ))}
    </>
  );
}
