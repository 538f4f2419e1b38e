import { goTo, numberOf, read, readOne, localSite, typeInto } from "./localPage";

const local = localSite().openForAll();

/** By mouse: the list of all sheets is there even where the tabs do not fit. */
async function openSheet(name: string): Promise<void> {
  await local.page.locator(".o-list-sheets").click();
  await local.page.locator(".o-popover").getByText(name, { exact: true }).click();
  await local.page.locator(".o-sheet.active").getByText(name, { exact: true }).waitFor();
}

/** A row from its first cell on, typed cell by cell; a blank cell is left alone. */
async function typeRow(row: number, from: string, cells: readonly string[]): Promise<void> {
  for (const [index, words] of cells.entries()) {
    const letter = String.fromCharCode(from.charCodeAt(0) + index);
    if (words !== "") await typeInto(local.page, `${letter}${row}`, words);
  }
}

const expectSound = (): void => {
  expect(local.complaints).toEqual([]);
  expect(local.outside).toEqual([]);
};

describe("the sheet of readings, as a new user", () => {
  // By hand: π/4 (5/12)² = 0.1364 ft² and π/4 (6/12)² = 0.1963 ft²; 0.196 is 1.437 times the first, 980 / 1.437 = 682; 0.0491 (a 3 in duct) is a quarter of the second.
  test("two readings with the wrong area: each slip is found, and the reading corrected", async () => {
    const { page } = local;
    await openSheet("Readings");
    await typeRow(11, "A", ["lathe", "5", "0.196", "980"]);
    await typeRow(12, "A", ["bench", "6", "0.0491", "150"]);
    const [lathe, bench] = (await read(page, "E11:H12")) as [string[], string[]];
    expect(lathe).toEqual(["0.1364", "1.44", "682", "slip: the area entered is 44 % too large"]);
    expect(bench).toEqual(["0.1963", "0.25", "600", "slip: the area entered is 4 times too small"]);

    await typeInto(page, "C11", "0.136");
    await typeInto(page, "D11", "682");
    expect(await readOne(page, "H11")).toBe("the areas agree within 10 %");
    expectSound();
  });
});

describe("the sheet of leaks, as a new user", () => {
  // The five gates of the example are typed over. By hand: of those not mended the largest leak is the third, then the fifth.
  test("a log of five gates: which to mend first, and after it is mended which comes next", async () => {
    const { page } = local;
    await openSheet("Leaks");
    await typeRow(23, "A", ["gate one", "4", "", "3", "6", "1", "1", "2"]);
    await typeRow(24, "A", ["gate two", "4", "", "3", "9"]);
    await typeRow(25, "A", ["gate three", "5", "", "3", "30"]);
    await typeRow(26, "A", ["gate four", "4", "", "3", "12"]);
    await typeRow(27, "A", ["gate five", "4", "", "3", "20"]);
    for (const at of ["F24", "F25"]) {
      await goTo(page, at);
      await page.keyboard.press("Delete");
    }
    expect(await readOne(page, "B7")).toBe("gate three");
    expect((await read(page, "J23:J27")).flat()).toEqual([
      expect.stringMatching(/^mended: more than the ± [\d.]+ .* of chance$/),
      expect.stringMatching(/^check it: 20 times the estimate for its condition\./), // a typed reading, an estimate of the example
      "mend this one next",
      "not mended: number 3 in turn",
      "not mended: number 2 in turn",
    ]);
    expect(numberOf(await readOne(page, "B8"))).toBe(5); // 6 - 1

    await typeInto(page, "F25", "31");
    expect(await readOne(page, "J25")).toBe("after is above before by 1 cfm: measure again");
    expect(numberOf(await readOne(page, "B8"))).toBe(4); // it counts against the sum
    expect(await readOne(page, "B7")).toBe("gate five");
    expectSound();
  });
});

describe("the sheet of claims, as a new user", () => {
  // By hand: u = π 1 ft 3450/60 s = 55.06 m/s, so ρu² is 14.6 in.w.g., squeezed 14.9; 1000 cfm at 8 in.w.g. is 1.26 hp of 2, at 20 3.15 hp,
  // 3.09 squeezed, 1.54 times 2.
  test("facts with their units and their verdicts; an absurd pressure turns to impossible, a bad cell is told alone", async () => {
    const { page } = local;
    await openSheet("Claims");
    const facts = {
      B13: "1000 cfm at 8 in.w.g.",
      B16: "2 HP",
      B22: "12",
      B24: "radial",
      B25: "1",
      B26: "3450",
      B27: "300",
      B29: "1 micron",
    };
    for (const [at, words] of Object.entries(facts)) await typeInto(page, at, words);
    const verdicts = async (): Promise<Record<string, string>> =>
      Object.fromEntries((await read(page, "E11:F34")).map(([verdict, check]) => [check!, verdict!]));
    expect(await verdicts()).toMatchObject({
      "Air power against the motor": "holds",
      "Pressure against the tip speed": "holds",
      "Filter rating": "cannot tell",
    });

    await typeInto(page, "B13", "1000 at 20");
    expect(await verdicts()).toMatchObject({
      "Air power against the motor": "impossible",
      "Pressure against the tip speed": "impossible", // more than 1.2 times 14.9
    });

    await typeInto(page, "B13", "1000 at 9000");
    expect(await verdicts()).toMatchObject({ "Rated point, row 4": "not read", "Filter rating": "cannot tell" });
    expectSound();
  });
});
