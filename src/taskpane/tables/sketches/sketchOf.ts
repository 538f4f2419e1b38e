import { machinePorts } from "../../../reference/hoods/machinePorts";
import { fanInletElbow, mitreElbow, piecedElbow, smoothElbow } from "./elbows";

/** A sketch: the duct's lines, and where the air goes. Our own drawings, in a field of 72 by 44. */
export interface Sketch {
  readonly lines: string;
  readonly air: string;
}

const ACROSS = "M8 22 H20 M16 19 L20 22 L16 25";
const IN = "M2 22 H14 M10 19 L14 22 L10 25";
const elbow = (lines: string): Sketch => ({ lines, air: "M8 16 H22 M18 13 L22 16 L18 19" });
const inlet = (lines: string): Sketch => ({ lines, air: IN });
const through = (lines: string): Sketch => ({ lines, air: ACROSS });

const inWall = (reach: number): Sketch => inlet(`M${40 - reach} 15 H70 M${40 - reach} 29 H70 M40 3 V15 M40 29 V41`);
const bell = "M70 15 H36 Q24 15 22 5 M70 29 H36 Q24 29 22 39";
const coneSides = "M70 16 H42 L20 5 M70 28 H42 L20 39";
const wheel = "M8 22 a11 11 0 1 0 22 0 a11 11 0 1 0 -22 0 M19 22 h0.5";

const partOpenGate = "M4 12 H68 M4 34 H68 M34 22 V2 H40 V22 Z M30 2 H44";

const families: Readonly<Record<string, Sketch>> = {
  "elbow 3-piece": elbow(piecedElbow(3)),
  "elbow 4-piece": elbow(piecedElbow(4)),
  "elbow 5-piece": elbow(piecedElbow(5)),
  "elbow gored": elbow(piecedElbow(5)),
  "elbow 7-gore": elbow(piecedElbow(7)),
  "elbow pleated": elbow(piecedElbow(12)),
  "hose bend": elbow(piecedElbow(12)),
  "elbow adjustable": elbow(piecedElbow(4)),
  "elbow drain": elbow(smoothElbow),
  "elbow drain long": elbow(smoothElbow),
  "elbow smooth": elbow(smoothElbow),
  "elbow smooth manual": elbow(smoothElbow),
  "elbow older manual": elbow(smoothElbow),
  "elbow stamped": elbow(smoothElbow),
  mitre: elbow(mitreElbow),
  branch: {
    lines: "M4 40 H68 M4 22 H36 M60 22 H68 M36 22 L16 2 M60 22 L40 2",
    air: "M29 4 L40 15 M34.5 14.5 L40 15 L39.5 9.5",
  },
  "tee of a project sheet": { lines: "M4 40 H68 M4 22 H28 V3 M44 3 V22 H68", air: "M36 4 V16 M33 12 L36 16 L39 12" },
  contraction: through("M4 5 H24 L48 14 H68 M4 39 H24 L48 30 H68"),
  "contraction manual": through("M4 5 H24 L48 14 H68 M4 39 H24 L48 30 H68"),
  "contraction abrupt": through("M4 5 H36 V14 H68 M4 39 H36 V30 H68"),
  expansion: through("M4 14 H24 L48 5 H68 M4 30 H24 L48 39 H68"),
  "expansion abrupt": through("M4 14 H36 V5 H68 M4 30 H36 V39 H68"),
  "expansion slight": through("M4 14 H20 L56 9 H68 M4 30 H20 L56 35 H68"),
  gate: through("M4 12 H68 M4 34 H68 M34 12 V2 H40 V12 M30 2 H44"),
  "gate part open": through(partOpenGate),
  "gate part open without recess": through(partOpenGate),
  "gate part open in water": through(partOpenGate),
  exit: { lines: "M4 12 H40 M4 32 H40", air: "M30 22 H62 M58 19 L62 22 L58 25 M44 14 L54 6 M44 30 L54 38" },
  "weather cap": { lines: "M26 43 V20 M46 43 V20 M16 14 L36 3 L56 14 Z", air: "M36 40 V26 M33 30 L36 26 L39 30" },
  "fan inlet elbow direct": { lines: fanInletElbow(0), air: "M11 42 V30 M8 34 L11 30 L14 34" },
  "fan inlet elbow at two diameters": { lines: fanInletElbow(12), air: "M11 42 V30 M8 34 L11 30 L14 34" },
  "fan inlet elbow at five diameters": { lines: fanInletElbow(26), air: "M11 42 V30 M8 34 L11 30 L14 34" },
  "plain end": inlet("M20 13 H70 M20 31 H70"),
  "plain end older": inlet("M20 13 H70 M20 31 H70"),
  "thin free end": inlet("M20 13 H70 M20 31 H70"),
  "re-entrant end": inWall(20),
  "duct end in wall": inWall(14),
  "duct end in wall medium": inWall(14),
  "duct end in wall thick": inlet(
    "M26 15 H70 M26 29 H70 M26 12 H70 M26 32 H70 M26 12 V15 M26 29 V32 M40 2 V12 M40 32 V42",
  ),
  "flanged end": inlet("M20 13 H70 M20 31 H70 M20 3 V13 M20 31 V41"),
  "flanged end manual": inlet("M20 13 H70 M20 31 H70 M20 3 V13 M20 31 V41"),
  orifice: inlet("M22 12 H70 M22 32 H70 M22 3 V17 M22 27 V41"),
  "bell mouth": inlet(`${bell} M22 5 V1 M22 39 V43`),
  "bell mouth free": inlet(bell),
  "bell mouth single figure": inlet(bell),
  "bell mouth manual": inlet(bell),
  cone: inlet(coneSides),
  "cone flanged": inlet(`${coneSides} M20 5 V1 M20 39 V43`),
  "grinder hood": {
    lines: `${wheel} M19 5 A17 17 0 0 1 36 15 H70 M36 29 H70 M36 29 A17 17 0 0 1 19 39`,
    air: "M38 22 H50 M46 19 L50 22 L46 25",
  },
  "grinder hood tapered": {
    lines: `${wheel} M19 4 L34 8 L50 16 H70 M19 40 L34 36 L50 28 H70`,
    air: "M38 22 H50 M46 19 L50 22 L46 25",
  },
  "grinder hood tapered manual": {
    lines: `${wheel} M19 4 L34 8 L50 16 H70 M19 40 L34 36 L50 28 H70`,
    air: "M38 22 H50 M46 19 L50 22 L46 25",
  },
  trap: { lines: "M4 8 H16 V4 H50 V14 H70 M4 20 H16 V40 H50 V26 H70", air: "M6 14 H20 M16 11 L20 14 L16 17" },
  booth: inlet("M10 3 H46 V15 H70 M10 41 H46 V29 H70"),
  "booth rounded": inlet("M10 3 H44 V7 Q44 15 54 15 H70 M10 41 H44 V37 Q44 29 54 29 H70"),
  "tapered hood round": inlet("M70 16 H46 L20 4 M70 28 H46 L20 40 M20 4 Q15 22 20 40 Q25 22 20 4"),
  "tapered hood square": inlet("M70 16 H46 L20 4 V40 L46 28 H70"),
};

/** A machine's box with its port. */
const machinePort = inlet("M6 4 H40 V15 H70 M6 40 H40 V29 H70 M6 4 V14 M6 30 V40");
const ports = Object.fromEntries(machinePorts.map(({ key }) => [key, machinePort]));

/** The sketch of a fitting or a hood by its key; null for one that has none. */
export const sketchOf = (key: string): Sketch | null => families[key] ?? ports[key] ?? null;
