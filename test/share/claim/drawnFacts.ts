import { type ClaimFact, claimFacts } from "../../../src/reference/claimFacts";
import { convertibleUnits, fromSI, type Quantity, unitOf } from "../../../src/reference/quantities";
import { type Random, seeded } from "../translate/random";
import type { Cell, Facts, Units } from "./claimCopies";

/** Tables of facts drawn by lot: most as a data sheet gives them, some as people mistype them. */

/** What such a thing has, in SI, and now and then far from it. */
const SPANS: Readonly<Record<string, readonly [low: number, high: number]>> = {
  airflow: [0.05, 2],
  "free-air airflow": [0.1, 3],
  pressure: [200, 6000],
  "shut-off pressure": [400, 20_000],
  "motor power": [200, 6000],
  volts: [100, 480],
  amps: [1, 40],
  efficiency: [0.2, 1.2],
  "inlet diameter": [0.03, 0.3],
  "impeller diameter": [0.1, 0.7],
  "wheel width": [0.01, 0.2],
  stages: [1, 4],
  speed: [900, 20_000],
  "filter area": [0.5, 60],
  "hose diameter": [0.025, 0.2],
  "hose length": [0.3, 30],
  "noise distance": [0.5, 10],
};

const KINDS: Partial<Record<Quantity, string>> = {
  airflow: "airflow",
  pressure: "pressure",
  power: "power",
  diameter: "length",
  length: "length",
  area: "area",
};

const OWN_UNITS: Readonly<Record<string, readonly string[]>> = {
  rpm: ["rpm", "r/min", "1/min", "RPM", "U/min", "min⁻¹", "rev/min"],
  V: ["V", "volts", "VAC"],
  A: ["A", "Amps"],
  "%": ["%", "percent", " %"],
  stages: ["stages", "stage"],
};
const SPELLED: Readonly<Partial<Record<Quantity, readonly (readonly [unit: string, factor: number])[]>>> = {
  airflow: [["SCFM", 0.3048 ** 3 / 60], ["m³ / hr", 1 / 3600], ["ACFM", 0.3048 ** 3 / 60]], // prettier-ignore
  pressure: [["inches of water", 248.84], ['" w.g.', 248.84], ["in. H2O", 248.84], ["in water lift", 248.84]], // prettier-ignore
  power: [["peak HP", 745.699872], ["HP (max. developed)", 745.699872], ["W input", 1], ["horsepower", 745.699872], ["Watts", 1], ["bhp", 745.699872]], // prettier-ignore
  diameter: [['"', 0.0254], ["inches", 0.0254], ["metres", 1]], // prettier-ignore
  length: [["'", 0.3048], ["feet", 0.3048], ["meter", 1]], // prettier-ignore
  area: [["sq. ft.", 0.3048 ** 2], ["sq m", 1], ["m²", 1]], // prettier-ignore
};

/** Digits as people group them. */
function digits(random: Random, value: number): string {
  const figures = Number(value.toPrecision(random.pick([2, 3, 3, 4])));
  const plain = String(figures);
  const [whole, part] = plain.split(".") as [string, string | undefined];
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return random.pick([
    plain,
    plain,
    plain,
    `+${plain}`,
    part === undefined ? grouped : `${grouped}.${part}`,
    part === undefined ? plain : `${whole},${part}`,
    part === undefined ? whole.replace(/\B(?=(\d{3})+$)/g, ".") : `${whole}.${part.padEnd(3, "0")}`,
    `0${plain.replace(".", ",")}`,
    whole === "0" && part !== undefined ? `.${part}` : plain,
    `${plain}${part === undefined ? "." : ""}`,
    figures >= 10 ? `${figures / 10}e1` : plain,
    `${figures * 100}E-2`,
  ]);
}

function amount(random: Random, key: string, quantity: Quantity, unit: string | undefined, units: Units): Cell {
  const [low, high] = SPANS[key]!;
  const value = random.scale(low, high) * random.pick([1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 300, 0.001]);
  const rounded = unit === "stages" ? random.pick([1, 1, 2, 3, 1.5]) : value;
  if (unit !== undefined) {
    const shown = unit === "%" && random.maybe(true) !== null ? 100 * rounded : rounded;
    const number = unit === "stages" ? rounded : Number(shown.toPrecision(3));
    const bare = random.maybe(true) !== null;
    return bare ? number : `${digits(random, number)}${random.pick(["", " "])}${random.pick(OWN_UNITS[unit]!)}`;
  }
  const own = unitOf(quantity, units);
  if (random.maybe(true, 0.5) !== null) return Number(fromSI(value, own).toPrecision(random.pick([2, 3, 5, 12])));
  if (random.maybe(true, 0.3) !== null) return digits(random, fromSI(value, own));
  const known = convertibleUnits[KINDS[quantity]!]!.map(({ names, factor }) => [random.pick(names), factor] as const);
  const [label, factor] = random.pick([...known, ...(SPELLED[quantity] ?? []), ...(SPELLED[quantity] ?? [])]);
  const typed = random.pick([label, label.toUpperCase(), ` ${label}  `, `  ${label}`]);
  return `${random.pick(["", "", " "])}${digits(random, value / factor)}${typed}`;
}

