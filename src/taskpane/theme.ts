import { createDarkTheme, createLightTheme, type Theme } from "@fluentui/react-theme";
import { ochre } from "./ochre";

/** The library greys what one may choose until it is chosen, which reads as if one could not choose it. The typeface is that of the page around. */
const readable = (theme: Theme): Theme => ({
  ...theme,
  colorNeutralForeground3: theme.colorNeutralForeground2,
  fontFamilyBase: "system-ui, sans-serif",
});

export const lightTheme = readable(createLightTheme(ochre));
export const darkTheme = readable(createDarkTheme(ochre));
