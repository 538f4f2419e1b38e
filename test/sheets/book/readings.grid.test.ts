import {
  CLEAN_AT_CELL,
  FILTER_LOG,
  FILTER_SAYS,
  RATED_CELL,
  RESULTS,
  STRAYS_CELL,
} from "../../../src/sheets/book/readings/layout";
import type { UnitSystem } from "../../../src/reference/quantities";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { clubCopy } from "../../../src/share/clubCopy";
import { gridOfBook, type Shows } from "../../support/gridOfBook";

const shown = (units: UnitSystem, contents: "example" | "empty"): Shows =>
  gridOfBook(budgetBook({ units, sheets: ["readings"], contents }, { sheets: [], names: [] }));
const number = (shows: Shows, at: string): number => {
  const value = shows.value("Readings", at);
  if (typeof value !== "number") throw new Error(`${at} shows ${String(value)}`);
  return value;
};

describe("a wrong area in the meter", () => {
  const shows = shown("IP", "example");

  // By hand: a 5 in duct has π/4 (5/12)² = 0.13635 ft²; the 0.196 of a 6 in duct is 1.4374 times that; 792 / 1.4374 = 551.0 cfm.
  test("is found, named and corrected; a sound one is let be", () => {
    expect(shows.errors()).toEqual([]);
    expect(number(shows, "E9")).toBeCloseTo(0.13635, 5);
    expect(number(shows, "F9")).toBeCloseTo(1.4374, 4);
    expect(number(shows, "G9")).toBeCloseTo(551, 1);
    expect(shows.column("Readings", "H9:H11")).toEqual([
      "slip: the area entered is 44 % too large",
      "the areas agree within 10 %",
      "",
    ]);
  });

  // By hand: 0.01364 / 0.13635 = 0.1; 0.157 / 0.13635 = 1.151; 0.109 / 0.13635 = 0.799; 0.5454 / 0.13635 = 4.0, a 5 in duct taken for 10 in.
  // The reading is 47 cfm, so that each of these areas means a velocity that a meter can have read.
  test.each([
    ["C9", "0.01364", "slip: the area entered is 10 times too small, the decimal place is off by 1"],
    ["C9", "13.64", "slip: the area entered is 100 times too large, the decimal place is off by 2"],
    ["C9", "0.5454", "slip: the area entered is 4 times too large"],
    ["C9", "0.157", "slip: the area entered is 15 % too large"],
    ["C9", "0.109", "slip: the area entered is 20 % too small"],
    ["C9", "0.136", "the areas agree within 10 %"],
    ["C9", "0", "check it: the area entered must be above 0"],
    ["C9", "", "type the duct, the area in the meter and what it showed"],
    ["C9", "abc", "check it: these three must be numbers"],
    ["B9", "-5", "check it: the duct must be above 0"],
    ["B9", "5000", "check it: the duct must be at most 787 in"],
    ["D9", "-1", "check it: a reading cannot be below 0"],
    ["D9", "2500", "check it: through the area entered this is above 11811 fpm, more than a meter reads"], // 12755 fpm
  ])("%s = %p: %s", (at, typed, sentence) => {
    shows.type("Readings", "B9", "5");
    shows.type("Readings", "C9", "0.196");
    shows.type("Readings", "D9", "47");
    shows.type("Readings", at, typed);
    expect(shows.value("Readings", "H9")).toBe(sentence);
    if (/^(check|type)/.test(sentence)) expect(shows.value("Readings", "G9")).toBe(""); // nothing is corrected by guess
    expect(shows.errors()).toEqual([]);
  });
});

// By hand: π/4 (5/12)² = 0.1364 ft² and π/4 (6/12)² = 0.1963 ft²; 0.196 is 1.437 times the first, 980 / 1.437 = 682; 0.0491 (a 3 in duct) is a quarter of the second.
test("two readings typed with the wrong area: each slip is shown, and the reading corrected", () => {
  const shows = shown("IP", "example");
  shows.typeRow("Readings", "A11", ["lathe", "5", "0.196", "980"]);
  shows.typeRow("Readings", "A12", ["bench", "6", "0.0491", "150"]);
  expect(shows.texts("Readings", "E11:H12")).toEqual([
    ["0.1364", "1.44", "682", "slip: the area entered is 44 % too large"],
    ["0.1963", "0.25", "600", "slip: the area entered is 4 times too small"],
  ]);
  shows.typeRow("Readings", "C11", ["0.136", "682"]);
  expect(shows.value("Readings", "H11")).toBe("the areas agree within 10 %");
});

