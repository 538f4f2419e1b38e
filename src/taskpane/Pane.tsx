import { FluentProvider } from "@fluentui/react-provider";
import { Tab, TabList } from "@fluentui/react-tabs";
import { tokens } from "@fluentui/react-theme";
import { makeStaticStyles, makeStyles } from "@griffel/react";
import { useRef, useState, type ReactElement } from "react";
import { flushSync } from "react-dom";
import type { SheetHost } from "../hosts/host";
import { usualUnits } from "./build/usualUnits";
import type { PageSurroundings } from "./office";
import { stepFocus } from "./stepFocus";
import { darkTheme, lightTheme } from "./theme";
import { usePrefersDark } from "./usePrefersDark";
import { StartView } from "./views/StartView";
import { type LaterParts, useLaterParts } from "./views/useLaterParts";
import { ViewComing } from "./views/ViewComing";
import { views, type ViewName } from "./views/views";

const usePageStyles = makeStaticStyles({
  // The host's web view hides scrollbars that come and go; what gets the focus must not hide under the tabs.
  html: { overflowY: "scroll" },
  "main *": { scrollMarginTop: "80px" },
  body: { margin: 0 },
});

const useStyles = makeStyles({
  pane: { minHeight: "100vh", backgroundColor: tokens.colorNeutralBackground1 },
  top: {
    position: "sticky",
    top: 0,
    zIndex: 1,
    backgroundColor: tokens.colorNeutralBackground1,
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    // The host's own menu lies over the top right corner, 34 x 32 px. What floats there pushes only the first line aside.
    "::before": { content: '""', float: "right", width: "34px", height: "32px" },
  },
  // Seven names fit in two lines at 320 px; in lines of text, so that the corner pushes only the first.
  tabs: { display: "block", padding: "2px 4px" },
  tab: { display: "inline-grid", padding: "4px 7px" },
  view: {
    padding: "12px 16px 32px",
    overflowWrap: "anywhere",
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "-2px" },
  },
});

export interface PaneProps {
  readonly where: PageSurroundings;
  readonly host: SheetHost | null;
  readonly lacksFunctions: boolean; // whether the cells of Excel wait for the file of the functions
}

/** The whole pane: tabs on top and one view under them; views stay as they were left. All but the first come after the tabs. */
export function Pane({ where, host, lacksFunctions }: PaneProps): ReactElement {
  usePageStyles();
  const styles = useStyles();
  const theme = usePrefersDark() ? darkTheme : lightTheme;
  const [view, setView] = useState<ViewName>("Start");
  const [units, setUnits] = useState(() => usualUnits(navigator.language));
  const coming = useLaterParts();
  const { parts } = coming;
  const leftAt = useRef<Partial<Record<ViewName, number>>>({});

  const show = (next: ViewName): void => {
    leftAt.current[view] = window.scrollY;
    flushSync(() => setView(next));
    window.scrollTo(0, leftAt.current[next] ?? 0);
  };
  /** From inside a view: what had the focus is hidden now, so the new view takes it. */
  const go = (next: ViewName): void => {
    show(next);
    document.getElementById(`view-${next}`)?.focus();
  };

  const viewOf = (name: ViewName): ReactElement => {
    const chosen = { units, chooseUnits: setUnits };
    if (name === "Start")
      return <StartView {...{ where, host, lacksFunctions, go }} shown={view === "Start"} {...chosen} {...coming} />;
    return parts === null ? <ViewComing {...coming} /> : laterViewOf(name, parts);
  };
  const laterViewOf = (name: Exclude<ViewName, "Start">, parts: LaterParts): ReactElement => {
    switch (name) {
      case "Tables":
        return <parts.TablesView host={host} units={units} />;
      case "Functions":
        return <parts.FunctionsView host={host} go={go} shown={view === "Functions"} />;
      case "Build":
        return <parts.BuildView host={host} go={go} units={units} chooseUnits={setUnits} />;
      case "Check":
        return <parts.CheckView host={host} go={go} />;
      case "Share":
        return <parts.ShareView host={host} go={go} />;
      case "Cautions":
        return <parts.CautionsView />;
    }
  };
  return (
    <FluentProvider theme={theme} className={styles.pane}>
      <header className={styles.top}>
        <TabList
          className={styles.tabs}
          size="small"
          selectedValue={view}
          selectTabOnFocus
          onTabSelect={(_, { value }) => show(value as ViewName)}
          aria-label="Views"
          // The library walks through tabs by way of focusable elements that it hides from screen readers, which axe
          // rightly refuses: the arrow keys are our own.
          data-tabster={undefined}
          onKeyDown={(event) => stepFocus(event, "[role=tab]", ["ArrowLeft", "ArrowRight"])}
        >
          {views.map((name) => (
            <Tab
              key={name}
              value={name}
              className={styles.tab}
              id={`tab-${name}`}
              aria-controls={`view-${name}`}
              tabIndex={name === view ? 0 : -1}
            >
              {name}
            </Tab>
          ))}
        </TabList>
      </header>
      <main>
        {views.map((name) => (
          <div
            key={name}
            role="tabpanel"
            id={`view-${name}`}
            aria-labelledby={`tab-${name}`}
            hidden={name !== view}
            tabIndex={0}
            className={styles.view}
          >
            {viewOf(name)}
          </div>
        ))}
      </main>
    </FluentProvider>
  );
}
