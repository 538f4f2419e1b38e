import { addAppendPlugin } from "./appendPlugin";
import { addKeptPlugin } from "./keptPlugin";
import { removeLinks } from "./noLinks";

/** What we change of the grid's library, once, before the first model is made. */
export function addPlugins(): void {
  addKeptPlugin();
  addAppendPlugin();
  removeLinks();
}
