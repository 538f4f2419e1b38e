import { sourceOfGuide } from "../../../src/taskpane/functions/sourceOfGuide";

test("a formula's source carries its year and how it is known", () => {
  expect(sourceOfGuide({ source: "colebrook1939", basis: "second-hand" })).toMatch(
    /^Colebrook, .*, 1939 \(second-hand\)$/,
  );
  expect(sourceOfGuide({ source: "todiniPilati1988", basis: "from memory" })).toMatch(/, 1988 \(from memory\)$/);
  expect(sourceOfGuide({ source: "acgihMemory", basis: "from memory" })).toMatch(/, from memory, 1988 to 2007$/);
  expect(sourceOfGuide({ source: "commonPractice", basis: "common practice" })).toBe(
    "Common practice of the trade, no source",
  );
  expect(sourceOfGuide({ source: "geometry", basis: "" })).toBe("Geometry");
  expect(sourceOfGuide({ source: "tables", basis: "" })).toBe("Each row names its own");
});
