/** The first sheet of a copy names the sources that its numbers rest on: all of them, and no others. */
import { sources, type SourceId } from "../../src/reference/sources";
import { tasks } from "../../src/functions/tasks";
import { materials } from "../../src/reference/materials";
import { clubCopy } from "../../src/share/clubCopy";
import { methodSources } from "../../src/share/methodSources";
import { sourcesReached } from "../support/sourcesReached";
import { type SampleSheet, sampleBook } from "./sampleBooks";

const HEADING = "Sources of its methods, tables and values";

/** Ids under the heading of the copy's first sheet. */
function told(sheet: SampleSheet, kind: "formulas" | "values" = "formulas"): Set<string> {
  const { book } = clubCopy(sampleBook({ S: sheet }), { kind, date: "2026-11-25", version: "1.0.0" });
  const lines = book.workbook.sheets[0]!.cells.flatMap((cell) =>
    "value" in cell ? [{ row: Number(cell.at.slice(1)), words: String(cell.value), style: cell.style }] : [],
  );
  const first = lines.find(({ words }) => words === HEADING)?.row ?? Infinity;
  expect(first).toBeLessThan(Infinity);
  const next = lines.find(({ row, style }) => row > first && style === "section")!.row;
  const named = lines.filter(({ row }) => row > first && row < next).map(({ words }) => words);
  if (named.join() === "None but geometry and the definitions above.") return new Set();
  return new Set(
    named.map((words) =>
      (Object.keys(sources) as SourceId[]).find((id) => words === `${sources[id].title} (${sources[id].year})`)!,
    ),
  );
}

const call = (code: string, value: number | string = 1): SampleSheet => ({
  formulas: { A1: { code, shows: [[value]] } },
});

describe("what a method rests on", () => {
  const reached = sourcesReached();
  const guides = new Map(
    tasks.flatMap(({ functions }) => functions.map(({ name, source }) => [name, source] as const)),
  );

  test.each([...reached.keys()])("DUCT.%s names what its code and its guide name", (name) => {
    const ids = [...reached.get(name)!, guides.get(name.replace(/^DUCT\./, ""))!].filter((id) => id in sources);
    expect([...methodSources[name]!].sort()).toEqual([...new Set(ids)].sort());
  });

  test("each function is there, and no other", () => {
    expect(Object.keys(methodSources).sort()).toEqual([...reached.keys()].sort());
    expect(reached.size).toBeGreaterThan(30);
  });
});

describe("what a copy tells", () => {
  test("of geometry alone, nothing", () => expect(told(call("=DUCT.AREA(4)"))).toEqual(new Set()));

  test.each([
    ['=DUCT.CONVERTUNIT(1,"in","mm")', ["nistSp811"]],
    ["=DUCT.AREA(4)+DUCT.EQUIVDIAMETER(4,6)", ["ashrae2009si"]],
    ["=_xldudf_DUCT_DENSITY(20)", ["psychrolib"]],
    ["=DUCT.FRICTION(400,4,0.0001)", ["ashrae2009si", "colebrook1939"]],
    ['=DUCT.AREA(4)&"DUCT.DENSITY(20)"', []], // a text calls nothing
  ])("%s brings its method", (code, ids) => {
    const found = told(call(code));
    for (const id of ids) expect(found).toContain(id);
    for (const id of ["eulerMemory", "todiniPilati1988", "doebelinMeasurement", "iso5167"])
      expect(found).not.toContain(id);
    if (ids.length < 2)
      expect([...found].filter((id) => id === "psychrolib")).toEqual(ids.filter((id) => id === "psychrolib"));
  });

  test("a name of a material brings the table of materials with the source of each of its rows", () => {
    const found = told(call('=DUCT.FRICTION(400,4,"galvanised steel")'));
    for (const { source } of materials) expect(found).toContain(source);
    expect(found).not.toContain("acgihMemory");
  });

  test("what stays a number brings its method all the same", () => {
    const found = told(call("=DUCT.SOLVE(B1:C2,E1:F3)"));
    expect(found).toContain("todiniPilati1988");
    expect(found).toContain("fritschCarlson1980");
  });

  test("a value with its source beside it brings that, and a title within a longer one is not another", () => {
    const long = sources.smacna4thMemory.title;
    const found = told({ rows: [[1, long]], formulas: { A3: { code: "=DUCT.AREA(4)", shows: [[1]] } } }, "values");
    expect(found).toEqual(new Set(["smacna4thMemory"]));
    const shown = told(call('=DUCT.REFERENCE("x","y")', `${sources.psychrolib.title}, chapter 1 (read)`), "values");
    expect(shown).toEqual(new Set(["psychrolib"]));
  });

  test("a copy of values rests on the same methods", () => {
    expect(told(call("=DUCT.EQUIVDIAMETER(4,6)"), "values")).toEqual(new Set(["ashrae2009si"]));
  });
});
