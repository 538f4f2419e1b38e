import { usualUnits } from "../../../src/taskpane/build/usualUnits";

test.each([
  ["en-US", "IP"],
  ["en-CA", "IP"],
  ["fr-CA", "IP"],
  ["es-US", "IP"],
  ["en", "IP"],
  ["", "IP"],
  ["en-GB", "SI"],
  ["de", "SI"],
  ["de-AT", "SI"],
  ["zh-Hans-CN", "SI"],
  ["en-Latn-US", "IP"],
])("a browser that speaks %j is offered %s first", (language, units) => {
  expect(usualUnits(language)).toBe(units);
});
