import { useMemo } from "react";
import { darkTheme, lightTheme } from "../../theme";
import { useMedia } from "../../usePrefersDark";

/** Colours for a canvas, which knows no style sheet. */
export interface Inks {
  readonly text: string;
  readonly grid: string;
  readonly fan: string;
  readonly ducts: string;
  readonly ground: string;
}

/** The theme's colours, or the system's own where the person has forced them. */
export function useInks(): Inks {
  const dark = useMedia("(prefers-color-scheme: dark)");
  const forced = useMedia("(forced-colors: active)");
  return useMemo(() => {
    // forced colours have no faint one, and grid lines as strong as the curves would hide them
    if (forced) return { text: "CanvasText", grid: "Canvas", fan: "Highlight", ducts: "CanvasText", ground: "Canvas" };
    const theme = dark ? darkTheme : lightTheme;
    return {
      text: theme.colorNeutralForeground1,
      grid: theme.colorNeutralStroke2,
      fan: theme.colorBrandForeground1,
      ducts: theme.colorNeutralForeground2,
      ground: theme.colorNeutralBackground1,
    };
  }, [dark, forced]);
}
