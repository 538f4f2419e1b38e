import { DomainError } from "../../src/core/errors";
import { requireOwnUnit } from "../../src/functions/ownUnit";

test("a header that was in order in one call is asked again where units or quantity are others", () => {
  requireOwnUnit("runs", "Diameter (mm)", "diameter", "SI");
  requireOwnUnit("runs", "Diameter (mm)", "diameter", "SI");
  const refusal =
    'a header of runs must be with (in) or no unit in this call, unless its units are "SI"; got "Diameter (mm)"';
  const inInches = () => requireOwnUnit("runs", "Diameter (mm)", "diameter", "IP");
  expect(inInches).toThrow(DomainError);
  expect(inInches).toThrow(refusal);
  expect(inInches).toThrow(refusal); // a refusal is not kept as being in order
  expect(() => requireOwnUnit("runs", "Diameter (mm)", "airflow", "SI")).toThrow(DomainError);
});
