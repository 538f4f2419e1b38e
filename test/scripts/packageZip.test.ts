import { strToU8, unzipSync } from "fflate";
import { zipOf } from "../../scripts/package/files";

const files = ["index.html", "samples/budget.xlsx"].map((path) => ({ path, bytes: strToU8(`what ${path} says`) }));

afterEach(() => {
  jest.useRealTimers();
});

const zippedIn = (year: number): Buffer => {
  jest.useFakeTimers({ now: new Date(year, 5, 1) });
  return Buffer.from(zipOf(files));
};

test("the zip of the same files is the same bytes whenever it is made", () => {
  expect(zippedIn(2041).equals(zippedIn(2026))).toBe(true);
});

test("it holds every file under its path", () => {
  const held = Object.entries(unzipSync(zipOf(files))).map(([path, bytes]) => ({ path, bytes: new Uint8Array(bytes) }));
  expect(held).toEqual(files.map(({ path, bytes }) => ({ path, bytes: new Uint8Array(bytes) })));
});
