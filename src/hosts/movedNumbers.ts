import packageJson from "../../package.json";
import { aboutVersions } from "../sheets/aboutVersions";
import type { Calculated, Shown, ShownCell } from "../sheets/calculated";
import { changesByItself } from "../sheets/changesByItself";
import { filledAddresses } from "../sheets/rectangle";
import { sheetPrefix } from "../sheets/sheetPrefix";

interface Moved {
  readonly at: string; // with its sheet
  readonly held: number;
  readonly now: number | null; // null where no number stands now
}

const CLOSE = 1e-6; // relative: far more than two programs differ by, far less than anybody reads
const NOTHING = 1e-9; // what is left of two numbers that cancel, beside a 0

/**
 * What is told where a file or a copy held other numbers than its formulas come to here: somebody may have bought or told by those. "" where all
 * agree. An error in place of a number speaks for itself.
 *
 * @param held the book with the numbers that stood there
 * @param now what its cells show here
 * @param holder what held them, as a sentence calls it
 */
export function movedWords(held: Calculated, now: Shown, holder: "file" | "copy"): string {
  const moved = movedNumbers(held, now);
  const most = moved.reduce<Moved | null>((one, other) => (one !== null && share(one) >= share(other) ? one : other), null); // prettier-ignore
  if (most === null) return "";
  const many = moved.length === 1 ? "1 number differs" : `${moved.length} numbers differ`;
  return `${many} from what the ${holder} held, most of all ${most.at}: ${inWords(most, holder)}. ${whyOf(held, holder)}`;
}

function movedNumbers({ workbook, shown }: Calculated, now: Shown): Moved[] {
  return workbook.sheets.flatMap(({ name, cells }) => {
    const [before, after] = [shown.get(name), now.get(name)];
    return cells.flatMap((cell): Moved[] => {
      if (!("formula" in cell) || changesByItself(cell.formula)) return [];
      return filledIn(cell.at, before, after).flatMap((at): Moved[] => {
        const [held, is] = [before?.get(at)?.value, after?.get(at)?.value ?? null];
        if (typeof held !== "number" || (is !== null && typeof is === "object")) return [];
        const number = typeof is === "number" ? is : null;
        return isClose(held, number) ? [] : [{ at: sheetPrefix(name) + at, held, now: number }];
      });
    });
  });
}

/** A copy has a formula in each cell that one formula of ours fills here. */
function filledIn(at: string, ...shown: readonly (ReadonlyMap<string, ShownCell> | undefined)[]): string[] {
  const extents = shown.map((cells) => cells?.get(at)?.fills ?? { rows: 1, columns: 1 });
  const most = (side: "rows" | "columns"): number => Math.max(...extents.map((extent) => extent[side]));
  return filledAddresses(at, { rows: most("rows"), columns: most("columns") });
}

const isClose = (held: number, now: number | null): boolean =>
  now !== null && Math.abs(held - now) <= Math.max(NOTHING, CLOSE * Math.abs(held));

/** How much of the larger of the two the difference is; one where no number is left comes last. */
const share = ({ held, now }: Moved): number =>
  now === null ? -1 : Math.abs(held - now) / Math.max(Math.abs(held), Math.abs(now));

function inWords({ held, now }: Moved, holder: string): string {
  if (now === null) return `no number here, ${short(held)} in the ${holder}`;
  let digits = 4;
  while (digits < 17 && held.toPrecision(digits) === now.toPrecision(digits)) digits++;
  return `${short(now, digits)} here, ${short(held, digits)} in the ${holder}`;
}

const short = (value: number, digits = 4): string => String(Number(value.toPrecision(digits)));

/** Whoever knows that another version computed them knows where to look. */
function whyOf(held: Calculated, holder: string): string {
  const other = aboutVersions(held).find(({ version }) => version !== packageJson.version);
  return other === undefined
    ? `What saved the ${holder} had not computed it from its present entries, or computes otherwise.`
    : `Version ${other.version} computed the ${holder}, this is ${packageJson.version}: CHANGELOG.md says which results moved, and which were wrong.`;
}
