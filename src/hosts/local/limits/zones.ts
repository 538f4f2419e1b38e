/** Cells of the grid from one corner to the other, from 0. */
export interface Zone {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const shared = (one: Zone, other: Zone): Zone => ({
  left: Math.max(one.left, other.left),
  right: Math.min(one.right, other.right),
  top: Math.max(one.top, other.top),
  bottom: Math.min(one.bottom, other.bottom),
});

export const cellsInZone = ({ left, right, top, bottom }: Zone): number =>
  Math.max(0, right - left + 1) * Math.max(0, bottom - top + 1);
