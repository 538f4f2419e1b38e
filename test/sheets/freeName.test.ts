import { freeName, freeNames } from "../../src/sheets/freeName";

test("a free name stays, one that is taken in whatever case gets the first free number", () => {
  expect(freeName("Fan", [])).toBe("Fan");
  expect(freeName("Fan", ["FAN", "fan 3"])).toBe("Fan 2");
  expect(freeName("Fan", ["Fan", "Fan 2"])).toBe("Fan 3");
  expect(freeName("density", ["Density"], "_")).toBe("density_2");
});

test("no name is longer than a sheet's 31 characters", () => {
  const long = "x".repeat(40);
  expect(freeName(long, [])).toBe("x".repeat(31));
  expect(freeName(long, ["x".repeat(31)])).toBe(`${"x".repeat(29)} 2`);
});

test("of several that are wanted none is given twice", () => {
  const names = freeNames(["Fan", "Fan 2"], ["Fan"]);
  expect([...names]).toEqual([
    ["Fan", "Fan 2"],
    ["Fan 2", "Fan 2 2"],
  ]);
});
