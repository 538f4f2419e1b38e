export const USUAL_SIZE = 10; // points

/** How a cell looks. Colours are hex; every ink on its fill has a contrast of at least 4.5 to 1. */
export interface Look {
  readonly ink: string;
  readonly fill?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number; // points, where it differs from the usual
  readonly align?: "left" | "center" | "right";
  readonly wrap?: boolean;
  readonly border?: "box" | "below"; // a box tells an input cell without colour
}

/** The looks that sheets use, by what a cell is for. */
export const styles = {
  title: { ink: "#20343d", bold: true, size: 15 },
  section: { ink: "#20343d", bold: true, size: 12 },
  text: { ink: "#33434b" },
  paragraph: { ink: "#33434b", wrap: true },
  note: { ink: "#4d5d65", italic: true },
  label: { ink: "#20343d" },
  unit: { ink: "#4d5d65" },
  header: { ink: "#20343d", fill: "#dfe6e4", bold: true, wrap: true, border: "below" },
  numberHeader: { ink: "#20343d", fill: "#dfe6e4", bold: true, wrap: true, align: "right", border: "below" },
  input: { ink: "#2b2410", fill: "#fff8df", border: "box" },
  result: { ink: "#20343d" },
  resultInWords: { ink: "#20343d", align: "right" }, // a number with its ±, below a number's header
  total: { ink: "#20343d", bold: true },
  code: { ink: "#33434b", fill: "#f3f5f4" },
  flag: { ink: "#6d1f00", fill: "#ffe0c7", bold: true },
} as const satisfies Record<string, Look>;

export type StyleName = keyof typeof styles;

/** The look of a style, or the look itself. */
export const lookOf = (style: StyleName | Look): Look => (typeof style === "string" ? styles[style] : style);
