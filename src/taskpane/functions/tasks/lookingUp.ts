import type { Task } from "../guide";

export const lookingUp: Task = {
  title: "Looking up",
  functions: [
    {
      name: "REFERENCE",
      maths: "A table, a row or a value with its source beside it",
      source: "commonPractice",
      limits: "The view Tables shows the same rows with words around them.",
      example: { asks: "Roughness of galvanised steel", args: ["materials", "galvanised steel", "roughness (mm)"] },
    },
    {
      name: "CAUTIONS",
      maths: "The cautions as rows",
      source: "commonPractice",
      limits: "All of them stand in the view Cautions.",
      example: { asks: "What a number can't do", args: ["numbers"] },
    },
    {
      name: "ABOUT",
      maths: "Version, definitions and dates as rows",
      source: "commonPractice",
      limits: "Says which version computed a sheet.",
      example: { asks: "This version", args: [] },
    },
  ],
};
