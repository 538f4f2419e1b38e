/** The library of the grid as the page finds it, set up once for all tests of a context. Import it before the first model is made. */
import * as library from "@odoo/o-spreadsheet";

function groupBy<One>(list: Iterable<One>, keyOf: (one: One) => string): Record<string, One[]> {
  const groups: Record<string, One[]> = {};
  for (const one of list) (groups[keyOf(one)] ??= []).push(one);
  return groups;
}

Object.assign(globalThis, { o_spreadsheet: library });
Object.assign(Object, { groupBy }); // the library asks for it when a range is cut; Node has it from 21 on
Object.assign(console, { debug: () => undefined }); // the library tells how long everything took

export { library };
