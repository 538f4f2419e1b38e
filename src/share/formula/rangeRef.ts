/** Cells of one sheet that lie in a rectangle. */
export interface RangeRef {
  readonly sheet: string;
  readonly top: number; // rows and columns from 1
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}
