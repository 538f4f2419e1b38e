const CHARACTERS = 44; // that fit on a line of a note's box
const COLUMNS = 4; // of the sheet, that the box is wide
const LINE = 15; // points of a row, which is about a line's height

/** Gives every note a box that its text fits into; hucre's are all of one small size. Notes and boxes stand in one order. */
export function roomyNotes(shapes: string, comments: string): string {
  const texts = [...comments.matchAll(/<comment .*?<\/comment>/gs)].map(([comment]) =>
    comment.replace(/<[^>]*>/g, "").replace(/&\w+;/g, "&"),
  );
  let index = 0;
  return shapes.replace(/<v:shape .*?<\/v:shape>/gs, (shape) => {
    const lines = linesOf(texts[index++] ?? "");
    return shape
      .replace(/width:[\d.]+pt;height:[\d.]+pt/, `width:250pt;height:${(lines + 1) * LINE}pt`)
      .replace(
        /<x:Anchor>(\d+),(\d+),(\d+),(\d+),.*?<\/x:Anchor>/,
        (_, column: string, left: string, row: string, top: string) => {
          const last = [Number(column) + COLUMNS, left, Number(row) + lines + 1, top];
          return `<x:Anchor>${[column, left, row, top, ...last].join(",")}</x:Anchor>`;
        },
      );
  });
}

const linesOf = (text: string): number =>
  text.split("\n").reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / CHARACTERS)), 0);
