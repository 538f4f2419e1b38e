import type { Workshop, WorkshopRun } from "./workshop";

const hoodRun = (
  run: string,
  main: string,
  airflow: number,
  diameter: number,
  flex: number,
  rest: WorkshopRun,
): WorkshopRun => ({
  Run: run,
  To: main,
  Airflow: airflow,
  Diameter: diameter,
  Flex: flex,
  Gate: "open",
  Material: "galvanised steel",
  Side: "suction",
  ...rest,
});

const carrier = (run: string, to: string, diameter: number, length: number, fittings: string): WorkshopRun => ({
  Run: run,
  To: to,
  Diameter: diameter,
  Length: length,
  Fittings: fittings,
  Material: "galvanised steel",
  Side: "suction",
});

const runs: readonly WorkshopRun[] = [
  hoodRun("band saw", "north main", 400, 4, 3, {
    Length: 6,
    Hood: "band saw port",
    Fittings: "elbow 1.5; branch 30",
    "Leak open": "open flapped slot",
    "Leak shut": "shut packed",
  }),
  hoodRun("planer", "north main", 550, 5, 6, {
    Length: 12,
    Hood: "planer port",
    Fittings: "elbow 1.5 x2; branch 30",
    "Leak open": "open flapped slot",
    "Leak shut": "shut wrong side",
  }),
  hoodRun("drum sander", "south main", 400, 5, 3, {
    Length: 5,
    Hood: "drum sander port",
    Fittings: "elbow 1.5; branch 30",
    "Leak open": "open flapped slot",
    "Leak shut": "shut seated",
  }),
  hoodRun("router table", "south main", 400, 4, 3, {
    Length: 4,
    Hood: "router table port",
    Fittings: "elbow 1.5; branch 30",
    "Leak open": "open bare slot",
    "Leak shut": "shut packed",
  }),
  carrier("north main", "trunk", 6, 20, "elbow 1.5; branch 30"),
  carrier("south main", "trunk", 6, 10, "branch 30"),
  carrier("trunk", "separator", 9, 12, "elbow 2"),
  {
    Run: "separator",
    To: "fan",
    Diameter: 9,
    Length: 4,
    Material: "galvanised steel",
    Side: "suction",
    Leak: 1.2, // the lid of its bin
    "Device loss": 2,
    "Device airflow": 1800,
    "Device exponent": 2,
  },
  {
    Run: "filter",
    To: "outside",
    Diameter: 10,
    Length: 6,
    Fittings: "elbow 2",
    Material: "galvanised steel",
    "Device loss": 1.5,
    "Device airflow": 1800,
    "Device exponent": 1,
    "Device clean loss": 0.6,
    Side: "discharge",
  },
];

/**
 * The example in I-P units: a shared boat-building shed. Invented; no such shed, machine, fan or reading exists.
 *
 * It is drawn so that it teaches four things: the drum sander's 5 in duct is too wide for 400 cfm (2900 fpm, so its dust
 * settles); its path and the south main's need so much less suction than their neighbours that they want resizing; with
 * this fan, a little weak for it, three of the four hoods get less than they ask for; and the leaks, worst at the
 * separator's bin beside the fan, take air that the hoods get back only in part.
 */
export const shed: Workshop = {
  units: "IP",
  name: "a shared boat-building shed",
  invented: "Invented for trying out: a shared boat-building shed. No such shed, machine, fan or reading exists.",
  temperature: 70,
  altitude: 0,
  dust: "wood dust",
  runs,
  curve: [
    [0, 11.2],
    [400, 11],
    [800, 10.5],
    [1200, 9.6],
    [1600, 8.2],
    [1800, 7.3],
    [2000, 6.2],
    [2200, 4.9],
    [2400, 3.2],
  ],
  scenarios: [
    { name: "all four open", gates: ["open", "open", "open", "open"] },
    { name: "planer alone", gates: ["shut", "open", "shut", "shut"] },
    { name: "saw and router table", gates: ["open", "shut", "shut", "open"] },
  ],
  tries: {
    runs: "Try it: the drum sander asks for 400 cfm; type 600 in D11 and watch its check change.",
    flow: "Try it: type shut planer in A12. The others get more air; dust settles in the mains.",
  },
};