const GARBAGE: readonly Cell[] = [
  ...[
    "about 5",
    "n/a",
    "-",
    "5 parsecs",
    "1,2,3",
    "12,34 in",
    "1.234.5",
    "1e",
    "2 e3",
    "5 .",
    "-40",
    "%",
    '12"',
    "0",
    " ",
  ],
  ...[
    "a long story which nobody wants to read twice.. or thrice, surely",
    "see  page  7",
    "1,700",
    "100,000 cfm",
    "12.500 m³/h",
    "17,000.5 cfm",
    "0.0",
  ],
  ...[true, false, -5, 1e9, 0.00001, 123456.789, 1.5, 0, null],
  ...["1000 at 8", "\t12 mm", "12\u00a0mm", "100 %", ".5", "1.", "٣"],
];

function value(random: Random, fact: ClaimFact, units: Units): Cell {
  if (random.maybe(true, 0.06) !== null) return random.pick(GARBAGE);
  const { key, takes } = fact;
  switch (takes.kind) {
    case "amount":
      return amount(random, key, takes.quantity, takes.unit, units);
    case "words": {
      const { key: word, aliases } = random.pick(takes.words);
      const name = random.pick([word, word, ...aliases]);
      const typed = random.pick([name, name.toUpperCase(), ` ${name.replaceAll(" ", "-")} `]);
      return /^\d$/.test(word) && random.maybe(true) !== null ? Number(word) : typed;
    }
    case "pair": {
      const parts = (["airflow", "pressure"] as const).map((of) => {
        const cell =
          random.maybe(true, 0.95) === null ? random.pick(GARBAGE) : amount(random, of, of, undefined, units);
        return typeof cell === "object" ? "" : String(cell);
      });
      return parts.join(random.pick([" at ", " @ ", "@", " AT ", "  at  ", " at ", " at ", " at at ", " for "]));
    }
    case "text":
      return random.pick([
        `${random.pick([5, 72, 68.5, 0.3])} ${random.pick(["dB", "micron", "dB(A)", "µm"])}`,
        75,
        81.4,
        " 70. dB",
        "quiet",
        "80,5 dB",
        "95 dB LwA",
        "80 dB(A) at 3 ft",
      ]);
  }
}

/** What data sheets put into the brackets behind a name. */
const IN_BRACKETS = [
  "m³/h",
  "CFM",
  "L/min",
  "Pa",
  "mm H2O",
  "kPa",
  "W",
  "kW",
  "hp",
  "mm",
  "cm",
  "in.",
  "ft",
  "sq. ft.",
  "m²",
  "kg",
  "max",
  "fpm",
  "A",
  "in Hg",
  "cfm at in.w.g.",
  "m³/h @ Pa",
  "L/s, kPa",
  "dB(A)",
  "dB",
  "peak",
  "P1, kW",
  "x2",
  "2 X",
  "each",
  "per bag",
];

function name(random: Random, { key, aliases }: ClaimFact): Cell {
  const one = random.pick([key, key, key, ...aliases]);
  if (random.maybe(true, 0.3) !== null) {
    const unit = random.pick(IN_BRACKETS);
    return random.pick([`${one} (${unit})`, `${one} [${unit}]`, `[max] ${one} (${unit})`, `${one} (${unit}) (m)`]);
  }
  return random.pick([
    one,
    one,
    one.toUpperCase(),
    `${one} (claimed)`,
    ` ${one.replaceAll(" ", "_")}`,
    `[1] ${one} (max) `,
  ]);
}

const UNKNOWN: readonly Cell[] = [
  "colour",
  "weight (kg)",
  7,
  true,
  "hose  len",
  "airflow*",
  "~",
  "(airflow)",
  null,
  0,
  "",
];

export function drawnFacts(seed: number, units: Units): Facts {
  const random = seeded(seed);
  const share = random.pick([0.15, 0.4, 0.7, 0.95]);
  const given = claimFacts.filter(() => random.maybe(true, share) !== null);
  const rows: (readonly [Cell, Cell])[] = given.map((fact) => [name(random, fact), value(random, fact, units)]);
  if (random.maybe(true, 0.15) !== null) rows.push([random.pick(UNKNOWN), random.pick([12, "x", null, 0])]);
  if (random.maybe(true, 0.1) !== null && given.length > 0) {
    const again = random.pick(given);
    rows.push([name(random, again), value(random, again, units)]);
    rows.push([name(random, again), value(random, again, units)]);
  }
  if (random.maybe(true, 0.3) !== null) rows.push([null, null]);
  const shuffled = rows
    .map((row) => [random.between(0, 1), row] as const)
    .sort(([a], [b]) => a - b)
    .map(([, row]) => row);
  const heading = random.pick<readonly (readonly [Cell, Cell])[]>([
    [],
    [],
    [["Fact", "Value"]],
    [
      [null, 0],
      ["WHAT (said)", "Their number (I-P)"],
    ],
    [["name", null]],
    [["Facts", 3]],
  ]);
  const all = [...heading, ...shuffled];
  return all.length === 0 ? [[null, null]] : all;
}
