import type { Task } from "../guide";

export const frictionAndLosses: Task = {
  title: "Friction and losses",
  functions: [
    {
      name: "VELOCITYPRESSURE",
      maths: "pv = ρ v² / 2",
      source: "ductLectureSlides",
      limits: "Follows the density: at 5000 ft it is a sixth less.",
      example: { asks: "Velocity pressure at 4005 fpm", args: ["4005"] },
    },
    {
      name: "FRICTION",
      maths: "Δp / L = f ρ v² / (2 d), with f by Colebrook and White",
      source: "colebrook1939",
      limits: "Straight round duct, clean. A wall that dust has coated is rougher than any table says.",
      example: { asks: "Friction of 400 cfm in 4 in galvanised duct", args: ["400", "4"] },
    },
    {
      name: "RUNLOSS",
      maths: "FRICTION × length",
      source: "ashrae2009si",
      limits: "Without fittings; those are FITTINGLOSS.",
      example: { asks: "The same over 25 ft", args: ["400", "4", "25"] },
    },
    {
      name: "LOSSCOEFFICIENT",
      maths: "K from a printed table, straight lines between its points",
      source: "smacna4th",
      limits: "Refuses what lies outside its table. Books differ: the view Tables shows each with its source.",
      example: { asks: "K of an elbow bent to 1.5 diameters", args: ["elbow", "1.5"] },
    },
    {
      name: "FITTINGLOSS",
      maths: "Δp = K ρ v² / 2, summed over the list",
      source: "ashrae2009si",
      limits: "Two fittings close together lose more or less than their sum; no table says how much.",
      example: { asks: "Two elbows with 400 cfm in 4 in", args: ["400", "4", "elbow 1.5 x2"] },
    },
    {
      name: "EQUIVLENGTH",
      maths: "L = K d / f",
      source: "ashrae2009si",
      limits: "Holds for this airflow, size and wall only, so it is no constant of the fitting.",
      example: { asks: "Straight duct as costly as one such elbow", args: ["elbow 1.5", "400", "4"] },
    },
    {
      name: "DEVICELOSS",
      maths: "Δp = Δp rated (Q / Q rated)ⁿ, n = 2 for a separator, 1 for a filter",
      source: "commonPractice",
      limits: "A filter's loss grows as it loads: clean and dirty are two ratings.",
      example: { asks: "A separator of 2 in.w.g. at 800 cfm, now at 600 cfm", args: ["600", "2", "800"] },
    },
  ],
};
