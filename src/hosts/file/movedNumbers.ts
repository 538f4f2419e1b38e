import packageJson from "../../../package.json";
import { aboutVersions } from "../../sheets/aboutVersions";
import type { Calculated, Shown } from "../../sheets/calculated";
import { changesByItself } from "../../sheets/changesByItself";
import { filledAddresses } from "../../sheets/rectangle";
import { sheetPrefix } from "../../sheets/sheetPrefix";

interface Moved {
  readonly at: string; // with its sheet
  readonly held: number;
  readonly now: number | null; // null where no number stands now
}

const CLOSE = 1e-6; // relative: far more than two programs differ by, far less than anybody reads
const NOTHING = 1e-9; // what is left of two numbers that cancel, beside a 0

/**
 * What is told where a file holds other numbers than its formulas come to here: somebody may have bought or told by those. "" where all agree. An
 * error in place of a number speaks for itself.
 *
 * @param held the file's book with the numbers that stood in it
 * @param now what its cells show here
 */
export function movedWords(held: Calculated, now: Shown): string {
  const moved = movedNumbers(held, now);
  const most = moved.reduce<Moved | null>((one, other) => (one !== null && share(one) >= share(other) ? one : other), null); // prettier-ignore
  if (most === null) return "";
  const many = moved.length === 1 ? "1 number differs" : `${moved.length} numbers differ`;
  return `${many} from what the file held, most of all ${most.at}: ${inWords(most)}. ${whyOf(held)}`;
}

function movedNumbers({ workbook, shown }: Calculated, now: Shown): Moved[] {
  return workbook.sheets.flatMap(({ name, cells }) => {
    const [before, after] = [shown.get(name), now.get(name)];
    return cells.flatMap((cell): Moved[] => {
      if (!("formula" in cell) || changesByItself(cell.formula)) return [];
      const extent = before?.get(cell.at)?.fills ?? { rows: 1, columns: 1 };
      return filledAddresses(cell.at, extent).flatMap((at): Moved[] => {
        const [held, is] = [before?.get(at)?.value, after?.get(at)?.value ?? null];
        if (typeof held !== "number" || (is !== null && typeof is === "object")) return [];
        const number = typeof is === "number" ? is : null;
        return isClose(held, number) ? [] : [{ at: sheetPrefix(name) + at, held, now: number }];
      });
    });
  });
}

const isClose = (held: number, now: number | null): boolean =>
  now !== null && Math.abs(held - now) <= Math.max(NOTHING, CLOSE * Math.abs(held));

/** How much of the larger of the two the difference is; one where no number is left comes last. */
const share = ({ held, now }: Moved): number =>
  now === null ? -1 : Math.abs(held - now) / Math.max(Math.abs(held), Math.abs(now));

function inWords({ held, now }: Moved): string {
  if (now === null) return `no number here, ${short(held)} in the file`;
  let digits = 4;
  while (digits < 17 && held.toPrecision(digits) === now.toPrecision(digits)) digits++;
  return `${short(now, digits)} here, ${short(held, digits)} in the file`;
}

const short = (value: number, digits = 4): string => String(Number(value.toPrecision(digits)));

/** Whoever knows that another version computed them knows where to look. */
function whyOf(held: Calculated): string {
  const other = aboutVersions(held).find(({ version }) => version !== packageJson.version);
  return other === undefined
    ? "What saved the file had not computed it from its present entries, or computes otherwise."
    : `Version ${other.version} computed the file, this is ${packageJson.version}: CHANGELOG.md says which results moved, and which were wrong.`;
}
