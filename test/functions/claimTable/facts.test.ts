import { refusal } from "../../support/refusal";
import { call, rowsOf } from "./claimCalls";

describe("CLAIM takes any of its facts", () => {
  test.each([
    [{ airflow: 1200 }, ["Airflow on a system"]],
    [{ airflow: 1200, "inlet diameter": 6 }, ["Airflow on a system", "Velocity in the inlet"]],
    [{ pressure: 5, "impeller diameter": 12, speed: 3450 }, ["Pressure against the tip speed"]],
    [{ sound: "72 dB" }, ["Sound"]],
    [{ "filter rating": 1 }, ["Filter rating"]],
    [{ airflow: 600, "hose diameter": 4 }, ["Airflow on a system", "Velocity in the hose"]],
    [{ speed: 3450 }, ["No check"]],
    [{ "inlet diameter": 6 }, ["No check"]],
    [{ "hose diameter": 4, pressure: 5 }, ["No check"]],
    [{ "filter area": 30 }, ["No check"]],
    [{ "impeller diameter": 12, speed: 3450 }, ["No check"]],
    [{ pressure: 5, "motor power": 2 }, ["No check"]],
    [{ airflow: 1200, "motor power": 2 }, ["Airflow on a system"]],
  ] as const)("%j: %j", (facts, checks) => expect(Object.keys(rowsOf(facts))).toEqual(checks));

  test("facts that allow no check say what is wanting", () => {
    expect(call([["speed", 3450]]).slice(1)).toEqual([
      ["No check", "", "", "", "cannot tell", "These facts allow no check: most need the airflow or the pressure too.", ""],
    ]); // prettier-ignore
  });

  test.each(["fact", "Facts", "NAME (of it)", "what"])('under the heading "%s"', (word) => {
    expect(call([[word, "IP"], ["airflow", 1200]])).toEqual(call([["airflow", 1200]])); // prettier-ignore
    expect(call([[null, 0], [word, "value"], ["airflow", 1200]])).toEqual(call([["airflow", 1200]])); // prettier-ignore
  });

  test("the ends of what such a thing can be are taken", () => {
    for (const speed of [100, 60_000]) expect(Object.keys(rowsOf({ speed }))).toEqual(["No check"]);
  });

  test("names in any case, with a unit in brackets, under a heading, between blank rows and blank values", () => {
    const plainly = call([
      ["airflow", 1200],
      ["inlet diameter", 6],
    ]);
    expect(
      call([
        [null, 0],
        ["Fact", "Value (IP)"],
        [" AIRFLOW (cfm)", "1200"],
        ["", null],
        ["motor power (hp)", null],
        ["speed", 0],
        ["Inlet-Diameter [in]", 6],
      ]),
    ).toEqual(plainly);
  });

  test.each([
    ['name in row 1 of the facts must be the name of a fact (nearest: "airflow", ', [["airflw", 1200]]],
    [
      "name in row 2 of the facts must be the name of a fact (nearest: ",
      [
        ["Fact", "Value"],
        ["vacuum", 5],
      ],
    ],
    [
      'name in row 1 of the facts must be the name of a fact (nearest: "filter rating", ',
      [["filter ratin", "5 micron"]],
    ],
    [
      "name in row 1 of the facts must be the name of a fact (nearest: ",
      [
        ["name", 5],
        ["airflow", 1200],
      ],
    ],
    [
      "name in row 1 of the facts must be the name of a fact (nearest: ",
      [
        ["vacuum", "value"],
        ["airflow", 1200],
      ],
    ],
    ["name in row 1 of the facts must be the name of a fact; got TRUE", [[true, 5]]],
    ["name in row 1 of the facts must be the name of a fact; got 7", [[7, 5]]],
    [
      "name in row 1 of the facts must be the name of a fact; got the error #N/A",
      [[{ type: "Error", basicValue: "#N/A" }, 5]],
    ],
    ["name in row 1 of the facts must be the name of a fact; got a blank cell", [[null, 5]]],
    [
      "airflow in row 3 of the facts must be given once: row 1 has it too; got 1200",
      [
        ["airflow", 900],
        [null, null],
        ["Airflow (cfm)", 1200],
      ],
    ],
    ['airflow in row 1 of the facts must be a number (cfm); got "1200 cfm"', [["airflow", "1200 cfm"]]],
    [
      "airflow in row 1 of the facts must be from 4.24 cfm to 42378 cfm (the facts are read in cfm); got -5",
      [["airflow", -5]],
    ],
    [
      "pressure in row 1 of the facts must be from 0.1 in.w.g. to 201 in.w.g. (the facts are read in in.w.g.); got 2500",
      [["pressure", 2500]],
    ],
    [
      "speed in row 1 of the facts must be from 100 rpm to 60000 rpm (the facts are read in rpm); got 1",
      [["speed", 1]],
    ],
    ["sound in row 1 of the facts must be a number or a text; got TRUE", [["sound", true]]],
    ["facts must be at least one of airflow, pressure, ", [["airflow", null]]],
    ['facts must be two columns, name and value; got "1 by 3 cells"', [["airflow", 1200, "cfm"]]],
  ])("refuses, and says why: %s", (message, facts) => {
    const said = refusal(() => call(facts));
    expect(said.code).toBe("#VALUE!");
    expect(said.message.slice(0, message.length)).toBe(message);
  });

  test("millimetres among inch-pound facts are caught", () => {
    expect(refusal(() => call([["inlet diameter", 150]])).message).toMatch(
      /^inlet diameter in row 1 .* read in in\); got 150$/,
    );
    expect(refusal(() => call([["inlet diameter", 6]], "SI")).message).toMatch(/ read in mm\); got 6$/);
    expect(refusal(() => call([["motor power", 1500]], "SI")).message).toMatch(/ read in kW\); got 1500$/);
  });
});
