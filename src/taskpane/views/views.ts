/** The views of the pane, as its tabs name them. */
export const views = ["Start", "Tables", "Functions", "Build", "Check", "Share", "Cautions"] as const;

export type ViewName = (typeof views)[number];
