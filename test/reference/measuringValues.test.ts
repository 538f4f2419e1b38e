import { claimBounds } from "../../src/reference/claimBounds";
import { cautions } from "../../src/reference/cautions";
import { meterErrors } from "../../src/reference/meterErrors";
import { usualErrors } from "../../src/reference/usualErrors";
import { offeredTraverses, traverseFractions } from "../../src/reference/traverseFractions";
import { rowOf } from "./allRows";

describe("traverse fractions", () => {
  // Two instrument manuals, both read in a copy; ISO 3966 and EPA Method 1 from memory. The other half by symmetry.
  test.each([
    ["log-linear 4", "0.043 0.290"],
    ["log-linear 6", "0.032 0.135 0.321"],
    ["log-linear 8", "0.021 0.117 0.184 0.345"],
    ["log-linear 10", "0.019 0.077 0.153 0.217 0.361"],
    ["log-tchebycheff 5", "0.074 0.288 0.500"],
    ["log-tchebycheff 6", "0.061 0.235 0.437"],
    ["log-tchebycheff 7", "0.053 0.203 0.366 0.500"],
    ["log-tchebycheff round 6", "0.032 0.137 0.312"],
    ["log-tchebycheff round 8", "0.024 0.100 0.194 0.334"],
    ["equal area 6", "0.044 0.146 0.296"],
    ["equal area 8", "0.032 0.105 0.194 0.323"],
  ])("%s are %s from the wall, as printed or remembered", (key, printed) => {
    const half = printed.split(" ").map(Number);
    expect(rowOf(traverseFractions, key).fractions.slice(0, half.length)).toEqual(half);
  });

  test("are the same from either wall, to the printed digits", () => {
    for (const { fractions } of traverseFractions)
      fractions.forEach((fraction, index) => expect(fraction + fractions.at(-1 - index)!).toBeCloseTo(1, 9));
  });

  test("from memory are offered for four points only, and the round log-Tchebycheff ones not at all", () => {
    const weak = [...offeredTraverses("log-linear"), ...offeredTraverses("log-Tchebycheff")].filter(
      (row) => row.basis === "from memory",
    );
    expect(weak.map((row) => row.key)).toEqual(["log-linear 4"]);
    expect(traverseFractions.filter((row) => !row.offered && row.basis !== "from memory")).toEqual([]);
  });
});

describe("errors of instruments", () => {
  // From memory: a rotating vane 2 to 3 % and 0.1 to 0.2 m/s, a hot wire 3 to 5 %. A tape: 1 mm, common practice, no source.
  test("taken where nothing is given are the cautious ends of a vane, and a tape", () => {
    expect(usualErrors).toEqual({ percent: 0.03, floor: 0.2, diameter: 0.001 });
    expect(rowOf(meterErrors, "rotating vane")).toMatchObject({ percentLow: 0.02, floorLow: 0.1 });
    expect(rowOf(meterErrors, "hot wire")).toMatchObject({ percentLow: 0.03, percentHigh: 0.05 });
  });

  test("run from low to high", () => {
    for (const row of meterErrors) {
      expect(row.percentLow ?? 0).toBeLessThanOrEqual(row.percentHigh ?? 0);
      expect(row.floorLow ?? 0).toBeLessThanOrEqual(row.floorHigh ?? 0);
    }
  });
});

describe("what CLAIM doubts from", () => {
  test("says what is judgement, and only a figure may be from memory", () => {
    const judgements = Object.values(claimBounds).filter(({ kind }) => kind === "judgement");
    expect(judgements.map(({ value }) => value)).toEqual([0.85, 1.2, 0.3, 0.5, 1.3, 0.6, 0.75, 28, 64, 1 / 2, 2 / 3]);
    const figures = Object.values(claimBounds).filter(({ kind }) => kind === "figure");
    expect(figures.map(({ value, basis }) => [value, basis])).toEqual(
      [0.65, 0.85, 1.4].map((value) => [value, "from memory"]),
    );
  });
});

describe("the cautions about limits", () => {
  // Directive (EU) 2017/2398; EH40 (2020); TRGS 553 (2022); OSHA and NIOSH as of 2012; Australia from 1 December 2026.
  test.each([
    ["limit eu hardwood", /: 2 mg\/m³, 17 January 2023\./],
    ["limit uk hardwood", /: 3 mg\/m³, 17 January 2020\./],
    ["limit germany hardwood", /: 2 mg\/m³, 2022\./],
    ["limit us osha total", /: 15 mg\/m³, 2012\. .*Whether it covers wood dust is disputed\./],
    ["limit us niosh", /: 1 mg\/m³, 2012\./],
    ["limit australia all wood 2026", /, from 1 December 2026: 0\.5 mg\/m³\. Until 30 November 2026/],
  ])("%s carries its number and its date", (key, words) => expect(rowOf(cautions, key).text).toMatch(words));
});
