import type { Source } from "./source";

const QUOTED = "facts quoted; work under copyright";

/** Papers, practice sheets, pages and what the trade does without writing it down. */
export const others = {
  certificationExam: {
    title: "Certification-exam question bank (a third party wrote the answers)",
    year: "undated",
    terms: QUOTED,
    kind: "practice sheet",
  },
  commonPractice: {
    title: "Common practice of the trade, no source",
    year: "undated",
    terms: "no source, nothing to license",
    kind: "common practice",
  },
  flexBendAbstract: {
    title:
      "Pressure loss in fully stretched nonmetallic flexible duct with a bend (tests by ASHRAE standard 120), abstract",
    year: "undated",
    terms: QUOTED,
    kind: "paper",
  },
  flangeTest1984: {
    title: "Test of unsealed duct flanges of December 1984, on a flange maker's page",
    year: "1984",
    terms: QUOTED,
    kind: "data page",
  },
  instrumentManuals: {
    title: "Two instrument manuals on duct traverses (an appendix, and p 64 of the other), both read in a copy",
    year: "undated",
    terms: QUOTED,
    kind: "data page",
  },
  lbnlFlex: {
    title:
      "Abushakra, Walker and Sherman, Compression Effects on Pressure Loss in Flexible HVAC Ducts (LBNL), abstract",
    year: "2002",
    terms: QUOTED,
    kind: "paper",
  },
  meterFiguresMemory: {
    title: "Accuracy as data sheets of anemometers state it, from memory",
    year: "undated",
    terms: QUOTED,
    kind: "data page",
  },
  collectorManual: {
    title: "Owner's manual of a workshop's dust collector, table of airflow per machine, read in a copy of the page",
    year: "undated",
    terms: QUOTED,
    kind: "data page",
  },
  lbnlHepa: {
    title: "LBNL, design guide for energy-efficient laboratories, page on HEPA filters, read in a copy",
    year: "undated",
    terms: QUOTED,
    kind: "data page",
  },
  astmD2729: {
    title: "ASTM D2729, PVC sewer pipe and fittings, table of dimensions, read in a copy of the page",
    year: "2011",
    terms: QUOTED,
    kind: "standard",
  },
  planerManual: {
    title: "Operating manual of a surface planer and thicknesser, chapter on extraction, read in a copy of the page",
    year: "2022",
    terms: QUOTED,
    kind: "data page",
  },
  tableSawManual: {
    title: "Operating manual of a sliding table saw, chapter on extraction, read in a copy of the page",
    year: "2022",
    terms: QUOTED,
    kind: "data page",
  },
  shaperManual: {
    title: "Operating manual of a spindle moulder, chip and dust suction, read in a copy of the page",
    year: "undated",
    terms: QUOTED,
    kind: "data page",
  },
  practitionerSheet1995: {
    title: "Filled duct sheet citing the ACGIH manual, 22nd ed. 1995 (a practitioner's sheet)",
    year: "1995",
    terms: QUOTED,
    kind: "practice sheet",
  },
  projectSheet: {
    title: "Project sheet of duct pressure losses (friction read from a slide rule)",
    year: "undated",
    terms: QUOTED,
    kind: "practice sheet",
  },
  roundDamperPage: {
    title: "Data page of round control dampers, read in a copy",
    year: "undated",
    terms: QUOTED,
    kind: "data page",
  },
  uwSander: {
    title: "Croteau, University of Washington, APHA 139th meeting, abstract 236436",
    year: "2011",
    terms: QUOTED,
    kind: "paper",
  },
  wangThesis: {
    title: "Wang, doctoral thesis on cyclones, Texas A&M University, abstract",
    year: "2004",
    terms: QUOTED,
    kind: "paper",
  },
  ukDesignNote: {
    title: "Design note of a dust-control supplier in the United Kingdom, read in a copy",
    year: "undated",
    terms: QUOTED,
    kind: "practice sheet",
  },
  eckhoffMemory: {
    title: "Eckhoff, Dust Explosions in the Process Industries, from memory",
    year: "undated",
    terms: QUOTED,
    kind: "textbook",
  },
  ductLectureSlides: {
    title: "ASHRAE duct design, lecture slides",
    year: "undated",
    kind: "practice sheet",
    terms: "facts quoted",
  },
} as const satisfies Record<string, Source>;
