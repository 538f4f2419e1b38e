import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { gridOfBook } from "../../support/gridOfBook";

const start = (units: "IP" | "SI") =>
  gridOfBook(budgetBook({ units, contents: "empty", sheets: ["start"] }, { sheets: [], names: [] }));

const NONE = ["", ""];
const hot = (unit: string): string => `Look: no workshop's air? It is read in ${unit}`;
const percent = (unit: string): string => `Look: in percent? 50% is 0.5. It is read in ${unit}`;
const high = (unit: string): string => `Look: so high? It is read in ${unit}`;

// 50 °C are 122 °F, -30 °C are -22 °F, 4500 m are 14,764 ft
test.each([
  ["SI", ["70", "0"], [hot("°C"), ""]],
  ["SI", ["50", "4500"], NONE],
  ["SI", ["-31", "4600"], [hot("°C"), high("m")]],
  ["SI", ["", ""], NONE],
  ["SI", ["warm", "5000"], ["", high("m")]], // the density says what is no number
  ["SI", ["50%", "0"], [percent("°C"), ""]],
  ["SI", ["-0.5", ""], [percent("°C"), ""]],
  ["SI", ["1", ""], NONE],
  ["SI", ["0", ""], NONE], // the density asks for "0°"
  ["IP", ["70%", "5280"], [percent("°F"), ""]],
  ["IP", ["70", "5280"], NONE],
  ["IP", ["122", "14700"], NONE],
  ["IP", ["123", "14800"], [hot("°F"), high("ft")]],
  ["IP", ["-23", "0"], [hot("°F"), ""]],
] as const)("in %s the air %j is asked about where it is no workshop's", (units, [temperature, altitude], said) => {
  const shows = start(units);
  shows.type("Start", "B7", temperature);
  shows.type("Start", "B8", altitude);
  expect(shows.column("Start", "D7:D8")).toEqual(said);
});

test("a temperature or an altitude that was dragged elsewhere is told, since what is typed in its place counts for nothing", () => {
  const shows = start("SI");
  shows.type("Start", "B7", "30");
  const density = shows.value("Start", "B9");
  shows.cut("Start", "B7", "C20");
  shows.type("Start", "B7", "10");
  expect(shows.value("Start", "B9")).toBe(density);
  expect(shows.column("Start", "D7:D8")).toEqual(["Look: what counts was dragged to another cell: undo that", ""]);
  shows.insertRow("Start", 8);
  expect(shows.column("Start", "D7:D9").slice(1)).toEqual(["", ""]);
});
