import { gateConditions } from "../../../src/reference/gateConditions";
import { lossFamilies } from "../../../src/reference/lossFamilies";
import { materials } from "../../../src/reference/materials";
import { transport } from "../../../src/reference/transport";
import { workshops } from "../../../src/sheets/demo/workshops";

describe.each(Object.values(workshops))("the invented example in $units units: $name", (workshop) => {
  const { runs, curve, scenarios } = workshop;
  const names = new Set(runs.map(({ Run: run }) => run));
  const gated = runs.filter(({ Gate: gate }) => gate !== undefined);

  test("says in one sentence that it is invented", () => {
    expect(workshop.invented).toMatch(
      new RegExp(`^Invented for trying out: ${workshop.name}\\. No such .* exists\\.$`),
    );
  });

  test("joins every run to another, one of them to the fan, and one stands after it", () => {
    expect(names.size).toBe(runs.length);
    for (const { To: to } of runs) expect(to === "fan" || to === "outside" || names.has(to)).toBe(true);
    expect(runs.filter(({ To: to }) => to === "fan").length).toBe(1);
    expect(runs.filter(({ Side: side }) => side === "discharge").map(({ To: to }) => to)).toEqual(["outside"]);
  });

  test("uses only names that the tables have", () => {
    const hoods = new Set(
      lossFamilies.filter(({ kind }) => kind === "hood").flatMap(({ key, aliases }) => [key, ...aliases]),
    );
    expect(transport.map(({ key }) => key)).toContain(workshop.dust);
    for (const run of runs) {
      expect(materials.map(({ key }) => key)).toContain(run.Material);
      if (run.Hood !== undefined) expect(hoods).toContain(run.Hood);
      for (const [column, state] of [
        ["Leak open", "open"],
        ["Leak shut", "shut"],
      ] as const) {
        if (run[column] === undefined) continue;
        expect(gateConditions.find(({ key }) => key === run[column])?.state).toBe(state);
      }
    }
  });

  test("has a fan whose curve falls, so that it works at one point", () => {
    curve.slice(1).forEach(([airflow, pressure], index) => {
      expect(airflow).toBeGreaterThan(curve[index]![0]);
      expect(pressure).toBeLessThan(curve[index]![1]);
    });
  });

  test("each scenario speaks of every gate, and opens one at least", () => {
    for (const { gates } of scenarios) {
      expect(gates.length).toBe(gated.length);
      expect(gates).toContain("open");
    }
  });
});