describe("the traverse", () => {
  /*
   * By hand: the twelve readings add up to 35870 fpm, so 2989.17 on average; π/4 (6/12)² = 0.19635 ft²; 586.9 cfm.
   * ± 0.19635 sqrt((0.03 x 2989.17)² + 39.37² + (2 x 2989.17 x 0.03937/6)²) = 0.19635 sqrt(8041.6 + 1550.0 + 1538.8) = 20.7.
   * The log-linear rule's first of six points lies at 0.032 of the diameter: 0.192 in.
   */
  test("gives the airflow and its plus or minus", () => {
    const shows = shown("IP", "example");
    expect(number(shows, "A26")).toBeCloseTo(0.192, 9);
    expect(number(shows, "B38")).toBeCloseTo(2989.17, 2);
    expect(number(shows, "B39")).toBeCloseTo(586.9, 1);
    expect(number(shows, "B40")).toBeCloseTo(20.7, 1);
    expect(shows.value("Readings", "D38")).toBe("Every point is read on both lines.");
    shows.type("Readings", "B26", "12000");
    expect(shows.value("Readings", "D26")).toBe("check it: above 11811 fpm, more than any dust duct carries");
    expect(shows.value("Readings", "D38")).toBe("No mean until the marked readings are put right.");
    expect(shows.column("Readings", "B38:B40")).toEqual(["", "", ""]);
    // 2.710 for 2,710 counts, but not without a word; the largest reading is 3350 fpm, a tenth of it 335
    const slip = "counts, but the air is ten times as fast elsewhere: a decimal place?";
    shows.type("Readings", "B26", "334");
    expect(shows.value("Readings", "D26")).toBe(slip);
    shows.type("Readings", "B26", "336");
    expect(shows.value("Readings", "D26")).toBe("");
    shows.type("Readings", "B26", "");
    expect(shows.value("Readings", "D26")).toBe("read the other line too");
    expect(shows.value("Readings", "D38")).toBe("1 readings are missing: two at each depth.");
    shows.type("Readings", "B33", "3000");
    expect(shows.value("Readings", "D33")).toBe("check it: no depth belongs to this reading, clear it");
    shows.type("Readings", "B20", "7");
    expect(shows.value("Readings", "D19")).toBe("check it: the points must be 4, 6, 8 or 10");
    shows.type("Readings", "B19", "0");
    expect(shows.value("Readings", "D19")).toBe("check it: the duct must be a number above 0, at most 787 in");
    expect(shows.errors()).toEqual([]);
  });

  // By hand: without the meter's two errors ± is that of the tape alone: 0.19635 x 2 x 2989.17 x 0.03937/6 = 7.70. With 5 % and 50 fpm:
  // 0.19635 sqrt(149.46² + 50² + 39.23²) = 31.9.
  test.each([
    ["0", "0", 7.7],
    ["none", "none", 7.7],
    ["5", "50", 31.9],
    ["-3", "", "check it: B22 must be a number, 0 to 100"],
    ["three", "", "check it: B22 must be a number, 0 to 100"],
    ["101", "", "check it: B22 must be a number, 0 to 100"],
    ["", "-1", "check it: B23 must be a number, at least 0"],
    ["", "few", "check it: B23 must be a number, at least 0"],
  ])("a meter that is %p %% off and %p whatever it reads: ± %p", (percent, floor, says) => {
    const shows = shown("IP", "example");
    shows.type("Readings", "B22", percent);
    shows.type("Readings", "B23", floor);
    if (typeof says === "number") expect(number(shows, "B40")).toBeCloseTo(says, 1);
    else expect(shows.value("Readings", "B40")).toBe(says);
    expect(shows.errors()).toEqual([]);
  });

  // By hand in air of 0.075 lb/ft³: 0.25 in.w.g. is 2003.3 fpm, and 1 in.w.g. twice that; their mean 3004.9 fpm, not the root of the mean.
  test("averages velocity pressures as roots, under a heading that says so", () => {
    const shows = shown("IP", "empty");
    expect(shows.errors()).toEqual([]);
    expect(shows.value("Readings", "D19")).toBe("type the duct's inside diameter");
    shows.type("Start", "B9", "0.075");
    shows.type("Readings", "B19", "6");
    shows.type("Readings", "B21", "velocity pressure");
    shows.type("Readings", "B26", "0.25");
    shows.type("Readings", "C26", "1");
    expect(shows.value("Readings", "B25")).toBe("Across (in.w.g.)");
    expect(number(shows, "B38")).toBeCloseTo(3004.9, 0);
    for (const [pressure, word] of [
      ["0.011", ""],
      ["0.009", "counts, but the air is ten times as fast elsewhere: a decimal place?"],
    ]) {
      // prettier-ignore
      shows.type("Readings", "B26", pressure!); // of a tenth of the velocity it is a hundredth
      expect(shows.value("Readings", "D26")).toBe(word);
    }
    shows.type("Readings", "C26", "9"); // 12020 fpm
    expect(shows.value("Readings", "D26")).toBe(
      "check it: above 11811 fpm in velocity, more than any dust duct carries",
    );
    expect(shows.errors()).toEqual([]);
  });

  // By hand: the readings add up to 231.7 m/s, 19.308 on average; π/4 0.16² = 0.0201062 m²; 1397.6 m³/h. A 125 mm duct has 0.012272 m²; a square of 125 mm has 0.0156 m², 1.271 times that.
  test("and the areas compute alike in SI", () => {
    const shows = shown("SI", "example");
    expect(shows.errors()).toEqual([]);
    expect(number(shows, "B38")).toBeCloseTo(19.308, 3);
    expect(number(shows, "B39")).toBeCloseTo(1397.6, 1);
    expect(number(shows, "E9")).toBeCloseTo(0.012272, 6);
    expect(shows.value("Readings", "C8")).toBe("Area entered in the meter (m²)");
    expect(shows.value("Readings", "H9")).toBe("slip: the area entered is 27 % too large");
  });
});

