import { fireCautions } from "./cautions/fireCautions";
import { moreCautions } from "./cautions/moreCautions";
import { practice } from "./cautions/practice";
import { cautionTopics } from "./cautions/topics";
import { exposureLimits } from "./exposureLimits";
import type { CautionRow, ExposureRow } from "./schema";

/** Limits that are named among the cautions; the table of limits has more. */
const LIMITS = [
  "us osha total",
  "us niosh",
  "eu hardwood",
  "germany hardwood",
  "uk hardwood",
  "australia hardwood",
  "australia all wood 2026",
];

/** An exposure limit as a caution, with its number, date and dispute as the table of limits has them. */
const limitText = ({ label, limit, since, note }: ExposureRow): string => {
  const date = since === "undated" || label.includes(since) ? "" : `, ${since}`;
  return `${label}: ${Number((limit! * 1e6).toPrecision(3))} mg/m³${date}. ${note!}`;
};

const limitCautions = LIMITS.map((key): CautionRow => {
  const row = exposureLimits.find((one) => one.key === key)!;
  const { source, locator, basis, checked } = row;
  return {
    key: `limit ${key}`,
    label: row.label,
    topic: "health",
    text: limitText(row),
    source,
    locator,
    basis,
    checked,
  };
});

const firstCautions: readonly CautionRow[] = [
  {
    key: "power off",
    label: "Power off before reaching in",
    topic: "machines",
    text: "Cut the power and let the wheel and the blade stop before reaching into a gate, a duct, a machine or the fan. Lock the switch where someone else could turn it on.",
    source: "oshaMemory",
    locator: "29 CFR 1910.147",
    basis: "from memory",
    checked: null,
  },
  {
    key: "fan inlet guard",
    label: "Nothing loose near an open inlet",
    topic: "machines",
    text: "An open fan inlet draws in fingers, cloth and loose parts. Never run the fan with its inlet bare to take a reading.",
    ...practice,
  },
  {
    key: "carcinogen",
    label: "Wood dust causes cancer",
    topic: "health",
    text: "Wood dust is a human carcinogen (IARC Group 1).",
    source: "iarc62",
    locator: "volume 62, p 194",
    basis: "read",
    checked: "2026-11-27",
  },
  {
    key: "respirator",
    label: "Air in the duct is not the air you breathe",
    topic: "health",
    text: "Airflow in a duct says nothing about the dust that you breathe: wear a respirator where dust is made or swept.",
    ...practice,
  },
  {
    key: "limits differ",
    label: "Exposure limits differ and change",
    topic: "health",
    text: "Exposure limits differ by country, wood and date. The table of limits shows its dates: look up the one that holds where you are.",
    ...practice,
    locator: "the table of limits",
  },
  {
    key: "limit disputed",
    label: "A limit that is disputed",
    topic: "health",
    text: "In the United States a review commission held in 1985 that the limit of nuisance dust does not cover wood dust.",
    source: "nioshPel88",
    locator: "wood dust",
    basis: "read",
    checked: "2026-11-27",
  },
  ...limitCautions,
  {
    key: "noise",
    label: "Noise",
    topic: "health",
    text: "NIOSH recommends at most 85 dBA over eight hours.",
    source: "nioshMemory",
    locator: "noise",
    basis: "from memory",
    checked: null,
  },
  {
    key: "noise of fan and machine",
    label: "Noise adds up",
    topic: "health",
    text: "A fan and a machine together can pass that: measure, and wear hearing protection. More air speed is more noise.",
    ...practice,
  },
  {
    key: "explosible dust",
    label: "Fine dust can explode",
    topic: "explosion",
    text: "Take sanding dust and the dust of hardwood, fibre board and chipboard as explosible.",
    source: "hseWis32",
    locator: "explosion risk",
    basis: "second-hand",
    checked: "2026-11-27",
  },
  {
    key: "dust builds up",
    label: "Dust that lies",
    topic: "explosion",
    text: "Empty collectors and clean ducts before dust builds up in them.",
    ...practice,
  },
  {
    key: "sparks and metal",
    label: "No sparks, no metal",
    topic: "explosion",
    text: "Nothing but wood dust on this exhaust: no grinding sparks, no flames, no metal, no other process.",
    source: "ufc3410",
    locator: "paragraphs 7-2 and 7-5",
    basis: "read",
    checked: "2026-11-27",
  },
  {
    key: "indoor collector",
    label: "A collector indoors",
    topic: "explosion",
    text: "OSHA warns of fire and explosion where cyclone collectors are put up wrongly indoors.",
    source: "oshaBulletin1997",
    locator: "bulletin of 2 May 1997",
    basis: "read",
    checked: "2026-11-27",
  },
  {
    key: "collector outdoors",
    label: "A collector outdoors",
    topic: "explosion",
    text: "The rule for wood shops of the US Department of Defense puts the collector outside the building.",
    source: "ufc3410",
    locator: "paragraph 7-4.10",
    basis: "read",
    checked: "2026-11-27",
  },
  {
    key: "collector in the room",
    label: "Fire in the collector",
    topic: "explosion",
    text: "A fire in a collector that stands in the room is a fire in the room. Ask the fire authority where yours may stand: rules differ on size, enclosure and distance.",
    ...practice,
  },
  {
    key: "fire standards",
    label: "When the US fire standards apply",
    topic: "explosion",
    text: "The US woodworking standard applied above 5000 ft² or 1500 cfm.",
    source: "nfpa664Article",
    locator: "section 1.1.2",
    basis: "second-hand",
    checked: "2026-11-27",
  },
  {
    key: "fire standard now",
    label: "The US fire standard that holds now",
    topic: "explosion",
    text: "NFPA 660 took the place of the US woodworking standard in December 2024.",
    source: "nfpa660Press",
    locator: "announcement",
    basis: "second-hand",
    checked: "2026-11-27",
  },
  {
    key: "small shop",
    label: "Too small for a standard is not safe",
    topic: "explosion",
    text: "A shop that is too small for a fire standard is not safe by that: the dust burns the same.",
    ...practice,
  },
  {
    key: "tape and card",
    label: "A trial patch burns",
    topic: "explosion",
    text: "What you stick over a leak to try it out can burn, come loose and reach the fan. Take it off when the reading is done; what stays must be fit for the duct.",
    ...practice,
  },
  {
    key: "earthing metal",
    label: "Earth conductive duct",
    topic: "electrical",
    text: "Bond and earth metal duct and conductive hose.",
    source: "ufc3410",
    locator: "paragraph 7-4.4",
    basis: "read",
    checked: "2026-11-27",
  },
  {
    key: "plastic static",
    label: "Static on plastic duct",
    topic: "electrical",
    text: "Dust charges plastic pipe and hose; the spark pricks and can startle. A wire in or around the pipe does not make plastic conductive.",
    ...practice,
  },
  {
    key: "metal duct",
    label: "Metal duct at workplaces",
    topic: "electrical",
    text: "The rule for wood shops of the US Department of Defense allows only metal duct and conductive hose.",
    source: "ufc3410",
    locator: "paragraph 7-4.4",
    basis: "read",
    checked: "2026-11-27",
  },
  {
    key: "live parts",
    label: "Wiring",
    topic: "electrical",
    text: "Motors, switches and remote controls are work for someone licensed to do it where the law says so.",
    ...practice,
  },
  {
    key: "recirculated air",
    label: "Air blown back into the room",
    topic: "air",
    text: "Air that returns to the room is as clean as its filter, and fine dust passes many. Filters and their seals age: look, and measure the dust.",
    ...practice,
  },
  {
    key: "exhausted air",
    label: "Air blown outside",
    topic: "air",
    text: "Air blown outside must come in somewhere. A tight room with a flue, stove or boiler can draw its fumes back in.",
    ...practice,
  },
  {
    key: "ladders",
    label: "Work at height",
    topic: "work",
    text: "Where duct hangs high, readings and patches on a ladder need a firm footing and a second person.",
    ...practice,
  },
  {
    key: "sheet edges",
    label: "Sharp edges and screws",
    topic: "work",
    text: "Sheet metal and screw points cut; wear gloves with the fan off, and none near turning parts.",
    ...practice,
  },
  {
    key: "no measurement",
    label: "Estimates are no measurement",
    topic: "numbers",
    text: "Tables and computed figures are estimates. A reading in the duct decides, and every reading has an error of its own.",
    ...practice,
  },
  {
    key: "vane over a slot",
    label: "A vane head over a small slot",
    topic: "numbers",
    text: "A vane head held over a small slot reads the air through its own face: multiply by the head's face area, not the slot's. The head also chokes the slot, so the true leak is larger.",
    ...practice,
  },
  {
    key: "vane in a small opening",
    label: "A vane in a small opening",
    topic: "numbers",
    text: "A rotating vane in a small opening needs a correction for its free area and for what it blocks.",
    source: "hsg258Memory",
    locator: "rotating vanes in small openings",
    basis: "from memory",
    checked: null,
  },
  {
    key: "area in the meter",
    label: "The area that was entered",
    topic: "numbers",
    text: "A meter that shows airflow multiplies by the area that was typed into it. Another duct's area, or a digit too few, and every reading is wrong by the same factor: look before you write down.",
    ...practice,
  },
  {
    key: "capture",
    label: "Airflow is not capture",
    topic: "numbers",
    text: "Enough air in the pipe does not mean that a hood catches the dust: that goes by the hood's shape and its distance.",
    ...practice,
  },
  {
    key: "codes decide",
    label: "Local codes and licensed practice decide",
    topic: "law",
    text: "Fire, building, labour and electrical codes hold where you are, and the authorities for fire and labour decide. This sheet is no permit and no engineer's design.",
    ...practice,
  },
];

/** The cautions, by topic in the order in which a day's work meets them. */
export const cautions: readonly CautionRow[] = cautionTopics.flatMap(({ key }) =>
  [...firstCautions, ...fireCautions, ...moreCautions].filter(({ topic }) => topic === key),
);
