import { bookOf, solveHeader } from "./books";

/** A book with one of each fault, of our own invention. */
export const faultyBook = bookOf(
  {
    Start: {
      rows: [
        ["Units", "IP"],
        ["Air density (lb/ft³)", 0.075],
      ],
    },
    Runs: {
      at: { column: 2, row: 8 },
      rows: [
        [
          "Run",
          "To",
          "Airflow (cfm)",
          "Diameter (in)",
          "Length (ft)",
          "Flex (ft)",
          "Hood",
          "Fittings",
          "Gate",
          "Leak open",
          "Leak shut",
        ],
        [
          "band saw",
          "north main",
          400,
          4,
          6,
          3,
          "flanged end",
          "elbow 1.5; branch 30",
          "open",
          "open bare slot",
          "shut packed",
        ],
        ["planer", "north main", 550, 5, 12, 9, "flanged end", "elbow 1 x2; branch 30", "open", "", "shut wrong side"],
        ["drum sander", "south main", 400, 5, 5, 3, "flanged end", "elbow 1.5; branch 30", "open", "", ""],
        ["router table", "south main", 400, 4, 4, 3, "plain end", "elbow 1.5; branch 30", "shut", "", "shut packed"],
        ["north main", "trunk", "", 6, 20, "", "", "elbow 1.5; branch 30", "", "", ""],
        ["south main", "trunk", "", 4.5, 10, "", "", "branch 30", "", "", ""],
        ["trunk", "fan", "", 9, 12, "", "", "elbow 2", "", "", ""],
      ],
    },
    Fan: {
      at: { column: 1, row: 8 },
      rows: [
        ["Airflow (cfm)", "Fan static pressure (in.w.g.)"],
        [0, 11.2],
        [800, 10.5],
        [1600, 8.2],
        [2000, 6.2],
        [2400, 3.2],
      ],
    },
    Flow: {
      at: { column: 2, row: 10 },
      rows: [
        solveHeader,
        ["band saw", 470, 5386, 4, 30, 4, "open", ""],
        [
          "planer",
          480,
          3520,
          4,
          0,
          4,
          "open",
          'dust settles: "wood dust" needs 3937 fpm; the hood gets 87 % of the 550 cfm wanted',
        ],
        ["drum sander", 390, 2860, 3, 0, 3, "open", 'dust settles: "wood dust" needs 3937 fpm'],
        ["router table", 12, 138, 5, 12, 0, "shut", "gate shut: only its leak flows"],
        ["Fan", 1352, "", 9, 42, "", "", "3 % of the air is lost to leaks"],
      ],
    },
    Scenarios: {
      rows: [
        ["Scenario", "Fan airflow (cfm)", "Fan pressure (in.w.g.)"],
        ["saw alone", 900, 10.3],
        ["all open", 1500, 8.5],
      ],
    },
    Readings: {
      rows: [
        ["Place", "Area entered (ft²)", "True area (ft²)"],
        ["planer", 0.196, 0.136],
      ],
    },
    Single: {
      rows: [[{ error: "#NAME?" }, { error: "#VALUE!", message: "diameter must be above 0 in; got -4" }]],
      formulas: { A1: "=DUCT.AREA(4)", B1: "=DUCT.AREA(-4)" },
    },
  },
  [{ name: "density", sheet: "Start", at: "B2" }],
);
