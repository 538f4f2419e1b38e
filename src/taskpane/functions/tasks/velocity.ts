import type { Task } from "../guide";

export const velocityAndSize: Task = {
  title: "Velocity and size",
  functions: [
    {
      name: "AREA",
      maths: "A = π d² / 4; a rectangle: A = w h",
      source: "geometry",
      limits: "Inside sizes. A meter must be given the area at its probe, not that of another duct.",
      example: { asks: "Cross-section of a 4 in duct", args: ["4"] },
    },
    {
      name: "VELOCITY",
      maths: "v = Q / A",
      source: "geometry",
      limits: "The mean over the whole cross-section: in the middle of the duct the air is faster.",
      example: { asks: "Velocity of 350 cfm in a 4 in duct", args: ["350", "4"] },
    },
    {
      name: "AIRFLOW",
      maths: "Q = v A",
      source: "geometry",
      limits: "Takes a mean velocity. One reading in the middle is too high: use TRAVERSE.",
      example: { asks: "Airflow of 4000 fpm in a 4 in duct", args: ["4000", "4"] },
    },
    {
      name: "DIAMETER",
      maths: "d = √(4 Q / (π v))",
      source: "geometry",
      limits: "An exact size that no shop sells: TRADESIZE takes it to a stock size.",
      example: { asks: "Duct in which 400 cfm flows at 4000 fpm", args: ["400", "4000"] },
    },
    {
      name: "TRADESIZE",
      maths: "The next size of the series: down, up or the nearest",
      source: "commonPractice",
      limits:
        "Down is the default, since a duct that is too wide lets its dust settle. Not every stock has every size.",
      example: { asks: "Stock size below 4.28 in", args: ["4.28"] },
    },
    {
      name: "EQUIVDIAMETER",
      maths: "de = 1.30 (w h)^0.625 / (w + h)^0.25, the sides and de in one unit",
      source: "ashrae2009si",
      limits: "Equal friction at equal airflow. For the velocity take the true area.",
      example: { asks: "Round duct with the friction of 12 by 8 in", args: ["12", "8"] },
    },
    {
      name: "DENSITY",
      maths: "Moist air as an ideal mixture, pressure by the standard atmosphere",
      source: "psychrolib",
      limits: "Changes with the weather by a few per cent. Standard air, 0.075 lb/ft³, is taken where none is given.",
      example: { asks: "Air at 70 °F, 5000 ft above the sea", args: ["70", "5000"] },
    },
    {
      name: "CONVERTUNIT",
      maths: "value × unit / unit, by exact definitions",
      source: "nistSp811",
      limits: "Units of one kind only. in.w.g. is the inch of water at 60 °F.",
      example: { asks: "1000 cfm in m³/h", args: ["1000", "cfm", "m³/h"] },
    },
  ],
};
