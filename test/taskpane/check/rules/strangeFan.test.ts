import { foundIn } from "../../../support/books";

const found = (units: "IP" | "SI", ...points: (readonly [number, number])[]) => {
  const [air, pressure] = units === "SI" ? ["m³/h", "Pa"] : ["cfm", "in.w.g."];
  const rows = [[`Airflow (${air})`, `Fan static pressure (${pressure})`], ...points];
  return foundIn({ Fan: { rows } }).filter(({ rule }) => rule === "A strange fan");
};
const told = (most: string, at: string) => [
  { rule: "A strange fan", what: `The fan gives at most ${most}: no duct fan's curve is like that.`, sheet: "Fan", at },
];

// one fan, 2500 Pa at rest and 1800 m3/h free: 2500/249.09 = 10.04 in.w.g., 255 mm of water, 25 mbar, 2.5 kPa; 1059 cfm, 30 m3/min
describe("a curve in other units than its table", () => {
  test("is told where it stands", () => {
    expect(found("IP", [0, 255], [1059, 0])).toEqual(told("255 in.w.g.", "B2")); // mm of water
    expect(found("SI", [0, 255], [1800, 0])).toEqual(told("255 Pa", "B2"));
    expect(found("SI", [0, 25], [1800, 0])).toEqual(told("25 Pa", "B2")); // mbar
    expect(found("SI", [0, 2.5], [1800, 0])).toEqual(told("2.5 Pa", "B2")); // kPa
    expect(found("SI", [0, 10], [1800, 0])).toEqual(told("10 Pa", "B2")); // in.w.g.
    expect(found("SI", [0, 2500], [30, 0])).toEqual(told("30 m³/h", "A2")); // m3/min
    expect(found("IP", [0, 10], [30, 0])).toEqual(told("30 cfm", "A2"));
  });

  test("is not where it may be a fan's, or that of a vacuum cleaner", () => {
    expect(found("IP", [0, 10.04], [1059, 0])).toEqual([]);
    expect(found("SI", [0, 2500], [1800, 0])).toEqual([]);
    expect(found("SI", [0, 450], [900, 0])).toEqual([]);
    expect(found("SI", [0, 22_000], [220, 0])).toEqual([]);
    expect(found("IP", [0, 90], [130, 0])).toEqual([]);
  });

  test("is told of a turbine's pressure beside the air of a wheel", () => {
    expect(found("SI", [0, 22_000], [1800, 0])).toHaveLength(1);
    expect(found("SI", [0, 31_000], [220, 0])).toHaveLength(1);
  });
});
