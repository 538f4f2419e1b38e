import type { Task } from "../guide";
import { exampleCurve } from "./exampleTables";

export const fan: Task = {
  title: "Fan",
  functions: [
    {
      name: "FANPRESSURE",
      maths: "A smooth line through the points of the curve that never overshoots them",
      source: "fritschCarlson1980",
      limits: "Only within the curve. A maker's curve is for standard air and a straight inlet.",
      example: { asks: "An invented straight curve, at 500 cfm", args: [exampleCurve, "500"] },
    },
    {
      name: "OPERATINGPOINT",
      maths: "Where the curve meets p = p fixed + (p − p fixed) (Q / Q design)²",
      source: "abulencia2009",
      limits: "For a system without leaks or gates. SOLVE takes the whole table of runs.",
      example: { asks: "A system that asks for 2 in.w.g. at 1000 cfm", args: [exampleCurve, "1000", "2"] },
    },
    {
      name: "FANLAW",
      maths: "Q ~ n D³, p ~ ρ n² D²",
      source: "cengel2006",
      limits: "The same fan only. The motor's power grows with the cube of the speed: mind its plate.",
      example: { asks: "The invented fan at 1.1 times its speed", args: [exampleCurve, "1.1"] },
    },
    {
      name: "AIRPOWER",
      maths: "P = Q p / η",
      source: "solbergHeatPower",
      limits: "What the air takes; the wall socket gives more.",
      example: { asks: "Shaft power for 800 cfm at 5 in.w.g., half of it lost", args: ["800", "5", "0.5"] },
    },
  ],
};
