import { createRoot } from "react-dom/client";
import type { SheetHost } from "../hosts/host";
import { Pane } from "./Pane";
import { isBesideLocalSheet, watchOffice, type PageSurroundings } from "./office";

const place = document.getElementById("pane");
if (place === null) throw new Error("the page has no element #pane");
const officeScript = document.querySelector("script[data-office]");
// office.js, which comes after this script, would tell Excel that the functions are ready before they are: a call in between
// would be #VALUE!. With this it waits until functions.js, which comes last, hands the first of them over.
if (officeScript !== null) Object.assign(window, { CustomFunctionMappings: { __delay__: true } });

const officeOfPage = { get: () => (typeof Office === "undefined" ? undefined : Office), script: officeScript };
const root = createRoot(place);
const show = (where: PageSurroundings, host: SheetHost | null): void => root.render(<Pane where={where} host={host} />);

/** What writes into Excel is a file of its own, which no other surroundings load. */
function showIn(where: PageSurroundings): void {
  if (where !== "excel") return show(where, null);
  void import("../hosts/excel/excelHost").then(({ excelHost }) => show(where, excelHost()));
}

if (isBesideLocalSheet(() => window.parent)) show("local", window.parent.ductLedgerHost ?? null);
else watchOffice(officeOfPage, showIn);
