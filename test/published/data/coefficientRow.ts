import { losscoefficient } from "../../../src/functions/losses/losscoefficient";
import { cell } from "../cell";
import { EXACTLY, type PublishedRow } from "../row";

export type PrintedCoefficient = readonly [id: string, text: string, printed: string, source: string];

/** A printed loss coefficient, asked for by the text that a person types into a cell. */
export const coefficientRow = ([id, text, printed, source]: PrintedCoefficient): PublishedRow => ({
  id,
  what: `loss coefficient of "${text}"`,
  source,
  printed,
  unit: "",
  tolerance: EXACTLY,
  compute: () => cell(losscoefficient, text),
});
