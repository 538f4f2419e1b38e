import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { EXIT } from "../../reference/lossFamilies";
import { transport } from "../../reference/transport";
import { firstBranch, fittingsK, mitresK, typedListK, wrongEntry } from "../translate/expressions/fittingList";
import { hoodK } from "../translate/expressions/entryK";
import { NO_ANSWER, plainName, times } from "../translate/expressions/text";
import { nameGone } from "../translate/lookupNames";
import { namedRow, roughness } from "../translate/readers";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import type { TableBlock, TablePlace } from "../translate/tableBlocks/block";
import { namedRows } from "../translate/tableBlocks/keyedBlocks";
import type { CallContext } from "../translate/translation";
import type { BudgetLookups } from "./lookups";
import { hazardWord } from "./metalWords";

/** Look-ups in the tables that the copy carries, for a budget in these units. */
export function tableLookups(system: UnitSystem, { tables, workings, sheet }: CallContext): BudgetLookups {
  const factor = (quantity: "diameter" | "velocity"): number => unitOf(quantity, tables.units).factor;
  const dusts = (): TablePlace => tables.ownBlock("transport", () => transportBlock(tables.units));
  return {
    sheet: tables.sheet,
    nameGone: nameGone(workings),
    errorAt: firstErrorOn(tables.sheet),
    roughness: (cell) => roughness({ text: cell }, system, tables).value,
    usualRoughness: (name) => roughness({ text: name, literal: name }, system, tables).value,
    fittings: (cell, diameter) => fittingsK(cell, diameter, { system, tables, workings, sheet }),
    wrongEntry: (cell, diameter) => wrongEntry(cell, diameter, { system, tables, workings, sheet }),
    mitres: (cell, diameter) => mitresK(cell, diameter, { system, tables, workings, sheet }),
    branch: (cell, diameter) => firstBranch(cell, diameter, { system, tables, workings, sheet }),
    exit: typedListK(EXIT, "any", null, { system, tables }) ?? NO_ANSWER,
    hood: (cell) => hoodK(cell, system, tables).value,
    usualHood: (name) => typedListK(name, "hood", null, { system, tables }) ?? NO_ANSWER,
    gateOpening: (cell, diameter) => {
      const gates = tables.block("gates");
      const { row } = namedRow({ text: cell }, "gates", tables);
      const gap = times(`INDEX(${gates.range("gap")},${row})`, factor("diameter"));
      return `${gap}*INDEX(${gates.range("length")},${row})*${diameter}`;
    },
    dust: (cell) => {
      const block = dusts();
      const row = `MATCH(${plainName(cell)},${block.range("name")},0)`;
      const velocity = (column: string): string => times(`INDEX(${block.range(column)},${row})`, factor("velocity"));
      return {
        key: `INDEX(${block.range("key")},${row})`,
        low: velocity("settles under"),
        high: velocity("too fast over"),
        hazard: `INDEX(${block.range("fire")},${row})`,
      };
    },
  };
}

const [WIDE, TALL] = ["M", 3000]; // more columns and rows than the tables take

function firstErrorOn(sheet: string): string {
  const all = `${sheetPrefix(sheet)}$A$1:$${WIDE}$${TALL}`;
  const rising = `(${TALL + 1}-ROW(${all}))`; // the first row has the most
  const most = `SUMPRODUCT(MAX(ISERROR(${all})*${rising}))`;
  return `MOD(${TALL + 1}-${most},${TALL + 1})`; // 0 where there is none
}

/** One row per name; the other spellings of a row take its figures. 0 stands where no upper velocity is printed. */
function transportBlock(units: UnitSystem): TableBlock {
  const unit = unitOf("velocity", units);
  const figure = (value: number | null): number => (value === null ? 0 : Number(fromSI(value, unit).toPrecision(12)));
  return {
    title: `Transport velocities of dusts, ${unit.label}; 0 where no upper end is printed`,
    inputs: true,
    ...namedRows(transport, [
      { header: "settles under", of: ({ low }) => figure(low) },
      { header: "too fast over", of: ({ high }) => figure(high) },
      { header: "key", of: ({ key }) => key },
      { header: "fire", ofEach: hazardWord },
    ]),
  };
}
