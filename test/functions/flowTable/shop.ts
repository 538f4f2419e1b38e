import type { Row } from "../../support/tables";

/** The fan and a hood's run of the flow tests, invented; the run leaks only where a test says so. */
export const FAN = [["cfm", "in.w.g."], [0, 11], [600, 9], [1200, 4], [1400, 0]]; // prettier-ignore
export const tightSaw: Row = {
  Run: "saw",
  To: "main",
  Diameter: 4,
  Length: 10,
  Hood: "plain end",
  Airflow: 350,
  Gate: "open",
};
