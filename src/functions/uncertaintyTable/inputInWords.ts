const SHARED: Readonly<Partial<Record<string, string>>> = {
  "fan pressure": "the fan's pressure",
  "fan speed": "the fan's speed",
  pipe: "friction of the pipes",
  hose: "friction of the hoses",
};

/** What an input is called: of all runs, or of the one that has this name. */
export const inputInWords = (kind: string, run: string): string => SHARED[kind] ?? `${kind} of ${run}`;
