import type { Task } from "../guide";

export const hoods: Task = {
  title: "Hoods",
  functions: [
    {
      name: "HOODSUCTION",
      maths: "ps = (1 + K) ρ v² / 2",
      source: "certificationExam",
      limits: "Says what the duct behind the hood feels, not whether the hood catches the dust.",
      example: {
        asks: "Suction behind a hood with K 0.6 at 4005 fpm (349.5 cfm) in 4 in",
        args: ["349.5", "4", "0.6"],
      },
    },
    {
      name: "HOODAIRFLOW",
      maths: "Q = A √(2 ps / (ρ (1 + K)))",
      source: "certificationExam",
      limits:
        "Tap the static pressure about three diameters behind the hood, in a straight piece without leaks before it.",
      example: { asks: "Airflow where such a hood reads 1.6 in.w.g.", args: ["1.6", "4", "0.6"] },
    },
  ],
};
