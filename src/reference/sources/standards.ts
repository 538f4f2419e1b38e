import type { Source } from "./source";

const standard = (title: string, year: string): Source => ({
  title,
  year,
  kind: "standard",
  terms: "facts quoted; standard under copyright",
});

/** Standards, and quotations of standards. */
export const standards = {
  asmeAg1Memory: standard("ASME AG-1, nuclear air and gas treatment, section FC, HEPA filters, from memory", "undated"),
  en12237: standard(
    "EN 12237, EN 1507 and EN 16798-3, leakage limits, quoted on the test page of a maker of duct flanges",
    "2003 to 2017",
  ),
  en12779Memory: standard("EN 12779, small fixed chip and dust extraction installations, from memory", "undated"),
  en1506Memory: standard("EN 1506, sheet metal air ducts with circular cross-section, dimensions, from memory", "2007"),
  en16798Faq: standard("EN 16798-3, air tightness classes, as told on a public association's question page", "2017"),
  nemaMg1Memory: standard("NEMA MG 1, motors and generators, from memory", "undated"),
  nfpa660Press: standard("NFPA 660, combustible dusts, as told by two articles of the trade press", "2024"),
  nfpa664Article: standard("NFPA 664, section 1.1.2, quoted in a trade article", "2019"),
  nfpa664Copy: standard("NFPA 664, section 1.1, read in a copy", "2012"),
  nfpaMoreMemory: standard("NFPA 68, 69, 77 and 484, from memory", "various"),
  nfpaMemory: standard("NFPA 68, 660 and 664, from memory", "various"),
  trgs553: standard("TRGS 553 Holzstaub (German technical rule for wood dust), Annex 2", "2022"),
  trgs553of2008: {
    ...standard("TRGS 553 Holzstaub, August 2008 edition, Annex 2 (repealed by the 2022 edition)", "2008"),
    repealed: true,
  },
  ul555s: standard("UL 555S, smoke damper leakage classes, table read in a copy", "undated"),
} as const satisfies Record<string, Source>;
