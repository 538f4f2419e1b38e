import { addAppendPlugin } from "./appendPlugin";
import { addKeptPlugin } from "./keptPlugin";

/** What we add to the grid's library, once, before the first model is made. */
export function addPlugins(): void {
  addKeptPlugin();
  addAppendPlugin();
}
