import type { Task } from "../guide";
import { exampleFacts } from "./exampleTables";

export const vendorNumbers: Task = {
  title: "Vendor numbers",
  functions: [
    {
      name: "CLAIM",
      maths: "Each number against a bound: air power, tip speed, velocity pressure, face velocity",
      source: "eulerMemory",
      limits: "Finds what cannot be. A number that holds may still be untrue: ask for the curve and the test standard.",
      example: { asks: "An invented leaflet: 4000 cfm, 12 in.w.g., 1.5 hp", args: [exampleFacts] },
    },
  ],
};
