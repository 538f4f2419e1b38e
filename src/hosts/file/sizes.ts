/** Widths and heights: the description counts characters and lines, the file counts its own way. */

const PADDING = 5 / 7; // a file's width has five pixels more than its characters of seven pixels
const LINE = 13; // points of a line of the usual font
const ABOVE_AND_BELOW = 2;

export const USUAL_WIDTH = 8.43; // characters of a column that nobody widened, as Excel shows it

export const fileWidth = (characters: number): number => rounded(characters + PADDING, 4);

/** Programs round widths to their pixels, so a half that is near is meant. */
export const charactersOf = (width: number): number => near(width - PADDING, 2, 0.06);

export const fileHeight = (lines: number): number => rounded(lines * LINE + ABOVE_AND_BELOW, 2);

export const linesOf = (height: number): number => near((height - ABOVE_AND_BELOW) / LINE, 2, 0.06);

function near(size: number, parts: number, margin: number): number {
  const part = Math.round(size * parts) / parts;
  return Math.max(0, Math.abs(part - size) <= margin ? part : rounded(size, 2));
}

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));
