import type { Task } from "../guide";

export const measuring: Task = {
  title: "Measuring",
  functions: [
    {
      name: "PITOTVELOCITY",
      maths: "v = √(2 pv / ρ)",
      source: "ductLectureSlides",
      limits: "Below about 600 fpm the pressure is too small to read.",
      example: { asks: "Velocity where the tube reads 1 in.w.g.", args: ["1"] },
    },
    {
      name: "TRAVERSEPOINTS",
      maths: "Printed fractions of the diameter",
      source: "instrumentManuals",
      limits: "In a straight piece, many diameters from bends. Two lines at right angles in a round duct.",
      example: { asks: "Six depths across an 8 in duct", args: ["8", "6"] },
    },
    {
      name: "TRAVERSE",
      maths: "v = mean of the readings; of pressures: v = mean of √(2 pv / ρ)",
      source: "certificationExam",
      limits: "Blanks and zeros are left out. A reading of a dead corner counts, so do not leave it out yourself.",
      example: { asks: "Mean of three velocities", args: [[[3900], [4100], [4000]]] },
    },
    {
      name: "AIRFLOWERROR",
      maths: "δQ = Q √((δv / v)² + (2 δd / d)²), δv² = (percent × v)² + floor²",
      source: "doebelinMeasurement",
      limits: "Independent errors of the instrument and the tape. A badly chosen place is no part of it.",
      example: { asks: "4000 fpm in 4 in, meter 3 % and no floor, tape exact", args: ["4000", "4", "3", "0", "0"] },
    },
    {
      name: "CORRECTEDREADING",
      maths: "Q = reading × true area / entered area",
      source: "commonPractice",
      limits: "For meters that multiply by an area. A vane over a slot reads its own face.",
      example: { asks: "3500 cfm shown with 0.87 ft² entered for 0.087 ft²", args: ["3500", "0.87", "0.087"] },
    },
  ],
};
