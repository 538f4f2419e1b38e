import type { Task } from "../guide";

export const leaks: Task = {
  title: "Leaks",
  functions: [
    {
      name: "LEAK",
      maths: "Q = C A √(2 p / ρ), C = 0.6 for a crack",
      source: "iso5167",
      limits: "The area of a crack is hard to know; a leak that was measured says more: LEAKAREA.",
      example: { asks: "A hole of 1 in² at 3 in.w.g.", args: ["1", "3"] },
    },
    {
      name: "LEAKAREA",
      maths: "A = Q / (C √(2 p / ρ))",
      source: "iso5167",
      limits: "Read the suction while you measure, at the leak.",
      example: { asks: "The opening that passes 28.9 cfm at 3 in.w.g.", args: ["28.9", "3"] },
    },
    {
      name: "LEAKAT",
      maths: "Q₂ = Q₁ (p₂ / p₁)ⁿ, n = 0.5 for an opening, 0.65 for seams",
      source: "smacna1985",
      limits: "Holds while the opening stays the same: suction can open a flap or close a blade.",
      example: { asks: "30 cfm at 2 in.w.g., now at 4 in.w.g.", args: ["30", "2", "4"] },
    },
    {
      name: "GATELEAK",
      maths: "LEAK through the gap of that condition, gap × length",
      source: "commonPractice",
      limits: "An estimate: no measurement of slide gates was found published. Measure yours.",
      example: { asks: "An open 4 in gate whose blade slot is bare", args: ["open bare slot", "4", "3"] },
    },
    {
      name: "SEAMLEAK",
      maths: "Q = class × surface × p^0.65",
      source: "smacna1985",
      limits: "For whole ducts built to a class; a home-made joint has none.",
      example: { asks: "100 ft² of class 6 duct at 2 in.w.g.", args: ["6", "100", "2"] },
    },
  ],
};
