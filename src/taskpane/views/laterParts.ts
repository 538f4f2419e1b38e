/** What the pane loads when its tabs are there: every view but the first, and what of that rests on the tables or the open book. */
export { TablesCounted } from "../start/TablesCounted";
export { YourSystem } from "../start/YourSystem";
export { BuildView } from "./BuildView";
export { CautionsView } from "./CautionsView";
export { CheckView } from "./CheckView";
export { FunctionsView } from "./FunctionsView";
export { ShareView } from "./ShareView";
export { TablesView } from "./TablesView";