// 26 cfm through 0.136 ft² are 191 fpm, less than 1 m/s; 27 are 199.
test("a meter's reading that is no dust duct's is asked about: 1.145 for 1145", () => {
  const shows = shown("IP", "empty");
  const said = (reading: string): unknown => {
    shows.typeRow("Readings", "A9", ["planer", "5", "0.136", reading]);
    return shows.value("Readings", "H9");
  };
  expect(said("26")).toBe("counts, but through the area entered this is under 197 fpm: a decimal place?");
  expect(["27", "0"].map(said)).toEqual(["the areas agree within 10 %", "the areas agree within 10 %"]);
});

// A loss whose logarithm grows by 0.05 a month is typed to many digits: e^0.05 = 1.05127, so 5.1 % a month. Sxx of months 0, 1 is 0.5, of 0 to 2 it is 2,
// of 0 to 5 17.5: with 2.1 % a reading two deviations of the slope are 4.2 / 0.7071 = 5.94, 4.2 / 1.4142 = 2.97 and 4.2 / 4.1833 = 1.004 %, of the
// growth 1.05127 times those: 6.24, 3.12 and 1.055 %.
test("the filter's log gives its rate a ±: three monthly readings ± 3.1 % a month, six ± 1.1 %, and when to clean", () => {
  const shows = gridOfBook(
    budgetBook({ units: "SI", sheets: ["readings"], contents: "empty" }, { sheets: [], names: [] }),
  );
  const says = (): unknown => shows.value("Readings", FILTER_SAYS);
  shows.type("Readings", RATED_CELL.replaceAll("$", ""), "2000");
  shows.type("Readings", CLEAN_AT_CELL.replaceAll("$", ""), String(300 * Math.exp(0.05 * 12)));
  const month = (at: number): void =>
    shows.typeRow("Readings", `A${FILTER_LOG + 1 + at}`, [String(at), String(150 * Math.exp(0.05 * at)), "1000"]);
  expect(says()).toBe("");
  [0, 1].forEach(month);
  expect(says()).toMatch(/^Too few readings to tell when to clean: the loss grows by 5\.1 ± 6\.2 % a month/);
  month(2);
  expect(says()).toMatch(
    /^The loss grows by 5\.1 ± 3\.1 % a month; it reaches 546\.\d+ Pa, where you clean it, in month 12 \(\d+ to \d+\)\.$/,
  );
  [3, 4, 5].forEach(month);
  expect(says()).toMatch(/^The loss grows by 5\.1 ± 1\.1 % a month; it reaches .* in month 12 \(10 to 14\)\.$/);
  expect(shows.errors()).toEqual([]);
});

