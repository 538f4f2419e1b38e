import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";

/** Rows whose whole width is a button: of the tables, the functions and the ways from the first page. */
export const useRowStyles = makeStyles({
  item: { borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  head: {
    display: "flex",
    alignItems: "flex-start",
    gap: "8px",
    width: "100%",
    minHeight: "44px",
    padding: "8px 4px",
    border: "none",
    background: "none",
    color: "inherit",
    font: "inherit",
    textAlign: "left",
    overflowWrap: "anywhere",
    cursor: "pointer",
    ":hover": { backgroundColor: tokens.colorNeutralBackground1Hover },
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "-2px" },
  },
  open: { backgroundColor: tokens.colorNeutralBackground2 },
  words: { display: "flex", flexDirection: "column", gap: "2px", flexGrow: 1, minWidth: 0 },
  small: { fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
});
