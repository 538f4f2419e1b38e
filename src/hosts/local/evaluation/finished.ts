import type { GridModel } from "../grid";
import { nextTurn } from "../nextTurn";
import { type WithFinishing, TURN } from "./evaluateShownFirst";

/** When all sheets are computed; keys and the page's drawing go first meanwhile. */
export async function finished(model: GridModel): Promise<void> {
  const { isLeft, finish } = (model.getters as unknown as WithFinishing).getFinishing();
  while (isLeft()) {
    await nextTurn();
    const end = performance.now() + TURN;
    finish(() => performance.now() > end);
  }
}
