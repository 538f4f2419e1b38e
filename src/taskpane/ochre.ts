import type { BrandVariants } from "@fluentui/react-theme";

/** Ochre: one hue (72° in OKLCH) from near black to near white; 80 carries white text, 100 and above text on dark. */
export const ochre: BrandVariants = {
  10: "#1c1105",
  20: "#2b1c08",
  30: "#382409",
  40: "#452d0a",
  50: "#53360d",
  60: "#604011",
  70: "#6e4a19",
  80: "#7b5520",
  90: "#976b2e",
  100: "#c79350",
  110: "#d5a464",
  120: "#dfb179",
  130: "#e6c092",
  140: "#edcfaa",
  150: "#f2dec5",
  160: "#f8ecdf",
};
