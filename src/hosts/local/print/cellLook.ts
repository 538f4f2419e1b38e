import type { CellPosition, GridModel } from "../grid";

/** What a cell shows and how, marks by its text included. */
export interface CellLook {
  readonly text: string;
  readonly align: "left" | "center" | "right";
  readonly isText: boolean;
  readonly style: ReturnType<GridModel["getters"]["getCellComputedStyle"]>;
  readonly border: ReturnType<GridModel["getters"]["getCellComputedBorder"]>;
  readonly isSeen: boolean; // says something, or has a ground or a line
}

export function cellLook(getters: GridModel["getters"], position: CellPosition): CellLook {
  const { formattedValue, type, defaultAlign } = getters.getEvaluatedCell(position);
  const style = getters.getCellComputedStyle(position);
  const border = getters.getCellComputedBorder(position);
  return {
    text: formattedValue,
    align: style.align ?? defaultAlign,
    isText: type === "text",
    style,
    border,
    isSeen: formattedValue !== "" || style.fillColor !== undefined || border !== null,
  };
}
