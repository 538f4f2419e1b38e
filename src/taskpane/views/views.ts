/** The views of the pane, as its tabs name them. */
export const views = ["Start", "Tables", "Cautions"] as const;

export type ViewName = (typeof views)[number];