// 150, 300 and 600 Pa at one airflow are twice as much each month: 100 %. The slope's ± is 2.97 % as above, of the growth 2 · 2.97 = 5.94.
test("a loss that doubles each month grows by 100 % a month, and months that lie too close together leave a sentence", () => {
  const shows = gridOfBook(
    budgetBook({ units: "SI", sheets: ["readings"], contents: "empty" }, { sheets: [], names: [] }),
  );
  shows.type("Readings", RATED_CELL.replaceAll("$", ""), "2000");
  const typeMonths = (...months: readonly string[]): void =>
    months.forEach((month, at) =>
      shows.typeRow("Readings", `A${FILTER_LOG + 1 + at}`, [month, String(150 * 2 ** at), "1000"]),
    );
  typeMonths("0", "1", "2");
  expect(shows.value("Readings", FILTER_SAYS)).toBe("The loss grows by 100 ± 5.9 % a month.");
  typeMonths("0", "0.0001", "0.0002");
  expect(shows.value("Readings", FILTER_SAYS)).toMatch(/^The loss grows by /);
  expect(shows.errors()).toEqual([]);
});

/** An empty log whose filter is read at its rated 1000 m³/h, so that a row's loss is its drop, cleaned at 500 Pa. */
function emptyLog() {
  const shows = gridOfBook(
    budgetBook({ units: "SI", sheets: ["readings"], contents: "empty" }, { sheets: [], names: [] }),
  );
  shows.type("Readings", RATED_CELL.replaceAll("$", ""), "1000");
  shows.type("Readings", CLEAN_AT_CELL.replaceAll("$", ""), "500");
  return (rows: readonly (readonly [month: number, drop: number, airflow?: number])[]): unknown => {
    const filled = Array.from({ length: 8 }, (_, at) => rows[at] ?? ["", ""]);
    filled.forEach(([month, drop, airflow = 1000], at) =>
      shows.typeRow("Readings", `A${FILTER_LOG + 1 + at}`, [month, drop, month === "" ? "" : airflow].map(String)),
    );
    expect(shows.errors()).toEqual([]);
    return shows.value("Readings", FILTER_SAYS);
  };
}

describe("readings of a filter that are no steady growth", () => {
  const says = emptyLog();

  // Cleaned before month 3. With a = ln 1.1 the logarithms are 0, a, 2a, 0, a, 2a over ln 200: Sxy = 4a, Sxx = 17.5, so the slope is 0.22857 a, and month 2 lies
  // 2a - (a - 0.5 · 0.22857 a) = 1.1143 a above the line: e^(1.1143 · 0.09531) = 1.112. The line itself would say 2.2 % a month.
  test("are told where the filter was cleaned in between: no rate is made of both", () => {
    const cleaned = [200, 220, 242, 200, 220, 242].map((drop, month) => [month, drop] as const);
    expect(says(cleaned)).toBe(
      `No steady growth: row ${FILTER_LOG + 3} lies 11 % off it, where readings stray by 2.1 %. A slip, or cleaned in between? Then begin anew.`,
    );
    expect(says(cleaned.slice(3))).toMatch(/^The loss grows by 10 ± 3\.3 % a month/); // 1.1 · 2.97 %
  });

  test("are told where a decimal place slipped", () => {
    const slip = [200, 2140, 229, 245, 262].map((drop, month) => [month, drop] as const);
    expect(says(slip)).toMatch(new RegExp(`^No steady growth: row ${FILTER_LOG + 2} lies \\d+ % off it`));
  });

  // A tenth less each month; ± 0.9 · 2.97 = 2.67.
  test("a loss that falls is not said to grow", () => {
    expect(says([[0, 300], [1, 270], [2, 243]])).toBe("The loss falls by 10 ± 2.7 % a month: cleaned in between, a hole, or read at another place?"); // prettier-ignore
  });

  test("all of one month make no rate, and say so", () => {
    expect(says([[1, 200], [1, 204]])).toBe("All are of one month: read again in another."); // prettier-ignore
  });

  // Doubling from 150 Pa it was at 500 after ln(500 / 150) / ln 2 = 1.74 months.
  test("what is past the loss at which one cleans is said to be so, not put into a month that is over", () => {
    expect(says([[0, 150], [1, 300], [2, 600]])).toBe("The loss grows by 100 ± 5.9 % a month; it has reached 500 Pa, where you clean it."); // prettier-ignore
    expect(
      says([
        [0, 150],
        [1, 212],
      ]),
    ).toMatch(/; it reaches 500 Pa, where you clean it, in month 3 /);
  });

  test("an airflow far from the rated one is asked about and not counted: 1.0 for a thousand", () => {
    expect(says([[0, 200, 1], [1, 210, 1.01], [2, 220, 10001]])).toBe("Not counted: 3 rows; column E says why."); // prettier-ignore
    expect(says([[0, 200, 101], [1, 220, 101], [2, 242, 101]])).toMatch(/^The loss grows by 10 /); // prettier-ignore
  });
});

