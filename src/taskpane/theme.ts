import { createDarkTheme, createLightTheme } from "@fluentui/react-components";
import { ochre } from "./ochre";

export const lightTheme = createLightTheme(ochre);
export const darkTheme = createDarkTheme(ochre);
