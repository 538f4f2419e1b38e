import type { CautionRow } from "../schema";
import { practice } from "./practice";

/** Fire and explosion beyond the dust itself: what lights it, what holds the fire, and what is work for others. */
export const fireCautions: readonly CautionRow[] = [
  {
    key: "metal with wood",
    label: "Grinding on a wood duct",
    topic: "explosion",
    text: "A grinder's sparks ride the air into the wood dust and can glow there for hours. Give grinding, buffing and welding a duct, filter and bin of their own: a shared one is no safer at other times.",
    ...practice,
  },
  {
    key: "separate wheels",
    label: "Ohio: grinding wheels and dust that burns",
    topic: "explosion",
    text: "Where the dust of a buffing wheel can burn, a rule of Ohio asks for an exhaust apart from that of grinding wheels.",
    source: "ohioExhaust",
    locator: "abrasive and buffing wheels",
    basis: "second-hand",
    checked: "2026-11-27",
  },
  {
    key: "light metals",
    label: "Aluminium and magnesium dust",
    topic: "explosion",
    text: "Fine aluminium or magnesium explodes harder than wood, and with rust it can burn through steel. Water makes such a fire worse. It belongs on no exhaust described here.",
    source: "nfpaMoreMemory",
    locator: "NFPA 484, combustible metals",
    basis: "from memory",
    checked: null,
  },
  {
    key: "venting and isolation",
    label: "Explosion venting and isolation",
    topic: "explosion",
    text: "Vents, isolation valves and suppression are laid out by someone licensed to do it, for one plant and its dust. A vent that is guessed at throws the flame at people. Nothing here sizes one.",
    source: "nfpaMoreMemory",
    locator: "NFPA 68 and 69, explosion venting and prevention",
    basis: "from memory",
    checked: null,
  },
  {
    key: "smouldering bin",
    label: "A bin that smoulders",
    topic: "explosion",
    text: "An ember can glow in a bin or bag for hours and flare up at night. At a smell of burning stop the machines and the fan, open nothing, leave the room and call the fire service.",
    ...practice,
  },
  {
    key: "extinguisher",
    label: "Extinguisher at hand",
    topic: "explosion",
    text: "Keep an extinguisher for wood fires by the door, and know how it works. A hard jet raises the dust, and the cloud explodes: use spray or foam on a small fire only, with the way out behind you.",
    ...practice,
  },
  {
    key: "solvent vapour",
    label: "Solvent vapours",
    topic: "explosion",
    text: "Vapours of paint, varnish and thinner have no place in a dust exhaust: its motor, its switch and its static can light them.",
    source: "osha1910_107Memory",
    locator: "29 CFR 1910.107",
    basis: "from memory",
    checked: null,
  },
];