test("a reading in a row that was inserted, which has no formulas beside it, is told", () => {
  const shows = gridOfBook(
    budgetBook({ units: "IP", sheets: ["readings"], contents: "example" }, { sheets: [], names: [] }),
  );
  const says = (): string => String(shows.value("Readings", FILTER_SAYS));
  const sound = says();
  for (const row of [FILTER_LOG + 1, FILTER_LOG + 4]) {
    shows.insertRow("Readings", row);
    expect(says()).toBe(sound);
    shows.typeRow("Readings", `A${row}`, ["2.5", "0.99", "1550"]);
    expect(says()).toBe(`Not read: 1 rows without formulas. Copy D to O into them. ${sound}`);
    shows.copy("Readings", `D${row + 1}:O${row + 1}`, `D${row}`);
    expect(says()).toMatch(/^The loss grows by /);
    shows.deleteRow("Readings", row);
    expect(says()).toBe(sound);
  }
});

test("in a club copy, whose depths stay in their rows, so is a reading in a row that was inserted among them", () => {
  const book = budgetBook({ units: "IP", sheets: ["readings"], contents: "example" }, { sheets: [], names: [] });
  const live = gridOfBook(book).calculated(book);
  const copy = gridOfBook(clubCopy(live, { kind: "formulas", date: "2026-11-25", version: "1.1.0" }).book.workbook);
  const says = (row: number): unknown => copy.value("Readings", `D${row}`);
  expect(says(RESULTS + 1)).toBe("Every point is read on both lines.");
  copy.insertRow("Readings", 28);
  copy.typeRow("Readings", "B28", ["2000", "2000"]);
  expect(says(RESULTS + 2)).toBe("Not read: what stands in a row without a depth. Clear it.");
});

test("a row of the filter's log that the line does not count is told, and so is a setting that is none", () => {
  const shows = gridOfBook(
    budgetBook({ units: "IP", sheets: ["readings"], contents: "example" }, { sheets: [], names: [] }),
  );
  const [row, at] = [FILTER_LOG + 3, (letter: string) => `${letter}${FILTER_LOG + 3}`]; // 2 months, 0.96 in.w.g., 1560 cfm
  const says = (): string => String(shows.value("Readings", FILTER_SAYS));
  const sound = says();
  expect(sound).toMatch(/^The loss grows by /);
  const told = (letter: string, text: string): unknown[] => {
    const before = String(shows.value("Readings", at(letter)));
    shows.type("Readings", at(letter), text);
    const said = [shows.value("Readings", at("E")), says().startsWith("Not counted: 1 rows; column E says why. ")];
    shows.type("Readings", at(letter), before);
    return said;
  };
  const [numbers, above, months] = ["month, drop and airflow must be numbers", "drop and airflow must be above 0", "months since it was cleaned, 0 to 600"]; // prettier-ignore
  expect(told("A", "two")).toEqual([`check it: ${numbers}`, true]);
  expect(told("B", "0,96")).toEqual([`check it: ${numbers}`, true]);
  expect(told("B", "-0.96")).toEqual([`check it: ${above}`, true]);
  expect(told("C", "0")).toEqual([`check it: ${above}`, true]);
  expect(told("C", "")).toEqual(["type month, drop and airflow", true]);
  expect(told("A", "-1")).toEqual([`check it: ${months}`, true]);
  expect(told("A", "2026-03-01")).toEqual([`check it: ${months}`, true]);
  shows.type("Readings", `A${row}`, "2"); // the cell shows days since the last one
  expect([shows.value("Readings", at("E")), says()]).toEqual(["", sound]);

  const setting = (cell: string, text: string): string => {
    const [place, before] = [cell.replaceAll("$", ""), String(shows.value("Readings", cell.replaceAll("$", "")))];
    shows.type("Readings", place, text);
    const said = says();
    shows.type("Readings", place, before);
    return said;
  };
  const rated = RATED_CELL.replaceAll("$", "");
  expect(setting(RATED_CELL, "1,800 cfm")).toBe(
    `Check ${rated}: it must be a number above 0. Not counted: 6 rows; column E says why.`,
  );
  expect(setting(CLEAN_AT_CELL, "2 in")).toMatch(
    /^Check B\d+: it must be a number above 0\. The loss grows by [^;]*\.$/,
  );
  for (const wrong of ["", "2%", "some"])
    expect(setting(STRAYS_CELL, wrong)).toMatch(/^Check B\d+: it must be a number from 0\.1 to 50, in %\./);
  expect(shows.errors()).toEqual([]);
});
