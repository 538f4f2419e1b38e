import type { Task } from "../guide";
import { exampleCurve, exampleRuns, exampleScenarios } from "./exampleTables";

export const wholeTables: Task = {
  title: "Whole tables",
  functions: [
    {
      name: "BUDGET",
      maths: "Airflows add up towards the fan; each run's losses at its airflow; the costliest path sets the pressure",
      source: "acgihMemory",
      limits: "What hoods ask for, not what flows: a fan knows nothing of wishes. See SOLVE.",
      example: { asks: "What two hoods and a main ask of a fan", args: [exampleRuns] },
    },
    {
      name: "SOLVE",
      maths: "Flows and suctions at which every junction and the fan agree, leaks included",
      source: "todiniPilati1988",
      limits: "One fan, no loops. As good as its coefficients and the fan's curve.",
      example: { asks: "The same ducts on the invented fan", args: [exampleRuns, exampleCurve] },
    },
    {
      name: "SCENARIOS",
      maths: "SOLVE for each set of open gates",
      source: "todiniPilati1988",
      limits: "Shut gates leak by what the table says of them.",
      example: { asks: "One gate open, then both", args: [exampleRuns, exampleCurve, exampleScenarios] },
    },
    {
      name: "GAINS",
      maths: "SOLVE again with one change at a time",
      source: "todiniPilati1988",
      limits: "One change at a time: two together do not give the sum.",
      example: { asks: "What would help the saw", args: [exampleRuns, exampleCurve, "saw"] },
    },
  ],
};
