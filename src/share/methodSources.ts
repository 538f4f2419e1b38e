import type { SourceId } from "../reference/sources";

const FRICTION = ["ashrae2009si", "colebrook1939", "haaland1983"] as const;
const CURVE = ["cengel2006", "fritschCarlson1980", "ridders1979"] as const;
const HOSE = ["ashraeDuctMemory", "lbnlFlex"] as const;
const NETWORK = [
  ...FRICTION,
  ...HOSE,
  "amca210",
  "commonPractice",
  "ductLectureSlides",
  "smacna4th",
  ...CURVE.slice(1),
  "todiniPilati1988",
] as const;

/**
 * What the method of each function rests on, its tables not counted: their rows name their own. Geometry and definitions of ours
 * need none. A test finds the same in the code.
 */
export const methodSources: Readonly<Record<string, readonly SourceId[]>> = {
  ABOUT: [],
  AIRFLOW: [],
  AIRFLOWERROR: ["doebelinMeasurement"],
  AIRPOWER: ["solbergHeatPower"],
  AREA: [],
  BUDGET: [
    ...FRICTION,
    ...HOSE,
    "abulencia2009",
    "acgihMemory",
    "amca210",
    "commonPractice",
    "ductLectureSlides",
    "smacna4th",
  ],
  CALIBRATE: [...NETWORK, "jcgm100"],
  CALIBRATEDCURVE: [...NETWORK, "jcgm100"],
  CALIBRATEDRUNS: [...NETWORK, "jcgm100"],
  CAUTIONS: [],
  CLAIM: [...FRICTION, "cengel2006", "commonPractice", "ductLectureSlides", "eulerMemory", "ridders1979"],
  CONVERTUNIT: ["nistSp811"],
  CORRECTEDREADING: ["commonPractice"],
  DENSITY: ["psychrolib"],
  DEVICELOSS: ["commonPractice"],
  DIAMETER: [],
  DIFFERENCE: ["abramowitzStegun", "guenther1981", "nistHandbook", "wilsonHilferty1931"],
  EQUIVDIAMETER: ["ashrae2009si"],
  EQUIVLENGTH: [...FRICTION, "smacna4th"],
  FANLAW: ["abulencia2009", "cengel2006"],
  FANPRESSURE: ["fritschCarlson1980"],
  FITTINGLOSS: ["ashrae2009si", "ductLectureSlides", "smacna4th"],
  FRICTION,
  GAINS: NETWORK,
  GATELEAK: ["abulencia2009", "commonPractice"],
  HOODAIRFLOW: ["abulencia2009", "certificationExam"],
  HOODSUCTION: ["certificationExam", "ductLectureSlides"],
  JUNCTIONLOSS: ["crane410"],
  LEAK: ["abulencia2009", "commonPractice"],
  LEAKAREA: ["abulencia2009", "commonPractice"],
  LEAKAT: ["smacna1985"],
  LOSSCOEFFICIENT: ["smacna4th"],
  OPERATINGPOINT: ["abulencia2009", ...CURVE],
  PITOTVELOCITY: ["abulencia2009", "ductLectureSlides"],
  REFERENCE: [],
  REYNOLDS: ["ashrae2009si"],
  RUNLOSS: FRICTION,
  SCENARIOS: NETWORK,
  SEAMLEAK: ["en12237", "smacna1985"],
  SIZES: [...NETWORK, "abulencia2009", "acgihMemory"],
  SOLVE: NETWORK,
  TOGETHER: NETWORK,
  TRADESIZE: ["commonPractice"],
  TRAVERSE: ["abulencia2009", "certificationExam", "ductLectureSlides"],
  TRAVERSEPOINTS: ["instrumentManuals"],
  UNCERTAINTY: [...NETWORK, "jcgm100", "jcgm101"],
  VELOCITY: [],
  VELOCITYPRESSURE: ["ductLectureSlides"],
};
